#pragma once

#include "viewer/workplace/workplace.h"

#include <filesystem>
#include <string>
#include <vector>

namespace gapwise {

/// A workplace on the bundled data with a state folder of its own, which goes with it.
class AtHand {
public:
    AtHand();
    ~AtHand();
    AtHand(const AtHand&) = delete;
    AtHand& operator=(const AtHand&) = delete;

    /// Opens a bundled frame.
    void start(const std::string& frame, Use use);
    /// Opens a bundled build sheet by its name without endings.
    void startSheet(const std::string& sheet, Use use);
    /// A sheet of the tests (`alder-72-plate-on`: built up to the seal plate, invented), else a bundled one.
    std::filesystem::path sheetFile(const std::string& sheet) const;
    /// As if the sheet that the job began with had these steps done, in this order.
    void doneSoFar(const std::vector<std::string>& steps);
    /// The steps that the frame lists before this one.
    std::vector<std::string> stepsBefore(const std::string& step) const;
    /// Grants an act; the test fails when it is refused.
    void act(const Event& event);
    /// Places a part into its own seat.
    void place(const char* part);
    void placeIn(const char* part, const char* seatPart);
    /// Points the index of the part in the seat of `part` to a clock, relative to what carries it.
    void point(const char* part, Side side, double degrees);
    void face(const char* part, Side looks);

    const Job& job() const { return *workplace.job; }
    const Build& build() const { return workplace.job->state.build; }

    Workplace workplace{};

private:
    std::filesystem::path state_{};
};

} // namespace gapwise
