#include "viewer/command/window_program.h"

#include "geometry/base/running_program.h"

#include <cerrno>
#include <cstring>
#include <unistd.h>

namespace gapwise {

Outcome becomeWindowProgram(const std::vector<std::string>& arguments) {
    std::string program = (runningProgram().parent_path() / "gapwise-window").string();
    std::vector<std::string> words = arguments;
    std::vector<char*> pointers{program.data()};
    for (std::string& word : words)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    ::execv(program.c_str(), pointers.data());
    return failed(ExitStatus::CannotNow,
                  {Error{.where = program,
                         .found = std::strerror(errno),
                         .allowed = "the program that draws, installed beside gapwise"}});
}

} // namespace gapwise
