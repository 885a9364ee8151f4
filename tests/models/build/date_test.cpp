#include "models/build/date.h"

#include <gtest/gtest.h>

namespace gapwise {

TEST(Date, IsADayOfTheCalendar) {
    for (const char* day : {"2026-05-04", "2024-02-29", "1999-12-31", "0001-01-01"})
        EXPECT_TRUE(isDate(day)) << day;
}

TEST(Date, IsNothingElse) {
    for (const char* text :
         {"", "2026-5-4", "2026-02-29", "2026-13-01", "2026-00-10", "2026-05-00", "26-05-04", "2026/05/04",
          "2026-05-04 ", "2026-05-0x", "-026-05-04", "+026-05-04", "04.05.2026"})
        EXPECT_FALSE(isDate(text)) << text;
}

} // namespace gapwise
