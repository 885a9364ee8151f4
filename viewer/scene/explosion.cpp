#include "viewer/scene/explosion.h"

#include <algorithm>
#include <deque>
#include <limits>
#include <set>
#include <tuple>

namespace gapwise {

namespace {

constexpr std::size_t kNever = std::numeric_limits<std::size_t>::max();

/// Which step fills each seat, counted in an order that keeps every `after`.
class Placings {
public:
    explicit Placings(const Frame& frame) {
        std::size_t count = 0;
        for (const Step* step : stepsInOrder(frame)) {
            for (const PartId& part : step->places)
                when_.try_emplace(seatOf(part), count);
            ++count;
        }
    }

    std::size_t of(const SeatId& seat) const {
        const auto found = when_.find(seat);
        return found == when_.end() ? kNever : found->second;
    }

private:
    std::map<SeatId, std::size_t> when_{};
};

using Row = std::deque<PartId>; ///< From the turbine end to the compressor end.

/// Puts the parts of a frame in a row.
class RowMaker {
public:
    RowMaker(const Frame& frame, const std::vector<PulledPart>& parts) : frame_{frame}, placings_{frame} {
        for (const PulledPart& part : parts)
            parts_[part.part] = part;
        for (const PulledPart& part : parts)
            byTime_.push_back(part.part);
        std::ranges::stable_sort(byTime_,
                                 [&](const PartId& a, const PartId& b) { return keyOf(a) < keyOf(b); });
    }

    Row row() {
        // Bench groups first, each a row of its own around what carries it, then the rows join the cartridge.
        std::map<PartId, Row> groups;
        std::set<PartId> inGroup;
        for (const PartId& part : byTime_)
            groups[part] = {part};
        for (const PartId& part : byTime_)
            if (const PartId* carrier = benchCarrierOf(part)) {
                join(groups[*carrier], groups[part], entrySide(part));
                inGroup.insert(part);
            }
        Row all;
        for (const PartId& part : byTime_)
            if (!inGroup.contains(part))
                join(all, groups[part], entrySide(part));
        return all;
    }

private:
    static void join(Row& row, const Row& joining, Side side) {
        row.insert(side == Side::Compressor ? row.end() : row.begin(), joining.begin(), joining.end());
    }

    /// The housing first, then step by step, then the deepest of those that go in at one end in one step.
    std::tuple<bool, std::size_t, double> keyOf(const PartId& part) const {
        const Span& z = parts_.at(part).z;
        const double outward = entrySide(part) == Side::Compressor ? z.to : -z.from;
        return {part != frame_.housing, placings_.of(parts_.at(part).seat), outward};
    }

    /// What a part is put onto on the bench: its first carrier, when that itself is placed later. Else null.
    const PartId* benchCarrierOf(const PartId& part) const {
        const SeatId& own = parts_.at(part).seat;
        const Seat* seat = frame_.seat(own);
        if (!seat || seat->carriers.empty())
            return nullptr;
        const SeatId carrier = seatOf(seat->carriers.front().part);
        const auto seated =
            std::ranges::find_if(parts_, [&](const auto& entry) { return entry.second.seat == carrier; });
        const std::size_t when = placings_.of(carrier);
        const bool later = when != kNever && when >= placings_.of(own);
        return later && carrier != seatOf(frame_.housing) && seated != parts_.end() ? &seated->first
                                                                                    : nullptr;
    }

    /// The end from which a part goes in; where its seat names none, the end of the housing it lies nearer
    /// to.
    Side entrySide(const PartId& part) const {
        const PulledPart& pulled = parts_.at(part);
        if (pulled.benchEntry && benchCarrierOf(part))
            return *pulled.benchEntry;
        const Seat* seat = frame_.seat(pulled.seat);
        if (seat && seat->entersFrom)
            return *seat->entersFrom;
        const auto housing = parts_.find(frame_.housing);
        const double middle = housing == parts_.end() ? 0.0 : housing->second.z.middle();
        return pulled.z.middle() < middle ? Side::Turbine : Side::Compressor;
    }

    const Frame& frame_;
    Placings placings_;
    std::map<PartId, PulledPart> parts_{};
    std::vector<PartId> byTime_{};
};

} // namespace

std::vector<const Step*> stepsInOrder(const Frame& frame) {
    std::vector<const Step*> order;
    std::set<StepId> done;
    const auto ready = [&](const Step& step) {
        return !done.contains(step.id) && std::ranges::all_of(step.after, [&](const Precedence& before) {
            return done.contains(before.step) || !frame.step(before.step);
        });
    };
    while (true) {
        const auto next = std::ranges::find_if(frame.steps, ready);
        if (next == frame.steps.end())
            return order;
        order.push_back(&*next);
        done.insert(next->id);
    }
}

std::vector<PartId> pulledApartOrder(const Frame& frame, const std::vector<PulledPart>& parts) {
    const Row row = RowMaker{frame, parts}.row();
    return {row.begin(), row.end()};
}

std::map<PartId, double> pulls(const std::vector<AxialReach>& reaches, const PartId& still, double gapMm) {
    std::map<PartId, double> moves;
    if (reaches.empty())
        return moves;
    double end = reaches.front().z.from - gapMm;
    for (const AxialReach& reach : reaches) {
        const double move = end + gapMm - reach.z.from;
        moves[reach.part] = move;
        end = reach.z.to + move;
    }
    const double atRest = still.empty() ? 0.0 : moves.at(still);
    for (auto& [part, move] : moves)
        move -= atRest;
    return moves;
}

} // namespace gapwise
