#include "viewer/scene/section_loops.h"

#include <algorithm>
#include <array>
#include <utility>

namespace gapwise {

namespace {

using Edge = std::pair<std::uint32_t, std::uint32_t>; ///< Points, the smaller number first.

/// Where the plane leaves one triangle: it enters at one mesh edge and leaves at another, so that pieces of
/// neighbouring triangles meet exactly.
struct CutPiece {
    Edge from{}, to{};
};

Edge edgeBetween(std::uint32_t a, std::uint32_t b) {
    return {std::min(a, b), std::max(a, b)};
}

/// The piece across one triangle, given by its points.
CutPiece pieceOf(std::array<std::uint32_t, 3> t, std::span<const double> beyond, bool oneStays) {
    // Turn the triangle so that its first corner is the one that differs from the other two.
    while ((beyond[t[0]] <= 0.0) != oneStays)
        std::ranges::rotate(t, t.begin() + 1);
    const Edge ab = edgeBetween(t[0], t[1]);
    const Edge ca = edgeBetween(t[2], t[0]);
    // The border of what stays runs one way; the cap's runs against it.
    return oneStays ? CutPiece{ca, ab} : CutPiece{ab, ca};
}

std::vector<CutPiece> piecesOf(const CutTriangles& cut) {
    std::vector<CutPiece> pieces;
    for (const auto& [a, b, c] : cut.triangles) {
        const std::array<std::uint32_t, 3> t{cut.pointOf[a], cut.pointOf[b], cut.pointOf[c]};
        const auto staying = std::ranges::count_if(t, [&](std::uint32_t p) { return cut.beyond[p] <= 0.0; });
        if (staying == 1 || staying == 2)
            pieces.push_back(pieceOf(t, cut.beyond, staying == 1));
    }
    return pieces;
}

Vec3 crossingOf(const Edge& edge, const CutTriangles& cut) {
    const auto& [a, b] = edge;
    const double t = cut.beyond[a] / (cut.beyond[a] - cut.beyond[b]);
    return cut.points[a] * (1.0 - t) + cut.points[b] * t;
}

/// Pieces that are not yet in a loop, found by the edge that they begin at.
class OpenPieces {
public:
    explicit OpenPieces(std::vector<CutPiece> pieces)
        : pieces_{std::move(pieces)}, used_(pieces_.size(), false) {
        std::ranges::sort(pieces_, {}, &CutPiece::from);
    }

    /// The first piece that is left; null when none is.
    const CutPiece* takeAny() {
        while (next_ < pieces_.size() && used_[next_])
            ++next_;
        return next_ < pieces_.size() ? take(next_) : nullptr;
    }
    const CutPiece* takeFrom(const Edge& edge) {
        const auto [first, last] = std::ranges::equal_range(pieces_, edge, {}, &CutPiece::from);
        for (auto piece = first; piece != last; ++piece)
            if (const auto at = static_cast<std::size_t>(piece - pieces_.begin()); !used_[at])
                return take(at);
        return nullptr;
    }

private:
    const CutPiece* take(std::size_t at) {
        used_[at] = true;
        return &pieces_[at];
    }

    std::vector<CutPiece> pieces_;
    std::vector<bool> used_;
    std::size_t next_ = 0;
};

} // namespace

MeetingLine::MeetingLine(const CuttingPlane& first, const CuttingPlane& second)
    : along_{normalized(cross(first.normal, second.normal))} {
    // Of the points on both planes the one that lies in the span of their normals.
    const double cosine = dot(first.normal, second.normal);
    const double scale = 1.0 / (1.0 - cosine * cosine);
    base_ = first.normal * (scale * (first.offsetMm - cosine * second.offsetMm)) +
            second.normal * (scale * (second.offsetMm - cosine * first.offsetMm));
}

std::vector<Loop> loopsAcross(const CutTriangles& cut) {
    OpenPieces open{piecesOf(cut)};
    std::vector<Loop> loops;
    while (const CutPiece* piece = open.takeAny()) {
        const Edge first = piece->from;
        Loop loop{crossingOf(first, cut)};
        while (piece && piece->to != first) {
            // Where the plane runs through a corner, several edges are crossed in one point.
            if (const Vec3 next = crossingOf(piece->to, cut); !(next == loop.back()))
                loop.push_back(next);
            piece = open.takeFrom(piece->to);
        }
        if (piece && loop.size() >= 3)
            loops.push_back(std::move(loop));
    }
    return loops;
}

std::vector<Loop> partsBeyond(const std::vector<Loop>& loops, const CuttingPlane& other,
                              const MeetingLine& meeting) {
    std::vector<Loop> parts;
    for (const Loop& loop : loops) {
        Loop part;
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec3& p = loop[i];
            const Vec3& q = loop[(i + 1) % loop.size()];
            const double dp = beyondOrOn(other, p);
            const double dq = beyondOrOn(other, q);
            if (dp > 0.0)
                part.push_back(p);
            if ((dp > 0.0) != (dq > 0.0))
                part.push_back(meeting.nearestTo(p + (q - p) * (dp / (dp - dq))));
        }
        if (part.size() >= 3)
            parts.push_back(std::move(part));
    }
    return parts;
}

} // namespace gapwise
