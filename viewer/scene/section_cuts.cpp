#include "viewer/scene/section_cuts.h"

#include <algorithm>

namespace gapwise {

SectionCuts::Known& SectionCuts::knownOf(const std::shared_ptr<const DrawnMesh>& whole) {
    const auto found = std::ranges::find(known_, whole, &Known::whole);
    if (found != known_.end())
        return *found;
    return known_.emplace_back(Known{.whole = whole, .cuttable = Cuttable{whole->body}});
}

std::shared_ptr<const DrawnMesh> SectionCuts::cut(const std::shared_ptr<const DrawnMesh>& whole,
                                                  const TakenAway& away) {
    Known& known = knownOf(whole);
    const auto found = std::ranges::find(known.cuts, away, &Cut::away);
    if (found != known.cuts.end()) {
        found->asked = true;
        return found->rest;
    }
    ++made_;
    auto rest = std::make_shared<const DrawnMesh>(known.cuttable.cut(away));
    known.cuts.push_back({.away = away, .rest = rest});
    return rest;
}

void SectionCuts::sweep() {
    for (Known& known : known_) {
        std::erase_if(known.cuts, [](const Cut& cut) { return !cut.asked; });
        for (Cut& cut : known.cuts)
            cut.asked = false;
    }
    std::erase_if(known_,
                  [](const Known& known) { return known.cuts.empty() && known.whole.use_count() == 1; });
}

} // namespace gapwise
