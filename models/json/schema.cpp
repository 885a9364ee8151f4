#include "models/json/document.h"
#include "models/json/schema_walk.h"

#include <nlohmann/json.hpp>

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <exception>

namespace gapwise {

namespace {

using Adapter = valijson::adapters::NlohmannJsonAdapter;

/// The library's path (`<root>`, `["rules"]`, `[3]`) as a JSON pointer.
std::string pointerOf(const std::vector<std::string>& context) {
    std::string pointer;
    for (std::string_view token : context) {
        if (!token.starts_with('['))
            continue;
        token = token.substr(1, token.size() - 2);
        if (token.starts_with('"'))
            token = token.substr(1, token.size() - 2);
        pointer += "/" + pointerToken(token);
    }
    return pointer;
}

/// The library's own first words, for a fault that the walk cannot name. The first message is a leaf; its
/// parents repeat it.
Error firstWords(const valijson::ValidationResults& results, std::string_view file) {
    const auto first = results.begin();
    if (first == results.end())
        return Error{placeIn(file, ""), "something else", "what the schema describes"};
    return Error{placeIn(file, pointerOf(first->context)), first->description, "what the schema describes"};
}

} // namespace

Errors schemaErrors(const nlohmann::json& document, const nlohmann::json& schema, std::string_view file) {
    try {
        valijson::Schema rules;
        valijson::SchemaParser parser{valijson::SchemaParser::kDraft7};
        parser.populateSchema(Adapter{schema}, rules);
        valijson::Validator validator{valijson::Validator::kStrongTypes};
        const Adapter target{document};
        if (validator.validate(rules, target, nullptr))
            return {};
        // The library says that something is wrong, the walk says what.
        if (Errors errors = schema::walkErrors(document, schema, file, kMostErrors); !errors.empty())
            return errors;
        valijson::ValidationResults results;
        validator.validate(rules, target, &results);
        return {firstWords(results, file)};
    } catch (const std::exception& error) { // a schema that is no schema
        return {Error{.where = std::string{file},
                      .found = std::string{"a schema that cannot be used: "} + error.what(),
                      .allowed = "JSON Schema draft 7"}};
    }
}

Errors schemaFileErrors(const nlohmann::json& document, const std::filesystem::path& schemaFile,
                        std::string_view file) {
    const Result<std::string> text = readText(schemaFile);
    if (!text)
        return text.errors();
    const Result<nlohmann::json> schema = parseJson(*text, schemaFile.string());
    return schema ? schemaErrors(document, *schema, file) : schema.errors();
}

} // namespace gapwise
