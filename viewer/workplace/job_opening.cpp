#include "viewer/workplace/job_opening.h"

#include "geometry/base/write_file.h"
#include "models/build/document_kind.h"
#include "models/build/read_build.h"
#include "models/json/document.h"

#include <fmt/format.h>

namespace gapwise {

std::string describeAll(const Errors& errors) {
    std::string words;
    for (const Error& error : errors)
        words += (words.empty() ? "" : "\n") + describe(error);
    return words;
}

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
    setUse(job.log, nameOf(job.use));
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

Result<Bench> benchOf(const DataFolder& data, const std::filesystem::path& stateFolder) {
    const std::filesystem::path own = stateFolder / "bench.json";
    std::error_code ignored;
    return std::filesystem::exists(own, ignored) ? readBench(data, own) : demoBench(data);
}

PersonStanding standingOf(const Job& job, const Journal& journal) {
    PersonStanding standing{.journal = journal.file(),
                            .standpoint = job.standpoint,
                            .inHand = job.inHand,
                            .fastenerInHand = job.fastenerInHand,
                            .measurementInHand = job.measurementInHand,
                            .step = job.step,
                            .measures = job.measures};
    if (job.about)
        standing.about = job.about->part;
    return standing;
}

void listJobs(Workplace& workplace) {
    workplace.offered.jobs = offeredJobs(workplace.stateFolder);
    workplace.offered.asOf = std::chrono::system_clock::now();
}

Result<Job> continued(const DataFolder& data, const std::filesystem::path& journal) {
    Result<JournalContent> content = readJournal(journal);
    if (!content)
        return content.errors();
    Result<Job> job = jobFrom(data, content->head);
    if (job)
        job.value().log.events = std::move(content.value().events);
    return job;
}

Beginning cutOffJob(const Workplace& workplace) {
    const std::filesystem::path file = openJobFile(workplace.stateFolder);
    std::error_code ignored;
    const Result<std::string> text =
        std::filesystem::exists(file, ignored) ? readText(file) : Result<std::string>{""};
    const std::optional<PersonStanding> standing = text ? standingIn(*text) : std::nullopt;
    if (!standing)
        return {};
    Result<Job> job = continued(workplace.data, standing->journal);
    if (!job)
        return {.note = Note{describeAll(job.errors()), true}};
    Job& stood = job.value();
    stood.standpoint = standing->standpoint;
    if (standing->inHand && stood.frame.part(*standing->inHand))
        stood.inHand = standing->inHand;
    if (standing->fastenerInHand && stood.frame.fastener(*standing->fastenerInHand))
        stood.fastenerInHand = standing->fastenerInHand;
    if (standing->measurementInHand && stood.frame.measurement(*standing->measurementInHand))
        stood.measurementInHand = standing->measurementInHand;
    if (standing->step && stood.frame.step(*standing->step))
        stood.step = standing->step;
    if (standing->about && stood.frame.part(*standing->about))
        stood.about = About{*standing->about};
    stood.measures = standing->measures;
    stood.slip = !stood.log.events.empty();
    const std::string words =
        fmt::format("Gone on with {} ({}), which was cut off", stood.frame.name, stood.name);
    return {.job = std::move(job).value(), .journal = standing->journal, .note = Note{words, false}};
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

} // namespace gapwise
