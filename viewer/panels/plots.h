#pragma once

#include "models/chain/prediction.h"
#include "models/measure/report.h"
#include "viewer/panels/surface.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// Drawings of measured values: from plain values to strokes inside an area. Nothing is asked and nothing
/// kept. Every drawing writes its numbers with their unit, and says each state with a sign and a word besides
/// its colour. Where the area is small, words give way before numbers.

// ---- words, signs, scales

/// How a standing is told: a word (`within`, `between new and limit`, `beyond the limit`) and its colour.
struct StandingLook {
    std::string_view word{};
    ImU32 colour = palette::kUnknown;
};
StandingLook lookOf(Standing standing);

/// The sign of a standing in a disc of `radius` around a point: tick, half disc, cross, question mark, ring …
void drawStandingSign(Standing standing, ImVec2 centre, double radius);

/// A number with a minus sign of the font and so many digits after the point; never `−0.000`.
std::string numberWords(double value, int decimals);
/// The same with its sign always: `+0.020`, `−0.020`, `0.000`.
std::string signedWords(double value, int decimals);
/// A number as one reads that unit: three digits for mm, one for degrees, three for g·mm.
int decimalsOf(Unit unit);
/// `0.050 … 0.090`, `at least 11.980`, `at most 0.120`; empty for an open window.
std::string windowWords(const Window& window, int decimals);

/// Values on a straight line of pixels.
struct Scale {
    double least = 0.0;
    double most = 1.0;
    double from = 0.0; ///< Pixel of `least` …
    double to = 1.0;   ///< … and of `most`.

    double at(double value) const {
        return most > least ? from + (value - least) / (most - least) * (to - from) : from;
    }
    /// The pixel of a value, kept on the line.
    double held(double value) const;
};
/// 1, 2 or 5 times a power of ten, so that at most `most` steps lie in `length`.
double stepFor(double length, int most);

// ---- one quantity

/// A reading beside everything that it is held against.
struct LimitBar {
    Window fresh{};
    Window service{};
    std::string freshWord{"new"}; ///< What the first band is: `new`, `window`.
    std::optional<Window> predicted{};
    std::optional<double> predictedValue{};
    std::optional<double> previous{}; ///< As received.
    std::optional<double> value{};
    double expanded = 0.0; ///< U of the value.
    Standing standing = Standing::NotRead;
    std::string_view word{}; ///< Beside the value; empty: that of its standing.
    std::string unit{"mm"};
    int decimals = 3;
};
/// Bands, prediction, previous value and value ± U on one scale, all labelled; needs about 120 layout pixels
/// of height.
void drawLimitBar(const LimitBar& bar, const Area& area, const Surface& surface);
/// The same small in a row of a table: no words but a sign at the value.
void drawSmallBar(const LimitBar& bar, const Area& area, const Surface& surface);

/// An instrument's face, or its scale.
struct Indicator {
    std::optional<double> value{};
    std::optional<double> previous{};
    Window window{};
    double division = 0.001; ///< Its resolution.
    std::string unit{"mm"};
    int decimals = 3;
};
/// A dial with its needle at the value, the window as an arc, a mark at the previous value. Its centre names
/// how much a turn is; a value of several turns says so.
void drawIndicatorFace(const Indicator& indicator, const Area& area, const Surface& surface);
/// A straight scale: thimble of a micrometer, leaves of feelers.
enum class RulerKind { Micrometer, Feelers };
void drawRuler(const Indicator& indicator, RulerKind kind, const Area& area, const Surface& surface);

/// Repeats of one place, or the values of all places, as points over their number.
struct RepeatsPlot {
    std::vector<double> values{};
    std::vector<std::string> places{}; ///< Under the points; may be empty: 1, 2, 3 …
    Window window{};
    std::optional<double> mean{};
    double spread = 0.0;
    std::optional<double> spreadMost{};
    std::string unit{"mm"};
    int decimals = 3;
};
void drawRepeats(const RepeatsPlot& plot, const Area& area, const Surface& surface);

// ---- sketches of the machine

/// Four feeler gaps in the casing, as whoever stands on the named side sees them.
struct FourPointSketch {
    Side seenFrom = Side::Compressor;
    std::array<std::optional<double>, 4> gaps{}; ///< At 12, 3, 6, 9.
    std::optional<std::size_t> readNow{};        ///< The place that is read now.
    std::optional<FourPointResult> result{};     ///< Once all four are there.
    Window mean{};                               ///< Where the mean should lie.
    std::optional<double> pointLeast{};          ///< Smallest gap that is allowed at a point.
    std::optional<double> eccentricityMost{};    ///< Of the casing.
};
/// Casing and wheel with their gaps drawn far too large, the offset as an arrow, the sag as a mark, and the
/// numbers beside them.
void drawFourPoints(const FourPointSketch& sketch, const Area& area, const Surface& surface);

/// The shaft on its two bearings, the turbine left.
struct LeverSketch {
    double spanMm = 1.0;
    double noseMm = 1.0;
    double turbineMm = 1.0;
    std::optional<double> noseReading{};
    std::optional<double> turbineReading{};
    std::optional<Window> compressorBand{}; ///< Play at the bearing, from the readings.
    std::optional<Window> turbineBand{};
    std::optional<double> compressorParts{}; ///< Play that the parts give.
    std::optional<double> turbineParts{};
    std::optional<double> playMost{}; ///< Limit of the play of one bearing.
    std::optional<Side> readNow{};    ///< The end at which a dial is read now.
    std::string words{};              ///< Which bearing is worn; under the sketch.
};
/// Plays drawn far too large, the shaft rocked, a dial at each end with its reading, the band of each play.
void drawLever(const LeverSketch& sketch, const Area& area, const Surface& surface);

// ---- distributions and shares

/// A chain drawn many times over, with its window and what lies outside.
void drawHistogram(const ChainTrials& trials, const Window& window, const Area& area, const Surface& surface);

/// One row of bars: how much of a whole something is.
struct ShareBar {
    std::string name{};
    double share = 0.0;  ///< 0 to 1.
    std::string words{}; ///< After its percentage: `± 0.010`.
    bool marked = false; ///< Drawn in the accent colour: measured; the likeliest.
};
/// Rows of at most `rowHeight` pixels; what does not fit is left out and counted in words.
void drawShares(const std::vector<ShareBar>& bars, double rowHeight, const Area& area,
                const Surface& surface);

} // namespace gapwise
