#pragma once

#include "viewer/panels/surface.h"

#include <cstddef>
#include <optional>

namespace gapwise {

/// The panels one by one. Each draws into its area and returns what is wished, if anything.

std::optional<Wish> openingPanel(const Workplace& workplace, const Area& area, const Surface& surface);
std::optional<Wish> bannerPanel(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> lookPanel(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> pullApartPanel(const Job& job, const Area& area, const Surface& surface);

/// Whole, half, quarter, and the cut turned about the shaft: dragged round a ring, or step by step.
std::optional<Wish> cutOpenPanel(const Job& job, const Area& area, const Surface& surface);
/// What is cut away, in words at the upper edge of the picture.
void drawCutWords(const Job& job, const Area& picture, const Surface& surface);

/// The dial of one end with its rings in words. A ring is tapped or its gap dragged: `Turning` while it is
/// dragged and one IndexTurned when it is let go.
std::optional<Wish> endDialPanel(const Job& job, Side side, const Area& area, const Surface& surface);

/// Lines and labels over the picture.
void drawOverlay(const Surface& surface);

std::optional<Wish> trayPanel(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> linePanel(const Job& job, const Area& area, const Surface& surface);

/// The card of the part in hand; at the bench, to say what is seen.
std::optional<Wish> partCard(const Job& job, const Area& area, const Surface& surface);

/// The card of the step that is open.
std::optional<Wish> stepCard(const Job& job, const Area& area, const Surface& surface);

/// The card of a fastener: its stages, its screws on their flange, the hand.
std::optional<Wish> torqueCard(const Job& job, const FastenerId& fastener, const Area& area,
                               const Surface& surface);

/// The card of a measurement: its places one after the other, the keypad, what it is held against.
std::optional<Wish> measureCard(const Job& job, const MeasurementId& measurement, const Area& area,
                                const Surface& surface);

/// The screws of a fastener on their flange, as whoever faces them sees them: the next one is tapped.
std::optional<Wish> flangePanel(const Job& job, const FastenerId& fastener, const Area& area,
                                const Surface& surface);

/// The sheet about a part, over everything but the banner.
std::optional<Wish> aboutSheet(const Job& job, const Area& area, const Surface& surface);

/// The sheet of measurements, over everything but the banner: the page that Job::measures names.
std::optional<Wish> measuringSheet(const Job& job, const Area& area, const Surface& surface);

/// The findings in one line, or a note with its reason.
std::optional<Wish> noticesPanel(const Workplace& workplace, const Area& area, const Surface& surface);

/// Boxes over the picture.
/// How the piece is laid or stood anew, and where its drain points then.
std::optional<Wish> lyingBox(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> findingsBox(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> keysBox(const Area& area, const Surface& surface);
std::optional<Wish> fileBox(const Job& job, const Area& area, const Surface& surface);

/// Who works here from now on.
std::optional<Wish> whoBox(const Job& job, const Area& area, const Surface& surface);

/// That nothing holds the rotor, before the piece is turned.
std::optional<Wish> turningBox(const Job& job, const Area& area, const Surface& surface);

/// Where the last shift stopped, over everything but the banner.
std::optional<Wish> slipSheet(const Job& job, const Area& area, const Surface& surface);

/// What keys ask for while nobody types into a field.
std::optional<Wish> jobKeys(const Job& job, Drafts& drafts);
std::optional<Wish> aboutKeys(const Job& job, Drafts& drafts);
std::optional<Wish> measuresKeys(const Job& job, Drafts& drafts);
std::optional<Wish> slipKeys(const Job& job);
std::optional<Wish> stepKeys(const Job& job, Drafts& drafts);

} // namespace gapwise
