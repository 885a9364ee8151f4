#pragma once

#include <filesystem>

struct ImDrawData;
struct ImFontAtlas;

namespace gapwise {

/// Draws what ImGui wants drawn into a PNG file, slowly and without a window: to look at panels by
/// themselves. False when the file could not be written.
bool writePanelPicture(const ImDrawData& data, ImFontAtlas& atlas, const std::filesystem::path& file);

} // namespace gapwise
