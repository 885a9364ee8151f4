#include "viewer/panels/box.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/step_page.h"
#include "viewer/panels/typed_number.h"

#include <imgui_stdlib.h>

#include <array>

namespace gapwise {

namespace {

constexpr std::array<Role, 4> kRoles{Role::Technician, Role::Apprentice, Role::Instructor, Role::Inspector};

std::string capital(std::string_view words) {
    std::string text{words};
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

/// The name is typed, or tapped where it is known already.
void nameRows(const Job& job, const Area& field, const Area& known, const Surface& surface) {
    Drafts& drafts = surface.drafts();
    ImGui::SetCursorScreenPos(
        point(field.x, field.y + (field.height - static_cast<double>(ImGui::GetFrameHeight())) / 2.0));
    ImGui::SetNextItemWidth(static_cast<float>(field.width));
    surface.frame.targets.push_back({surface.frame.scope + "name", field});
    ImGui::InputTextWithHint("##name", "name, as it stands in the record", &drafts.who);
    std::vector<std::string> people = peopleOf(job);
    constexpr std::size_t kMost = 4;
    people.resize(std::min(people.size(), kMost));
    for (std::size_t i = 0; i < people.size(); ++i)
        if (button(surface, columnOf(known, static_cast<int>(kMost), static_cast<int>(i), surface.px(6.0)),
                   people[i], {.chosen = drafts.who == people[i]}))
            drafts.who = people[i];
}

void roleRow(const Area& area, const Surface& surface) {
    Drafts& drafts = surface.drafts();
    for (std::size_t i = 0; i < kRoles.size(); ++i)
        if (button(surface,
                   columnOf(area, static_cast<int>(kRoles.size()), static_cast<int>(i), surface.px(6.0)),
                   capital(nameOf(kRoles.at(i))), {.chosen = drafts.role == kRoles.at(i)}))
            drafts.role = kRoles.at(i);
}

} // namespace

std::optional<Wish> whoBox(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "who"};
    Drafts& drafts = surface.drafts();
    const Area body = drawBox(area, "Who works here from now on?", surface);
    const double gap = surface.px(8.0);
    const double height =
        std::min(std::max(surface.target, surface.px(40.0)), (body.height - 2.0 * gap) / 3.0);
    const auto row = [&](int index) {
        return Area{body.x, body.y + index * (height + gap), body.width, height};
    };
    const bool anybody = !peopleOf(job).empty();
    const Area first = row(0);
    const double half = (first.width - gap) / 2.0;
    nameRows(job, {first.x, first.y, anybody ? half : first.width, height},
             {first.x + half + gap, first.y, half, height}, surface);
    roleRow(row(1), surface);
    const Area last = row(2);
    const std::string name = trimmedWords(drafts.who);
    if (button(surface, columnOf(last, 2, 0, gap), "Not now"))
        drafts.box = Drafts::Box::None;
    if (!button(surface, columnOf(last, 2, 1, gap), "Sign on",
                {.enabled = !name.empty(), .leading = !name.empty()}))
        return std::nullopt;
    drafts.box = Drafts::Box::None;
    return Act{PersonCame{name, drafts.role}};
}

} // namespace gapwise
