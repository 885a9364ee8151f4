#pragma once

#include "geometry/base/result.h"
#include "geometry/meshfile/meshfile.h"

#include <string>
#include <string_view>

namespace gapwise {

/// The facts with the SHA-256 of the mesh file that they belong to.
struct StoredFacts {
    MeshFacts facts{};
    std::string glbHash{};
};

std::string factsText(const StoredFacts& stored);

/// `where` names the file in errors.
Result<StoredFacts> parseFacts(const std::string& text, std::string_view where);

} // namespace gapwise
