#include "viewer/panels/about_words.h"

#include "models/card/card_words.h"
#include "models/check/face_words.h"
#include "models/check/severity.h"
#include "viewer/panels/bench_question.h"
#include "viewer/panels/telling.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

std::string capital(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

std::string named(const std::vector<PartId>& parts) {
    std::string words;
    for (const PartId& part : parts)
        words += (words.empty() ? "" : ", ") + part.text;
    return words;
}

const Verdict* verdictOf(const Job& job, const RuleId& rule) {
    const auto found = std::ranges::find_if(job.checked.verdicts,
                                            [&](const Verdict& verdict) { return verdict.rule->id == rule; });
    return found == job.checked.verdicts.end() ? nullptr : &*found;
}

/// Builds the groups one after the other; a heading goes with the group that follows it.
class Sheet {
public:
    void heading(std::string words) { heading_ = std::move(words); }

    void begin() {
        groups_.emplace_back();
        if (!heading_.empty())
            add(Kind::Heading, std::exchange(heading_, {}));
    }
    void add(Kind kind, std::string words) {
        if (!words.empty())
            groups_.back().paragraphs.push_back({.kind = kind, .words = std::move(words)});
    }
    void add(SheetParagraph paragraph) { groups_.back().paragraphs.push_back(std::move(paragraph)); }
    std::vector<SheetGroup> take() { return std::move(groups_); }

private:
    std::vector<SheetGroup> groups_{};
    std::string heading_{};
};

void addCautions(Sheet& sheet, const PartCard& card) {
    for (const CardCaution& caution : card.cautions) {
        sheet.begin();
        sheet.add({.kind = Kind::Signal,
                   .words = std::string{signalWordOf(caution.signal)},
                   .signal = caution.signal});
        sheet.add(Kind::Body, caution.words);
        if (!caution.steps.empty())
            sheet.add(Kind::Small, "at " + wordsOf(caution.steps));
    }
}

void addIdentity(Sheet& sheet, const PartCard& card) {
    sheet.heading("What it is");
    sheet.begin();
    sheet.add(Kind::Body, capital(card.function) + ".");
    sheet.add(Kind::Body, fmt::format("{}, {}", capital(card.material), massWords(card.massKg)));
    if (!card.placedIn.empty())
        sheet.add(Kind::Body,
                  fmt::format("Goes in at {}{}", wordsOf(card.placedIn),
                              card.entersFrom ? fmt::format(", from the {} end", nameOf(*card.entersFrom))
                                              : std::string{}));
    if (card.face != FaceKind::None)
        sheet.add(Kind::Soft, fmt::format("Its faces: {} and {}. {}", faceWord(card.face),
                                          otherFaceWord(card.face), faceTest(card.face)));
}

void addDemand(Sheet& sheet, const CardDemand& demand) {
    sheet.begin();
    sheet.add(Kind::Strong, capital(demand.printed));
    sheet.add(Kind::Body, capital(wordsOf(demand)));
    sheet.add({.kind = Kind::Severity,
               .words = fmt::format("Severity {}, {}. {}", demand.severity, severityWord(demand.severity),
                                    demand.reason),
               .severity = demand.severity});
    const std::string trade = demand.tradeId.empty() ? "" : " · " + demand.tradeId;
    sheet.add(Kind::Small, fmt::format("last look {} · {}{} · {}", demand.lastLook.id.text, demand.rule.text,
                                       trade, demand.source));
}

void addDemands(Sheet& sheet, const Job& job, const PartCard& card) {
    sheet.heading("How it must sit");
    if (card.demands.empty()) {
        sheet.begin();
        sheet.add(Kind::Body, "No rule of this frame speaks of it.");
    }
    bool saidWhen = false;
    for (const CardDemand& demand : card.demands) {
        if (!keptBack(job, card, demand)) {
            addDemand(sheet, demand);
        } else if (!std::exchange(saidWhen, true)) {
            sheet.begin();
            sheet.add(Kind::Body, mayLookFirst(job, card.id) ? "Kept back until you said what you see."
                                                             : whenToldWords(job, card));
        }
    }
}

void addLastLook(Sheet& sheet, const PartCard& card) {
    if (card.hiddenBy.empty())
        return;
    sheet.heading("Last look");
    sheet.begin();
    sheet.add(Kind::Body, capital(lastLookWords(card)) + ".");
}

void addLubricant(Sheet& sheet, const PartCard& card) {
    if (!card.lubricant)
        return;
    sheet.heading("Lubricant");
    sheet.begin();
    sheet.add(Kind::Body, "Use: " + card.lubricant->use);
    if (!card.lubricant->never.empty())
        sheet.add(Kind::Body, "Never: " + card.lubricant->never);
}

void addMeasurements(Sheet& sheet, const PartCard& card) {
    sheet.heading("Measured");
    for (const CardMeasurement& each : card.measurements) {
        sheet.begin();
        sheet.add(Kind::Strong, capital(each.name));
        sheet.add(Kind::Body, capital(each.where));
        sheet.add(Kind::Small, fmt::format("{} · at {}", each.id.text, wordsOf(each.step)));
    }
    sheet.heading({});
}

void addFasteners(Sheet& sheet, const PartCard& card) {
    sheet.heading("Tightened");
    for (const CardFastener& each : card.fasteners) {
        const bool own = each.role == CardFastener::Role::PartIsOneOf;
        sheet.begin();
        sheet.add(Kind::Strong, fmt::format("{} {}, {}", each.id.text, each.name, each.size));
        sheet.add(Kind::Body, capital(tighteningWords(each)));
        if (!each.sets.empty())
            sheet.add(Kind::Body, "The set: " + piecesWords(each));
        if (own && !each.holds.empty())
            sheet.add(Kind::Body, "It holds: " + named(each.holds));
        sheet.add(Kind::Small, "at " + wordsOf(each.step));
    }
    sheet.heading({});
}

void addWithoutRule(Sheet& sheet, const PartCard& card) {
    sheet.heading("Without a rule in this frame");
    for (const WithoutRule& each : card.withoutRule) {
        sheet.begin();
        sheet.add(Kind::Soft, fmt::format("{}: {}", each.tradeId, each.why));
    }
    sheet.heading({});
}

} // namespace

bool keptBack(const Job& job, const PartCard& card, const CardDemand& demand) {
    if (demand.kind == "seat" || demand.kind == "condition")
        return false;
    const Verdict* verdict = verdictOf(job, demand.rule);
    return !demandShown(job, seatOf(card.id)) || !verdict || !mayTell(job, *verdict);
}

bool keepsBack(const Job& job, const PartCard& card) {
    return std::ranges::any_of(card.demands,
                               [&](const CardDemand& demand) { return keptBack(job, card, demand); });
}

bool mayLookFirst(const Job& job, const PartId& part) {
    return job.use == Use::Bench && job.state.build.in(seatOf(part)) && !demandShown(job, seatOf(part)) &&
           !asksHowItLies(job);
}

std::string whenToldWords(const Job& job, const PartCard& card) {
    if (!keepsBack(job, card))
        return {};
    const bool seated = job.state.build.in(seatOf(card.id)) != nullptr;
    if (!seated)
        return fmt::format("This is told once {} is in its seat and {}.", card.id.text,
                           job.use == Use::Bench ? "you said what you see" : "was set");
    if (job.use == Use::Bench)
        return "Close this and say what you see; then it is told. Or look first: it is noted.";
    return "Set it as you think right; then it is told.";
}

FromHere fromHereOf(const Job& job, const PartCard& card) {
    if (keepsBack(job, card))
        return {};
    const View view = job.lookingView();
    const RightSight sight = rightSightOf(card, view.side);
    if (sight.face.empty() && !sight.clock)
        return {};
    FromHere here;
    const PartId held = job.use == Use::Bench ? bareDialOf(job, seatOf(card.id)).heldOn : PartId{};
    here.words = held.empty()
                     ? fmt::format("From where you look now, the {} side, you must see ", nameOf(view.side))
                     : fmt::format("With {} held as it goes in, from the {} side you must see ", held.text,
                                   nameOf(view.side));
    if (!sight.face.empty())
        here.words += fmt::format("the {} face", sight.face);
    if (sight.clock) {
        const Degrees seen = seenIn(view, Clock::seenFrom(view.side, *sight.clock));
        here.clock = hoursAndMinutes(seen);
        here.words +=
            fmt::format("{}the {} at {}", sight.face.empty() ? "" : ", ", wordOf(card.index), here.clock);
        if (view == job.standingView())
            here.words += ", " + benchPhrase(seen, job.attitude().up);
    }
    here.words += ".";
    return here;
}

SheetText sheetTextOf(const Job& job, const PartCard& card) {
    Sheet cautions;
    addCautions(cautions, card);
    Sheet sheet;
    addIdentity(sheet, card);
    addDemands(sheet, job, card);
    addLastLook(sheet, card);
    addLubricant(sheet, card);
    addMeasurements(sheet, card);
    addFasteners(sheet, card);
    addWithoutRule(sheet, card);
    return {.groups = sheet.take(), .beside = cautions.take()};
}

} // namespace gapwise
