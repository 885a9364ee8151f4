#pragma once

#include "viewer/command/outcome.h"

#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace gapwise {

/// Reads the words after a command into what `app` describes. Something to say instead (help, or a usage
/// error that names `command`) when they are not all understood.
std::optional<Outcome> parseWords(CLI::App& app, const std::vector<std::string>& words,
                                  const std::string& command);

} // namespace gapwise
