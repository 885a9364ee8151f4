#pragma once

#include <string>

namespace CLI {
class App;
}

namespace gapwise {

/// A command with its words in the help, and `--json` as every command has it. What it does not know is kept
/// for the errors, so that all of them are told at once.
CLI::App* addCommand(CLI::App& parent, bool& json, const std::string& name, const std::string& words);

} // namespace gapwise
