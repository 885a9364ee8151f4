#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

namespace gapwise {

/// The steps of a frame as a graph of indices into `frame.steps`, made once a frame: a query then costs only
/// what it looks at.
class StepGraph {
public:
    /// The frame must be free of circles (see frameErrors) and outlive the graph.
    explicit StepGraph(const Frame& frame);

    struct Edge {
        std::size_t step = 0;                   ///< The other end.
        const Precedence* precedence = nullptr; ///< Why, as the later step says it.
    };

    const Frame& frame() const { return *frame_; }
    std::size_t size() const { return needs_.size(); }
    std::optional<std::size_t> indexOf(const StepId& id) const;

    /// What a step needs directly, and what needs it directly.
    std::span<const Edge> needsOf(std::size_t step) const { return needs_[step]; }
    std::span<const Edge> followersOf(std::size_t step) const { return followers_[step]; }

private:
    const Frame* frame_;
    std::unordered_map<std::string, std::size_t> index_{};
    std::vector<std::vector<Edge>> needs_{};
    std::vector<std::vector<Edge>> followers_{};
};

/// Whether an edge or a step applies in this build: some only when the rotor was let down from above.
bool applies(OnlyWhen when, const Build& build);

} // namespace gapwise
