#pragma once

#include "geometry/datum/side.h"
#include "models/frame/frame.h"
#include "models/json/fields.h"

#include <array>
#include <string_view>

namespace gapwise {

/// The words that frame files and build sheets use for enumerations: one table each, read both ways.

inline constexpr std::array kSideNames{Named<Side>{nameOf(Side::Compressor), Side::Compressor},
                                       Named<Side>{nameOf(Side::Turbine), Side::Turbine}};

inline constexpr std::array kIndexNames{
    Named<IndexKind>{"none", IndexKind::None},
    Named<IndexKind>{"gap", IndexKind::Gap},
    Named<IndexKind>{"notch", IndexKind::Notch},
    Named<IndexKind>{"top_mark", IndexKind::TopMark},
    Named<IndexKind>{"opening", IndexKind::Opening},
    Named<IndexKind>{"arrow", IndexKind::Arrow},
    Named<IndexKind>{"match_mark", IndexKind::MatchMark},
};

inline constexpr std::array kFaceNames{
    Named<FaceKind>{"none", FaceKind::None},       Named<FaceKind>{"rounded", FaceKind::Rounded},
    Named<FaceKind>{"marked", FaceKind::Marked},   Named<FaceKind>{"end_mark", FaceKind::EndMark},
    Named<FaceKind>{"running", FaceKind::Running}, Named<FaceKind>{"chamfered", FaceKind::Chamfered},
    Named<FaceKind>{"dished", FaceKind::Dished},
};

inline constexpr std::array kJointNames{Named<Joint>{"straight", Joint::Straight},
                                        Named<Joint>{"stepped", Joint::Stepped}};

inline constexpr std::array kPurposeNames{Named<Purpose>{"practice", Purpose::Practice},
                                          Named<Purpose>{"work", Purpose::Work}};

inline constexpr std::array kStepAttitudeNames{
    Named<StepAttitude>{"any", StepAttitude::Any},
    Named<StepAttitude>{"compressor_up", StepAttitude::CompressorUp},
    Named<StepAttitude>{"turbine_up", StepAttitude::TurbineUp},
    Named<StepAttitude>{"level", StepAttitude::Level},
    Named<StepAttitude>{"bench", StepAttitude::Bench},
};

inline constexpr std::array kStepViewNames{
    Named<StepView>{"any", StepView::Any},
    Named<StepView>{"compressor", StepView::Compressor},
    Named<StepView>{"turbine", StepView::Turbine},
    Named<StepView>{"beside", StepView::Beside},
};

inline constexpr std::array kSignalNames{
    Named<Signal>{"danger", Signal::Danger},
    Named<Signal>{"warning", Signal::Warning},
    Named<Signal>{"caution", Signal::Caution},
    Named<Signal>{"notice", Signal::Notice},
};

inline constexpr std::array kOnlyWhenNames{
    Named<OnlyWhen>{"always", OnlyWhen::Always},
    Named<OnlyWhen>{"rotor_lowered_in", OnlyWhen::RotorLoweredIn},
};

inline constexpr std::array kQuestionNames{
    Named<StepQuestion>{"variant", StepQuestion::Variant},
    Named<StepQuestion>{"pick_list", StepQuestion::PickList},
    Named<StepQuestion>{"gauges", StepQuestion::Gauges},
    Named<StepQuestion>{"count_in", StepQuestion::CountIn},
    Named<StepQuestion>{"count_out", StepQuestion::CountOut},
    Named<StepQuestion>{"block_height", StepQuestion::BlockHeight},
    Named<StepQuestion>{"retention", StepQuestion::Retention},
    Named<StepQuestion>{"drag_torque", StepQuestion::DragTorque},
    Named<StepQuestion>{"nut_line", StepQuestion::NutLine},
};

inline constexpr std::array kUnitNames{
    Named<Unit>{"mm", Unit::Millimetres},
    Named<Unit>{"deg", Unit::Degrees},
    Named<Unit>{"g_mm", Unit::GramMillimetres},
};

inline constexpr std::array kLimitRuleNames{Named<LimitRule>{"as_printed", LimitRule::AsPrinted},
                                            Named<LimitRule>{"guarded", LimitRule::Guarded}};

inline constexpr std::array kTakesNames{
    Named<Takes>{"mean", Takes::Mean},
    Named<Takes>{"least", Takes::Least},
    Named<Takes>{"most", Takes::Most},
    Named<Takes>{"range", Takes::Range},
};

inline constexpr std::array kDirectionNames{Named<Direction>{"down", Direction::Down},
                                            Named<Direction>{"up", Direction::Up}};

inline constexpr std::array kScatterNames{
    Named<Scatter>{"normal", Scatter::Normal},
    Named<Scatter>{"rectangular", Scatter::Rectangular},
    Named<Scatter>{"triangular", Scatter::Triangular},
};

inline constexpr std::array kChangeKindNames{
    Named<ChangeKind>{"wear", ChangeKind::Wear},
    Named<ChangeKind>{"choice", ChangeKind::Choice},
    Named<ChangeKind>{"fault", ChangeKind::Fault},
};

inline constexpr std::array kLockingNames{
    Named<Locking>{"none", Locking::None},
    Named<Locking>{"spring_washer", Locking::SpringWasher},
    Named<Locking>{"tab", Locking::Tab},
    Named<Locking>{"thread_lock", Locking::ThreadLock},
    Named<Locking>{"thread_lock_and_tab", Locking::ThreadLockAndTab},
};

/// What a part, or a surface of it, may be stated to be.
inline constexpr std::array<Named<std::string_view>, 5> kConditionNames{
    {{"new", "new"}, {"oiled", "oiled"}, {"greased", "greased"}, {"coated", "coated"}, {"dry", "dry"}}};

/// True is clockwise.
inline constexpr std::array kTurnNames{Named<bool>{"clockwise", true},
                                       Named<bool>{"counter_clockwise", false}};

constexpr std::string_view nameOf(IndexKind kind) {
    return nameIn(kIndexNames, kind);
}
constexpr std::string_view nameOf(FaceKind kind) {
    return nameIn(kFaceNames, kind);
}
constexpr std::string_view nameOf(Joint joint) {
    return nameIn(kJointNames, joint);
}
constexpr std::string_view nameOf(Purpose purpose) {
    return nameIn(kPurposeNames, purpose);
}
constexpr std::string_view nameOf(StepAttitude attitude) {
    return nameIn(kStepAttitudeNames, attitude);
}
constexpr std::string_view nameOf(StepView view) {
    return nameIn(kStepViewNames, view);
}
constexpr std::string_view nameOf(OnlyWhen when) {
    return nameIn(kOnlyWhenNames, when);
}
constexpr std::string_view nameOf(Locking locking) {
    return nameIn(kLockingNames, locking);
}

} // namespace gapwise
