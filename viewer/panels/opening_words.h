#pragma once

#include "viewer/workplace/wish.h"

#include <array>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What the opening screen says of a use.
struct UseWords {
    Use use = Use::Practise;
    std::string_view label{};
    std::string_view what{};
    std::array<std::string_view, 3> first{}; ///< What to do first.
};
std::span<const UseWords> useWords();

/// `alder-72: ring face reversed` for a bundled build sheet; its name where no frame begins it.
std::string sheetLabel(const std::filesystem::path& sheet, const std::vector<std::string>& frames);

/// `alder-72, 25 Nov 12:39` for a journal in the state folder, in local time; its name where that says less.
std::string journalLabel(const std::filesystem::path& journal);

} // namespace gapwise
