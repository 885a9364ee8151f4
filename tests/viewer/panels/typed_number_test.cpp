#include "viewer/panels/typed_number.h"

#include <gtest/gtest.h>

namespace gapwise {

TEST(TypedNumber, TakesAPointAndAComma) {
    EXPECT_EQ(typedNumber("12.5"), 12.5);
    EXPECT_EQ(typedNumber("12,5"), 12.5);
    EXPECT_EQ(typedNumber(" -0,02 "), -0.02);
    EXPECT_EQ(typedNumber("+3"), 3.0);
}

TEST(TypedNumber, RefusesWhatIsNoNumber) {
    for (const char* text : {"", " ", "1,2,3", "1.2.3", "12 mm", "nan", "inf", "1e9", "--1", "+-1", "0x10"})
        EXPECT_FALSE(typedNumber(text)) << text;
}

TEST(TypedCount, IsWholeAndNotNegative) {
    EXPECT_EQ(typedCount("0"), 0);
    EXPECT_EQ(typedCount(" 12 "), 12);
    for (const char* text : {"", "-1", "1.5", "1,5", "twelve", "99999999999"})
        EXPECT_FALSE(typedCount(text)) << text;
}

TEST(TypedDay, IsADayOfTheCalendar) {
    EXPECT_EQ(typedDay("2027-03-31"), "2027-03-31");
    EXPECT_EQ(typedDay(" 2028-02-29 "), "2028-02-29"); // A leap year, by the calendar.
    for (const char* text : {"", "2027-02-29", "2027-13-01", "31.03.2027", "2027-3-31", "2027-03-311"})
        EXPECT_FALSE(typedDay(text)) << text;
}

} // namespace gapwise
