#include "models/check/check.h"

namespace gapwise {

std::string_view nameOf(Mistake mistake) {
    switch (mistake) {
    case Mistake::MirroredView: return "mirrored_view";
    case Mistake::UpsideDown: return "upside_down";
    case Mistake::EndOverEnd: return "end_over_end";
    case Mistake::OtherEndRule: return "other_end_rule";
    case Mistake::OtherVariantRule: return "other_variant_rule";
    case Mistake::QuarterTurn: return "quarter_turn";
    case Mistake::Reversed: return "reversed";
    case Mistake::SwappedEnds: return "swapped_ends";
    case Mistake::WrongHand: break;
    }
    return "wrong_hand";
}

} // namespace gapwise
