#pragma once

#include "models/card/card.h"
#include "viewer/panels/sheet_flow.h"
#include "viewer/workplace/workplace.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// What the sheet about a part says at this moment: the card of the part, less what may not be told yet.

/// Whether a demand of the card is kept back: of a seat whose demand is not shown yet nothing is told but
/// that the part belongs there.
bool keptBack(const Job& job, const PartCard& card, const CardDemand& demand);

/// Whether any is.
bool keepsBack(const Job& job, const PartCard& card);

/// Whether the person may choose to look first: at the bench, while its seat is filled.
bool mayLookFirst(const Job& job, const PartId& part);

/// What to do so that it is told; empty where nothing is kept back.
std::string whenToldWords(const Job& job, const PartCard& card);

/// What is to be seen from where the person looks now; empty where no rule says, or while it is kept back.
struct FromHere {
    std::string clock{}; ///< Of its index as he looks: `10:00`; empty where no rule says.
    std::string words{}; ///< All of it in a sentence.
};
FromHere fromHereOf(const Job& job, const PartCard& card);

/// What it is, how it must sit, and what goes with it; beside it the cautions.
SheetText sheetTextOf(const Job& job, const PartCard& card);

} // namespace gapwise
