#include "viewer/panels/surface.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace gapwise {

namespace {

constexpr const char* kEllipsis = "…";

ImFont* orCurrent(ImFont* font) {
    return font ? font : ImGui::GetFont();
}

float pixelsOf(const ImFont* font) {
    return font->FontSize;
}

void write(ImFont* font, ImVec2 at, ImU32 colour, std::string_view words) {
    const ImVec2 onPixel{std::round(at.x), std::round(at.y)};
    ink().AddText(font, pixelsOf(font), onPixel, colour, words.data(), words.data() + words.size());
}

/// The longest beginning, cut between characters, that fits with an ellipsis.
std::string fitted(ImFont* font, std::string_view words, double width) {
    if (static_cast<double>(sizeOf(font, words).x) <= width)
        return std::string{words};
    std::size_t length = words.size();
    while (length > 0) {
        --length;
        while (length > 0 && (static_cast<unsigned char>(words[length]) & 0xc0U) == 0x80U)
            --length;
        std::string shorter = std::string{words.substr(0, length)} + kEllipsis;
        if (static_cast<double>(sizeOf(font, shorter).x) <= width)
            return shorter;
    }
    return {};
}

double leftOf(const Area& area, double width, Align align) {
    switch (align) {
    case Align::Middle: return area.x + (area.width - width) / 2.0;
    case Align::Right: return area.right() - width;
    case Align::Left: break;
    }
    return area.x;
}

/// The first line of words that fits the width; at least one character, so that lines come to an end.
std::string_view firstLine(const ImFont* font, std::string_view words, double width) {
    const char* end = words.data() + words.size();
    const std::size_t newline = words.find('\n');
    if (newline != std::string_view::npos)
        end = words.data() + newline;
    const char* cut = font->CalcWordWrapPositionA(1.0F, words.data(), end, static_cast<float>(width));
    auto length = static_cast<std::size_t>(cut - words.data());
    // Dear ImGui breaks after a point or a comma too: `0.` and `5°` are one word.
    if (cut != end && *cut != ' ')
        if (const std::size_t blank = words.substr(0, length).rfind(' '); blank != std::string_view::npos)
            length = blank;
    return words.substr(0, std::max<std::size_t>(length, words.empty() || newline == 0 ? 0 : 1));
}

std::string_view withoutFirst(std::string_view words, std::size_t length) {
    words.remove_prefix(length);
    if (!words.empty() && (words.front() == ' ' || words.front() == '\n'))
        words.remove_prefix(1);
    return words;
}

ImU32 groundOf(const ButtonLook& look, const Pressed& pressed) {
    if (!look.enabled)
        return palette::kPaper;
    if (look.leading)
        return palette::kAccent;
    if (pressed.held || pressed.hovered)
        return palette::kShade;
    return look.chosen ? palette::kAccentLight : palette::kSheet;
}

ImU32 inkOf(const ButtonLook& look) {
    if (!look.enabled)
        return palette::kSteel;
    return look.leading ? palette::kSheet : palette::kInk;
}

void drawFocus(const Area& area) {
    if (!ImGui::IsItemFocused() || !ImGui::GetIO().NavVisible)
        return;
    const Area frame = area.inset(-1.0);
    ImGui::GetForegroundDrawList()->AddRect(point(frame.x, frame.y), point(frame.right(), frame.bottom()),
                                            palette::kAccent, 6.0F, 0, 3.0F);
}

} // namespace

Scope::Scope(const Surface& surface, std::string_view name)
    : path_{surface.frame.scope}, outer_{path_.size()} {
    ImGui::PushID(name.data(), name.data() + name.size());
    path_.append(name).append("/");
}

Scope::~Scope() {
    path_.resize(outer_);
    ImGui::PopID();
}

ImDrawList& ink() {
    return *ImGui::GetWindowDrawList();
}

ImVec2 sizeOf(ImFont* font, std::string_view words) {
    const ImFont* used = orCurrent(font);
    constexpr float kNoLimit = 1e9F;
    return used->CalcTextSizeA(used->FontSize, kNoLimit, 0.0F, words.data(), words.data() + words.size());
}

void writeLine(const Area& area, std::string_view words, const Type& type) {
    ImFont* font = orCurrent(type.font);
    const std::string shown = fitted(font, words, area.width);
    const ImVec2 size = sizeOf(font, shown);
    const double x = leftOf(area, static_cast<double>(size.x), type.align);
    write(font, point(x, area.middleY() - static_cast<double>(size.y) / 2.0), type.colour, shown);
}

double writeLines(const Area& area, std::string_view words, const Type& type) {
    ImFont* font = orCurrent(type.font);
    const double height = lineHeightOf(font);
    double used = 0.0;
    while (!words.empty() && used + height <= area.height + 1.0) {
        const bool last = used + 2.0 * height > area.height + 1.0;
        const std::string_view line = firstLine(font, words, area.width);
        const std::string_view rest = withoutFirst(words, line.size());
        const Area row{area.x, area.y + used, area.width, height};
        writeLine(row,
                  last && !rest.empty() ? std::string{line} + " " + std::string{rest} : std::string{line},
                  type);
        words = rest;
        used += height;
    }
    return used;
}

std::vector<std::string> linesOf(double width, std::string_view words, ImFont* font) {
    const ImFont* used = orCurrent(font);
    std::vector<std::string> lines;
    while (!words.empty()) {
        const std::string_view line = firstLine(used, words, width);
        lines.emplace_back(line);
        words = withoutFirst(words, line.size());
    }
    return lines;
}

double lineHeightOf(ImFont* font) {
    return static_cast<double>(orCurrent(font)->FontSize) * 1.18;
}

double heightOf(double width, std::string_view words, ImFont* font) {
    return static_cast<double>(linesOf(width, words, font).size()) * lineHeightOf(font);
}

void fillArea(const Area& area, ImU32 colour, double rounding) {
    ink().AddRectFilled(point(area.x, area.y), point(area.right(), area.bottom()), colour,
                        static_cast<float>(rounding));
}

void frameArea(const Area& area, ImU32 colour, double rounding, double thickness) {
    ink().AddRect(point(area.x + 0.5, area.y + 0.5), point(area.right() - 0.5, area.bottom() - 0.5), colour,
                  static_cast<float>(rounding), 0, static_cast<float>(thickness));
}

Pressed pressable(const Surface& surface, const char* id, const Area& area) {
    if (area.empty())
        return {};
    surface.frame.targets.push_back({surface.frame.scope + id, area});
    ImGui::SetCursorScreenPos(point(area.x, area.y));
    Pressed pressed;
    pressed.done = ImGui::InvisibleButton(id, point(area.width, area.height));
    pressed.held = ImGui::IsItemActive();
    pressed.hovered = ImGui::IsItemHovered();
    const bool enter = ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Enter), false) ||
                       ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_KeyPadEnter), false);
    pressed.done = pressed.done || (enter && !surface.frame.enterTaken && ImGui::IsItemFocused() &&
                                    ImGui::GetIO().NavVisible);
    drawFocus(area);
    return pressed;
}

bool button(const Surface& surface, const Area& area, std::string_view label, const ButtonLook& look) {
    if (area.empty())
        return false;
    ImGui::BeginDisabled(!look.enabled);
    const std::string id = look.id.empty() ? std::string{label} : look.id;
    const Pressed pressed = pressable(surface, id.c_str(), area);
    ImGui::EndDisabled();
    const double rounding = surface.px(5.0);
    fillArea(area, groundOf(look, pressed), rounding);
    frameArea(area, look.chosen ? palette::kAccent : palette::kHairline, rounding, look.chosen ? 2.0 : 1.0);
    ImFont* font = look.font ? look.font : surface.fonts().body;
    const Area words = area.inset(surface.px(4.0));
    if (look.second.empty()) {
        writeLine(words, label, {font, inkOf(look), Align::Middle});
        return pressed.done && look.enabled;
    }
    const double half = words.height * 0.55;
    writeLine({words.x, words.y, words.width, half}, label, {font, inkOf(look), Align::Middle});
    writeLine({words.x, words.y + half, words.width, words.height - half}, look.second,
              {surface.fonts().small, look.leading ? palette::kSheet : palette::kSoftInk, Align::Middle});
    return pressed.done && look.enabled;
}

Area columnOf(const Area& area, int count, int index, double gap) {
    const double width = (area.width - gap * (count - 1)) / count;
    return {area.x + index * (width + gap), area.y, width, area.height};
}

} // namespace gapwise
