#include "models/job/read_job.h"

#include "models/build/read_build.h"
#include "models/job/journal.h"
#include "models/json/document.h"

namespace gapwise {

namespace {

JobFile jobOf(BuildSheet sheet) {
    JobFile job;
    job.frame = std::move(sheet.frame);
    job.log.start = std::move(sheet.build);
    return job;
}

/// The frame and what the job began with.
Result<JobFile> begunWith(const DataFolder& data, const JournalHead& head) {
    if (!head.sheet.empty()) {
        Result<BuildSheet> sheet = parseBuildSheet(data, head.sheetText, head.sheet);
        if (!sheet)
            return sheet.errors();
        return jobOf(std::move(sheet).value());
    }
    Result<Frame> frame = readFrame(data, head.frame);
    if (!frame)
        return frame.errors();
    JobFile job;
    job.frame = std::move(frame).value();
    job.log.start.frame = head.frame;
    return job;
}

bool isJournal(const std::string& text) {
    return text.substr(0, text.find('\n')).find("\"gapwise.journal/") != std::string::npos;
}

} // namespace

Result<JobFile> readJob(const DataFolder& data, const std::filesystem::path& file) {
    const Result<std::string> text = readText(file);
    if (!text)
        return text.errors();
    if (file == "-" || !isJournal(*text)) {
        Result<BuildSheet> sheet = parseBuildSheet(data, *text, file);
        if (!sheet)
            return sheet.errors();
        return jobOf(std::move(sheet).value());
    }
    Result<JournalContent> content = readJournal(file);
    if (!content)
        return content.errors();
    Result<JobFile> job = begunWith(data, content->head);
    if (!job)
        return job;
    job.value().use = content->head.use;
    job.value().cutOff = content->cutOff;
    setUse(job.value().log, content->head.use);
    job.value().log.events = std::move(content.value().events);
    return job;
}

} // namespace gapwise
