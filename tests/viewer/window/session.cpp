#include "tests/viewer/window/session.h"

namespace gapwise::test {

DrivenWindow Session::open(const std::vector<std::string>& arguments) {
    return DrivenWindow{display_, person_, arguments};
}

std::vector<nlohmann::json> Session::journal(DrivenWindow& window, std::size_t events) const {
    window.waitUntil("to keep " + std::to_string(events) + " events",
                     [&] { return journalOf(person_).size() >= events; });
    return journalOf(person_);
}

} // namespace gapwise::test
