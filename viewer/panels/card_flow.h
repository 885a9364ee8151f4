#pragma once

#include "viewer/panels/sheet_flow.h"

#include <functional>
#include <string>
#include <vector>

namespace gapwise {

/// Text, buttons and fields that flow through the columns and pages of a card, so that nothing is cut off.
class CardFlow {
public:
    /// Columns of `body`, as many as are wide enough to be read well.
    CardFlow(const Area& body, const SheetPaper& paper);

    /// Width of a column, in pixels.
    double width() const { return column_; }

    void text(SheetParagraph::Kind kind, std::string words);
    void paragraph(SheetParagraph paragraph);
    /// What is pressed or typed into, `height` pixels high, over the width of a column.
    void row(double height, std::function<void(const Area&)> draw);
    /// What was added last stays in one column with what comes next.
    void keepsNext();
    /// How much was added so far.
    std::size_t size() const { return blocks_.size(); }
    /// All that was added since stays in one column, if it fits one.
    void keepTogether(std::size_t since);

    std::size_t pages() const;
    /// The pages on which what was added next would begin: to find it again.
    std::size_t pageNow() const;
    void draw(std::size_t page) const;

private:
    struct Block {
        double height = 0.0;
        double before = 0.0; ///< Space above, unless it begins a column.
        bool keepsNext = false;
        std::function<void(const Area&)> draw{};
    };
    struct Placed {
        std::size_t block = 0;
        double y = 0.0;
    };
    /// For each column what stands in it.
    std::vector<std::vector<Placed>> placed() const;
    std::size_t columnCount() const { return static_cast<std::size_t>(count_); }

    Area body_;
    SheetPaper paper_;
    int count_ = 1;
    double gap_ = 0.0;
    double column_ = 0.0;
    std::vector<Block> blocks_{};
};

} // namespace gapwise
