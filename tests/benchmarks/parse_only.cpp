#include <nlohmann/json.hpp>

#include <fstream>
#include <sstream>

/// The least that a command must do with its files: read them and parse their JSON.
int main(int argc, char** argv) {
    std::size_t values = 0;
    for (int i = 1; i < argc; ++i) {
        std::ifstream stream(argv[i], std::ios::binary);
        std::ostringstream text;
        text << stream.rdbuf();
        values += nlohmann::json::parse(text.str()).size();
    }
    return values > 0 ? 0 : 1;
}
