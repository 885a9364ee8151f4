#include "viewer/panels/opening.h"

#include "viewer/panels/draw.h"
#include "viewer/panels/open_path.h"
#include "viewer/panels/opening_words.h"
#include "viewer/panels/pager.h"

#include <imgui_stdlib.h>

#include <algorithm>
#include <string>

namespace gapwise {

namespace {

void heading(std::string_view words, const Area& area, const Surface& surface) {
    writeLine({area.x, area.y, area.width, surface.px(24.0)}, words,
              {surface.fonts().strong, palette::kSoftInk});
}

/// The end of a bore with its rings; a pinned bush shows its pin below.
void drawBore(const OfferedFrame& frame, const Area& area) {
    const Round rim{area.middleX(), area.middleY(), std::min(area.width, area.height) * 0.46};
    ink().AddCircleFilled(point(rim.x, rim.y), static_cast<float>(rim.radius), palette::kSteelLight, 48);
    ink().AddCircleFilled(point(rim.x, rim.y), static_cast<float>(rim.radius * 0.74), palette::kSheet, 48);
    drawCircle(rim, {palette::kSoftInk, 1.5});
    drawCircle(rim.withRadius(rim.radius * 0.74), {palette::kSoftInk, 1.2});
    const Round ring = rim.withRadius(rim.radius * 0.60);
    drawArc(ring, Arc{Degrees{105.0}, Degrees{330.0}}, {palette::kInk, rim.radius * 0.10});
    drawCircle(rim.withRadius(rim.radius * 0.40), {IM_COL32(0xb2, 0x8b, 0x4d, 0xff), rim.radius * 0.20});
    if (frame.variant == "pinned")
        ink().AddLine(rim.at(Degrees{180.0}, 0.30), rim.at(Degrees{180.0}, 0.56), palette::kInk,
                      static_cast<float>(rim.radius * 0.12));
}

bool frameTile(const OfferedFrame& frame, const Area& area, const Surface& surface) {
    const Pressed pressed = pressable(surface, frame.id.c_str(), area);
    fillArea(area, pressed.hovered ? palette::kAccentLight : palette::kSheet, surface.px(8.0));
    frameArea(area, pressed.hovered ? palette::kAccent : palette::kHairline, surface.px(8.0));
    const Area inner = area.inset(surface.px(14.0));
    const double picture = std::min(inner.height, surface.px(76.0));
    drawBore(frame, {inner.x, inner.y, picture, picture});
    const double left = inner.x + picture + surface.px(12.0);
    const double width = inner.right() - left;
    writeLine({left, inner.y, width, surface.px(24.0)}, frame.size, {surface.fonts().title});
    const double top = inner.y + surface.px(27.0);
    const double used = writeLines({left, top, width, inner.bottom() - top}, variantWords(frame.variant),
                                   {surface.fonts().body});
    const double below = top + used + surface.px(2.0);
    writeLines({left, below, width, inner.bottom() - below}, ringWords(frame),
               {surface.fonts().small, palette::kSoftInk});
    return pressed.done;
}

bool sampleRow(const OfferedSample& sample, const Area& area, const Surface& surface) {
    const Pressed pressed = pressable(surface, sample.file.stem().stem().string().c_str(), area);
    fillArea(area, pressed.hovered ? palette::kAccentLight : palette::kSheet, surface.px(5.0));
    frameArea(area, pressed.hovered ? palette::kAccent : palette::kHairline, surface.px(5.0));
    const Area inner = area.inset(surface.px(4.0));
    const double left = inner.x + surface.px(8.0);
    writeLine({left, inner.y, inner.right() - left, inner.height * 0.55}, sampleTitle(sample),
              {surface.fonts().body});
    writeLine({left, inner.y + inner.height * 0.55, inner.right() - left, inner.height * 0.45},
              sampleWords(sample), {surface.fonts().small, palette::kSoftInk});
    return pressed.done;
}

/// The sample builds of one frame below each other, side by side in twos where they are too many for that.
std::optional<Wish> samplesOf(const Workplace& workplace, const OfferedFrame& frame, const Area& area,
                              const Surface& surface) {
    const double row = openingRow(surface);
    const double gap = surface.px(6.0);
    std::vector<const OfferedSample*> samples;
    for (const OfferedSample& sample : workplace.offered.samples)
        if (sample.frame == frame.id)
            samples.push_back(&sample);
    const bool fits = static_cast<double>(samples.size()) * (row + gap) - gap <= area.height;
    const int columns = fits ? 1 : 2;
    std::optional<Wish> wish;
    for (int i = 0; const OfferedSample* sample : samples) {
        const Area line{area.x, area.y + i / columns * (row + gap), area.width, row};
        if (line.bottom() <= area.bottom() + 1.0 &&
            sampleRow(*sample, columnOf(line, columns, i % columns, gap), surface))
            wish = StartJob{.use = surface.drafts().use, .sheet = sample->file};
        ++i;
    }
    return wish;
}

/// Those in which something was done: nobody looks for the others.
std::vector<OfferedJob> jobsWithActs(const Offered& offered) {
    std::vector<OfferedJob> jobs = offered.jobs;
    std::erase_if(jobs, [](const OfferedJob& job) { return job.acts == 0; });
    return jobs;
}

bool jobTile(const Offered& offered, const OfferedJob& job, const Area& area, const Surface& surface) {
    const Pressed pressed = pressable(surface, job.journal.stem().string().c_str(), area);
    fillArea(area, pressed.hovered ? palette::kAccentLight : palette::kSheet, surface.px(6.0));
    frameArea(area, pressed.hovered ? palette::kAccent : palette::kHairline, surface.px(6.0));
    const Area inner = area.inset(surface.px(8.0));
    writeLine({inner.x, inner.y, inner.width, inner.height / 2.0}, jobTitle(job, offered.frames),
              {surface.fonts().strong});
    writeLine({inner.x, inner.y + inner.height / 2.0, inner.width, inner.height / 2.0},
              jobWords(job, offered.asOf), {surface.fonts().small, palette::kSoftInk});
    return pressed.done;
}

} // namespace

std::optional<Wish> frameShelf(const Workplace& workplace, const Area& area, const Surface& surface) {
    const std::vector<OfferedFrame>& frames = workplace.offered.frames;
    heading("Begin with an empty housing", area, surface);
    const double gap = surface.px(14.0);
    const double top = area.y + surface.px(28.0);
    const double tile = surface.px(106.0);
    const Area tiles{area.x, top, area.width, tile};
    const Area rest{area.x, tiles.bottom() + surface.px(46.0), area.width,
                    area.bottom() - tiles.bottom() - surface.px(46.0)};
    if (frames.empty())
        writeLine(tiles, "No frames were found.", {surface.fonts().body, palette::kSoftInk});
    heading("or with a sample build of it", {area.x, tiles.bottom() + surface.px(16.0), area.width, 0.0},
            surface);
    const auto columns = static_cast<int>(std::max<std::size_t>(frames.size(), 3));
    std::optional<Wish> wish;
    for (int i = 0; const OfferedFrame& frame : frames) {
        {
            const Scope scope{surface, "frame"};
            if (frameTile(frame, columnOf(tiles, columns, i, gap), surface))
                wish = StartJob{.frame = frame.id, .use = surface.drafts().use};
        }
        const Scope scope{surface, "sample"};
        if (const auto sample = samplesOf(workplace, frame, columnOf(rest, columns, i, gap), surface))
            wish = sample;
        ++i;
    }
    return wish;
}

std::optional<Wish> jobsRow(const Workplace& workplace, const Area& area, const Surface& surface) {
    const Offered& offered = workplace.offered;
    const Scope scope{surface, "job"};
    heading("Go on where you left", area, surface);
    const Area row{area.x, area.y + surface.px(30.0), area.width, area.height - surface.px(30.0)};
    const std::vector<OfferedJob> jobs = jobsWithActs(offered);
    if (jobs.empty())
        writeLine(row, "No job was begun here yet. Every job that you begin is kept as it stands.",
                  {surface.fonts().body, palette::kSoftInk});
    const RowOf wanted{.count = jobs.size(),
                       .leastWidth = surface.px(226.0),
                       .mostWidth = surface.px(300.0),
                       .scroll = surface.drafts().listScroll};
    const Page page = pageOf(wanted, row, surface);
    std::optional<Wish> wish;
    for (std::size_t i = page.first; i < page.first + page.count && i < jobs.size(); ++i)
        if (jobTile(offered, jobs[i], page.place(i, surface.px(10.0)), surface))
            wish = ContinueJob{jobs[i].journal};
    surface.drafts().listScroll = static_cast<double>(page.first) + pageButtons(page, wanted, row, surface);
    return wish;
}

std::optional<Wish> pathField(Use use, const Area& area, const Surface& surface) {
    std::string& path = surface.drafts().openPath;
    const double width = std::max(surface.px(110.0), surface.target);
    const double field = std::min(area.width - width - surface.px(8.0), surface.px(620.0));
    ImGui::SetCursorScreenPos(
        point(area.x, area.y + (area.height - static_cast<double>(ImGui::GetFrameHeight())) / 2.0));
    ImGui::SetNextItemWidth(static_cast<float>(field));
    surface.frame.targets.push_back({surface.frame.scope + "path", {area.x, area.y, field, area.height}});
    const bool enter = ImGui::InputTextWithHint("##path", "path of a build sheet or a frame file", &path,
                                                ImGuiInputTextFlags_EnterReturnsTrue);
    const Area open{area.x + field + surface.px(8.0), area.y, width, area.height};
    const bool pressed = button(surface, open, "Open", {.enabled = !path.empty()});
    if (path.empty() || !(enter || pressed))
        return std::nullopt;
    return openTyped(path, use);
}

} // namespace gapwise
