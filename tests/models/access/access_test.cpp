#include "models/access/access.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

struct Piece {
    const char* id;
    double boreMm;
    double outsideMm;
    Span z; ///< In the assembled cartridge.
    Side from;
};

/// Parts that all sit in the housing; sizes invented.
Frame frameOf(const std::vector<Piece>& pieces) {
    Frame frame;
    frame.housing = PartId{"HOUSING"};
    for (const Piece& piece : pieces) {
        PartType type;
        type.id = PartTypeId{piece.id};
        type.index = IndexKind::Gap;
        type.shape.rings = {RingBody{.bore = Diameter{piece.boreMm, piece.boreMm},
                                     .outside = Diameter{piece.outsideMm, piece.outsideMm},
                                     .z = {-piece.z.length() / 2.0, piece.z.length() / 2.0}}};
        frame.types.push_back(type);
        frame.parts.push_back(Part{.id = PartId{piece.id}, .type = type.id});
        frame.seats.push_back(Seat{.id = seatOf(PartId{piece.id}),
                                   .types = {type.id},
                                   .carriers = {Carrier{.part = frame.housing}},
                                   .zMm = piece.z.middle(),
                                   .entersFrom = piece.from});
    }
    return frame;
}

Frame bearingBetweenRings() {
    return frameOf({{"INNER", 16.7, 19.9, {-52.35, -51.35}, Side::Turbine},
                    {"BEARING", 12.0, 18.9, {-61.5, -52.5}, Side::Turbine},
                    {"OUTER", 16.7, 19.9, {-62.65, -61.65}, Side::Turbine},
                    {"SLEEVE", 8.0, 14.0, {0.0, 5.07}, Side::Compressor},
                    {"PLATE", 15.0, 32.0, {0.0, 4.6}, Side::Compressor}});
}

Build having(std::initializer_list<const char*> parts) {
    Build build;
    for (const char* part : parts)
        build.seatings.push_back(Seating{.part = PartId{part}, .seat = seatOf(PartId{part})});
    return build;
}

std::vector<Blocked> blockers(const Build& build, const char* part) {
    return blockersOf(bearingBetweenRings(), build, PartId{part}, seatOf(PartId{part}));
}

} // namespace

// The inner ring is behind the bearing, the outer ring locks the bearing in (common practice, no source).
TEST(Access, TheOuterRingLocksTheBearingIn) {
    EXPECT_THAT(blockers(having({"INNER"}), "BEARING"), IsEmpty());
    const std::vector<Blocked> found = blockers(having({"INNER", "OUTER"}), "BEARING");
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].by, PartId{"OUTER"});
    EXPECT_EQ(found[0].words, "OUTER is in the way: it is Ø16.7 inside, and BEARING is Ø18.9 outside");
}

TEST(Access, TheInnerRingCannotFollowTheBearing) {
    EXPECT_THAT(blockers(having({"BEARING"}), "INNER"), SizeIs(1));
    EXPECT_THAT(blockers(having({"BEARING"}), "OUTER"), IsEmpty());
}

// The thrust bearing may go on before or after the spacer sleeve (common practice, no source).
TEST(Access, ASleeveAndAPlateThatIsWiderGoInEitherOrder) {
    EXPECT_THAT(blockers(having({"SLEEVE"}), "PLATE"), IsEmpty());
    EXPECT_THAT(blockers(having({"PLATE"}), "SLEEVE"), IsEmpty());
}

TEST(Access, ARingOfAnotherSizeDoesNotFit) {
    const Frame frame = bearingBetweenRings();
    EXPECT_EQ(misfitOf(frame, PartId{"INNER"}, seatOf(PartId{"OUTER"})), "");
    EXPECT_EQ(misfitOf(frame, PartId{"SLEEVE"}, seatOf(PartId{"OUTER"})),
              "SLEEVE is Ø14, and seat-OUTER takes Ø19.9");
    EXPECT_NE(misfitOf(frame, PartId{"GHOST"}, seatOf(PartId{"OUTER"})), "");
}

} // namespace gapwise
