#include "models/json/document.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include <cerrno>
#include <cstdio>
#include <memory>
#include <system_error>

namespace gapwise {

namespace {

constexpr std::size_t kLongestQuotation = 60; // bytes of text

struct CloseFile {
    void operator()(std::FILE* file) const { std::fclose(file); }
};

Error tooLarge(const std::string& where) {
    return Error{.where = where,
                 .found = fmt::format("more than {} MiB", kLargestDocumentBytes >> 20U),
                 .allowed = fmt::format("a file of at most {} MiB", kLargestDocumentBytes >> 20U)};
}

Error unreadable(const std::string& where, int code) {
    if (code == ENOENT)
        return Error{.where = where, .found = "no such file", .allowed = "an existing file"};
    if (code == EISDIR)
        return Error{.where = where, .found = "a directory", .allowed = "a file"};
    return Error{
        .where = where, .found = std::generic_category().message(code), .allowed = "a file that can be read"};
}

/// Reads to the end, but never more than one byte over the limit.
Result<std::string> readStream(std::FILE* stream, const std::string& where) {
    std::string text;
    constexpr std::size_t kPiece = 64U * 1024U;
    std::size_t used = 0;
    while (used <= kLargestDocumentBytes) {
        text.resize(used + kPiece);
        errno = 0;
        const std::size_t got = std::fread(text.data() + used, 1, kPiece, stream);
        used += got;
        if (got < kPiece) {
            if (std::ferror(stream) != 0)
                return unreadable(where, errno);
            text.resize(used);
            return used > kLargestDocumentBytes ? Result<std::string>{tooLarge(where)} : std::move(text);
        }
    }
    return tooLarge(where);
}

/// `text` cut after at most `longest` bytes, never inside a character.
std::string_view shortened(std::string_view text, std::size_t longest) {
    if (text.size() <= longest)
        return text;
    while (longest > 0 && (static_cast<unsigned char>(text[longest]) & 0xC0U) == 0x80U)
        --longest;
    return text.substr(0, longest);
}

} // namespace

Result<std::string> readText(const std::filesystem::path& file) {
    if (file == "-")
        return readStream(stdin, "standard input");
    const std::string where = file.string();
    std::error_code code;
    const auto status = std::filesystem::status(file, code);
    if (code)
        return unreadable(where, code.value());
    if (std::filesystem::is_directory(status))
        return unreadable(where, EISDIR);
    if (std::filesystem::is_regular_file(status)) {
        const auto size = std::filesystem::file_size(file, code);
        if (!code && size > kLargestDocumentBytes)
            return tooLarge(where);
    }
    const std::unique_ptr<std::FILE, CloseFile> stream{std::fopen(where.c_str(), "rb")};
    if (!stream)
        return unreadable(where, errno);
    return readStream(stream.get(), where);
}

std::string quotedText(std::string_view text) {
    const std::string_view start = shortened(text, kLongestQuotation);
    std::string quotation =
        nlohmann::json(start).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
    if (start.size() < text.size())
        quotation.insert(quotation.size() - 1, "…");
    return quotation;
}

std::string quoted(const nlohmann::json& value) {
    if (value.is_object())
        return "an object";
    if (value.is_array())
        return "an array";
    if (value.is_string())
        return quotedText(value.get_ref<const std::string&>());
    return value.dump();
}

std::string pointerToken(std::string_view key) {
    std::string token;
    token.reserve(key.size());
    for (const char letter : key) {
        if (letter == '~')
            token += "~0";
        else if (letter == '/')
            token += "~1";
        else if (static_cast<unsigned char>(letter) < 0x20U || letter == 0x7F)
            token += fmt::format("\\u{:04x}", static_cast<unsigned>(static_cast<unsigned char>(letter)));
        else
            token += letter;
    }
    return token;
}

std::string placeIn(std::string_view file, std::string_view pointer) {
    return fmt::format("{}#{}", file, pointer);
}

} // namespace gapwise
