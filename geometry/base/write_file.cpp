#include "geometry/base/write_file.h"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

namespace gapwise {

namespace {

WriteFailure failure(const std::filesystem::path& file, int why) {
    const bool full = why == ENOSPC || why == EDQUOT || why == EFBIG;
    return {.error = {.where = file.string(),
                      .found = std::strerror(why),
                      .allowed = full ? "room on the disk; nothing was written"
                                      : "a file in a folder that can be written; nothing was written"},
            .diskFull = full};
}

/// 0, or the error number.
int writeAll(int descriptor, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t now = ::write(descriptor, bytes.data(), bytes.size());
        if (now < 0 && errno == EINTR)
            continue;
        if (now < 0)
            return errno;
        bytes.remove_prefix(static_cast<std::size_t>(now));
    }
    return ::fsync(descriptor) == 0 ? 0 : errno;
}

} // namespace

std::optional<WriteFailure> writeFile(const std::filesystem::path& file, std::string_view bytes) {
    std::error_code unreadable;
    const auto kind = std::filesystem::status(file, unreadable).type();
    if (kind == std::filesystem::file_type::directory)
        return failure(file, EISDIR);
    // A device or a pipe cannot be replaced: it takes the bytes as they come.
    if (kind != std::filesystem::file_type::regular && kind != std::filesystem::file_type::not_found) {
        const int device = ::open(file.c_str(), O_WRONLY | O_CLOEXEC);
        const int why = device < 0 ? errno : writeAll(device, bytes);
        if (device >= 0)
            ::close(device);
        // A device that cannot be flushed has taken everything.
        return why == 0 || why == EINVAL ? std::nullopt : std::optional{failure(file, why)};
    }

    std::string beside = file.string() + ".XXXXXX";
    const int descriptor = ::mkstemp(beside.data());
    if (descriptor < 0)
        return failure(file, errno);
    int why = writeAll(descriptor, bytes);
    if (why == 0 && ::fchmod(descriptor, 0644) != 0)
        why = errno;
    if (::close(descriptor) != 0 && why == 0)
        why = errno;
    if (why == 0 && std::rename(beside.c_str(), file.c_str()) != 0)
        why = errno;
    if (why == 0)
        return std::nullopt;
    ::unlink(beside.c_str());
    return failure(file, why);
}

} // namespace gapwise
