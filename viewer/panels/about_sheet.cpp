#include "viewer/panels/about_pictures.h"
#include "viewer/panels/about_words.h"
#include "viewer/panels/parts.h"

#include "models/frame/sets.h"
#include "models/procedure/order.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

constexpr std::size_t kColumns = 2;

/// Fills an area but for the places in it where pictures lie under the panels.
void fillAround(const Area& area, const std::vector<Portrait>& holes, ImU32 colour) {
    std::vector<double> edges{area.y, area.bottom()};
    for (const Portrait& hole : holes)
        edges.insert(edges.end(), {hole.area.y, hole.area.bottom()});
    std::ranges::sort(edges);
    for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
        std::vector<Area> across;
        for (const Portrait& hole : holes)
            if (hole.area.y <= edges[i] && hole.area.bottom() >= edges[i + 1])
                across.push_back(hole.area);
        std::ranges::sort(across, {}, &Area::x);
        double x = area.x;
        for (const Area& hole : across) {
            fillArea({x, edges[i], hole.x - x, edges[i + 1] - edges[i]}, colour);
            x = hole.right();
        }
        fillArea({x, edges[i], area.right() - x, edges[i + 1] - edges[i]}, colour);
    }
}

/// What can be leafed through, in the order of assembly: of a set of screws its first piece.
std::vector<PartId> leavesOf(const Frame& frame) {
    std::vector<PartId> leaves = partsInOrder(frame);
    std::erase_if(leaves, [&](const PartId& part) { return piecesOf(frame, part).front() != part; });
    return leaves;
}

/// The part after it, or so many further on, round about.
PartId furtherOn(const Frame& frame, const PartId& part, std::ptrdiff_t steps) {
    const std::vector<PartId> leaves = leavesOf(frame);
    const auto count = static_cast<std::ptrdiff_t>(leaves.size());
    const auto at = std::ranges::find(leaves, piecesOf(frame, part).front()) - leaves.begin();
    return leaves[static_cast<std::size_t>((at + steps + count) % count)];
}

struct Places {
    Area title{};
    Area buttons{};
    Area pictures{};
    Area text{};
};

Places placesIn(const Area& area, const Surface& surface) {
    const Area inner = area.inset(surface.px(14.0));
    const double gap = surface.px(18.0);
    const double head = std::max(surface.target, surface.px(52.0));
    const double buttons = std::max(4.0 * surface.target, surface.px(470.0));
    const double top = inner.y + head + surface.px(12.0);
    const double pictures = std::floor(inner.width * 0.31);
    return {.title = {inner.x, inner.y, inner.width - buttons - gap, head},
            .buttons = {inner.right() - buttons, inner.y, buttons, head},
            .pictures = {inner.x, top, pictures, inner.bottom() - top},
            .text = {inner.x + pictures + gap, top, inner.width - pictures - gap, inner.bottom() - top}};
}

void drawTitle(const PartCard& card, const Area& area, const Surface& surface) {
    const Fonts& fonts = surface.fonts();
    const bool isSet = card.setName != card.id.text;
    const std::string& name = isSet ? card.typeName : card.name;
    const double half = area.height / 2.0;
    const double left = area.x + static_cast<double>(sizeOf(fonts.title, card.setName).x) + surface.px(12.0);
    const bool beside = left + static_cast<double>(sizeOf(fonts.title, name).x) <= area.right();
    writeLine({area.x, area.y, area.width, half}, card.setName, {fonts.title, palette::kAccent});
    const Area below{area.x, area.y + half, area.width, half};
    if (beside)
        writeLine({left, area.y, area.right() - left, half}, name, {fonts.title});
    else
        writeLine(below, name, {fonts.strong});
    if (beside && !isSet && card.typeName != card.name)
        writeLine(below, card.typeName, {fonts.body, palette::kSoftInk});
}

/// Leaf through the parts, and away with it.
std::optional<Wish> buttonsOf(const Job& job, const PartCard& card, std::size_t pages, const Area& area,
                              const Surface& surface) {
    Drafts& drafts = surface.drafts();
    const double gap = surface.px(6.0);
    const PartId before = furtherOn(job.frame, card.id, -1);
    const PartId after = furtherOn(job.frame, card.id, 1);
    std::optional<Wish> wish;
    const std::string page = fmt::format("page {} of {}", drafts.aboutPage + 1, pages);
    if (pages > 1 && button(surface, columnOf(area, 4, 0, gap), "Read on",
                            {.leading = drafts.aboutPage + 1 < pages, .second = page}))
        drafts.aboutPage = (drafts.aboutPage + 1) % pages;
    if (button(surface, columnOf(area, 4, 1, gap), "Part before", {.second = setNameOf(job.frame, before)}))
        wish = ReadAbout{About{before}};
    if (button(surface, columnOf(area, 4, 2, gap), "Part after", {.second = setNameOf(job.frame, after)}))
        wish = ReadAbout{About{after}};
    if (button(surface, columnOf(area, 4, 3, gap), "Close", {.second = "Escape"}))
        wish = ReadAbout{};
    return wish;
}

/// What is kept back may be looked at first; returns the height used.
double lookFirst(const Job& job, const PartCard& card, const Area& area, const Surface& surface,
                 std::optional<Wish>& wish) {
    if (!keepsBack(job, card) || !mayLookFirst(job, card.id))
        return 0.0;
    const double height = std::max(surface.target, surface.px(44.0));
    const double width = surface.px(190.0);
    const Area words{area.x + surface.px(10.0), area.y, area.width - width - surface.px(28.0), height};
    fillArea({area.x, area.y, area.width, height}, palette::kNotice, surface.px(5.0));
    const double used = heightOf(words.width, whenToldWords(job, card), surface.fonts().body);
    writeLines({words.x, words.middleY() - used / 2.0, words.width, used + 1.0}, whenToldWords(job, card),
               {surface.fonts().body, palette::kNoticeInk});
    if (button(surface, {area.right() - width, area.y, width, height}, "Show the demand",
               {.second = "it is noted"}))
        wish = LookFirst{seatOf(card.id)};
    return height + surface.px(8.0);
}

/// Another part, or more that may be told, is read from its first page.
void beginReading(const PartCard& card, bool keepsBack, Drafts& drafts) {
    const std::string reading = card.id.text + (keepsBack ? " kept back" : "");
    if (drafts.aboutRead == reading)
        return;
    drafts.aboutRead = reading;
    drafts.aboutPage = 0;
}

Area columnIn(const Area& text, std::size_t index, const Surface& surface) {
    return columnOf(text, static_cast<int>(kColumns), static_cast<int>(index), surface.px(22.0));
}

/// The text of the sheet in its columns.
struct Written {
    SheetPaper paper;
    std::vector<SheetColumn> columns{};
    std::size_t pages() const { return std::max<std::size_t>(1, (columns.size() + kColumns - 1) / kColumns); }
};

/// Large for whoever reads from farther off, and wherever one page holds it.
Written writtenOn(const Job& job, const PartCard& card, const Area& text, const Surface& surface) {
    const SheetText words = sheetTextOf(job, card);
    const Area column = columnIn(text, 0, surface);
    Written large{.paper = {surface, true}};
    large.columns = columnsOf(words, column, large.paper);
    if (job.use != Use::Practise || large.pages() == 1)
        return large;
    Written usual{.paper = {surface, false}};
    usual.columns = columnsOf(words, column, usual.paper);
    return usual;
}

void drawText(const Written& written, const Area& text, const Surface& surface) {
    const std::size_t first = surface.drafts().aboutPage * kColumns;
    for (std::size_t i = 0; i < kColumns && first + i < written.columns.size(); ++i)
        drawColumn(written.columns[first + i], columnIn(text, i, surface), written.paper);
}

} // namespace

std::optional<Wish> aboutSheet(const Job& job, const Area& area, const Surface& surface) {
    if (!job.about || area.empty())
        return std::nullopt;
    const Scope scope{surface, "about"};
    const PartCard card = partCardOf(job.frame, job.about->part);
    Drafts& drafts = surface.drafts();
    beginReading(card, keepsBack(job, card), drafts);
    const Places places = placesIn(area, surface);
    // Pictures lie under the panels: the sheet is drawn around them, so what stands on it comes after.
    ImDrawList& list = ink();
    list.ChannelsSplit(2);
    list.ChannelsSetCurrent(1);
    std::optional<Wish> wish = aboutPictures(job, card, places.pictures, surface);
    Area text = places.text;
    const double used = lookFirst(job, card, text, surface, wish);
    text = {text.x, text.y + used, text.width, text.height - used};
    const Written written = writtenOn(job, card, text, surface);
    drafts.aboutPage = std::min(drafts.aboutPage, written.pages() - 1);
    drawText(written, text, surface);
    drawTitle(card, places.title, surface);
    if (auto asked = buttonsOf(job, card, written.pages(), places.buttons, surface))
        wish = std::move(asked);
    list.ChannelsSetCurrent(0);
    fillAround(area, surface.frame.portraits, palette::kSheet);
    frameArea(area, palette::kAccent, 0.0, 1.5);
    list.ChannelsMerge();
    return wish;
}

} // namespace gapwise
