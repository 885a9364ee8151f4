#include "tests/viewer/window/session.h"

#include <fstream>
#include <numbers>

namespace gapwise::test {

namespace {

constexpr const char* kHalf = "cut/half";
constexpr const char* kQuarter = "cut/quarter";
constexpr const char* kWhole = "cut/whole";
constexpr const char* kRing = "cut/ring";
constexpr const char* kOn = "cut/↻ 15°";
constexpr const char* kCompressorSide = "looks/Compressor side";

/// How the person stands, as it is kept for a program that is killed.
nlohmann::json standingOf(const Person& person) {
    const nlohmann::json kept =
        nlohmann::json::parse(std::ifstream{person.state + "/gapwise/open-job"}, nullptr, false);
    return kept.is_object() ? kept : nlohmann::json::object();
}

Point onRing(const Rectangle& ring, double clock) {
    const double angle = clock * std::numbers::pi / 180.0;
    const double radius = 0.3 * ring.width;
    return {ring.middle().x + radius * std::sin(angle), ring.middle().y - radius * std::cos(angle)};
}

} // namespace

TEST_F(Session, ACutTurnedByHandIsALookThatIsRemembered) {
    const auto keeps = [&](DrivenWindow& window, const char* section, double degrees) {
        window.waitUntil(std::string{"to keep a "} + section + " at " + std::to_string(degrees), [&] {
            const nlohmann::json kept = standingOf(person_);
            return kept.value("section", nlohmann::json{}) == section &&
                   kept.value("section_deg", -1.0) == degrees;
        });
    };
    {
        DrivenWindow window = open({sheetWithARing()});
        window.press(kCompressorSide);
        EXPECT_FALSE(window.shows(kRing)) << "the piece is whole";
        window.press(kHalf);
        keeps(window, "half", 90.0);
        window.press(kOn);
        keeps(window, "half", 105.0);
        const Rectangle ring = window.areaOf(kRing);
        window.drag({onRing(ring, 105.0), onRing(ring, 140.0), onRing(ring, 180.0)});
        keeps(window, "half", 180.0);
        window.press(kQuarter);
        window.key("X");
        keeps(window, "quarter", 30.0);
        window.kill();
    }
    DrivenWindow again = open({});
    EXPECT_TRUE(again.shows(kRing)) << "it is cut open as it was";
    again.key("x");
    keeps(again, "quarter", 45.0);
    again.press(kWhole);
    EXPECT_FALSE(again.shows(kRing));
    EXPECT_TRUE(journalOf(person_).empty()) << "no event";
}

} // namespace gapwise::test
