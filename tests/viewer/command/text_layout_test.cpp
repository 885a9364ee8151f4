#include "viewer/command/text_layout.h"

#include <gtest/gtest.h>

#include <sstream>

namespace gapwise {

namespace {

std::string words(std::size_t number, const std::string& word) {
    std::string text;
    for (std::size_t i = 0; i < number; ++i)
        text += word + " ";
    return text;
}

} // namespace

TEST(TextLayout, CountsCharactersNotBytes) {
    EXPECT_EQ(columnsOf("3:00 ± 30°"), 10U);
    EXPECT_EQ(columnsOf(""), 0U);
}

TEST(TextLayout, KeepsAShortLineWhole) {
    EXPECT_EQ(paragraph("  Rule: ", "gap up"), "  Rule: gap up\n");
}

TEST(TextLayout, BreaksBetweenWordsAndIndentsTheRest) {
    std::istringstream lines(paragraph("  Rule: ", words(60, "gap°")));
    std::string line;
    std::getline(lines, line);
    EXPECT_EQ(line.substr(0, 13), "  Rule: gap°");
    std::size_t more = 0;
    for (; std::getline(lines, line); ++more) {
        EXPECT_LE(columnsOf(line), kTextColumns);
        EXPECT_EQ(line.substr(0, 9), "        g");
    }
    EXPECT_EQ(more, 3U); // 92 columns hold 18 words of 4 and their blanks: 60 words need 4 lines.
}

TEST(TextLayout, GivesAnEndlessWordALineOfItsOwn) {
    const std::string word(150, 'x');
    EXPECT_EQ(paragraph("", "a " + word + " b"), "a\n" + word + "\nb\n");
}

TEST(TextLayout, KeepsATolerancesSignWithItsNumber) {
    EXPECT_EQ(paragraph(std::string(96, 'x') + " ", "± 30°"), std::string(96, 'x') + " ± 30°\n");
    EXPECT_EQ(paragraph(std::string(90, 'x') + " ", "3:00 ± 30°"),
              std::string(90, 'x') + " 3:00\n" + std::string(91, ' ') + "± 30°\n");
    EXPECT_EQ(paragraph("", "3:00 ±"), "3:00 ±\n");
}

TEST(TextLayout, AnEmptyTextLeavesNoBlanksBehind) {
    EXPECT_EQ(paragraph("  Rule: ", ""), "  Rule:\n");
    EXPECT_EQ(paragraph("", ""), "\n");
}

TEST(TextLayout, AlignsColumnsByCharacters) {
    EXPECT_EQ(table({{"a", "°°", "last"}, {"long", "b", "one"}}, " "), " a     °°  last\n"
                                                                       " long  b   one\n");
    EXPECT_EQ(table({}, " "), "");
}

} // namespace gapwise
