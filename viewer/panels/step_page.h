#pragma once

#include "viewer/panels/card_flow.h"
#include "viewer/panels/parts.h"
#include "viewer/workplace/procedure_now.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// What the pages of a step's card are made of.
struct StepPage {
    const Job& job;
    const Step& step;
    const Surface& surface;
    CardFlow& flow;
    std::optional<Wish>& wish;

    StepDrafts& drafts() const { return surface.drafts().stepCard; }
    double rowHeight() const { return surface.bench ? surface.target : surface.px(36.0); }
};

/// The pages, each adding what it tells to the flow.
void addCautions(StepPage& page);
void addActs(StepPage& page);
void addWitness(StepPage& page);
void addQuestion(StepPage& page, StepQuestion question);
void addHoldPoint(StepPage& page);
/// Passes it with the names that were typed, or says at each field what is missing.
void passHoldPoint(const StepPage& page);
void addOpenPoints(StepPage& page);
void addSkipping(StepPage& page);
void addReopening(StepPage& page);

/// Wishes an act that somebody answers for: answers always, at the bench everything. While nobody is signed
/// on, that is asked first.
void sign(const StepPage& page, Event event);

/// A button over the width of a column.
void addButton(StepPage& page, const std::string& label, const ButtonLook& look,
               std::function<void()> pressed);

/// A tick box with words beside it: `done` once it is ticked, then pressing does nothing.
struct TickLook {
    std::string id{}; ///< Name of the target.
    std::string words{};
    bool ticked = false;
    std::string second{}; ///< Small, below.
};
void addTick(StepPage& page, const TickLook& look, std::function<void()> pressed);

/// A field with a button that says what was typed; what is wrong with it stands below.
struct FieldLook {
    std::string name{}; ///< Of the draft, and of the target.
    std::string label{};
    std::string hint{};
    std::string button{}; ///< Empty: no button, the text is only kept as a draft.
};
void addField(StepPage& page, const FieldLook& look, std::function<void(const std::string&)> said = {});

/// A field alone, with what is wrong with it below: as much as fits the area. True when enter was pressed.
bool draftField(const StepPage& page, const std::string& name, const std::string& hint, const Area& area);

/// A sentence of what does not fit, with its sign.
void addWarning(StepPage& page, const std::string& words);

/// Everybody who is named in this job, the last first.
std::vector<std::string> peopleOf(const Job& job);

} // namespace gapwise
