#pragma once

#include "models/frame/read_frame.h"
#include "models/json/document.h"

#include <nlohmann/json.hpp>

#include <string>
#include <utility>

namespace gapwise {

/// The text of `tests/frames/small.json`, a right frame with one rule of each kind.
inline std::string smallFrameText() {
    return readText(std::filesystem::path{GAPWISE_TEST_FRAMES} / "small.json").value();
}

/// A copy of that file with some places changed, read under the name `f.json`.
class ChangedFrame {
public:
    ChangedFrame() : document_(nlohmann::json::parse(smallFrameText())) {}

    ChangedFrame& set(const char* pointer, nlohmann::json value) {
        document_[nlohmann::json::json_pointer{pointer}] = std::move(value);
        return *this;
    }
    /// Adds an item at the end of an array.
    ChangedFrame& add(const char* pointer, nlohmann::json value) {
        document_.at(nlohmann::json::json_pointer{pointer}).push_back(std::move(value));
        return *this;
    }
    ChangedFrame& erase(const char* parent, const char* key) {
        document_.at(nlohmann::json::json_pointer{parent}).erase(key);
        return *this;
    }
    ChangedFrame& eraseItem(const char* parent, std::size_t index) {
        document_.at(nlohmann::json::json_pointer{parent}).erase(index);
        return *this;
    }

    std::string text() const { return document_.dump(); }
    Result<Frame> read() const { return parseFrame(DataFolder{}, text(), "f.json", Validation::ReaderOnly); }
    Errors errors() const {
        const Result<Frame> frame = read();
        return frame ? Errors{} : frame.errors();
    }

private:
    nlohmann::json document_;
};

} // namespace gapwise
