#include "models/measure/play.h"

#include "models/measure/lever_of.h"
#include "models/measure/numbers.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

/// Read bands of play are good to hundredths only.
constexpr int kDecimals = 2;

Window windowOf(const Band& band) {
    return {.least = band.least, .most = band.most};
}

/// What is said of one bearing.
class BearingWords {
public:
    BearingWords(const Frame& frame, std::span<const Prediction> chains, const QuantityId& chain,
                 const char* name, const Band& band)
        : prediction_{predictionOf(chains, chain)}, name_{name}, band_{band} {
        if (const Chain* of = frame.chain(chain))
            limit_ = of->window.most;
    }

    /// The band of what the parts give, their own scatter included, meets the band that was read.
    bool agrees() const {
        return prediction_ && overlap(band_, bandOf(prediction_->valueMm - prediction_->rssMm,
                                                    prediction_->valueMm + prediction_->rssMm));
    }

    std::string words(Occasion occasion) const {
        if (occasion == Occasion::Before)
            return fmt::format("{} bearing: {} by the readings ({} with the parts of now){}.", name_,
                               bandWords(band_, kDecimals),
                               numberWords(prediction_->valueMm, kDecimals, Unit::Millimetres), limitWords());
        return fmt::format(
            "{} bearing: {} by the readings, {} by its parts{}{}.", name_, bandWords(band_, kDecimals),
            numberWords(prediction_->valueMm, kDecimals, Unit::Millimetres), comparison(), limitWords());
    }

private:
    std::string comparison() const {
        if (agrees())
            return ", they agree";
        return band_.least > prediction_->valueMm
                   ? "; the bearing, its journal or its bore is worn, or a part reading is wrong"
                   : "; something takes up play: dirt behind it, tight in one plane, a part reading is wrong";
    }

    std::string limitWords() const {
        if (!limit_ || band_.most <= *limit_)
            return {};
        return fmt::format("; {} its limit, {}", band_.least > *limit_ ? "beyond" : "it may be beyond",
                           numberWords(*limit_, kDecimals, Unit::Millimetres));
    }

    const Prediction* prediction_;
    const char* name_;
    Band band_;
    std::optional<double> limit_{};
};

} // namespace

std::optional<PlayResult> playResult(const Frame& frame, std::span<const Prediction> chains,
                                     const EndsRead& read) {
    const std::optional<PartPlays> parts = partPlays(frame, chains);
    if (!parts || !read.nose || !read.turbine)
        return std::nullopt;
    const PlayBands bands = separatedBand(leverOf(*frame.lever), {read.nose->value, read.turbine->value});
    const BearingWords compressor{frame, chains, frame.lever->compressorPlay, "Compressor", bands.compressor};
    const BearingWords turbineEnd{frame, chains, frame.lever->turbinePlay, "Turbine", bands.turbine};
    PlayResult result{.compressorBand = windowOf(bands.compressor),
                      .turbineBand = windowOf(bands.turbine),
                      .compressorParts = parts->compressor,
                      .turbineParts = parts->turbine};
    result.agree = compressor.agrees() && turbineEnd.agrees();
    result.words =
        contradicts(bands)
            ? std::string{"The two readings do not belong to one shaft and one method: read again."}
            : compressor.words(read.occasion) + " " + turbineEnd.words(read.occasion);
    return result;
}

} // namespace gapwise
