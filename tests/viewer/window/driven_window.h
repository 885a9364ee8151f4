#pragma once

#include "tests/viewer/window/child_process.h"

#include <nlohmann/json.hpp>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace gapwise::test {

/// A display without a screen, of the test's own (Xvfb), as large as the window.
class Display {
public:
    static constexpr int kWidth = 1366;
    static constexpr int kHeight = 768;

    /// `options` as Xvfb knows them: `-extension GLX`. `scratch` is a folder for its output.
    Display(const std::string& scratch, const std::vector<std::string>& options);

    const std::string& name() const { return name_; } ///< `:7`, for DISPLAY.
    bool asleep() const { return server_->asleep(); }

private:
    std::optional<ChildProcess> server_{};
    std::string name_{};
};

struct Point {
    double x = 0.0;
    double y = 0.0;
};

struct Rectangle {
    double x = 0.0;
    double y = 0.0;
    double width = 0.0;
    double height = 0.0;

    Point middle() const { return {x + width / 2.0, y + height / 2.0}; }
};

/// The folders of one person: what the program keeps, and where it is started.
struct Person {
    std::string state{};  ///< XDG_STATE_HOME.
    std::string folder{}; ///< Where the program runs, and where the test's own files lie.
};

/// The real window, driven as a hand does: pressed by name, dragged, typed into. What cannot be done within a
/// minute throws with what the window showed and said. Nothing is done by the clock: after each movement of
/// the hand the window is waited for until it has drawn it and rests.
class DrivenWindow {
public:
    /// `gapwise open ARGUMENTS` on a display.
    DrivenWindow(const Display& display, const Person& person, const std::vector<std::string>& arguments);

    /// Whether a thing that can be pressed is on the screen now: `tray/SR-CO`.
    bool shows(const std::string& target) const;
    /// Waits until it is.
    Rectangle areaOf(const std::string& target);
    void press(const std::string& target);
    void pressAt(const Point& point);
    /// Presses at the first point, moves over all of them, lets go at the last.
    void drag(const std::vector<Point>& way);
    /// The same without letting go.
    void dragAndHold(const std::vector<Point>& way);
    void letGo();
    void key(const std::string& key); ///< A short tap, as xdotool names it: `f`, `ctrl+z`.
    void type(const std::string& text);

    /// Waits until something is so; `what` is said when it never is.
    void waitUntil(const std::string& what, const std::function<bool()>& so);
    /// Pictures drawn so far.
    long pictures() const;
    /// The number of the newest picture, if something that begins so can be pressed in it; else 0.
    long pictureShowing(const std::string& beginning) const;
    /// Waits until it has drawn more than `before` pictures and sleeps.
    void rest(long before);

    void kill(); ///< As when the power goes.
    /// What it has said on its streams.
    std::string said() const;

private:
    nlohmann::json told() const;
    void xdotool(const std::vector<std::string>& words) const;
    void moveTo(const Point& point);
    [[noreturn]] void giveUp(const std::string& what) const;

    Person person_{};
    const Display& display_;
    std::optional<Point> hand_{};
    std::optional<ChildProcess> program_{};
};

/// Events of the only or newest journal of a person, as they stand in the file: one a line, without the head.
std::vector<nlohmann::json> journalOf(const Person& person);
/// The files of all of a person's journals, oldest first.
std::vector<std::string> journalsOf(const Person& person);

} // namespace gapwise::test
