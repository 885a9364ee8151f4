#pragma once

#include "models/check/check.h"
#include "models/frame/read_frame.h"
#include "models/job/journal.h"
#include "models/job/log.h"
#include "models/measure/measure.h"
#include "viewer/workplace/offered.h"
#include "viewer/workplace/procedure_now.h"
#include "viewer/workplace/stack_now.h"
#include "viewer/workplace/standing.h"
#include "viewer/workplace/wish.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// What a person has before him: a job with its log, how he looks at it, and what he has in hand. A value
/// with no window and no OpenGL; the window, the command line and a replay drive it through the same wishes.

/// A message that stays until it is put away: why a wish was refused, or what was done.
struct Note {
    std::string words{};
    bool refused = true;
};

/// The job that is open.
struct Job {
    Frame frame{};
    std::optional<Frame> sister{};
    Use use = Use::Practise;
    std::string name{};              ///< Of the build sheet, or `not saved as a sheet`.
    JournalHead head{};              ///< What it began with.
    std::filesystem::path savedTo{}; ///< The build sheet that it was last saved to; empty: none yet.
    Log log{};
    JobState state{};
    Checked checked{};        ///< Points into `frame`: a Job moves, it is not copied.
    ProcedureNow procedure{}; ///< Likewise.
    Bench bench{};            ///< The instruments that lie here.
    MeasureReport measured{}; ///< What the readings say; points into `frame` and `state`.
    StackNow stack{};         ///< The chains as drawings and tables show them; points into `frame`.
    std::optional<PartId> inHand{};
    std::optional<FastenerId> fastenerInHand{};       ///< Never together with a part.
    std::optional<MeasurementId> measurementInHand{}; ///< Never together with a part or a fastener.
    std::optional<StepId> step{};                     ///< Whose card is open; under that of what is in hand.
    bool slip = false;                                ///< `Where we stopped` lies open over everything.
    /// A turning of the piece that waits for an answer, because nothing holds the rotor.
    std::optional<AttitudeChanged> turnAsked{};
    std::optional<About> about{}; ///< The sheet that lies open over everything.
    /// The sheet of measurements, over everything as well; under the card of the one that is in hand.
    std::optional<MeasuresPage> measures{};
    std::optional<Turning> turning{}; ///< A gap that is being turned at this moment.
    Standpoint standpoint{};

    Job() = default;
    Job(Job&&) = default;
    Job& operator=(Job&&) = default;
    Job(const Job&) = delete;
    Job& operator=(const Job&) = delete;

    /// Whether a part, a fastener or a measurement is in hand.
    bool handFull() const { return inHand || fastenerInHand || measurementInHand; }
    /// Whether a card lies over tray and line: of what is in hand, or of a step.
    bool cardOpen() const { return handFull() || step; }
    /// The attitude of the build; an unsaid one is level, inlet on top, seen from the compressor side.
    Attitude attitude() const;
    /// What the person sees from where he stands, in the attitude of the piece.
    View standingView() const;
    /// What he looks at now: the picture, where it offers a clock; at the bench always the piece as he
    /// stands.
    View lookingView() const;
};

struct Workplace {
    DataFolder data{};
    std::filesystem::path stateFolder{};
    Offered offered{};
    std::optional<Job> job{}; ///< Nothing: the opening screen.
    std::optional<Journal> journal{};
    std::optional<Note> note{};
    std::optional<PersonStanding> remembered{}; ///< As it is on disk.
};

/// A workplace with the opening screen and its lists. Journals that cannot be read are left out.
Workplace openWorkplace(const DataFolder& data, const std::filesystem::path& stateFolder);

/// What the program begins with, made ready but not begun: nothing is written yet.
struct Beginning {
    std::optional<Job> job{};        ///< Nothing: the opening screen.
    std::filesystem::path journal{}; ///< Of the job that goes on; empty: a new one.
    std::optional<Note> note{};      ///< Why the job that was cut off cannot go on.
};

/// The two halves of `beginWith`, so that a window can be made between them: without one, no job is begun.
Result<Beginning> beginningOf(const Workplace& workplace, const std::string& what, Use use);
void begin(Workplace& workplace, Beginning beginning);

/// Opens a frame (id or path) or a build sheet for a use; with nothing named, goes on with the job that the
/// program was cut off from, or stays at the opening screen.
Errors beginWith(Workplace& workplace, const std::string& what, Use use);

/// Keeps on disk how the person looks at the job that is open and what he has in hand. Costs nothing while
/// nothing changed; a disk that is full is no reason to stop him.
void rememberStanding(Workplace& workplace);

/// Leaves the job in good order: the next start begins at the opening screen.
void leave(Workplace& workplace);

/// Grants a wish: an act is refused with its reason in `note`, or is on disk before it is in the job.
/// Everything else changes what is shown only.
void grant(Workplace& workplace, const Wish& wish);

/// Whether the demanded window and the verdict of a seat may be shown now. In practice: when its part was set
/// down with a clock, if it has one, and is not being turned. At the bench: once what is seen was said, or
/// looked at first. When showing: always.
bool demandShown(const Job& job, const SeatId& seat);

/// The name of the person who works now; empty while nobody is signed on.
std::string whoWorks(const Job& job);

/// Whether somebody said in this job how the piece lies.
bool lyingWasSaid(const Job& job);

/// The slip for the next shift as text, one thing a line.
std::string slipText(const Job& job);

/// The seat that the part in hand sits in, if it does.
const Seating* seatingInHand(const Job& job);

/// What is left on the tray, in order of assembly: the parts that are in no seat, of a set of screws its
/// first piece only.
std::vector<PartId> partsOnTray(const Job& job);

} // namespace gapwise
