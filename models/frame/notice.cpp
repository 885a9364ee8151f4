#include "models/frame/notice.h"

#include <fmt/format.h>

namespace gapwise {

std::string_view noticeOf(const Frame& frame) {
    return frame.purpose == Purpose::Practice ? kPracticeNotice : std::string_view{};
}

std::string consistencyLine(const Frame& frame, bool consistent) {
    return fmt::format(
        "{}consistent with the loaded rules of frame {}, revision {}; the maker's manual, local codes "
        "and authorised persons prevail",
        consistent ? "" : "not ", frame.id.text, frame.revision);
}

std::string prevailLine(const Frame& frame) {
    return fmt::format(
        "as the loaded rules of frame {}, revision {} say; the maker's manual, local codes and "
        "authorised persons prevail",
        frame.id.text, frame.revision);
}

} // namespace gapwise
