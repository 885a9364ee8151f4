#include "models/frame/names.h"
#include "models/frame/readers.h"

namespace gapwise {

namespace {

constexpr std::array<Named<std::string_view>, 6> kReasons{
    {{"PHY", "PHY"}, {"ACC", "ACC"}, {"MEA", "MEA"}, {"CLN", "CLN"}, {"SAF", "SAF"}, {"REC", "REC"}}};

constexpr int kMostPieces = 10'000;

OnlyWhen readOnlyWhen(Fields& fields) {
    return fields.maybeWord("only_when", kOnlyWhenNames).value_or(OnlyWhen::Always);
}

Precedence readPrecedence(Fields& fields) {
    return Precedence{.step = fields.id<StepId>("step"),
                      .reason = std::string{fields.word("reason", kReasons)},
                      .why = fields.text("why"),
                      .when = readOnlyWhen(fields)};
}

LubricantPoint readLubricantPoint(Fields& fields) {
    return LubricantPoint{.where = fields.text("where"),
                          .use = fields.text("use"),
                          .never = fields.maybeText("never").value_or("")};
}

Consumable readConsumable(Fields& fields) {
    return Consumable{.name = fields.text("name"), .quantity = fields.whole("quantity", 1, kMostPieces)};
}

WitnessCheck readWitnessCheck(Fields& fields) {
    return WitnessCheck{.look = fields.text("look"),
                        .good = fields.text("good"),
                        .bad = fields.maybeText("bad").value_or("")};
}

std::vector<StepQuestion> readQuestions(Fields& fields) {
    return fields.has("asks") ? fields.words("asks", kQuestionNames) : std::vector<StepQuestion>{};
}

/// What the card of a step says to the person who does it.
void readCardOf(Step& step, Fields& fields) {
    step.acts = fields.maybeTexts("acts");
    step.lubricants = readEach(fields.maybeObjects("lubricants"), readLubricantPoint);
    step.tools = fields.maybeTexts("tools");
    step.consumables = readEach(fields.maybeObjects("consumables"), readConsumable);
    step.witness = readEach(fields.maybeObjects("witness"), readWitnessCheck);
    step.records = fields.maybeTexts("records");
    step.asks = readQuestions(fields);
}

} // namespace

Step readStep(Fields& fields) {
    Step step{.id = fields.id<StepId>("id"),
              .title = fields.text("title"),
              .after = readEach(fields.objects("after"), readPrecedence),
              .attitudes = fields.words("attitudes", kStepAttitudeNames),
              .view = fields.word("view", kStepViewNames),
              .places = fields.ids<PartId>("places"),
              .hides = fields.ids<SeatId>("hides"),
              .holdPoint = fields.maybeFlag("hold_point").value_or(false),
              .when = readOnlyWhen(fields),
              .maySkip = fields.maybeFlag("may_skip").value_or(false),
              .holdsRotor = fields.maybeFlag("holds_rotor").value_or(false),
              .closesRecord = fields.maybeFlag("closes_record").value_or(false),
              .standsFor = fields.maybeIds<StepId>("stands_for"),
              .pointer = fields.pointer()};
    readCardOf(step, fields);
    return step;
}

} // namespace gapwise
