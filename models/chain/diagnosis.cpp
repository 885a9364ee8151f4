#include "models/chain/diagnosis.h"

#include "models/chain/causes.h"
#include "models/chain/diagnosis_words.h"
#include "models/chain/investigation.h"
#include "models/chain/settling.h"

#include <algorithm>
#include <utility>

namespace gapwise {

Diagnosis diagnose(const Frame& frame, const CaseFile& known) {
    const Investigation seen = investigate(frame, known);
    Diagnosis diagnosis;
    for (const ReadGap& gap : seen.gaps)
        diagnosis.evidence.push_back({.chain = gap.chain->id,
                                      .predictedMm = gap.predicted.valueMm,
                                      .measuredMm = gap.value.value,
                                      .expandedMm = gap.expandedMm(),
                                      .moved = gap.moved()});
    diagnosis.anythingMoved = std::ranges::any_of(diagnosis.evidence, &GapEvidence::moved);
    if (diagnosis.anythingMoved) {
        Ranking ranking = causesOf(seen);
        diagnosis.causes = std::move(ranking.causes);
        diagnosis.unexplained = ranking.unexplained;
        diagnosis.explained = ranking.explained;
        diagnosis.settles = settlingsOf(seen, diagnosis.causes);
    }
    if (!seen.gaps.empty())
        diagnosis.summary = summaryWords(seen, diagnosis);
    return diagnosis;
}

} // namespace gapwise
