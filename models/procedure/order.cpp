#include "models/procedure/order.h"

#include <algorithm>

namespace gapwise {

std::vector<PartId> partsInOrder(const Frame& frame) {
    std::vector<PartId> order;
    const auto add = [&](const PartId& part) {
        if (std::ranges::find(order, part) == order.end())
            order.push_back(part);
    };
    for (const Step& step : frame.steps)
        for (const PartId& part : step.places)
            add(part);
    for (const Part& part : frame.parts)
        add(part.id);
    return order;
}

} // namespace gapwise
