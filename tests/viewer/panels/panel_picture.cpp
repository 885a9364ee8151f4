#include "tests/viewer/panels/panel_picture.h"

#include <imgui.h>
#include <stb_image_write.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace gapwise {

namespace {

using Pixel = std::array<float, 4>; ///< Red, green, blue, alpha; 0 … 255.

struct Picture {
    int width = 0;
    int height = 0;
    std::vector<unsigned char> bytes{}; ///< Red, green, blue.
};

struct Texture {
    const unsigned char* alpha = nullptr;
    int width = 0;
    int height = 0;

    float texel(int x, int y) const {
        return alpha[std::clamp(y, 0, height - 1) * width + std::clamp(x, 0, width - 1)];
    }
    /// Between the four nearest texels.
    float at(ImVec2 uv) const {
        const float x = uv.x * static_cast<float>(width) - 0.5F;
        const float y = uv.y * static_cast<float>(height) - 0.5F;
        const int left = static_cast<int>(std::floor(x));
        const int top = static_cast<int>(std::floor(y));
        const float fx = x - static_cast<float>(left);
        const float fy = y - static_cast<float>(top);
        const float upper = texel(left, top) * (1.0F - fx) + texel(left + 1, top) * fx;
        const float lower = texel(left, top + 1) * (1.0F - fx) + texel(left + 1, top + 1) * fx;
        return upper * (1.0F - fy) + lower * fy;
    }
};

float areaOf(ImVec2 a, ImVec2 b, ImVec2 c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

Pixel colourOf(const ImDrawVert& vertex) {
    const ImU32 c = vertex.col;
    return {static_cast<float>(c & 0xffU), static_cast<float>((c >> 8U) & 0xffU),
            static_cast<float>((c >> 16U) & 0xffU), static_cast<float>(c >> 24U)};
}

void blend(Picture& picture, int x, int y, const Pixel& colour) {
    unsigned char* at = &picture.bytes[static_cast<std::size_t>((y * picture.width + x) * 3)];
    const float alpha = colour[3] / 255.0F;
    for (std::size_t i = 0; i < 3; ++i)
        at[i] = static_cast<unsigned char>(
            std::lround(static_cast<float>(at[i]) * (1.0F - alpha) + colour.at(i) * alpha));
}

/// One triangle; points on a shared edge belong to one of both (the rule of the upper left edge is not needed
/// for looking).
void drawTriangle(Picture& picture, const Texture& texture, const std::array<ImDrawVert, 3>& v,
                  const ImVec4& clip) {
    const float area = areaOf(v[0].pos, v[1].pos, v[2].pos);
    if (area == 0.0F)
        return;
    const auto [left, right] = std::minmax({v[0].pos.x, v[1].pos.x, v[2].pos.x});
    const auto [top, bottom] = std::minmax({v[0].pos.y, v[1].pos.y, v[2].pos.y});
    const int x0 = std::max({0, static_cast<int>(std::floor(left)), static_cast<int>(clip.x)});
    const int x1 =
        std::min({picture.width, static_cast<int>(std::ceil(right)) + 1, static_cast<int>(clip.z)});
    const int y0 = std::max({0, static_cast<int>(std::floor(top)), static_cast<int>(clip.y)});
    const int y1 =
        std::min({picture.height, static_cast<int>(std::ceil(bottom)) + 1, static_cast<int>(clip.w)});
    for (int y = y0; y < y1; ++y)
        for (int x = x0; x < x1; ++x) {
            const ImVec2 p{static_cast<float>(x) + 0.5F, static_cast<float>(y) + 0.5F};
            const float a = areaOf(v[1].pos, v[2].pos, p) / area;
            const float b = areaOf(v[2].pos, v[0].pos, p) / area;
            const float c = 1.0F - a - b;
            if (a < 0.0F || b < 0.0F || c <= 0.0F)
                continue;
            Pixel colour{};
            for (std::size_t i = 0; i < 4; ++i)
                colour.at(i) = a * colourOf(v[0]).at(i) + b * colourOf(v[1]).at(i) + c * colourOf(v[2]).at(i);
            colour[3] *= texture.at({a * v[0].uv.x + b * v[1].uv.x + c * v[2].uv.x,
                                     a * v[0].uv.y + b * v[1].uv.y + c * v[2].uv.y}) /
                         255.0F;
            blend(picture, x, y, colour);
        }
}

} // namespace

bool writePanelPicture(const ImDrawData& data, ImFontAtlas& atlas, const std::filesystem::path& file) {
    unsigned char* alpha = nullptr;
    Texture texture;
    atlas.GetTexDataAsAlpha8(&alpha, &texture.width, &texture.height);
    texture.alpha = alpha;
    Picture picture{static_cast<int>(data.DisplaySize.x), static_cast<int>(data.DisplaySize.y), {}};
    picture.bytes.assign(static_cast<std::size_t>(picture.width * picture.height * 3), 0xd8);
    for (int n = 0; n < data.CmdListsCount; ++n) {
        const ImDrawList& list = *data.CmdLists[n];
        for (const ImDrawCmd& command : list.CmdBuffer)
            for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
                const auto vertex = [&](unsigned k) {
                    return list.VtxBuffer[static_cast<int>(
                        list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)] + command.VtxOffset)];
                };
                drawTriangle(picture, texture, {vertex(0), vertex(1), vertex(2)}, command.ClipRect);
            }
    }
    return stbi_write_png(file.c_str(), picture.width, picture.height, 3, picture.bytes.data(),
                          picture.width * 3) != 0;
}

} // namespace gapwise
