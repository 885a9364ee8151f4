#include "models/build/document_kind.h"

#include "models/json/document.h"

#include <nlohmann/json.hpp>

namespace gapwise {

DocumentKind documentKind(const nlohmann::json& document) {
    const bool isFrame = document.is_object() && document.contains("format") &&
                         document.at("format").is_string() &&
                         document.at("format").get<std::string>().starts_with("gapwise.frame/");
    return isFrame ? DocumentKind::Frame : DocumentKind::BuildSheet;
}

Result<DocumentKind> documentKind(const DataFolder& data, const std::string& idOrPath) {
    if (isBundledFrame(data, idOrPath))
        return DocumentKind::Frame;
    const Result<std::string> text = readText(idOrPath);
    if (!text)
        return text.errors();
    const Result<nlohmann::json> document = parseJson(*text, idOrPath);
    if (!document)
        return document.errors();
    return documentKind(*document);
}

} // namespace gapwise
