#pragma once

#include "models/frame/frame.h"
#include "viewer/panels/surface.h"

#include <string>
#include <vector>

namespace gapwise {

/// Text that flows through columns and pages, so that no word is ever cut off.

struct SheetParagraph {
    enum class Kind {
        Heading,
        Signal, ///< A signal word on its plate, of `signal`.
        Strong,
        Body,
        Soft,
        Severity, ///< Before its words a scale of four, `severity` of them full.
        Small
    };
    Kind kind = Kind::Body;
    std::string words{};
    Signal signal = Signal::Notice;
    int severity = 0;
};

/// Paragraphs that stay in one column if they fit one.
struct SheetGroup {
    std::vector<SheetParagraph> paragraphs{};
};

/// One line in its place.
struct SheetLine {
    SheetParagraph paragraph{}; ///< Its words are those of this line.
    bool first = true;          ///< Of its paragraph: what stands before the words stands here.
    double y = 0.0;             ///< From the top of the column, in pixels.
    double height = 0.0;
};
using SheetColumn = std::vector<SheetLine>;

/// What is written on, and how large.
struct SheetPaper {
    const Surface& surface;
    bool large = false; ///< To be read from a little farther off.
};

/// What a sheet says.
struct SheetText {
    std::vector<SheetGroup> groups{};
    std::vector<SheetGroup> beside{}; ///< At the top of the second column, whatever goes on below it.
};

/// The text in columns of `size`'s width and height, one after the other.
std::vector<SheetColumn> columnsOf(const SheetText& text, const Area& size, const SheetPaper& paper);

void drawColumn(const SheetColumn& column, const Area& area, const SheetPaper& paper);

} // namespace gapwise
