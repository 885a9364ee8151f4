#include "viewer/panels/sheet_flow.h"

#include "tests/viewer/panels/desk.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace gapwise {

namespace {

using desk::Desk;
using Kind = SheetParagraph::Kind;

std::string withoutSpaces(std::string words) {
    std::erase(words, ' ');
    for (std::size_t at = words.find("\u00a0"); at != std::string::npos; at = words.find("\u00a0"))
        words.erase(at, 2);
    return words;
}

std::string sentence(int words) {
    std::string text;
    for (int i = 0; i < words; ++i)
        text += (text.empty() ? "word" : " word") + std::to_string(i);
    return text;
}

std::vector<SheetGroup> groups() {
    std::vector<SheetGroup> all;
    for (int i = 0; i < 5; ++i)
        all.push_back({{{.kind = Kind::Heading, .words = "Heading " + std::to_string(i)},
                        {.kind = Kind::Signal, .words = "WARNING", .signal = Signal::Warning},
                        {.kind = Kind::Severity, .words = sentence(30 + 20 * i), .severity = 3},
                        {.kind = Kind::Small, .words = sentence(9)}}});
    return all;
}

std::string wordsOf(const std::vector<SheetGroup>& all) {
    std::string words;
    for (const SheetGroup& group : all)
        for (const SheetParagraph& paragraph : group.paragraphs)
            words += paragraph.words;
    return withoutSpaces(words);
}

std::string wordsOf(const std::vector<SheetColumn>& columns) {
    std::string words;
    for (const SheetColumn& column : columns)
        for (const SheetLine& line : column)
            words += line.paragraph.words;
    return withoutSpaces(words);
}

} // namespace

TEST(SheetFlow, NoWordIsLeftOutAndNoneStandsOutsideItsColumn) {
    Desk desk;
    const Surface surface{.frame = desk.panels};
    for (const bool large : {false, true})
        for (const Area& size : {Area{0.0, 0.0, 240.0, 90.0}, Area{0.0, 0.0, 437.0, 500.0}}) {
            const std::vector<SheetColumn> columns =
                columnsOf(SheetText{groups(), {}}, size, {surface, large});
            EXPECT_EQ(wordsOf(columns), wordsOf(groups()));
            for (const SheetColumn& column : columns)
                for (const SheetLine& line : column)
                    EXPECT_LE(line.y + line.height, size.height + 1.5);
        }
}

TEST(SheetFlow, LinesOfAColumnDoNotLieOverEachOther) {
    Desk desk;
    const Surface surface{.frame = desk.panels};
    for (const SheetColumn& column :
         columnsOf(SheetText{groups(), {}}, {0.0, 0.0, 300.0, 400.0}, {surface, false}))
        for (std::size_t i = 1; i < column.size(); ++i)
            EXPECT_GE(column[i].y, column[i - 1].y + column[i - 1].height - 0.01);
}

TEST(SheetFlow, AGroupThatFitsAColumnStaysInOne) {
    Desk desk;
    const Surface surface{.frame = desk.panels};
    const std::vector<SheetColumn> columns =
        columnsOf(SheetText{groups(), {}}, {0.0, 0.0, 437.0, 420.0}, {surface, false});
    ASSERT_GT(columns.size(), 1U);
    for (const SheetColumn& column : columns)
        EXPECT_EQ(column.front().paragraph.kind, Kind::Heading);
}

TEST(SheetFlow, NothingAtAllIsOneEmptyColumn) {
    Desk desk;
    const std::vector<SheetColumn> columns =
        columnsOf(SheetText{}, {0.0, 0.0, 300.0, 300.0}, {Surface{.frame = desk.panels}, false});
    ASSERT_EQ(columns.size(), 1U);
    EXPECT_TRUE(columns.front().empty());
}

TEST(SheetFlow, WhatStandsBesideBeginsTheSecondColumn) {
    Desk desk;
    const Surface surface{.frame = desk.panels};
    const SheetGroup beside{{{.kind = Kind::Signal, .words = "DANGER"}}};
    const Area size{0.0, 0.0, 437.0, 420.0};
    const std::vector<SheetColumn> many = columnsOf({groups(), {beside}}, size, {surface, false});
    ASSERT_GT(many.size(), 1U);
    EXPECT_EQ(many[1].front().paragraph.words, "DANGER");
    EXPECT_GT(many[1].size(), 1U) << "the text goes on below it";
    const std::vector<SheetColumn> few = columnsOf({{beside}, {beside}}, size, {surface, false});
    EXPECT_EQ(few.size(), 2U) << "even where one column would hold the text";
}

TEST(SheetFlow, ANumberIsNotTornFromItsSignOrAtItsPoint) {
    Desk desk;
    const Surface surface{.frame = desk.panels};
    const SheetText text{.groups = {{{{.words = "the notch at 6:00 from both sides ± 0.5° of 12.75°"}}}}};
    for (double width = 60.0; width < 400.0; width += 7.0)
        for (const SheetColumn& column : columnsOf(text, {0.0, 0.0, width, 900.0}, {surface, false}))
            for (const SheetLine& line : column) {
                EXPECT_FALSE(line.paragraph.words.ends_with("±")) << width;
                EXPECT_FALSE(line.paragraph.words.ends_with(".")) << width;
            }
}

} // namespace gapwise
