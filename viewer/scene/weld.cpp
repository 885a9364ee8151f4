#include "viewer/scene/weld.h"

#include <array>
#include <cmath>
#include <unordered_map>

namespace gapwise {

namespace {

using Cell = std::array<std::int64_t, 3>;

struct CellHash {
    std::size_t operator()(const Cell& cell) const {
        std::uint64_t hash = 0xcbf29ce484222325U;
        for (const std::int64_t part : cell)
            hash = (hash ^ static_cast<std::uint64_t>(part)) * 0x100000001b3U;
        return static_cast<std::size_t>(hash ^ (hash >> 32U));
    }
};

/// Cells are wide against the weld, so that most corners need only look into their own.
constexpr double kCellMm = 32.0 * kWeldMm;

std::int64_t cellAlong(double coordinate) {
    return static_cast<std::int64_t>(std::floor(coordinate / kCellMm));
}

/// Points found so far, by the cell that they lie in.
class PointFinder {
public:
    std::uint32_t pointAt(const Vec3& p) {
        for (std::int64_t x = cellAlong(p.x - kWeldMm); x <= cellAlong(p.x + kWeldMm); ++x)
            for (std::int64_t y = cellAlong(p.y - kWeldMm); y <= cellAlong(p.y + kWeldMm); ++y)
                for (std::int64_t z = cellAlong(p.z - kWeldMm); z <= cellAlong(p.z + kWeldMm); ++z)
                    if (const std::uint32_t* found = inCell({x, y, z}, p))
                        return *found;
        const auto number = static_cast<std::uint32_t>(points_.size());
        points_.push_back(p);
        cells_[{cellAlong(p.x), cellAlong(p.y), cellAlong(p.z)}].push_back(number);
        return number;
    }

private:
    const std::uint32_t* inCell(const Cell& cell, const Vec3& p) const {
        const auto found = cells_.find(cell);
        if (found == cells_.end())
            return nullptr;
        for (const std::uint32_t& number : found->second)
            if (length(points_[number] - p) <= kWeldMm)
                return &number;
        return nullptr;
    }

    std::vector<Vec3> points_{};
    std::unordered_map<Cell, std::vector<std::uint32_t>, CellHash> cells_{};
};

} // namespace

std::vector<std::uint32_t> weldedCorners(std::span<const Vec3> positions) {
    PointFinder finder;
    std::vector<std::uint32_t> numbers;
    numbers.reserve(positions.size());
    for (const Vec3& p : positions)
        numbers.push_back(finder.pointAt(p));
    return numbers;
}

} // namespace gapwise
