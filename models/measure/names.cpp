#include "models/json/fields.h"
#include "models/measure/report.h"

#include <array>

namespace gapwise {

namespace {

using Outcome = BeforeAndAfter::Outcome;

constexpr std::array kStandingNames{
    Named<Standing>{"not_read", Standing::NotRead},     Named<Standing>{"no_limit", Standing::NoLimit},
    Named<Standing>{"not_judged", Standing::NotJudged}, Named<Standing>{"not_proven", Standing::NotProven},
    Named<Standing>{"within", Standing::Within},        Named<Standing>{"between", Standing::Between},
    Named<Standing>{"beyond", Standing::Beyond}};

constexpr std::array kFlagNames{Named<FlagKind>{"no_method", FlagKind::NoMethod},
                                Named<FlagKind>{"other_method", FlagKind::OtherMethod},
                                Named<FlagKind>{"blind", FlagKind::Blind},
                                Named<FlagKind>{"no_instrument", FlagKind::NoInstrument},
                                Named<FlagKind>{"unknown_instrument", FlagKind::UnknownInstrument},
                                Named<FlagKind>{"wrong_instrument", FlagKind::WrongInstrument},
                                Named<FlagKind>{"out_of_range", FlagKind::OutOfRange},
                                Named<FlagKind>{"overdue", FlagKind::Overdue},
                                Named<FlagKind>{"coarse", FlagKind::Coarse},
                                Named<FlagKind>{"spread", FlagKind::Spread},
                                Named<FlagKind>{"out_of_round", FlagKind::OutOfRound},
                                Named<FlagKind>{"implausible", FlagKind::Implausible},
                                Named<FlagKind>{"part_not_placed", FlagKind::PartNotPlaced},
                                Named<FlagKind>{"disagrees", FlagKind::Disagrees}};

constexpr std::array kOutcomeNames{
    Named<Outcome>{"not_compared", Outcome::NotCompared}, Named<Outcome>{"unchanged", Outcome::Unchanged},
    Named<Outcome>{"as_expected", Outcome::AsExpected}, Named<Outcome>{"unexpected", Outcome::Unexpected},
    Named<Outcome>{"no_change_though_expected", Outcome::NoChangeThoughExpected}};

} // namespace

std::string_view nameOf(Standing standing) {
    return nameIn(kStandingNames, standing);
}

std::string_view nameOf(FlagKind kind) {
    return nameIn(kFlagNames, kind);
}

std::string_view nameOf(BeforeAndAfter::Outcome outcome) {
    return nameIn(kOutcomeNames, outcome);
}

} // namespace gapwise
