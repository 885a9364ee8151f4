#include "models/measure/bench.h"

#include "models/build/read_instrument.h"
#include "models/json/document.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace gapwise {

namespace {

constexpr std::string_view kFormat = "gapwise.bench/1";
constexpr const char* kDemoBench = "sedgeloft.json";

const Instrument* find(const std::vector<Instrument>& instruments, std::string_view id) {
    const auto found = std::ranges::find(instruments, id, &Instrument::id);
    return found == instruments.end() ? nullptr : &*found;
}

Bench readWhole(const nlohmann::json& document, Complaints& complaints) {
    constexpr std::array<Named<bool>, 1> kFormats{{{kFormat, true}}};
    Fields fields{document, "", complaints};
    fields.word("format", kFormats);
    Bench bench{.name = fields.text("name"),
                .instruments = readEach(fields.objects("instruments"), readInstrument)};
    fields.maybeText("source");
    fields.finish();
    instrumentErrors(bench.instruments, complaints);
    return bench;
}

} // namespace

Result<Bench> readBench(const DataFolder& data, const std::filesystem::path& file) {
    const std::string name = file == "-" ? "standard input" : file.string();
    const Result<std::string> text = readText(file);
    if (!text)
        return text.errors();
    const Result<nlohmann::json> document = parseJson(*text, name);
    if (!document)
        return document.errors();
    if (Errors errors = schemaFileErrors(*document, data.schemaFile("bench"), name); !errors.empty())
        return errors;
    Complaints complaints{name};
    Bench bench = readWhole(*document, complaints);
    if (!complaints.empty())
        return complaints.take();
    return bench;
}

Result<Bench> demoBench(const DataFolder& data) {
    return readBench(data, data.root / "benches" / kDemoBench);
}

const Instrument* instrumentOf(const Build& build, const Bench& bench, std::string_view id) {
    const Instrument* own = find(build.instruments, id);
    return own ? own : find(bench.instruments, id);
}

} // namespace gapwise
