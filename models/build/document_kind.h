#pragma once

#include "geometry/base/result.h"
#include "models/frame/data_folder.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace gapwise {

/// What a file is by what it says of itself, not by its name.
enum class DocumentKind { Frame, BuildSheet };

/// A document that does not say it is a frame is taken for a build sheet, whose reader then says what is
/// wrong.
DocumentKind documentKind(const nlohmann::json& document);

/// The same for a bundled frame's id or a file; an error when the file cannot be read or is no JSON.
Result<DocumentKind> documentKind(const DataFolder& data, const std::string& idOrPath);

} // namespace gapwise
