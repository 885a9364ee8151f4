#include "viewer/workplace/job_opening.h"

#include "geometry/base/write_file.h"
#include "models/build/write_build.h"

#include <fmt/format.h>

#include <chrono>

namespace gapwise {

namespace {

void refuse(Workplace& workplace, const Errors& errors) {
    workplace.note = Note{describeAll(errors), true};
}

void judge(Job& job, const Build& build) {
    job.checked = checkBuild(
        job.frame, build,
        CheckOptions{.sister = job.sister ? &*job.sister : nullptr, .currentView = job.lookingView()});
}

/// Who looks from elsewhere sees other clocks; nothing was done.
void judgeFromHere(Job& job) {
    judge(job, job.state.build);
    job.procedure = procedureNow(job);
}

void refresh(Job& job) {
    job.state = stateOf(job.frame, job.log);
    judgeFromHere(job);
    job.measured = measureReport(job.frame, job.state.build, job.bench, {});
    job.stack = stackNow(job);
    drawShownChain(job);
}

/// Whether the piece itself moves from one attitude to the other, in which a loose rotor falls out: a piece
/// that stands is only walked round on its bench.
bool movesLooseRotor(const Attitude& from, const Attitude& to) {
    const bool level = from.up == EndUp::Level && to.up == EndUp::Level;
    return from.up != to.up || (level && !(from == to));
}

/// Before a class a gap is judged while it turns.
void judgeTurning(Job& job) {
    if (job.use != Use::Show || !job.turning)
        return judge(job, job.state.build);
    const IndexTurned turned{job.turning->seat, job.turning->index, job.standingView()};
    judge(job, withEvent(job.frame, job.state.build, turned));
}

/// A new file in the state folder, named by the present moment.
std::filesystem::path newJournalFile(const std::filesystem::path& folder, const std::string& frame) {
    const auto now = std::chrono::system_clock::now().time_since_epoch();
    const auto milliseconds = std::chrono::duration_cast<std::chrono::milliseconds>(now).count();
    return folder / fmt::format("{:015}-{}{}", milliseconds, std::filesystem::path{frame}.stem().string(),
                                kJournalEnding);
}

class Grant {
public:
    explicit Grant(Workplace& workplace) : workplace_{workplace} {}

    void operator()(const StartJob& wish) const {
        const Result<JournalHead> head = headOf(wish);
        if (!head)
            return refuse(workplace_, head.errors());
        begin(*head);
    }

    void operator()(const ContinueJob& wish) const {
        Result<Job> job = continued(workplace_.data, wish.journal);
        if (!job)
            return refuse(workplace_, job.errors());
        begin(std::move(job).value(), wish.journal);
        if (workplace_.job && !workplace_.job->log.events.empty())
            stopWhereWeStopped(*workplace_.job);
    }

    /// With a journal that is there already, or a new one where `file` is empty.
    void begin(Job job, const std::filesystem::path& file) const {
        Result<Journal> journal =
            file.empty()
                ? Journal::create(newJournalFile(workplace_.stateFolder, job.frame.id.text), job.head)
                : Journal::reopen(file);
        if (!journal)
            return refuse(workplace_, journal.errors());
        open(std::move(job), std::move(journal).value());
    }

    void operator()(const Act& wish) const {
        if (!workplace_.job)
            return;
        if (const auto* lies = std::get_if<AttitudeChanged>(&wish.event))
            return layAnew(*lies);
        if (!record(wish.event))
            return;
        // Nobody puts on what he does not see.
        const auto* placed = std::get_if<PartPlaced>(&wish.event);
        const Part* part = placed ? workplace_.job->frame.part(placed->part) : nullptr;
        if (part && part->casing)
            workplace_.job->standpoint.casings = true;
    }

    void operator()(const TurnPiece& wish) const {
        if (!workplace_.job)
            return;
        layAnew({afterMoveSeenFrom(wish.move), false});
    }

    void operator()(const TurnGivenUp&) const {
        if (workplace_.job)
            workplace_.job->turnAsked.reset();
    }

    void operator()(const TurnedAllTheSame&) const {
        if (!workplace_.job || !workplace_.job->turnAsked)
            return;
        AttitudeChanged turned = *workplace_.job->turnAsked;
        turned.unretained = true;
        turn(turned);
    }

    void operator()(const DrainSaid& wish) const {
        if (!workplace_.job)
            return;
        Attitude attitude = workplace_.job->attitude();
        attitude.drain = wrapped(wish.drain);
        record(AttitudeChanged{attitude, true});
    }

    void operator()(const Turning& wish) const {
        if (workplace_.job && workplace_.job->state.build.in(wish.seat))
            workplace_.job->turning = wish;
        if (workplace_.job)
            judgeTurning(*workplace_.job);
    }

    void operator()(const TurningLeft&) const {
        if (workplace_.job)
            workplace_.job->turning.reset();
        if (workplace_.job)
            judgeTurning(*workplace_.job);
    }

    void operator()(const LookFirst& wish) const {
        if (workplace_.job)
            record(LookedFirst{wish.seat});
    }

    void operator()(const SaySeen& wish) const {
        if (workplace_.job)
            saySeen(*workplace_.job, wish);
    }

    void operator()(const TakeInHand& wish) const {
        if (!workplace_.job)
            return;
        putDown(*workplace_.job);
        workplace_.job->measures.reset();
        workplace_.job->inHand = wish.part;
        // The sheet that lies open goes along with the hand.
        std::optional<About>& about = workplace_.job->about;
        if (about && wish.part != about->part)
            about = wish.part ? std::optional{About{*wish.part}} : std::nullopt;
    }

    void operator()(const OpenStep& wish) const {
        if (!workplace_.job || (wish.step && !workplace_.job->frame.step(*wish.step)))
            return;
        (*this)(TakeInHand{});
        workplace_.job->turnAsked.reset();
        workplace_.job->step = wish.step;
    }

    void operator()(const OpenFastener& wish) const {
        if (!workplace_.job || (wish.fastener && !workplace_.job->frame.fastener(*wish.fastener)))
            return;
        (*this)(TakeInHand{});
        workplace_.job->fastenerInHand = wish.fastener;
    }

    void operator()(const OpenMeasurement& wish) const {
        if (!workplace_.job)
            return;
        Job& job = *workplace_.job;
        const Measurement* measurement =
            wish.measurement ? job.frame.measurement(*wish.measurement) : nullptr;
        if (wish.measurement && !measurement)
            return;
        putDown(job);
        job.about.reset();
        if (measurement && measurement->quantities.empty())
            job.measures = MeasuresPage{MeasuresPage::Kind::Parts};
        else
            job.measurementInHand = wish.measurement;
    }

    void operator()(const ReadMeasures& wish) const {
        if (!workplace_.job)
            return;
        workplace_.job->measurementInHand.reset();
        workplace_.job->measures = wish.page;
        drawShownChain(*workplace_.job);
    }

    void operator()(const ReadAbout& wish) const {
        if (!workplace_.job || (wish.about && !workplace_.job->frame.part(wish.about->part)))
            return;
        workplace_.job->about = wish.about;
    }

    void operator()(const LookAgain& wish) const {
        if (!workplace_.job)
            return;
        workplace_.job->standpoint = wish.standpoint;
        judgeFromHere(*workplace_.job);
    }

    void operator()(const SaveSheet& wish) const {
        if (!workplace_.job)
            return;
        if (!mayWrite(wish.file))
            return refuse(workplace_, {{.where = wish.file.string(),
                                        .found = "a file that is there already",
                                        .allowed = "another name, so that it is not written over"}});
        const Errors errors = writeBuildSheet(workplace_.job->state.build, workplace_.job->frame, wish.file);
        if (!errors.empty())
            return refuse(workplace_, errors);
        workplace_.job->name = wish.file.filename().string();
        workplace_.job->savedTo = wish.file;
        workplace_.note = Note{fmt::format("Saved as {}", wish.file.string()), false};
    }

    void operator()(const ReadSlip& wish) const {
        if (workplace_.job)
            workplace_.job->slip = wish.open;
    }

    void operator()(const SaveSlip& wish) const {
        if (!workplace_.job)
            return;
        std::error_code ignored;
        if (std::filesystem::exists(wish.file, ignored))
            return refuse(workplace_, {{.where = wish.file.string(),
                                        .found = "a file that is there already",
                                        .allowed = "another name, so that it is not written over"}});
        if (const auto failed = writeFile(wish.file, slipText(*workplace_.job)))
            return refuse(workplace_, {failed->error});
        workplace_.note = Note{fmt::format("Saved as {}", wish.file.string()), false};
    }

    void operator()(const StartAgain&) const {
        if (!workplace_.job)
            return;
        const JournalHead head = workplace_.job->head; // The job goes when the next one comes.
        begin(head);
    }

    void operator()(const ToOpening&) const {
        leave(workplace_);
        listJobs(workplace_);
    }

    void operator()(const DismissNote&) const { workplace_.note.reset(); }

private:
    void begin(const JournalHead& head) const {
        Result<Job> job = jobFrom(workplace_.data, head);
        if (!job)
            return refuse(workplace_, job.errors());
        begin(std::move(job).value(), {});
    }

    static void putDown(Job& job) {
        job.inHand.reset();
        job.fastenerInHand.reset();
        job.measurementInHand.reset();
    }

    /// The step that comes next lies open under the sheet that tells what was done.
    static void stopWhereWeStopped(Job& job) {
        job.step = job.procedure.leading;
        job.slip = true;
    }

    /// Over a file that is there a job is saved only when it came from it or was saved to it.
    bool mayWrite(const std::filesystem::path& file) const {
        std::error_code ignored;
        const Job& job = *workplace_.job;
        return !std::filesystem::exists(file, ignored) || file == job.savedTo || file == job.head.sheet;
    }

    void open(Job job, Journal journal) const {
        const Result<Bench> bench = benchOf(workplace_.data, workplace_.stateFolder);
        if (bench)
            job.bench = *bench;
        refresh(job);
        const PersonStanding standing = standingOf(job, journal);
        if (const auto failed = writeFile(openJobFile(workplace_.stateFolder), toText(standing)))
            return refuse(workplace_, {failed->error});
        workplace_.remembered = standing;
        workplace_.journal = std::move(journal);
        workplace_.job = std::move(job);
        workplace_.note.reset();
        if (!bench)
            refuse(workplace_, bench.errors());
    }

    /// Refused with the reason, or on disk and then in the job.
    bool record(const Event& event) const {
        Job& job = *workplace_.job;
        const Errors refused = refusalOf(job.frame, job.state, event);
        if (!refused.empty()) {
            refuse(workplace_, refused);
            return false;
        }
        const Errors notWritten = workplace_.journal->append(event);
        if (!notWritten.empty()) {
            refuse(workplace_, notWritten);
            return false;
        }
        job.log.events.push_back(event);
        job.turning.reset();
        job.turnAsked.reset();
        workplace_.note.reset();
        refresh(job);
        return true;
    }

    /// Lays the piece another way, or asks first where nothing holds the rotor. Before anybody said how it
    /// lies, saying so turns nothing.
    void layAnew(const AttitudeChanged& lies) const {
        Job& job = *workplace_.job;
        const bool moved = lyingWasSaid(job) || job.use != Use::Bench;
        const bool moves = moved && movesLooseRotor(job.attitude(), lies.attitude);
        if (moves && !lies.unretained && findingBeforeTurning(job.frame, job.state))
            job.turnAsked = lies;
        else
            turn(lies);
    }

    void turn(const AttitudeChanged& lies) const {
        const Attitude before = workplace_.job->attitude();
        if (!record(lies))
            return;
        Standpoint& standpoint = workplace_.job->standpoint;
        if (lies.confirmed) // Said where he stands: nothing is asked next.
            return;
        // He stays where he is: of a level piece that was turned round the other end is before him now.
        if (lies.attitude.up == EndUp::Level && lies.attitude.seenFrom != before.seenFrom)
            standpoint.observer.levelSide = opposite(standpoint.observer.levelSide);
        // Where the drain points is asked next: as he stands, the piece whole.
        if (standpoint.kind != LookKind::BothEnds)
            standpoint.kind = LookKind::WhereIStand;
        standpoint.pulledApart = 0.0;
        judgeFromHere(*workplace_.job);
    }

    /// A move is named in the picture of where the person stands; the attitude is kept as seen from the front
    /// of the bench.
    Attitude afterMoveSeenFrom(TurningMove move) const {
        const Job& job = *workplace_.job;
        const Attitude attitude = job.attitude();
        const Degrees stand = attitude.up == EndUp::Level ? Degrees{0.0} : job.standpoint.observer.stand;
        Attitude seen = attitude;
        seen.drain = wrapped(attitude.drain - stand);
        seen = afterMove(seen, move);
        seen.drain = wrapped(seen.drain + stand);
        return seen;
    }

    /// The gap as tapped and the face as pictured become the seating, then it is confirmed.
    void saySeen(Job& job, const SaySeen& wish) const {
        const View view = job.standingView();
        const auto said = job.state.lookedFirst.contains(wish.seat) ? Confirmation::Said::After
                                                                    : Confirmation::Said::Before;
        SeatingConfirmed event{.seat = wish.seat, .confirmation = {wish.by, said}, .setIn = view};
        if (wish.gapSeen)
            event.index = clockSeenIn(view, *wish.gapSeen);
        if (wish.referenceFaceVisible)
            event.referenceFaceLooks = *wish.referenceFaceVisible ? view.side : opposite(view.side);
        if (!wish.gapSeen && !wish.referenceFaceVisible)
            event.home = true;
        record(event);
    }

    Workplace& workplace_;
};

} // namespace

void begin(Workplace& workplace, Beginning beginning) {
    const std::optional<Note> note = beginning.note;
    if (beginning.job)
        Grant{workplace}.begin(std::move(*beginning.job), beginning.journal);
    if (note)
        workplace.note = note;
}

void grant(Workplace& workplace, const Wish& wish) {
    std::visit(Grant{workplace}, wish);
}

} // namespace gapwise
