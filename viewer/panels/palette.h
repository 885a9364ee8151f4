#pragma once

#include <imgui.h>

namespace gapwise::palette {

/// A calm drawing: light ground, dark ink, one accent. The colours of states never stand without sign and
/// word.
inline constexpr ImU32 kPaper = IM_COL32(0xf2, 0xf3, 0xf0, 0xff);    ///< Behind everything.
inline constexpr ImU32 kSheet = IM_COL32(0xfd, 0xfd, 0xfb, 0xff);    ///< Cards, dials, buttons.
inline constexpr ImU32 kShade = IM_COL32(0xe6, 0xe8, 0xe4, 0xff);    ///< Pressed and pointed at.
inline constexpr ImU32 kHairline = IM_COL32(0xc4, 0xca, 0xc7, 0xff); ///< Borders.
inline constexpr ImU32 kInk = IM_COL32(0x1f, 0x2b, 0x31, 0xff);
inline constexpr ImU32 kSoftInk = IM_COL32(0x55, 0x62, 0x68, 0xff); ///< 5.9:1 on paper.
inline constexpr ImU32 kSteel = IM_COL32(0x8c, 0x98, 0x9e, 0xff);   ///< Rings on dials.
inline constexpr ImU32 kSteelLight = IM_COL32(0xc9, 0xd1, 0xd5, 0xff);
inline constexpr ImU32 kAccent = IM_COL32(0x0f, 0x62, 0x8c, 0xff);
inline constexpr ImU32 kAccentLight = IM_COL32(0xd5, 0xe6, 0xee, 0xff);
inline constexpr ImU32 kBanner = IM_COL32(0x26, 0x35, 0x3c, 0xff);
inline constexpr ImU32 kBannerInk = IM_COL32(0xfa, 0xfa, 0xf7, 0xff);
inline constexpr ImU32 kBannerSoft = IM_COL32(0xc3, 0xcf, 0xd4, 0xff);

inline constexpr ImU32 kHolds = IM_COL32(0x1f, 0x75, 0x4a, 0xff);
inline constexpr ImU32 kHoldsLight = IM_COL32(0xda, 0xec, 0xe1, 0xff);
inline constexpr ImU32 kBroken = IM_COL32(0xb3, 0x40, 0x18, 0xff);
inline constexpr ImU32 kBrokenLight = IM_COL32(0xfb, 0xea, 0xe2, 0xff);
inline constexpr ImU32 kUnknown = IM_COL32(0x5f, 0x68, 0x78, 0xff);
inline constexpr ImU32 kNotice = IM_COL32(0xff, 0xf2, 0xc8, 0xff);
inline constexpr ImU32 kNoticeInk = IM_COL32(0x57, 0x42, 0x00, 0xff);

} // namespace gapwise::palette
