#include "tests/viewer/panels/screen_checks.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

std::string nameFor(const char* state, const desk::Desk::Size& size) {
    return std::string{state} + "-" + std::to_string(size.width);
}

void expectInside(const desk::Desk& desk, const desk::Desk::Size& size) {
    EXPECT_GT(desk.panels.targets.size(), 3U);
    for (const Target& target : desk.panels.targets) {
        // A list may run on below its box and be scrolled there.
        if (target.name.starts_with("findings/"))
            continue;
        EXPECT_GE(target.area.x, 0.0) << target.name;
        EXPECT_GE(target.area.y, 0.0) << target.name;
        EXPECT_LE(target.area.right(), size.width + 0.5) << target.name;
        EXPECT_LE(target.area.bottom(), size.height + 0.5) << target.name;
    }
}

/// Of what is drawn beside each other nothing lies over another; boxes lie over looks that are not drawn
/// then.
void expectApart(const desk::Desk& desk) {
    const std::vector<Target>& targets = desk.panels.targets;
    for (std::size_t i = 0; i < targets.size(); ++i)
        for (std::size_t k = i + 1; k < targets.size(); ++k) {
            const Area& a = targets[i].area;
            const Area& b = targets[k].area;
            const bool over = a.x + 0.5 < b.right() && b.x + 0.5 < a.right() && a.y + 0.5 < b.bottom() &&
                              b.y + 0.5 < a.bottom();
            const bool list =
                targets[i].name.starts_with("findings/") || targets[k].name.starts_with("findings/");
            EXPECT_FALSE(over && !list) << targets[i].name << " and " << targets[k].name;
        }
}

} // namespace

void expectForGloves(const desk::Desk& desk) {
    for (const Target& target : desk.panels.targets) {
        const bool field = target.name == "card/clock" || target.name == "file/path" ||
                           target.name == "file/open path" || target.name == "who/name" ||
                           target.name == "slip/path" || target.name == "measures/reason" ||
                           target.name == "measures/concession";
        EXPECT_GE(target.area.width, 59.5) << target.name;
        EXPECT_GE(target.area.height, field ? 36.0 : 59.5) << target.name;
    }
}

void look(desk::Desk& desk, const desk::Desk::Size& size, const char* state) {
    desk.frames(2);
    expectInside(desk, size);
    expectApart(desk);
    desk.picture(nameFor(state, size));
}

} // namespace gapwise
