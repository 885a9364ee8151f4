#include "viewer/panels/bench_question.h"

#include "viewer/panels/box.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace gapwise {

namespace {

/// The attitude of a piece with `up` whose drain the person sees at `seen` from where he stands.
Attitude attitudeSeen(const Job& job, EndUp up, Degrees seen) {
    const Observer& observer = job.standpoint.observer;
    if (up == EndUp::Level)
        return levelAttitude(observer.levelSide, seen);
    const Side side = up == EndUp::Compressor ? Side::Compressor : Side::Turbine;
    return uprightAttitude(side, wrapped(seen + observer.stand));
}

std::string bigWord(Degrees seen, EndUp up) {
    std::string word = benchPhrase(seen, up);
    std::ranges::transform(word, word.begin(), [](char c) {
        return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    });
    return word;
}

/// Places of the four answers, each at the edge of the picture that it names, so that the piece is seen
/// between them; in a row where there is no room for that.
std::array<Area, 4> answerPlaces(const Area& area, const Surface& surface) {
    const double gap = surface.px(8.0);
    const double height = std::max(surface.px(60.0), surface.target);
    if (area.height < 3.0 * height + 2.0 * gap)
        return {columnOf(area, 4, 0, gap), columnOf(area, 4, 1, gap), columnOf(area, 4, 2, gap),
                columnOf(area, 4, 3, gap)};
    const double widest = surface.px(190.0);
    const double width = std::min(widest, (area.width - 2.0 * gap) / 3.0); // Beside the piece,
    const double wide = std::min(widest, area.width);                      // above and below it.
    const double middleX = area.middleX() - wide / 2.0;
    const double middleY = area.middleY() - height / 2.0;
    return {Area{middleX, area.y, wide, height}, Area{area.right() - width, middleY, width, height},
            Area{middleX, area.bottom() - height, wide, height}, Area{area.x, middleY, width, height}};
}

/// The question over the picture, which stays in view below it; returns the place below.
Area drawQuestion(const Area& area, std::string_view question, const Surface& surface) {
    const Area inner = area.inset(surface.px(8.0));
    const Area title{inner.x, inner.y, inner.width, surface.px(40.0)};
    fillArea(title, palette::kNotice, surface.px(8.0));
    frameArea(title, palette::kAccent, surface.px(8.0), 1.5);
    writeLine(title, question, {.font = surface.fonts().title, .align = Align::Middle});
    const double above = title.height + surface.px(8.0);
    return {inner.x, inner.y + above, inner.width, inner.height - above};
}

/// What the four answers are about.
struct DrainAsked {
    EndUp up = EndUp::Level;
    std::optional<Degrees> believed{};
};

/// Where the drain was seen.
std::optional<Degrees> drainAnswers(const DrainAsked& asked, const Area& area, const Surface& surface) {
    const std::array<Area, 4> places = answerPlaces(area, surface);
    std::optional<Degrees> answer;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Degrees seen{90.0 * static_cast<double>(i)};
        const bool here = asked.believed && apart(seen, *asked.believed) < Degrees{45.0};
        const bool narrow = places.at(i).width < surface.px(160.0);
        const std::string_view believed = narrow ? "believed" : "believed, after the turn";
        std::string word = bigWord(seen, asked.up);
        if (constexpr std::string_view kYour = "TO YOUR "; narrow && word.starts_with(kYour))
            word.erase(0, kYour.size());
        if (button(surface, places.at(i), word,
                   {.chosen = here,
                    .font = narrow ? surface.fonts().strong : surface.fonts().title,
                    .second = here ? believed : std::string_view{}}))
            answer = seen;
    }
    return answer;
}

/// How it lies; for a level piece also the end that he looks at: that is where he stands.
std::optional<Wish> endQuestion(const Job& job, const Area& area, const Surface& surface) {
    struct Lies {
        EndUp up;
        Side side;
        const char* label;
        const char* second;
    };
    constexpr std::array<Lies, 4> kLies{
        {{EndUp::Turbine, Side::Turbine, "TURBINE end up", "I look down on the turbine end"},
         {EndUp::Compressor, Side::Compressor, "COMPRESSOR end up", "I look down on the compressor end"},
         {EndUp::Level, Side::Turbine, "LEVEL, turbine end", "I stand before the turbine end"},
         {EndUp::Level, Side::Compressor, "LEVEL, compressor end", "I stand before the compressor end"}}};
    const Area body = drawBox(area, "How does the piece lie before you?", surface);
    const double gap = surface.px(10.0);
    const double row = std::min((body.height - gap) / 2.0, surface.px(120.0));
    for (std::size_t i = 0; i < kLies.size(); ++i) {
        const Lies& lies = kLies.at(i);
        const Area line{body.x, body.y + static_cast<double>(i / 2) * (row + gap), body.width, row};
        if (!button(surface, columnOf(line, 2, static_cast<int>(i % 2), gap), lies.label,
                    {.font = surface.fonts().title, .second = lies.second}))
            continue;
        surface.drafts().lies = lies.up;
        Standpoint standpoint = job.standpoint;
        standpoint.kind = LookKind::WhereIStand;
        standpoint.observer.levelSide = lies.side;
        return LookAgain{standpoint};
    }
    return std::nullopt;
}

/// The drain of a piece of which `lies` was said.
std::optional<Wish> firstDrain(const Job& job, EndUp lies, const Area& area, const Surface& surface) {
    Area body = drawBox(area, "Where does the drain point, as you stand?", surface);
    const double back = std::max(surface.target, surface.px(40.0));
    const double width = surface.px(176.0);
    if (button(surface, {body.right() - width, area.y + surface.px(14.0), width, back}, "It lies otherwise",
               {.font = surface.fonts().small}))
        surface.drafts().lies.reset();
    const double lower = std::max(0.0, area.y + surface.px(22.0) + back - body.y);
    body = {body.x, body.y + lower, body.width, body.height - lower};
    const std::optional<Degrees> seen = drainAnswers({lies, std::nullopt}, body, surface);
    if (!seen)
        return std::nullopt;
    surface.drafts().lies.reset();
    return Act{AttitudeChanged{attitudeSeen(job, lies, *seen), true}};
}

} // namespace

bool asksWhichEnd(const Job& job) {
    return job.use == Use::Bench && !lyingWasSaid(job);
}

bool asksHowItLies(const Job& job) {
    return !job.state.attitudeConfirmed || asksWhichEnd(job);
}

std::optional<Wish> benchQuestion(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "drain"};
    if (asksWhichEnd(job)) {
        const std::optional<EndUp> lies = surface.drafts().lies;
        return lies ? firstDrain(job, *lies, area, surface) : endQuestion(job, area, surface);
    }
    // With both ends before him, left and right are those of the piece as it lies, in the middle.
    const bool both = job.standpoint.kind == LookKind::BothEnds;
    const Area middle = both ? bothEndsAreas(area).lying : area;
    const Area body = drawQuestion(
        middle, both ? "Where does the drain point?" : "Where does the drain point now, as you stand?",
        surface);
    const EndUp up = job.attitude().up;
    const Degrees believed = wrapped(job.standingView().top + Degrees{180.0});
    const std::optional<Degrees> seen = drainAnswers({up, believed}, body, surface);
    if (!seen)
        return std::nullopt;
    const Attitude said = attitudeSeen(job, up, *seen);
    const bool otherEnd = up == EndUp::Level && said.seenFrom != job.attitude().seenFrom;
    return DrainSaid{otherEnd ? wrapped(-said.drain) : said.drain};
}

std::optional<Wish> lyingBox(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "drain"};
    const std::optional<EndUp> lies = surface.drafts().lies;
    if (!lies)
        return endQuestion(job, area, surface);
    std::optional<Wish> wish = firstDrain(job, *lies, area, surface);
    if (wish)
        surface.drafts().box = Drafts::Box::None;
    return wish;
}

} // namespace gapwise
