#pragma once

#include "viewer/scene/section_cut.h"

#include <memory>
#include <vector>

namespace gapwise {

/// The cuts of the scenes that were made last: what is the same in the next one is not cut again, and parts
/// of one type that sit alike share one mesh. A mesh that is cut anew (the plane turns) keeps what was found
/// out about it.
class SectionCuts {
public:
    /// What stays of a mesh.
    std::shared_ptr<const DrawnMesh> cut(const std::shared_ptr<const DrawnMesh>& whole,
                                         const TakenAway& away);

    /// A scene is complete: forgets every cut that it did not ask for, and meshes that nobody else holds.
    void sweep();

    /// How many meshes were cut so far.
    std::size_t made() const { return made_; }

private:
    struct Cut {
        TakenAway away{};
        std::shared_ptr<const DrawnMesh> rest{};
        bool asked = true; ///< Since the last scene.
    };
    struct Known {
        std::shared_ptr<const DrawnMesh> whole{};
        Cuttable cuttable;
        std::vector<Cut> cuts{};
    };
    Known& knownOf(const std::shared_ptr<const DrawnMesh>& whole);

    std::vector<Known> known_{};
    std::size_t made_ = 0;
};

} // namespace gapwise
