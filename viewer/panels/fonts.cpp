#include "viewer/panels/fonts.h"

#include <imgui.h>
#include <imgui_freetype.h>

#include <array>
#include <filesystem>

namespace gapwise {

namespace {

struct Typeface {
    const char* path;
    const char* package;
};

/// In the order of preference; Debian's places.
constexpr std::array<Typeface, 2> kRegular{
    {{"/usr/share/fonts/opentype/inter/Inter-Regular.otf", "fonts-inter"},
     {"/usr/share/fonts/truetype/noto/NotoSans-Regular.ttf", "fonts-noto-core"}}};
constexpr std::array<Typeface, 2> kSemibold{
    {{"/usr/share/fonts/opentype/inter/Inter-SemiBold.otf", "fonts-inter"},
     {"/usr/share/fonts/truetype/noto/NotoSans-Bold.ttf", "fonts-noto-core"}}};

/// Latin with its accents, punctuation, the arrows and signs that the words use.
constexpr std::array<ImWchar, 13> kGlyphs{0x0020, 0x017f, 0x2010, 0x2026, 0x2032, 0x2033, 0x2190,
                                          0x2199, 0x21ba, 0x21bb, 0x2212, 0x2212, 0};
/// Without the letters of other languages.
constexpr std::array<ImWchar, 9> kReadingGlyphs{0x0020, 0x00ff, 0x2010, 0x2026, 0x2190,
                                                0x2199, 0x2212, 0x2212, 0};
constexpr std::array<ImWchar, 7> kLargeGlyphs{0x0020, 0x00ff, 0x2026, 0x2026, 0x2212, 0x2212, 0};

Result<const char*> firstThere(const std::array<Typeface, 2>& choices) {
    for (const Typeface& choice : choices)
        if (std::error_code error; std::filesystem::exists(choice.path, error))
            return choice.path;
    return Error{.where = choices.front().path,
                 .found = "no such font file",
                 .allowed = std::string{"a font of the package "} + choices[0].package + " or " +
                            choices[1].package};
}

ImFont* add(ImFontAtlas& atlas, const char* path, double size, const ImWchar* glyphs) {
    ImFontConfig config;
    config.OversampleH = 1;
    config.PixelSnapH = true;
    return atlas.AddFontFromFileTTF(path, static_cast<float>(size), &config, glyphs);
}

} // namespace

Result<Fonts> loadFonts(ImFontAtlas& atlas, double uiScale) {
    const Result<const char*> regular = firstThere(kRegular);
    const Result<const char*> semibold = firstThere(kSemibold);
    if (!regular)
        return regular.errors();
    if (!semibold)
        return semibold.errors();
    atlas.FontBuilderIO = ImGuiFreeType::GetBuilderForFreeType();
    atlas.FontBuilderFlags = ImGuiFreeTypeBuilderFlags_LightHinting;
    Fonts fonts;
    fonts.body = add(atlas, *regular, 16.0 * uiScale, kGlyphs.data());
    fonts.small = add(atlas, *regular, 13.0 * uiScale, kGlyphs.data());
    fonts.strong = add(atlas, *semibold, 16.0 * uiScale, kGlyphs.data());
    fonts.large = add(atlas, *regular, 20.0 * uiScale, kReadingGlyphs.data());
    fonts.title = add(atlas, *semibold, 21.0 * uiScale, kGlyphs.data());
    fonts.bench = add(atlas, *semibold, 44.0 * uiScale, kLargeGlyphs.data());
    if (!atlas.Build())
        return Error{.where = *regular, .found = "a font that FreeType cannot read", .allowed = "a font"};
    return fonts;
}

} // namespace gapwise
