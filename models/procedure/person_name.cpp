#include "models/procedure/person_name.h"

#include <string>

namespace gapwise {

namespace {

unsigned char byteAt(std::string_view text, std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0;
}

/// Bytes of a blank at `i`: a control or a blank of ASCII, or the one that does not break (U+00A0); 0: none.
std::size_t blankAt(std::string_view text, std::size_t i) {
    if (byteAt(text, i) <= 0x20 || byteAt(text, i) == 0x7F)
        return 1;
    return byteAt(text, i) == 0xC2 && byteAt(text, i + 1) == 0xA0 ? 2 : 0;
}

/// Small letters, one blank between words, none around. Letters beyond Latin-1 stay as they are.
std::string folded(std::string_view name) {
    std::string out;
    bool blank = false;
    for (std::size_t i = 0; i < name.size();) {
        if (const std::size_t bytes = blankAt(name, i)) {
            blank = true;
            i += bytes;
            continue;
        }
        if (blank && !out.empty())
            out += ' ';
        blank = false;
        const unsigned char byte = byteAt(name, i);
        const unsigned char before = i > 0 ? byteAt(name, i - 1) : 0;
        const bool capital = byte >= 'A' && byte <= 'Z';
        const bool latinCapital = before == 0xC3 && byte >= 0x80 && byte <= 0x9E && byte != 0x97;
        out += static_cast<char>(capital || latinCapital ? byte + 0x20 : byte);
        ++i;
    }
    return out;
}

} // namespace

bool isBlank(std::string_view text) {
    return folded(text).empty();
}

bool isSamePerson(std::string_view a, std::string_view b) {
    return folded(a) == folded(b);
}

} // namespace gapwise
