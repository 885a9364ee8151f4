#include "models/measure/flags.h"

#include "models/build/reading_faults.h"
#include "models/gauging/plausible.h"
#include "models/measure/instruments.h"
#include "models/measure/numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Gathers the flags of one reading.
class FlagSearch {
public:
    FlagSearch(const ReadingCase& c, const Reading& reading, const Evaluated& evaluated)
        : c_{c},
          reading_{reading},
          evaluated_{evaluated},
          method_{c.measurement.method(reading.method)},
          instrument_{instrumentOf(c, reading)} {}

    std::vector<Flag> flags() {
        lookAtMethod();
        lookAtInstrument();
        if (instrument_)
            lookAtKind(*instrument_);
        if (instrument_ && instrument_->unit == nameOf(c_.quantity.unit))
            lookAtValues(*instrument_);
        lookAtSpread();
        lookAtForm();
        lookAtSlips();
        lookAtParts();
        return std::move(flags_);
    }

private:
    void add(FlagKind kind, std::string words) { flags_.push_back({kind, std::move(words)}); }
    std::string shown(double value) const {
        return numberWords(value, std::max(evaluated_.decimals, 3), c_.quantity.unit);
    }

    void lookAtMethod() {
        if (!method_) {
            if (!c_.measurement.methods.empty())
                add(FlagKind::NoMethod, "How it was read is not said: a number without it is no clearance.");
            return;
        }
        const std::string& wanted = c_.quantity.limits.method;
        const Method* limits = c_.measurement.method(wanted);
        if (limits && limits != method_)
            add(FlagKind::OtherMethod, fmt::format("Read by another method ({}) than its limit is for ({}).",
                                                   method_->words, limits->words));
        if (!method_->blind.empty())
            add(FlagKind::Blind, fmt::format("This method cannot see it: {}.", method_->blind));
    }

    void lookAtInstrument() {
        if (reading_.instrument.empty())
            add(FlagKind::NoInstrument, fmt::format("With what it was read is not said{}.", usualWords()));
        else if (!instrument_)
            add(FlagKind::UnknownInstrument, fmt::format("Neither the sheet nor the bench knows {}{}.",
                                                         reading_.instrument, usualWords()));
    }

    std::string usualWords() const {
        const double usual = expandedOf(c_, nullptr, reading_);
        return usual > 0.0 ? fmt::format("; U is taken as {}, as is usual", shown(usual)) : std::string{};
    }

    void lookAtKind(const Instrument& instrument) {
        if (method_ && std::ranges::find(method_->gauges, instrument.kind) == method_->gauges.end()) {
            std::string kinds;
            for (const std::string& gauge : method_->gauges)
                kinds += (kinds.empty() ? "" : " or ") + kindWords(gauge);
            add(FlagKind::WrongInstrument, fmt::format("{} is a {}, this method takes a {}.", instrument.id,
                                                       kindWords(instrument.kind), kinds));
        }
        const std::string_view day = reading_.on.empty() ? c_.today : std::string_view{reading_.on};
        if (!day.empty() && !instrument.calibratedUntil.empty() && day > instrument.calibratedUntil)
            add(FlagKind::Overdue, fmt::format("{} was calibrated until {}, it was read on {}.",
                                               instrument.id, instrument.calibratedUntil, day));
    }

    void lookAtValues(const Instrument& instrument) {
        const bool eitherWay = mayBeNegative(c_.frame, c_.quantity);
        for (const double value : reading_.values) {
            const double size = eitherWay ? std::abs(value) : value;
            if (size >= instrument.least && size <= instrument.most)
                continue;
            add(FlagKind::OutOfRange,
                fmt::format("{} lies beyond the range of {}, {:g} to {:g} {}.", shown(value), instrument.id,
                            instrument.least, instrument.most, symbolOf(c_.quantity.unit)));
            break;
        }
        if (instrument.resolution <= 0.0)
            return;
        const auto isFiner = [&](double value) {
            const double steps = value / instrument.resolution;
            return std::abs(steps - std::round(steps)) > 1e-6 * std::max(1.0, std::abs(steps));
        };
        const auto finer = std::ranges::find_if(reading_.values, isFiner);
        if (finer != reading_.values.end())
            add(FlagKind::Coarse,
                fmt::format("{:g} is finer than {} resolves, {:g} {}.", *finer, instrument.id,
                            instrument.resolution, symbolOf(c_.quantity.unit)));
    }

    void lookAtSpread() {
        const std::optional<double>& most = c_.quantity.spreadMost;
        if (most && evaluated_.spread > *most + kRounding)
            add(FlagKind::Spread, fmt::format("The repeats lie {} apart, at most {} is right: read again.",
                                              shown(evaluated_.spread), shown(*most)));
    }

    void lookAtForm() {
        const auto look = [&](const char* what, const std::optional<double>& found,
                              const std::optional<double>& most) {
            if (found && most && *found > *most + kRounding)
                add(FlagKind::OutOfRound,
                    fmt::format("The {} is {}, at most {}.", what, shown(*found), shown(*most)));
        };
        look("ovality", evaluated_.ovality, c_.quantity.ovalityMost);
        look("taper", evaluated_.taper, c_.quantity.taperMost);
    }

    /// Only what a slip explains: what is merely far off may be so.
    void lookAtSlips() {
        const std::optional<double> expected = expectedEntryOf(c_.frame, c_.quantity);
        if (!expected)
            return;
        for (const double value : reading_.values) {
            const std::optional<EntryDoubt> doubt = doubtOf(value, expectedAround(*expected));
            if (!doubt || doubt->slip == Slip::FarOff)
                continue;
            add(FlagKind::Implausible, doubt->words);
            return;
        }
    }

    /// A clearance is read on an assembly; a part is read on the bench.
    void lookAtParts() {
        if (!c_.quantity.part.empty() || reading_.occasion == Occasion::Before)
            return;
        std::string missing;
        for (const PartId& part : c_.measurement.parts)
            if (part != c_.frame.housing && !c_.build.of(part))
                missing += (missing.empty() ? "" : ", ") + part.text;
        if (!missing.empty())
            add(FlagKind::PartNotPlaced,
                fmt::format("Not in its seat: {}. What was read is something else.", missing));
    }

    const ReadingCase& c_;
    const Reading& reading_;
    const Evaluated& evaluated_;
    const Method* method_;
    const Instrument* instrument_;
    std::vector<Flag> flags_{};
};

} // namespace

std::vector<Flag> flagsOf(const ReadingCase& c, const Reading& reading, const Evaluated& evaluated) {
    return FlagSearch{c, reading, evaluated}.flags();
}

bool hasFlag(const std::vector<Flag>& flags, FlagKind kind) {
    return std::ranges::find(flags, kind, &Flag::kind) != flags.end();
}

} // namespace gapwise
