#include "viewer/command/check_command.h"

#include "models/build/read_build.h"
#include "models/check/check.h"
#include "viewer/command/check_json.h"
#include "viewer/command/check_text.h"

namespace gapwise {

namespace {

/// Only a broken rule can be explained by the sister variant: only then its frame is read.
Checked checkWithSister(const DataFolder& data, const BuildSheet& sheet, CheckOptions options,
                        Errors& notes) {
    Checked checked = checkBuild(sheet.frame, sheet.build, options);
    if (checked.count(RuleState::Broken) == 0 || !sheet.frame.sister)
        return checked;
    const Result<std::optional<Frame>> sister = readSister(data, sheet.frame, sheet.frameFile);
    if (!sister) {
        notes.push_back({.where = "sister frame " + sheet.frame.sister->text,
                         .found = describe(sister.errors().front()),
                         .allowed = "a frame; whether its rules explain the findings is not looked into"});
        return checked;
    }
    options.sister = &**sister;
    return checkBuild(sheet.frame, sheet.build, options);
}

} // namespace

Outcome checkCommand(const DataFolder& data, const CheckRequest& request, Format format) {
    const Result<BuildSheet> sheet = readBuildSheet(data, request.build);
    if (!sheet)
        return failed(ExitStatus::BadInput, sheet.errors());
    Outcome outcome;
    const Checked checked =
        checkWithSister(data, *sheet, CheckOptions{.complete = request.complete}, outcome.notes);
    const std::string name = request.build == "-" ? "standard input" : request.build;
    outcome.status = checked.holds ? ExitStatus::Holds : ExitStatus::Broken;
    outcome.text = format == Format::Json ? checkAsJson(sheet->frame, checked)
                                          : checkAsText(sheet->frame, sheet->build, checked, name);
    return outcome;
}

} // namespace gapwise
