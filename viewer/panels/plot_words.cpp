#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

StandingLook lookOf(Standing standing) {
    switch (standing) {
    case Standing::Within: return {"within", palette::kHolds};
    case Standing::Between: return {"between new and limit", palette::kNoticeInk};
    case Standing::Beyond: return {"beyond the limit", palette::kBroken};
    case Standing::NotProven: return {"not proven", palette::kNoticeInk};
    case Standing::NotJudged: return {"not judged", palette::kUnknown};
    case Standing::NoLimit: return {"no limit", palette::kUnknown};
    case Standing::NotRead: break;
    }
    return {"not read", palette::kUnknown};
}

void drawStandingSign(Standing standing, ImVec2 centre, double radius) {
    const auto r = static_cast<float>(radius);
    const ImU32 colour = lookOf(standing).colour;
    switch (standing) {
    case Standing::Within: drawSign(DialSign::Holds, centre, radius); return;
    case Standing::Beyond: drawSign(DialSign::Broken, centre, radius); return;
    case Standing::NotProven: drawSign(DialSign::NotSet, centre, radius); return;
    case Standing::NotJudged: drawSign(DialSign::Open, centre, radius); return;
    case Standing::NotRead: drawSign(DialSign::Empty, centre, radius); return;
    case Standing::Between:
        ink().AddCircleFilled(centre, r, palette::kNotice, 24);
        ink().PathArcTo(centre, r, 1.5708F, 4.7124F, 16);
        ink().PathFillConvex(colour);
        ink().AddCircle(centre, r * 0.92F, colour, 24, r * 0.18F);
        return;
    case Standing::NoLimit: ink().AddCircleFilled(centre, r * 0.4F, colour, 16); return;
    }
}

std::string numberWords(double value, int decimals) {
    const double unit = std::pow(10.0, decimals);
    const double rounded = std::round(value * unit) / unit;
    const std::string digits = fmt::format("{:.{}f}", std::abs(rounded), decimals);
    return rounded < 0.0 ? "−" + digits : digits;
}

std::string signedWords(double value, int decimals) {
    const std::string words = numberWords(value, decimals);
    const bool zero = words.find_first_of("123456789") == std::string::npos;
    return zero || value < 0.0 ? words : "+" + words;
}

int decimalsOf(Unit unit) {
    switch (unit) {
    case Unit::Millimetres: return 3;
    case Unit::Degrees: return 1;
    case Unit::GramMillimetres: return 3;
    }
    return 3;
}

std::string windowWords(const Window& window, int decimals) {
    if (window.least && window.most)
        return fmt::format("{} … {}", numberWords(*window.least, decimals),
                           numberWords(*window.most, decimals));
    if (window.least)
        return fmt::format("at least {}", numberWords(*window.least, decimals));
    if (window.most)
        return fmt::format("at most {}", numberWords(*window.most, decimals));
    return {};
}

double Scale::held(double value) const {
    const double pixel = at(value);
    return std::clamp(pixel, std::min(from, to), std::max(from, to));
}

double stepFor(double length, int most) {
    if (length <= 0.0 || most < 1)
        return 1.0;
    const double raw = length / most;
    const double decade = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double times : {1.0, 2.0, 5.0})
        if (decade * times >= raw * (1.0 - 1e-9))
            return decade * times;
    return decade * 10.0;
}

} // namespace gapwise
