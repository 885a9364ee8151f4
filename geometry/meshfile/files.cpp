#include "geometry/meshfile/files.h"

#include <array>
#include <fmt/format.h>
#include <fstream>
#include <sodium.h>

namespace gapwise {

std::string sha256(std::string_view bytes) {
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
    // NOLINTNEXTLINE(cppcoreguidelines-pro-type-reinterpret-cast): libsodium takes unsigned bytes
    crypto_hash_sha256(digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    std::string text;
    for (const unsigned char byte : digest)
        text += fmt::format("{:02x}", byte);
    return text;
}

Result<std::string> fileContents(const std::filesystem::path& file, std::uintmax_t mostBytes) {
    std::error_code problem;
    if (!std::filesystem::is_regular_file(file, problem))
        return Error{file.string(), std::filesystem::exists(file, problem) ? "not a file" : "no such file",
                     ""};
    const std::uintmax_t size = std::filesystem::file_size(file, problem);
    if (problem || size > mostBytes)
        return Error{file.string(), problem ? problem.message() : fmt::format("{} bytes", size),
                     fmt::format("at most {} bytes", mostBytes)};
    std::ifstream stream{file, std::ios::binary};
    std::string bytes(size, '\0');
    stream.read(bytes.data(), static_cast<std::streamsize>(size));
    if (stream.gcount() != static_cast<std::streamsize>(size))
        return Error{file.string(), "a file that cannot be read to its end", ""};
    return bytes;
}

} // namespace gapwise
