#include "viewer/window/parse_words.h"

#include <CLI/CLI.hpp>

namespace gapwise {

std::optional<Outcome> parseWords(CLI::App& app, const std::vector<std::string>& words,
                                  const std::string& command) {
    try {
        app.parse(std::vector<std::string>{words.rbegin(), words.rend()});
    } catch (const CLI::CallForHelp&) {
        return Outcome{.text = app.help()};
    } catch (const CLI::ParseError& error) {
        return misused(
            command,
            {{.where = "arguments", .found = error.what(), .allowed = "see " + command + " --help"}});
    }
    return std::nullopt;
}

} // namespace gapwise
