#include "tests/benchmarks/median.h"
#include "tests/viewer/command/run_program.h"
#include "tests/viewer/window/names.h"
#include "tests/viewer/window/ring_on_dial.h"

#include <fmt/format.h>

#include <array>
#include <chrono>
#include <fcntl.h>
#include <stdexcept>
#include <thread>
#include <unistd.h>

namespace {

using namespace gapwise::test;

constexpr int kStarts = 15;
constexpr int kReleases = 9;
constexpr std::chrono::seconds kIdle{10};

/// Milliseconds from the start of a process until it says that its first picture stands.
double firstPictureOf(const std::vector<std::string>& words, const Display& display, const Person& person) {
    std::array<int, 2> ends{-1, -1};
    if (pipe2(ends.data(), O_CLOEXEC) != 0)
        throw std::runtime_error("no pipe");
    const auto start = std::chrono::steady_clock::now();
    const ChildProcess program{{.words = words,
                                .environment = {{"DISPLAY", display.name()},
                                                {"WAYLAND_DISPLAY", ""},
                                                {"XDG_STATE_HOME", person.state}},
                                .folder = person.folder,
                                .outputTo = "/dev/fd/" + std::to_string(ends[1])}};
    std::string said;
    char letter = 0;
    while (!said.ends_with("first picture") && read(ends[0], &letter, 1) == 1)
        said += letter;
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
    close(ends[0]);
    close(ends[1]);
    return taken.count();
}

std::string program(const char* name) {
    return std::string{GAPWISE_TEST_BINARY_DIR "/"} + name;
}

/// In turns, so that all meet the same machine.
void firstPictures(const std::string& build, const Display& display, const Person& person) {
    const std::vector<std::string> empty{program("empty_window")};
    const std::vector<std::string> opening{program("gapwise"), "open", "--figures"};
    std::vector<std::string> job = opening;
    job.push_back(build);
    std::vector<double> emptyMs;
    std::vector<double> openingMs;
    std::vector<double> jobMs;
    for (int i = 0; i < kStarts; ++i) {
        const ScratchFolder own; // Else a start would go on with the job of the one before.
        const Person fresh{own.path("state"), person.folder};
        emptyMs.push_back(firstPictureOf(empty, display, fresh));
        openingMs.push_back(firstPictureOf(opening, display, fresh));
        jobMs.push_back(firstPictureOf(job, display, fresh));
    }
    const double least = gapwise::bench::medianOf(emptyMs);
    const auto print = [&](const char* what, double ms) {
        fmt::print("  {:<28} {:6.0f} ms, ratio {:.2f}\n", what, ms, ms / least);
    };
    fmt::print("first picture after the start of the process, median of {} starts\n", kStarts);
    print("empty GLFW and Dear ImGui", least);
    print("opening screen", gapwise::bench::medianOf(openingMs));
    print("alder-72-good on its bench", gapwise::bench::medianOf(jobMs));
}

void picturesWhileIdle(const std::string& build, const Display& display, const Person& person) {
    const DrivenWindow window{display, person, {build}};
    const long before = window.pictures();
    std::this_thread::sleep_for(kIdle);
    fmt::print("pictures drawn in {} s of idling: {}\n", kIdle.count(), window.pictures() - before);
}

/// The ring is dragged to and fro between two wrong clocks; its findings are counted on the card once it is
/// let go.
void picturesToTheVerdict(const std::string& sheet, const Display& display, const Person& person) {
    DrivenWindow window{display, person, {sheet}};
    window.press(names::kItsSeat);
    const Rectangle dial = window.areaOf(names::kCompressorDial);
    std::vector<double> pictures;
    double at = 90.0;
    for (int i = 0; i < kReleases; ++i) {
        const double to = i % 2 == 0 ? 220.0 : 160.0;
        window.dragAndHold({onSrCo(dial, at), onSrCo(dial, (at + to) / 2.0), onSrCo(dial, to)});
        at = to;
        const long before = window.pictures();
        long shown = 0;
        std::jthread looking{[&](const std::stop_token& enough) {
            while (shown == 0 && !enough.stop_requested())
                shown = window.pictureShowing(names::kFindingOfSeveral);
        }};
        window.letGo();
        looking.request_stop();
        looking.join();
        pictures.push_back(static_cast<double>(shown - before));
    }
    fmt::print(
        "pictures from letting go to the verdict, median of {}: {:.0f} (the first takes the letting go)\n",
        kReleases, gapwise::bench::medianOf(pictures));
}

} // namespace

int main() {
    const ScratchFolder scratch;
    const Person person{scratch.path("state"), scratch.path("")};
    const Display display{scratch.path(""), {}};
    const std::string build = GAPWISE_TEST_SHARE "/builds/alder-72-good.build.json";
    firstPictures(build, display, person);
    picturesWhileIdle(build, display, person);
    const ScratchFolder other;
    picturesToTheVerdict(other.write("ring.build.json", ringSheet()), display,
                         {other.path("state"), other.path("")});
}
