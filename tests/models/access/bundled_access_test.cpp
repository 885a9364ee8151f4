#include "models/access/access.h"
#include "models/build/read_build.h"
#include "models/frame/sets.h"
#include "models/job/log.h"
#include "models/procedure/order.h"

#include "tests/support/print_error.h"

#include <gmock/gmock.h>

#include <ranges>

namespace gapwise {

namespace {

using ::testing::IsEmpty;

/// The bundled frames: on each, everything must go in and come out, or nobody can finish a practice.
class BundledAccess : public ::testing::TestWithParam<const char*> {
protected:
    void SetUp() override {
        const DataFolder data{GAPWISE_TEST_SHARE};
        const std::string file = std::string{"builds/"} + GetParam() + "-good.build.json";
        const Result<BuildSheet> sheet = readBuildSheet(data, data.root / file);
        ASSERT_TRUE(sheet) << describe(sheet.errors().front());
        frame_ = sheet->frame;
        complete_ = sheet->build;
    }

    /// Of a set of screws the first piece: the others go with it.
    std::vector<PartId> partsPlaced() const {
        std::vector<PartId> parts = partsInOrder(frame_);
        std::erase_if(parts, [&](const PartId& part) {
            return part == frame_.housing || piecesOf(frame_, part).front() != part;
        });
        return parts;
    }

    /// The act must not be refused.
    void act(JobState& state, const Event& event) const {
        EXPECT_THAT(refusalOf(frame_, state, event), IsEmpty());
        state.build = withEvent(frame_, std::move(state.build), event);
    }

    /// Puts every part into its seat in the order of assembly, each with its reference face as given.
    JobState assembled(std::optional<Side> face) const {
        JobState state;
        for (const PartId& part : partsPlaced())
            act(state, PartPlaced{.part = part, .seat = seatOf(part), .referenceFaceLooks = face});
        return state;
    }

    void takeApart(JobState state) const {
        for (const PartId& part : partsPlaced() | std::views::reverse)
            act(state, PartTakenOff{seatOf(part)});
    }

    Frame frame_{};
    Build complete_{};
};

} // namespace

INSTANTIATE_TEST_SUITE_P(All, BundledAccess, ::testing::Values("alder-72", "alder-72-pinned", "birch-150"),
                         [](const auto& frame) {
                             std::string name = frame.param;
                             std::erase(name, '-');
                             return name;
                         });

TEST_P(BundledAccess, EveryPartGoesInInTheOrderOfAssemblyAndComesOutBackwards) {
    takeApart(assembled(std::nullopt));
}

TEST_P(BundledAccess, ACompleteCartridgeComesApart) {
    takeApart(JobState{.build = complete_});
}

// The wrong way round is for the rules to say, and it must be possible to mend it.
TEST_P(BundledAccess, PartsTheWrongWayRoundGoInAndComeOut) {
    for (const Side face : {Side::Compressor, Side::Turbine})
        takeApart(assembled(face));
}

// Common practice, no source: the plate shuts the thrust end in, the rotor what lies on the shaft behind it.
TEST_P(BundledAccess, WhatLiesDeepIsShutIn) {
    const JobState state{.build = complete_};
    for (const char* part : {"THRUST", "COLLAR-A", "SR-CO", "BRG-C", "SR-TO"})
        EXPECT_FALSE(refusalOf(frame_, state, PartTakenOff{seatOf(PartId{part})}).empty()) << part;
}

} // namespace gapwise
