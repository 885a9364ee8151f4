#include "models/job/journal.h"

#include "models/json/document.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace gapwise {

namespace {

constexpr std::string_view kFormat = "gapwise.journal/1";
constexpr const char* kBeginsWith = "begins_with";

Error systemError(const std::filesystem::path& file, std::string allowed) {
    return Error{.where = file.string(), .found = std::strerror(errno), .allowed = std::move(allowed)};
}

/// One program at a time writes a journal. The system lets go of it when the program ends, however that is.
bool taken(int descriptor) {
    return ::flock(descriptor, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK;
}

Error heldElsewhere(const std::filesystem::path& file) {
    return Error{.where = file.string(),
                 .found = "a job that is open in another window",
                 .allowed = "one window for a job: close the other, or begin another job"};
}

/// Writes a whole line and waits until it is on disk; what was half written is taken out again.
bool writeLine(int descriptor, std::string line) {
    line += '\n';
    const off_t before = ::lseek(descriptor, 0, SEEK_END);
    std::size_t done = 0;
    while (done < line.size()) {
        const ssize_t now = ::write(descriptor, line.data() + done, line.size() - done);
        if (now < 0 && errno == EINTR)
            continue;
        if (now <= 0)
            break;
        done += static_cast<std::size_t>(now);
    }
    if (done == line.size() && ::fdatasync(descriptor) == 0)
        return true;
    const int why = errno;
    if (before >= 0 && ::ftruncate(descriptor, before) != 0)
        errno = why;
    errno = why;
    return false;
}

Result<JournalHead> parseHead(std::string_view line, std::string_view where) {
    const Result<nlohmann::json> parsed = parseJson(line, where);
    if (!parsed)
        return parsed.errors();
    const auto text = [&](const char* key) {
        const auto found = parsed->is_object() ? parsed->find(key) : parsed->end();
        return found != parsed->end() && found->is_string() ? found->get<std::string>() : std::string{};
    };
    if (text("format") != kFormat)
        return Error{
            .where = std::string{where}, .found = quoted(*parsed), .allowed = fmt::format("\"{}\"", kFormat)};
    const auto begins = parsed->find(kBeginsWith);
    return JournalHead{.frame = text("frame"),
                       .use = text("use"),
                       .sheet = text("sheet"),
                       .sheetText = begins == parsed->end() ? std::string{} : begins->dump()};
}

/// The text up to the last line break, and whether something stood behind it.
std::pair<std::string_view, bool> wholeLines(std::string_view text) {
    const std::size_t last = text.rfind('\n');
    const std::size_t end = last == std::string_view::npos ? 0 : last + 1;
    return {text.substr(0, end), end != text.size()};
}

} // namespace

void setUse(Log& log, std::string_view use) {
    log.rehearsal = use == "practise";
    log.demands = use == "show" ? Demands::Order : Demands::All;
}

Result<Journal> Journal::create(const std::filesystem::path& file, const JournalHead& head) {
    std::error_code ignored;
    std::filesystem::create_directories(file.parent_path(), ignored);
    const int descriptor = ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_APPEND | O_CLOEXEC, 0644);
    if (descriptor < 0)
        return systemError(file, "a new file in a folder that can be written");
    Journal journal{file, descriptor};
    if (!taken(descriptor))
        return heldElsewhere(file);
    nlohmann::json line{{"format", kFormat}, {"frame", head.frame}, {"use", head.use}, {"sheet", head.sheet}};
    if (!head.sheetText.empty())
        line[kBeginsWith] = nlohmann::json::parse(head.sheetText, nullptr, false);
    if (!writeLine(descriptor, line.dump()))
        return systemError(file, "room on the disk for a journal");
    return journal;
}

Result<Journal> Journal::reopen(const std::filesystem::path& file) {
    const Result<std::string> text = readText(file);
    if (!text)
        return text.errors();
    const int descriptor = ::open(file.c_str(), O_WRONLY | O_APPEND | O_CLOEXEC);
    if (descriptor < 0)
        return systemError(file, "a journal that can be written");
    Journal journal{file, descriptor};
    if (!taken(descriptor))
        return heldElsewhere(file);
    const auto [whole, cutOff] = wholeLines(*text);
    if (cutOff && ::ftruncate(descriptor, static_cast<off_t>(whole.size())) != 0)
        return systemError(file, "a journal that can be written");
    return journal;
}

Journal::Journal(Journal&& other) noexcept
    : file_{std::move(other.file_)}, descriptor_{std::exchange(other.descriptor_, -1)} {}

Journal& Journal::operator=(Journal&& other) noexcept {
    std::swap(file_, other.file_);
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

Journal::~Journal() {
    if (descriptor_ >= 0)
        ::close(descriptor_);
}

Errors Journal::append(const Event& event) {
    if (writeLine(descriptor_, toJsonLine(event)))
        return {};
    return {systemError(file_, "room on the disk for the journal; nothing was changed")};
}

Result<JournalContent> readJournal(const std::filesystem::path& file) {
    const Result<std::string> text = readText(file);
    if (!text)
        return text.errors();
    auto [rest, cutOff] = wholeLines(*text);
    JournalContent content{.cutOff = cutOff};
    for (int number = 1; !rest.empty(); ++number) {
        const std::string_view line = rest.substr(0, rest.find('\n'));
        rest.remove_prefix(line.size() + 1);
        const std::string where = fmt::format("{}:{}", file.string(), number);
        if (number == 1) {
            const Result<JournalHead> head = parseHead(line, where);
            if (!head)
                return head.errors();
            content.head = *head;
            continue;
        }
        const Result<Event> event = parseEvent(line, where);
        if (!event)
            return event.errors();
        content.events.push_back(*event);
    }
    if (content.head.frame.empty() && content.head.sheet.empty())
        return Error{
            .where = file.string(), .found = "no whole first line", .allowed = "a journal of Gapwise"};
    return content;
}

std::filesystem::path stateFolder() {
    const char* state = std::getenv("XDG_STATE_HOME");
    if (state && *state)
        return std::filesystem::path{state} / "gapwise";
    const char* home = std::getenv("HOME");
    return std::filesystem::path{home && *home ? home : "."} / ".local/state/gapwise";
}

} // namespace gapwise
