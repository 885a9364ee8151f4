#pragma once

namespace gapwise::test::names {

// What the sessions press, by the names under which the window tells its targets. One place for all of them.
constexpr const char* kShow = "opening/Show";
constexpr const char* kAlder = "opening/frame/alder-72";
constexpr const char* kOnTheTray = "tray/SR-CO";
constexpr const char* kItsSeat = "compressor/seat-SR-CO";
constexpr const char* kCompressorDial = "compressor/dial";
constexpr const char* kFromCompressor = "card/from compressor";
constexpr const char* kClock = "card/clock";
constexpr const char* kSet = "card/Set";
constexpr const char* kRounded = "card/rounded";
constexpr const char* kSharp = "card/sharp";
constexpr const char* kFindingOfSeveral = "card/finding 1 of"; ///< How the name begins.
constexpr const char* kUndo = "banner/Undo";
constexpr const char* kRedo = "banner/Redo";
constexpr const char* kFile = "banner/File …";
constexpr const char* kSave = "file/Save the build sheet";
constexpr const char* kGoOn = "slip/Go on";
constexpr const char* kLeave = "file/Leave: the job is kept where it stands";
constexpr const char* kTipTowardMe = "looks/tip toward me";
constexpr const char* kAbout = "card/About …";
constexpr const char* kAboutPicture = "about/picture";
constexpr const char* kShowTheDemand = "about/Show the demand";
constexpr const char* kCloseAbout = "about/Close";
constexpr const char* kPieceStands = "drain/COMPRESSOR end up";
constexpr const char* kDrainTowardMe = "drain/TOWARD YOU";
constexpr const char* kDrainLeft = "drain/TO YOUR LEFT";

/// Share of the compressor dial's radius at which SR-CO lies in alder-72: the fifth of six rings.
constexpr double kSrCoShare = 0.76 - 4.0 * 0.10;

} // namespace gapwise::test::names
