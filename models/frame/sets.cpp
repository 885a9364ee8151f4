#include "models/frame/sets.h"

#include <fmt/format.h>

namespace gapwise {

std::vector<PartId> piecesOf(const Frame& frame, const PartId& part) {
    const Part* own = frame.part(part);
    if (!own || !own->fastener)
        return {part};
    std::vector<PartId> pieces;
    for (const Part& other : frame.parts)
        if (other.fastener == own->fastener && other.type == own->type)
            pieces.push_back(other.id);
    return pieces;
}

std::string setNameOf(const Frame& frame, const PartId& part) {
    const std::size_t count = piecesOf(frame, part).size();
    const std::string& id = part.text;
    return count < 2 ? id : fmt::format("{} × {}", id.substr(0, id.rfind('-')), count);
}

} // namespace gapwise
