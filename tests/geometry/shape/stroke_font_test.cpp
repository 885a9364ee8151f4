#include "geometry/shape/stroke_font.h"

#include <gtest/gtest.h>

namespace gapwise::test {

TEST(StrokeFont, HasEveryCapitalAndDigit) {
    for (char letter = 'A'; letter <= 'Z'; ++letter)
        EXPECT_FALSE(strokesOf(letter).value_or(std::vector<Stroke>{}).empty()) << letter;
    for (char digit = '0'; digit <= '9'; ++digit)
        EXPECT_FALSE(strokesOf(digit).value_or(std::vector<Stroke>{}).empty()) << digit;
    EXPECT_TRUE(strokesOf(' ').has_value());
}

TEST(StrokeFont, KnowsNoOtherCharacter) {
    for (const char letter : {'a', '?', '\n', '\0', '\xc4'})
        EXPECT_FALSE(strokesOf(letter).has_value());
}

TEST(StrokeFont, StrokesHaveLengthAndStayInTheirCell) {
    for (char letter = '0'; letter <= 'Z'; ++letter) {
        for (const Stroke& s : strokesOf(letter).value_or(std::vector<Stroke>{})) {
            EXPECT_TRUE(s.fromX != s.toX || s.fromY != s.toY) << letter;
            for (const double x : {s.fromX, s.toX})
                EXPECT_TRUE(x >= 0.0 && x <= kLetterCellWidth) << letter;
            for (const double y : {s.fromY, s.toY})
                EXPECT_TRUE(y >= 0.0 && y <= kLetterCellHeight) << letter;
        }
    }
}

// T is a bar on top of a stem: how the letter looks.
TEST(StrokeFont, TeeIsABarOnAStem) {
    const std::vector<Stroke> strokes = strokesOf('T').value();
    ASSERT_EQ(strokes.size(), 2U);
    EXPECT_EQ(strokes[0].fromY, kLetterCellHeight);
    EXPECT_EQ(strokes[0].toY, kLetterCellHeight);
    EXPECT_EQ(strokes[1].fromX, strokes[1].toX);
}

} // namespace gapwise::test
