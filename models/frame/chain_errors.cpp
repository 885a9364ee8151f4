#include "models/frame/frame_errors.h"
#include "models/frame/known_ids.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace gapwise {

namespace {

constexpr std::string_view kAxis = "axis"; // Where diameters begin.

std::string asText(const Term& term) {
    return (term.sign > 0 ? "+" : "-") + term.of.text;
}

StationId beginOf(const Dimension& dimension, int sign) {
    return sign > 0 ? dimension.from : dimension.to;
}

StationId endOf(const Dimension& dimension, int sign) {
    return sign > 0 ? dimension.to : dimension.from;
}

/// Goes the way of one chain, link by link, and complains where it breaks off.
class ChainWalk {
public:
    ChainWalk(const Frame& frame, const Chain& chain, Complaints& complaints)
        : frame_{frame}, chain_{chain}, complaints_{complaints}, at_{chain.from} {}

    void walk() {
        for (std::size_t i = 0; i < chain_.links.size(); ++i) {
            const Term& link = chain_.links[i];
            const Dimension* dimension = frame_.dimension(link.of);
            if (!dimension) // Complained about as a reference.
                return;
            const StationId begin = beginOf(*dimension, link.sign);
            if (!step(begin)) {
                complaints_.add(itemOf(chain_.pointer, "links", i),
                                fmt::format("{}, which begins at {}", asText(link), begin.text),
                                "a link from " + place() + fitting());
                return;
            }
            at_ = endOf(*dimension, link.sign);
        }
        if (!step(chain_.to))
            complaints_.add(chain_.pointer + "/to", quotedId(chain_.to.text),
                            fmt::format("where the links lead to: {}", place()));
    }

private:
    /// To a station that is this one, or that touches it by a contact not yet used.
    bool step(const StationId& station) {
        if (station == at_)
            return true;
        for (const Contact* contact : touching())
            if (contact->first == station || contact->second == station) {
                used_.push_back(contact);
                return true;
            }
        return false;
    }

    std::vector<const Contact*> touching() const {
        std::vector<const Contact*> contacts;
        for (const Contact& contact : frame_.contacts) {
            const bool holds = !contact.pushedTo || contact.pushedTo == chain_.pushedTo;
            if (holds && (contact.first == at_ || contact.second == at_) &&
                std::ranges::find(used_, &contact) == used_.end())
                contacts.push_back(&contact);
        }
        return contacts;
    }

    /// Where the way stands, and what it touches there.
    std::vector<std::string> stations() const {
        std::vector<std::string> names{at_.text};
        for (const Contact* contact : touching())
            names.push_back(contact->first == at_ ? contact->second.text : contact->first.text);
        return names;
    }

    std::string place() const { return schema::listed(stations(), "or"); }

    /// The links that would go on from here.
    std::string fitting() const {
        const std::vector<std::string> here = stations();
        std::vector<std::string> links;
        for (const Dimension& dimension : frame_.dimensions)
            for (const int sign : {1, -1})
                if (std::ranges::find(here, beginOf(dimension, sign).text) != here.end())
                    links.push_back(asText(Term{dimension.id, sign}));
        return links.empty() ? ", and none begins there" : ": " + schema::listed(links, "or");
    }

    const Frame& frame_;
    const Chain& chain_;
    Complaints& complaints_;
    StationId at_{};
    std::vector<const Contact*> used_{};
};

/// Checks what chains are made of and what hangs on them.
class ChainChecker {
public:
    ChainChecker(const Frame& frame, Complaints& complaints)
        : frame_{frame},
          complaints_{complaints},
          parts_{knownIds("part", "parts", frame.parts)},
          dimensions_{knownIds("dimension", "dimensions", frame.dimensions, complaints)},
          chains_{knownIds("chain", "chains", frame.chains, complaints)} {}

    void check() const {
        for (const Dimension& dimension : frame_.dimensions)
            checkDimension(dimension);
        for (const Contact& contact : frame_.contacts)
            checkContact(contact);
        for (const Chain& chain : frame_.chains)
            checkChain(chain);
        knownIds("change", "changes", frame_.changes, complaints_);
        for (const Change& change : frame_.changes)
            checkChange(change);
        for (const Selector& selector : frame_.selectors)
            checkSelector(selector);
        if (frame_.lever)
            checkLever(*frame_.lever);
    }

private:
    void needPart(const PartId& part, const std::string& pointer) const {
        parts_.need(part.text, pointer + "/part", complaints_);
    }

    void needTerms(const std::vector<Term>& terms, const std::string& pointer, std::string_view key) const {
        for (std::size_t i = 0; i < terms.size(); ++i)
            dimensions_.need(terms[i].of.text, itemOf(pointer, key, i), complaints_);
    }

    void checkDimension(const Dimension& dimension) const {
        needPart(dimension.part, dimension.pointer);
        const std::string to = dimension.pointer + "/to";
        if (dimension.from == dimension.to)
            complaints_.add(to, quotedId(dimension.to.text), "another station than from");
        else if (dimension.to.text == kAxis)
            complaints_.add(to, quotedId(kAxis), "a diameter that leads outward: from the axis");
        const Quantity* measured = frame_.quantity(dimension.id).quantity;
        if (measured && measured->unit != Unit::Millimetres)
            complaints_.add(measured->pointer + "/unit", std::string{nameOf(measured->unit)},
                            fmt::format("mm, as the dimension {}", dimension.id.text));
    }

    bool isStation(const StationId& station) const {
        return std::ranges::any_of(frame_.dimensions, [&](const Dimension& dimension) {
            return dimension.from == station || dimension.to == station;
        });
    }

    void needStation(const StationId& station, const std::string& pointer) const {
        if (!station.empty() && !isStation(station))
            complaints_.add(pointer, quotedId(station.text), "a station that a dimension begins or ends at");
    }

    void checkContact(const Contact& contact) const {
        needStation(contact.first, itemOf(contact.pointer, "between", 0));
        needStation(contact.second, itemOf(contact.pointer, "between", 1));
        if (contact.first == contact.second)
            complaints_.add(contact.pointer + "/between", quotedId(contact.first.text) + " twice",
                            "2 different stations");
    }

    void checkChain(const Chain& chain) const {
        if (dimensions_.has(chain.id.text))
            complaints_.add(chain.pointer + "/id", quotedId(chain.id.text) + ", a dimension",
                            "an id that no dimension has");
        if (chain.links.empty())
            complaints_.add(chain.pointer + "/links", "no link", "at least 1 link");
        needTerms(chain.links, chain.pointer, "links");
        const Window& window = chain.window;
        if (window.least && window.most && *window.least > *window.most)
            complaints_.add(chain.pointer + "/window_mm",
                            fmt::format("[{}, {}]", *window.least, *window.most),
                            "[least, most] with least ≤ most");
        ChainWalk{frame_, chain, complaints_}.walk();
    }

    void checkChange(const Change& change) const {
        needPart(change.part, change.pointer);
        needTerms(change.moves, change.pointer, "moves");
        std::map<QuantityId, int> net;
        for (const Term& move : change.moves)
            net[move.of] += move.sign;
        if (std::ranges::all_of(net, [](const auto& each) { return each.second == 0; }))
            complaints_.add(change.pointer + "/moves", "moves that come to nothing",
                            "at least 1 dimension that grows or shrinks");
    }

    void checkSelector(const Selector& selector) const {
        needPart(selector.part, selector.pointer);
        dimensions_.need(selector.dimension.text, selector.pointer + "/dimension", complaints_);
        chains_.need(selector.sets.text, selector.pointer + "/sets", complaints_);
        if (std::ranges::adjacent_find(selector.gradesMm, std::greater_equal{}) != selector.gradesMm.end())
            complaints_.add(selector.pointer + "/grades_mm", "grades that do not rise",
                            "grades from the smallest to the largest");
        if (selector.gradesMm.empty())
            complaints_.add(selector.pointer + "/grades_mm", "no grade", "at least 1 grade");
        const Chain* chain = frame_.chain(selector.sets);
        if (!chain || !dimensions_.has(selector.dimension.text))
            return;
        if (std::ranges::find(chain->links, selector.dimension, &Term::of) == chain->links.end())
            complaints_.add(selector.pointer + "/dimension", quotedId(selector.dimension.text),
                            fmt::format("a link of {}, which it sets", chain->id.text));
        if (!hasMiddle(*chain))
            complaints_.add(selector.pointer + "/sets", quotedId(chain->id.text),
                            "a chain whose window has both ends: its middle is the target");
    }

    bool hasMiddle(const Chain& chain) const {
        const Quantity* quantity = frame_.quantity(chain.id).quantity;
        const Window& window =
            quantity && !quantity->limits.fresh.empty() ? quantity->limits.fresh : chain.window;
        return window.least && window.most;
    }

    void needReading(const QuantityId& id, const std::string& pointer) const {
        if (!id.empty() && !frame_.quantity(id).quantity)
            complaints_.add(pointer, quotedId(id.text), "a quantity of a measurement");
    }

    void checkLever(const LeverPlan& lever) const {
        needReading(lever.noseReading, lever.pointer + "/nose_reading");
        needReading(lever.turbineReading, lever.pointer + "/turbine_reading");
        chains_.need(lever.compressorPlay.text, lever.pointer + "/compressor_play", complaints_);
        chains_.need(lever.turbinePlay.text, lever.pointer + "/turbine_play", complaints_);
        if (!(lever.bearingLengthMm < lever.spanMm))
            complaints_.add(lever.pointer + "/bearing_length_mm", fmt::format("{}", lever.bearingLengthMm),
                            fmt::format("less than span_mm, {}", lever.spanMm));
        for (const auto& [key, arm] :
             {std::pair{"nose_mm", lever.noseMm}, std::pair{"turbine_mm", lever.turbineMm}})
            if (!(arm > lever.bearingLengthMm / 2.0))
                complaints_.add(lever.pointer + "/" + key, fmt::format("{}", arm),
                                "a place outside the bearing");
    }

    const Frame& frame_;
    Complaints& complaints_;
    KnownIds parts_;
    KnownIds dimensions_;
    KnownIds chains_;
};

} // namespace

void chainErrors(const Frame& frame, Complaints& complaints) {
    ChainChecker{frame, complaints}.check();
}

} // namespace gapwise
