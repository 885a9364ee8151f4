#pragma once

#include "tests/viewer/workplace/at_hand.h"
#include "viewer/panels/panels.h"

#include <string>
#include <string_view>
#include <vector>

struct ImGuiContext;
typedef int ImGuiKey;

namespace gapwise::desk {

/// The panels with hands: a workplace, an ImGui context with no window, a mouse and keys. Every wish is
/// granted, as the window does it.
class Desk {
public:
    struct Size {
        int width = 1366;
        int height = 768;
    };
    Desk() : Desk{Size{}} {}
    explicit Desk(Size size);
    ~Desk();
    Desk(const Desk&) = delete;
    Desk& operator=(const Desk&) = delete;

    void start(const std::string& frame, Use use);
    void startSheet(const std::string& sheet, Use use);

    /// One picture; what was wished is granted.
    void frame();
    void frames(int count);

    void moveTo(double x, double y);
    void press();
    void release();
    void clickAt(double x, double y);
    /// Presses what is named, `card/Close`; the test fails when nothing is named so.
    void click(std::string_view target);
    void type(std::string_view letters);
    void key(ImGuiKey key, bool ctrl = false);

    /// The area of what is named; empty when nothing is named so.
    Area areaOf(std::string_view target) const;
    bool has(std::string_view target) const { return !areaOf(target).empty(); }

    const Job& job() const { return at.job(); }
    const Build& build() const { return at.build(); }
    Layout layout() const;

    /// Acts among the wishes, the last first.
    template <class E>
    const E* lastAct() const {
        const Act* act = wishes.empty() ? nullptr : std::get_if<Act>(&wishes.back());
        return act ? std::get_if<E>(&act->event) : nullptr;
    }

    /// A picture of the last frame, to look at: in the folder named by GAPWISE_PANEL_PICTURES, else nowhere.
    void picture(const std::string& name);

    AtHand at{};
    Workplace& workplace = at.workplace;
    PanelFrame panels{};
    std::vector<Wish> wishes{};

private:
    ImGuiContext* context_ = nullptr;
};

} // namespace gapwise::desk
