#include "models/frame/names.h"
#include "models/frame/readers.h"

namespace gapwise {

namespace {

constexpr Range kDensity{0.0, 25.0, true};
constexpr Range kMassKg{0.0, 10'000.0, true};
constexpr Range kGapMm{0.0, 1000.0, true};
constexpr Range kExpansionPerK{0.0, 0.001};

constexpr std::array<Named<std::string_view>, 8> kTints{{
    {"housing", "housing"},
    {"steel", "steel"},
    {"bronze", "bronze"},
    {"ring", "ring"},
    {"aluminium", "aluminium"},
    {"hot", "hot"},
    {"rubber", "rubber"},
    {"gasket", "gasket"},
}};

Carrier readCarrier(Fields& fields) {
    return Carrier{.part = fields.id<PartId>("part"),
                   .onceStep = fields.maybeId<StepId>("once_step"),
                   .onceSeated = fields.maybeIds<PartId>("once_seated")};
}

std::optional<Lubricant> readLubricant(Fields& fields) {
    std::optional<Fields> section = fields.maybeObject("lubricant");
    if (!section)
        return std::nullopt;
    Lubricant lubricant{.use = section->text("use"), .never = section->maybeText("never").value_or("")};
    section->finish();
    return lubricant;
}

RingGroove readRingGroove(Fields& fields) {
    const double bore = fields.number("bore_mm", kLengthMm);
    const auto [from, to] = fields.pair("z_mm", kStationMm);
    return RingGroove{.boreMm = bore, .z = Span{from, to}};
}

} // namespace

Clock readClock(Fields& fields) {
    const double clock = fields.number("clock_deg", kClockDeg);
    return Clock::seenFrom(fields.word("seen_from", kSideNames), Degrees{clock});
}

PartType readPartType(Fields& fields) {
    PartType type{.id = fields.id<PartTypeId>("id"),
                  .name = fields.text("name"),
                  .function = fields.text("function"),
                  .material = fields.text("material"),
                  .densityGPerCm3 = fields.number("density_g_cm3", kDensity),
                  .massKg = fields.number("mass_kg", kMassKg),
                  .index = fields.word("index", kIndexNames),
                  .face = fields.word("face", kFaceNames),
                  .joint = fields.maybeWord("joint", kJointNames),
                  .gapMm = fields.maybeNumber("gap_mm", kGapMm),
                  .tint = std::string{fields.word("tint", kTints)},
                  .lubricant = readLubricant(fields),
                  .expansionPerK = fields.maybeNumber("expansion_per_K", kExpansionPerK),
                  .pointer = fields.pointer()};
    type.shape = readSection(fields, "shape", readShape);
    return type;
}

Part readPart(Fields& fields) {
    return Part{.id = fields.id<PartId>("id"),
                .name = fields.text("name"),
                .type = fields.id<PartTypeId>("type"),
                .tradeId = fields.maybeText("trade_id").value_or(""),
                .fastener = fields.maybeId<FastenerId>("fastener"),
                .casing = fields.maybeFlag("casing").value_or(false),
                .pointer = fields.pointer()};
}

Seat readSeat(Fields& fields) {
    Seat seat{.id = fields.id<SeatId>("id"),
              .types = fields.ids<PartTypeId>("types"),
              .carriers = readEach(fields.objects("carriers"), readCarrier),
              .zMm = fields.number("z_mm", kStationMm),
              .reversible = fields.maybeFlag("reversible").value_or(false),
              .entersFrom = fields.maybeWord("enters_from", kSideNames),
              .pointer = fields.pointer()};
    if (auto aside = fields.maybeObject("aside")) {
        seat.aside = Aside{.radiusMm = aside->number("radius_mm", kLengthMm), .clock = readClock(*aside)};
        aside->finish();
    }
    if (auto groove = fields.maybeObject("groove")) {
        seat.groove = readRingGroove(*groove);
        groove->finish();
    }
    if (auto fixed = fields.maybeObject("fixed")) {
        seat.fixedIndex = readClock(*fixed);
        fixed->finish();
    }
    return seat;
}

} // namespace gapwise
