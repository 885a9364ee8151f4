#include "models/measure/bench.h"

#include <algorithm>

namespace gapwise {

Result<Bench> readBench(const DataFolder& /*data*/, const std::filesystem::path& /*file*/) {
    return Bench{};
}

Result<Bench> demoBench(const DataFolder& /*data*/) {
    return Bench{};
}

const Instrument* instrumentOf(const Build& build, const Bench& bench, std::string_view id) {
    for (const std::vector<Instrument>* list : {&build.instruments, &bench.instruments}) {
        const auto found = std::ranges::find(*list, id, &Instrument::id);
        if (found != list->end())
            return &*found;
    }
    return nullptr;
}

} // namespace gapwise
