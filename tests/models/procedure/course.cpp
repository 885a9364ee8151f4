#include "tests/models/procedure/course.h"

#include "models/frame/data_folder.h"
#include "models/frame/read_frame.h"

#include <gtest/gtest.h>

namespace gapwise::course {

namespace {

struct Need {
    const char* step;
    const char* reason;
    OnlyWhen when = OnlyWhen::Always;
};

Step step(const char* id, std::initializer_list<Need> needs) {
    Step step{.id = StepId{id}, .title = std::string{"act "} + id};
    for (const Need& need : needs)
        step.after.push_back({StepId{need.step}, need.reason, std::string{"why "} + id, need.when});
    return step;
}

void addSteps(Frame& frame) {
    Step d = step("D", {{"C", "ACC"}});
    Step e = step("E", {{"A", "REC"}});
    d.holdPoint = e.holdPoint = true;
    Step r = step("R", {});
    r.places = {frame.rotor};
    Step k = step("K", {{"R", "SAF"}});
    k.when = OnlyWhen::RotorLoweredIn;
    k.holdPoint = k.holdsRotor = true;
    Step n = step("N", {{"R", "PHY"}});
    n.holdsRotor = true;
    n.standsFor = {k.id};
    Step z = step("Z", {{"D", "REC"}, {"F", "REC"}});
    z.closesRecord = true;
    Step s = step("S", {});
    s.maySkip = true;
    frame.steps = {step("A", {}),
                   step("B", {{"A", "PHY"}}),
                   step("C", {{"B", "MEA"}}),
                   d,
                   e,
                   step("F", {{"E", "CLN"}}),
                   step("G", {{"C", "SAF"}}),
                   r,
                   k,
                   step("W", {{"R", "MEA"}, {"K", "SAF", OnlyWhen::RotorLoweredIn}}),
                   n,
                   s,
                   z};
}

void addFasteners(Frame& frame) {
    Fastener screws{.id = FastenerId{"F1"}, .name = "screws", .step = StepId{"B"}};
    screws.plan = TorquePlan{.thread = "M8",
                             .torqueNm = 20.0,
                             .stagesPercent = {50.0, 100.0},
                             .pattern = {1, 3, 2, 4},
                             .checkPass = true,
                             .groups = {{"inlet", 4}, {"drain", 2}}};
    Fastener nut{.id = FastenerId{"F2"}, .name = "nut", .tightensClockwise = false, .step = StepId{"C"}};
    nut.plan = TorquePlan{.thread = "M8x1-LH",
                          .torqueNm = 14.0,
                          .groups = {{"", 1}},
                          .runDown = RunDown{.seatNm = 16.0,
                                             .snugNm = 5.0,
                                             .dragMostNm = 2.0,
                                             .leastAngle = Degrees{12.0},
                                             .mostAngle = Degrees{28.0}},
                          .nutLine = NutLineLimits{Degrees{8.0}, Degrees{25.0}, {}}};
    frame.fasteners = {screws, nut};
}

} // namespace

Frame smallFrame() {
    Frame frame;
    frame.id = FrameId{"small"};
    frame.variant = "pinned";
    frame.sister = FrameId{"small-floating"};
    frame.housing = PartId{"HOUSING"};
    frame.rotor = PartId{"ROTOR"};
    for (const PartId& part : {frame.housing, frame.rotor}) {
        frame.types.push_back({.id = PartTypeId{part.text}, .name = part.text});
        frame.parts.push_back({.id = part, .name = part.text, .type = PartTypeId{part.text}});
        frame.seats.push_back({.id = seatOf(part), .types = {PartTypeId{part.text}}});
    }
    frame.seats.back().carriers = {Carrier{.part = frame.housing}};
    addSteps(frame);
    addFasteners(frame);
    return frame;
}

Frame bundled(const std::string& id) {
    const DataFolder data{std::filesystem::path{GAPWISE_TEST_SHARE}};
    Result<Frame> frame = readFrame(data, id, Validation::Full);
    if (!frame) {
        ADD_FAILURE() << describe(frame.errors().front());
        return {};
    }
    return std::move(frame).value();
}

std::string text(const std::vector<StepId>& steps) {
    std::string text;
    for (const StepId& step : steps)
        text += (text.empty() ? "" : " ") + step.text;
    return text;
}

JobState after(std::initializer_list<const char*> steps) {
    JobState state;
    for (const char* step : steps)
        state.build.stepsDone.emplace_back(step);
    return state;
}

Build allDone(const Frame& frame) {
    Build build{.frame = frame.id.text};
    for (const Step& step : frame.steps)
        if (applies(step.when, build))
            build.stepsDone.push_back(step.id);
    return build;
}

} // namespace gapwise::course
