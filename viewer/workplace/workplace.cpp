#include "viewer/workplace/workplace.h"

#include "models/frame/sets.h"

#include "geometry/base/overloaded.h"
#include "geometry/base/write_file.h"
#include "models/build/document_kind.h"
#include "models/build/read_build.h"
#include "models/build/write_build.h"
#include "models/json/document.h"
#include "models/procedure/order.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace gapwise {

namespace {

constexpr std::array<std::pair<Use, std::string_view>, 3> kUses{
    {{Use::Practise, "practise"}, {Use::Bench, "bench"}, {Use::Show, "show"}}};

std::string describeAll(const Errors& errors) {
    std::string words;
    for (const Error& error : errors)
        words += (words.empty() ? "" : "\n") + describe(error);
    return words;
}

void refuse(Workplace& workplace, const Errors& errors) {
    workplace.note = Note{describeAll(errors), true};
}

void judge(Job& job, const Build& build) {
    job.checked = checkBuild(
        job.frame, build,
        CheckOptions{.sister = job.sister ? &*job.sister : nullptr, .currentView = job.lookingView()});
}

void refresh(Job& job) {
    job.state = stateOf(job.frame, job.log);
    judge(job, job.state.build);
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

/// Names the journal of the job that is open now; gone when it was left in good order.
std::filesystem::path openJobFile(const std::filesystem::path& folder) {
    return folder / "open-job";
}

Result<JournalHead> headOf(const StartJob& start) {
    JournalHead head{
        .frame = start.frame, .use = std::string{nameOf(start.use)}, .sheet = start.sheet.string()};
    if (start.sheet.empty())
        return head;
    Result<std::string> text = readText(start.sheet);
    if (!text)
        return text.errors();
    head.sheetText = std::move(text).value();
    return head;
}

Result<Job> jobFrom(const DataFolder& data, const JournalHead& head) {
    Job job;
    job.head = head;
    std::filesystem::path frameFile = frameFileOf(data, head.frame);
    job.use = useNamed(head.use).value_or(Use::Practise);
    if (head.sheet.empty()) {
        Result<Frame> frame = readFrame(data, head.frame);
        if (!frame)
            return frame.errors();
        job.frame = std::move(frame).value();
        job.log.start.frame = head.frame;
        job.name = "not saved as a sheet";
    } else {
        Result<BuildSheet> sheet = parseBuildSheet(data, head.sheetText, head.sheet);
        if (!sheet)
            return sheet.errors();
        frameFile = sheet->frameFile;
        job.frame = std::move(sheet.value().frame);
        job.log.start = std::move(sheet.value().build);
        job.name = std::filesystem::path{head.sheet}.filename().string();
    }
    Result<std::optional<Frame>> sister = readSister(data, job.frame, frameFile);
    if (!sister)
        return sister.errors();
    job.sister = std::move(sister).value();
    return job;
}

Standing standingOf(const Job& job, const Journal& journal) {
    Standing standing{.journal = journal.file(), .standpoint = job.standpoint, .inHand = job.inHand};
    if (job.about)
        standing.about = job.about->part;
    return standing;
}

void listJobs(Workplace& workplace) {
    workplace.offered.jobs = offeredJobs(workplace.stateFolder);
    workplace.offered.asOf = std::chrono::system_clock::now();
}

/// The job that a journal holds.
Result<Job> continued(const DataFolder& data, const std::filesystem::path& journal) {
    Result<JournalContent> content = readJournal(journal);
    if (!content)
        return content.errors();
    Result<Job> job = jobFrom(data, content->head);
    if (job)
        job.value().log.events = std::move(content.value().events);
    return job;
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
        if (!workplace_.job || !record(wish.event))
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
        const Attitude before = workplace_.job->attitude();
        const Attitude after = afterMoveSeenFrom(wish.move);
        if (!record(AttitudeChanged{after, false}))
            return;
        // He stays where he is: of a level piece that was turned round the other end is before him now.
        Standpoint& standpoint = workplace_.job->standpoint;
        if (after.up == EndUp::Level && after.seenFrom != before.seenFrom)
            standpoint.observer.levelSide = opposite(standpoint.observer.levelSide);
        // Where the drain points is asked next: as he stands, the piece whole.
        if (standpoint.kind != LookKind::BothEnds)
            standpoint.kind = LookKind::WhereIStand;
        standpoint.pulledApart = 0.0;
        refresh(*workplace_.job);
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
        workplace_.job->inHand = wish.part;
        // The sheet that lies open goes along with the hand.
        std::optional<About>& about = workplace_.job->about;
        if (about && wish.part != about->part)
            about = wish.part ? std::optional{About{*wish.part}} : std::nullopt;
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
        refresh(*workplace_.job);
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

    /// Over a file that is there a job is saved only when it came from it or was saved to it.
    bool mayWrite(const std::filesystem::path& file) const {
        std::error_code ignored;
        const Job& job = *workplace_.job;
        return !std::filesystem::exists(file, ignored) || file == job.savedTo || file == job.head.sheet;
    }

    void open(Job job, Journal journal) const {
        refresh(job);
        const Standing standing = standingOf(job, journal);
        if (const auto failed = writeFile(openJobFile(workplace_.stateFolder), toText(standing)))
            return refuse(workplace_, {failed->error});
        workplace_.remembered = standing;
        workplace_.journal = std::move(journal);
        workplace_.job = std::move(job);
        workplace_.note.reset();
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
        workplace_.note.reset();
        refresh(job);
        return true;
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

/// The job that was cut off, as it stood before the person; nothing where none was.
Beginning cutOffJob(const Workplace& workplace) {
    const std::filesystem::path file = openJobFile(workplace.stateFolder);
    std::error_code ignored;
    const Result<std::string> text =
        std::filesystem::exists(file, ignored) ? readText(file) : Result<std::string>{""};
    const std::optional<Standing> standing = text ? standingIn(*text) : std::nullopt;
    if (!standing)
        return {};
    Result<Job> job = continued(workplace.data, standing->journal);
    if (!job)
        return {.note = Note{describeAll(job.errors()), true}};
    Job& stood = job.value();
    stood.standpoint = standing->standpoint;
    if (standing->inHand && stood.frame.part(*standing->inHand))
        stood.inHand = standing->inHand;
    if (standing->about && stood.frame.part(*standing->about))
        stood.about = About{*standing->about};
    const std::string words =
        fmt::format("Gone on with {} ({}), which was cut off", stood.frame.name, stood.name);
    return {.job = std::move(job).value(), .journal = standing->journal, .note = Note{words, false}};
}

} // namespace

std::string_view nameOf(Use use) {
    for (const auto& [each, name] : kUses)
        if (each == use)
            return name;
    return {};
}

std::optional<Use> useNamed(std::string_view name) {
    for (const auto& [use, each] : kUses)
        if (each == name)
            return use;
    return std::nullopt;
}

Attitude Job::attitude() const {
    return state.build.attitude.value_or(Attitude{});
}

View Job::lookingView() const {
    if (use == Use::Bench)
        return standingView();
    return pictureViewOf(standpoint, attitude()).value_or(standingView());
}

View Job::standingView() const {
    return viewOf(attitude(), standpoint.observer);
}

Workplace openWorkplace(const DataFolder& data, const std::filesystem::path& stateFolder) {
    Workplace workplace{.data = data, .stateFolder = stateFolder};
    workplace.offered.frames = offeredFrames(data);
    workplace.offered.samples = offeredSamples(data);
    listJobs(workplace);
    return workplace;
}

Result<Beginning> beginningOf(const Workplace& workplace, const std::string& what, Use use) {
    if (what.empty())
        return cutOffJob(workplace);
    const Result<DocumentKind> kind = documentKind(workplace.data, what);
    if (!kind)
        return kind.errors();
    StartJob start{.frame = what, .use = use, .sheet = {}};
    if (*kind == DocumentKind::BuildSheet)
        start = {.frame = {}, .use = use, .sheet = std::filesystem::absolute(what)};
    else if (!isBundledFrame(workplace.data, what))
        start.frame = std::filesystem::absolute(what).string();
    const Result<JournalHead> head = headOf(start);
    if (!head)
        return head.errors();
    Result<Job> job = jobFrom(workplace.data, *head);
    if (!job)
        return job.errors();
    return Beginning{.job = std::move(job).value()};
}

void begin(Workplace& workplace, Beginning beginning) {
    const std::optional<Note> note = beginning.note;
    if (beginning.job)
        Grant{workplace}.begin(std::move(*beginning.job), beginning.journal);
    if (note)
        workplace.note = note;
}

Errors beginWith(Workplace& workplace, const std::string& what, Use use) {
    Result<Beginning> beginning = beginningOf(workplace, what, use);
    if (!beginning)
        return beginning.errors();
    begin(workplace, std::move(beginning).value());
    return {};
}

void rememberStanding(Workplace& workplace) {
    if (!workplace.job || !workplace.journal)
        return;
    const Standing now = standingOf(*workplace.job, *workplace.journal);
    if (workplace.remembered == now)
        return;
    writeFile(openJobFile(workplace.stateFolder), toText(now));
    workplace.remembered = now;
}

void leave(Workplace& workplace) {
    std::error_code ignored;
    std::filesystem::remove(openJobFile(workplace.stateFolder), ignored);
    workplace.job.reset();
    workplace.journal.reset();
}

void grant(Workplace& workplace, const Wish& wish) {
    std::visit(Grant{workplace}, wish);
}

bool demandShown(const Job& job, const SeatId& seat) {
    const Seating* seating = job.state.build.in(seat);
    const bool beingTurned = job.turning && job.turning->seat == seat;
    switch (job.use) {
    case Use::Show: return true;
    case Use::Bench:
        return seating && (seating->confirmed.has_value() || job.state.lookedFirst.contains(seat));
    case Use::Practise: break;
    }
    if (!seating || beingTurned)
        return false;
    const PartType* type = job.frame.typeOf(seating->part);
    const bool hasIndex = type && type->index != IndexKind::None && !job.frame.seat(seat)->fixedIndex;
    return seating->index.has_value() || !hasIndex;
}

const Seating* seatingInHand(const Job& job) {
    return job.inHand ? job.state.build.of(*job.inHand) : nullptr;
}

std::vector<PartId> partsOnTray(const Job& job) {
    std::vector<PartId> parts;
    for (const PartId& part : partsInOrder(job.frame))
        if (!job.state.build.of(part) && part != job.frame.housing &&
            piecesOf(job.frame, part).front() == part)
            parts.push_back(part);
    return parts;
}

} // namespace gapwise
