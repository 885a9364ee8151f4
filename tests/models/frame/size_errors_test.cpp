#include "tests/support/print_error.h"
#include "tests/support/small_frame.h"

#include <gmock/gmock.h>

#include <limits>

namespace gapwise {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(SizeErrors, AGapBelongsToTheIndexGap) {
    EXPECT_THAT(
        ChangedFrame{}.erase("/part_types/2", "gap_mm").errors(),
        ElementsAre(Error{"f.json#/part_types/2", "the index gap without gap_mm", "both or neither"}));
    EXPECT_THAT(
        ChangedFrame{}.set("/part_types/4/gap_mm", 1).errors(),
        ElementsAre(Error{"f.json#/part_types/4", "gap_mm without the index gap", "both or neither"}));
    EXPECT_THAT(ChangedFrame{}.set("/part_types/4/joint", "straight").errors(),
                ElementsAre(Error{"f.json#/part_types/4/joint", "a joint without a gap",
                                  "a joint where the index is a gap"}));
}

TEST(SizeErrors, AGapIsSmallerThanItsBore) {
    EXPECT_THAT(
        ChangedFrame{}.set("/part_types/2/gap_mm", 20).errors(),
        Contains(Error{"f.json#/seats/2/groove/bore_mm", "20 mm, not more than the gap of snap-ring (20 mm)",
                       "a bore larger than the gap of its ring"}));
}

TEST(SizeErrors, AGrooveHoldsItsRing) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/2/shape/rings/0/z_mm", {-0.6, 0.6}).errors(),
                ElementsAre(Error{"f.json#/seats/2/groove/z_mm",
                                  "-8.6 to -7.5 mm, but snap-ring lies at -8.6 to -7.4 mm",
                                  "a groove that holds its ring at the z_mm of the seat"}));
    EXPECT_THAT(ChangedFrame{}.set("/seats/2/z_mm", -8.2).errors(),
                ElementsAre(testing::Field(&Error::where, "f.json#/seats/2/groove/z_mm")));
}

TEST(SizeErrors, AGrooveAscends) {
    EXPECT_THAT(ChangedFrame{}.set("/seats/2/groove/z_mm", {-7.5, -8.6}).errors(),
                Contains(Error{"f.json#/seats/2/groove/z_mm", "[-7.5, -8.6]", "[from, to] with from < to"}));
}

TEST(SizeErrors, AGrooveLiesWithinTheHousing) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/0/shape/rings/0/z_mm", {-60, -8}).errors(),
                Contains(Error{"f.json#/seats/2/groove/z_mm", "-8.6 to -7.5 mm",
                               "a groove within HOUSING, which reaches from -60 to -8 mm"}));
}

TEST(SizeErrors, APartTouchesWhatCarriesIt) {
    EXPECT_THAT(ChangedFrame{}.set("/seats/7/z_mm", 21).errors(),
                ElementsAre(Error{"f.json#/seats/7/z_mm", "21, so that COLLAR lies at 21 to 25 mm",
                                  "a place on ROTOR, which reaches from -80 to 20 mm"}));
    EXPECT_THAT(ChangedFrame{}.set("/seats/7/z_mm", 20).errors(), IsEmpty());
}

TEST(SizeErrors, ABoreIsSmallerThanItsHousing) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/0/shape/rings/0/bore_mm", 50).errors(),
                Contains(Error{"f.json#/part_types/0/shape/rings/0/bore_mm",
                               "a bore of 50 mm in an outside of 40 mm", "a bore smaller than the outside"}));
}

TEST(SizeErrors, ASpanAscends) {
    EXPECT_THAT(
        ChangedFrame{}.set("/part_types/6/shape/rings/0/z_mm", {4, 0}).errors(),
        Contains(Error{"f.json#/part_types/6/shape/rings/0/z_mm", "[4, 0]", "[from, to] with from < to"}));
}

TEST(SizeErrors, EveryFaultOfEveryShapeIsNamed) {
    EXPECT_THAT(ChangedFrame{}
                    .set("/part_types/6/shape/rings/0/bore_mm", 18)
                    .set("/part_types/4/shape/features/0/r_mm", {10, 8})
                    .errors(),
                testing::AllOf(
                    Contains(testing::Field(&Error::where, "f.json#/part_types/6/shape/rings/0/bore_mm")),
                    Contains(testing::Field(&Error::where, "f.json#/part_types/4/shape/features/0/r_mm"))));
}

TEST(SizeErrors, ACutMeetsTheBody) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/0/shape/features/1/r_mm", {21, 30}).errors(),
                ElementsAre(Error{"f.json#/part_types/0/shape/features/1",
                                  "a cut at z -31.5 to -28.5 mm, r 21 to 30 mm",
                                  "a cut that meets the body at z -60 to 0 mm, r 10 to 20 mm"}));
    EXPECT_THAT(ChangedFrame{}.set("/part_types/0/shape/features/1/z_mm", 10).errors(),
                ElementsAre(testing::Field(&Error::where, "f.json#/part_types/0/shape/features/1")));
}

TEST(SizeErrors, NumbersOutsideTheReaderAreRefusedToo) {
    Frame frame = ChangedFrame{}.read().value();
    frame.types[6].densityGPerCm3 = 0.0;
    frame.types[6].massKg = std::numeric_limits<double>::infinity();
    frame.seats[2].groove->boreMm = -20.0;
    const Errors errors = frameErrors(frame, "f.json");
    EXPECT_THAT(errors, Contains(Error{"f.json#/part_types/6/density_g_cm3", "0", "a density above 0"}));
    EXPECT_THAT(errors, Contains(Error{"f.json#/part_types/6/mass_kg", "inf", "a mass above 0"}));
    EXPECT_THAT(errors, Contains(Error{"f.json#/seats/2/groove/bore_mm", "-20", "a diameter above 0"}));
}

TEST(SizeErrors, ARestLiesOnTheHousingAndOneAnEnd) {
    const auto rests = [](const char* text) { return nlohmann::json::parse(text); };
    EXPECT_THAT(ChangedFrame{}
                    .set("/rests", rests(R"([{"up": "turbine", "face_z_mm": 0, "clearance_mm": 20},
                                     {"up": "compressor", "face_z_mm": -60, "clearance_mm": 20}])"))
                    .errors(),
                IsEmpty());
    EXPECT_THAT(ChangedFrame{}
                    .set("/rests", rests(R"([{"up": "turbine", "face_z_mm": 1, "clearance_mm": 20}])"))
                    .errors(),
                ElementsAre(Error{"f.json#/rests/0/face_z_mm", "1",
                                  "a face of HOUSING, which reaches from -60 to 0 mm"}));
    EXPECT_THAT(ChangedFrame{}
                    .set("/rests", rests(R"([{"up": "turbine", "face_z_mm": 0, "clearance_mm": 20},
                                             {"up": "turbine", "face_z_mm": 0, "clearance_mm": 20}])"))
                    .errors(),
                ElementsAre(Error{"f.json#/rests/1/up", "\"turbine\"", "each end once"}));
    EXPECT_THAT(ChangedFrame{}
                    .set("/rests", rests(R"([{"up": "turbine", "face_z_mm": 0, "clearance_mm": 0}])"))
                    .errors(),
                ElementsAre(testing::Field(&Error::where, "f.json#/rests/0/clearance_mm")));
}

} // namespace gapwise
