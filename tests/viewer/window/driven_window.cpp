#include "tests/viewer/window/driven_window.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <csignal>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <poll.h>
#include <sstream>
#include <stdexcept>
#include <thread>
#include <unistd.h>

namespace gapwise::test {

namespace {

using std::chrono::milliseconds;

/// Only a broken program or a machine at a standstill takes so long.
constexpr std::chrono::seconds kDeadline{60};
constexpr milliseconds kBetweenLooks{20};
/// So many looks in a row must find it asleep: at a single one it may just hand on to the display.
constexpr int kLooksAtRest = 5;

std::string textOf(const std::string& file) {
    const std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

/// The line that a child writes into a pipe; empty when it writes none.
std::string lineFrom(int descriptor) {
    std::string line;
    pollfd waiting{.fd = descriptor, .events = POLLIN, .revents = 0};
    char letter = 0;
    while (poll(&waiting, 1, static_cast<int>(milliseconds{kDeadline}.count())) > 0 &&
           read(descriptor, &letter, 1) == 1 && letter != '\n')
        line += letter;
    return line;
}

bool sameSpot(const Point& a, const Point& b) {
    return std::lround(a.x) == std::lround(b.x) && std::lround(a.y) == std::lround(b.y);
}

} // namespace

Display::Display(const std::string& scratch, const std::vector<std::string>& options) {
    int ends[2] = {-1, -1};
    if (pipe2(ends, O_CLOEXEC) != 0)
        throw std::runtime_error("no pipe");
    const std::string size = std::to_string(kWidth) + "x" + std::to_string(kHeight) + "x24";
    ChildStart start{
        .words = {"Xvfb", "-displayfd", std::to_string(ends[1]), "-screen", "0", size, "-nolisten", "tcp"},
        .outputTo = scratch + "/xvfb.log",
        .numberTo = ends[1]};
    start.words.insert(start.words.end(), options.begin(), options.end());
    server_.emplace(start);
    close(ends[1]);
    const std::string number = lineFrom(ends[0]);
    close(ends[0]);
    if (number.empty())
        throw std::runtime_error("Xvfb (package xvfb) does not start: " + textOf(start.outputTo));
    name_ = ":" + number;
}

DrivenWindow::DrivenWindow(const Display& display, const Person& person,
                           const std::vector<std::string>& arguments)
    : person_{person}, display_{display} {
    std::filesystem::remove(person_.folder + "/targets.json");
    ChildStart start{.words = {GAPWISE_TEST_BINARY_DIR "/gapwise", "open", "--width",
                               std::to_string(Display::kWidth), "--height", std::to_string(Display::kHeight),
                               "--targets", person_.folder + "/targets.json"},
                     .environment = {{"DISPLAY", display_.name()},
                                     {"WAYLAND_DISPLAY", ""},
                                     {"XDG_STATE_HOME", person_.state}},
                     .folder = person_.folder,
                     .outputTo = person_.folder + "/said.txt"};
    start.words.insert(start.words.end(), arguments.begin(), arguments.end());
    program_.emplace(start);
    rest(0);
}

bool DrivenWindow::shows(const std::string& target) const {
    const nlohmann::json now = told();
    return now.contains("targets") && now["targets"].contains(target);
}

Rectangle DrivenWindow::areaOf(const std::string& target) {
    waitUntil("to show " + target, [&] { return shows(target); });
    const nlohmann::json area = told()["targets"][target];
    return {area[0], area[1], area[2], area[3]};
}

void DrivenWindow::press(const std::string& target) {
    pressAt(areaOf(target).middle());
}

void DrivenWindow::pressAt(const Point& point) {
    drag({point});
}

void DrivenWindow::drag(const std::vector<Point>& way) {
    dragAndHold(way);
    letGo();
}

void DrivenWindow::dragAndHold(const std::vector<Point>& way) {
    moveTo(way.front());
    const long before = pictures();
    xdotool({"mousedown", "1"});
    rest(before);
    for (const Point& point : way)
        moveTo(point);
}

void DrivenWindow::letGo() {
    const long before = pictures();
    xdotool({"mouseup", "1"});
    rest(before);
}

void DrivenWindow::key(const std::string& key) {
    const long before = pictures();
    xdotool({"key", key});
    rest(before);
}

void DrivenWindow::type(const std::string& text) {
    const long before = pictures();
    xdotool({"type", "--delay", "40", text});
    rest(before);
}

void DrivenWindow::waitUntil(const std::string& what, const std::function<bool()>& so) {
    const auto last = std::chrono::steady_clock::now() + kDeadline;
    while (!so()) {
        if (!program_->running())
            giveUp(what + "; it ended with " + std::to_string(program_->ended()));
        if (std::chrono::steady_clock::now() > last)
            giveUp(what);
        std::this_thread::sleep_for(kBetweenLooks);
    }
}

long DrivenWindow::pictures() const {
    const nlohmann::json now = told();
    return now.contains("pictures") ? now["pictures"].get<long>() : 0;
}

long DrivenWindow::pictureShowing(const std::string& beginning) const {
    const nlohmann::json now = told();
    if (now.contains("targets"))
        for (const auto& [name, area] : now["targets"].items())
            if (name.starts_with(beginning))
                return now["pictures"].get<long>();
    return 0;
}

void DrivenWindow::rest(long before) {
    long count = before;
    int looks = 0;
    waitUntil("to rest", [&] {
        const long now = pictures();
        looks = now == count && display_.asleep() && program_->asleep() ? looks + 1 : 0;
        count = now;
        return count > before && looks >= kLooksAtRest;
    });
}

void DrivenWindow::kill() {
    program_->signal(SIGKILL);
    program_->ended();
}

std::string DrivenWindow::said() const {
    return textOf(person_.folder + "/said.txt");
}

nlohmann::json DrivenWindow::told() const {
    // The file is replaced as a whole: it is not there yet, or it is whole.
    return nlohmann::json::parse(textOf(person_.folder + "/targets.json"), nullptr, false);
}

void DrivenWindow::xdotool(const std::vector<std::string>& words) const {
    ChildStart start{.words = {"xdotool"},
                     .environment = {{"DISPLAY", display_.name()}},
                     .outputTo = person_.folder + "/xdotool.log"};
    start.words.insert(start.words.end(), words.begin(), words.end());
    if (ChildProcess{start}.ended() != 0)
        giveUp("xdotool (package xdotool) to do its work: " + textOf(start.outputTo));
}

void DrivenWindow::moveTo(const Point& point) {
    if (hand_ && sameSpot(*hand_, point))
        return;
    hand_ = point;
    const long before = pictures();
    xdotool({"mousemove", std::to_string(std::lround(point.x)), std::to_string(std::lround(point.y))});
    rest(before);
}

void DrivenWindow::giveUp(const std::string& what) const {
    throw std::runtime_error("waited in vain for the window " + what + "\nsaid: " + said() +
                             "\nshown: " + told().dump());
}

std::vector<std::string> journalsOf(const Person& person) {
    std::vector<std::string> files;
    std::error_code none;
    for (const auto& entry : std::filesystem::directory_iterator(person.state + "/gapwise", none))
        if (entry.path().extension() == ".journal")
            files.push_back(entry.path().string());
    std::ranges::sort(files);
    return files;
}

std::vector<nlohmann::json> journalOf(const Person& person) {
    std::vector<nlohmann::json> events;
    const std::vector<std::string> files = journalsOf(person);
    if (files.empty())
        return events;
    std::istringstream lines{textOf(files.back())};
    std::string line;
    std::getline(lines, line);
    while (std::getline(lines, line))
        events.push_back(nlohmann::json::parse(line));
    return events;
}

} // namespace gapwise::test
