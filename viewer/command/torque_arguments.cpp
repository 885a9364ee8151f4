#include "viewer/command/torque_arguments.h"

#include "viewer/command/add_command.h"

#include <CLI/CLI.hpp>

namespace gapwise {

namespace {

constexpr const char* kUnits =
    "Units: N·m, lbf·ft, lbf·in, kgf·m, kgf·cm; a full stop may stand for the dot: N.m.";

CLI::App* addAct(CLI::App& torque, TorqueTyped& typed, bool& json, TorqueTyped::Act act) {
    using enum TorqueTyped::Act;
    const auto add = [&](const char* name, const char* words) {
        CLI::App* command = addCommand(torque, json, name, words);
        command->parse_complete_callback([&typed, act] { typed.act = act; });
        return command;
    };
    switch (act) {
    case Convert: return add("convert", "Say a torque in other units");
    case Wrench: return add("wrench", "What to set a torque wrench to, with or without an adapter");
    case Preload: return add("preload", "Clamp force of a torque, and what it does to the screw");
    case NutLine: return add("nut-line", "Judge how far a shaft nut stands from its old line");
    case Show: return add("show", "Everything about a fastener of a frame");
    case Pattern: return add("pattern", "In which order to tighten the screws of a flange");
    }
    return nullptr;
}

void addConvert(CLI::App* command, ConvertRequest& request) {
    command->add_option("TORQUE", request.torque, "Number and unit: 32.4 N.m")
        ->type_name("")
        ->expected(1, 3)
        ->required();
    command->add_option("--to", request.to, "This unit only")->type_name("UNIT");
    command->footer(kUnits);
}

void addWrench(CLI::App* command, WrenchRequest& request) {
    command->add_option("--target", request.target, "What the fastener must get, such as \"24 N.m\"")
        ->type_name("TORQUE")
        ->required();
    command->add_option("--length", request.length, "From the middle of the grip to the wrench's drive")
        ->type_name("MM")
        ->required();
    command->add_option("--adapter", request.adapter, "From the drive to the middle of the fastener")
        ->type_name("MM");
    command
        ->add_option("--angle", request.angle,
                     "Between adapter and wrench: 0 straight out (the usual), 90 square\n"
                     "to it, 180 folded back")
        ->type_name("DEG");
    command->add_option("--wrench-min", request.wrenchMin, "Least that the wrench can be set to")
        ->type_name("TORQUE");
    command->add_option("--wrench-max", request.wrenchMax, "Most that it can be set to")->type_name("TORQUE");
    command->add_option("--wrench-step", request.wrenchStep, "Step that an electronic wrench shows")
        ->type_name("TORQUE");
    command->footer(std::string{kUnits} + "\nWithout a unit: N·m.");
}

void addPreload(CLI::App* command, PreloadRequest& request) {
    command->add_option("THREAD", request.thread, "ISO metric thread: M8 (coarse), M8x1, M8x1-LH")
        ->type_name("")
        ->required();
    command->add_option("--torque", request.torque, "Torque at the wrench")->type_name("TORQUE");
    command->add_option("--force", request.force, "Clamp force instead of a torque")->type_name("KN");
    command
        ->add_option("--class", request.property,
                     "Property class: 8.8, 9.8, 10.9 or 12.9; with neither torque nor\n"
                     "force: 90 % of its yield stress")
        ->type_name("CLASS");
    command->add_option("--friction-thread", request.frictionThread, "Between the flanks, else 0.12")
        ->type_name("MU");
    command->add_option("--friction-head", request.frictionHead, "Under head or nut, else 0.12")
        ->type_name("MU");
    command
        ->add_option("--bearing-diameter", request.bearingDiameter,
                     "Mean diameter under head or nut; else a hexagon head's (M5 to M24)")
        ->type_name("MM");
    command
        ->add_option("--tightening-factor", request.tighteningFactor,
                     "Scatter of the way of tightening (VDI 2230), 1 or more")
        ->type_name("FACTOR");
    command->footer(std::string{kUnits} + "\nWithout a unit: N·m.");
}

void addNutLine(CLI::App* command, NutLineRequest& request) {
    const auto add = [&](const char* name, std::string& text, const char* words, const char* unit) {
        command->add_option(name, text, words)->type_name(unit)->required();
    };
    add("--read", request.read, "Shift against the line, tightening positive", "DEG");
    add("--stack", request.stack, "New less old length of what the nut clamps", "MM");
    add("--pitch", request.pitch, "Pitch of the nut's thread", "MM");
    add("--agrees", request.agrees, "Up to here the line agrees", "DEG");
    add("--small", request.small, "Up to here the shift is small", "DEG");
}

void addPattern(CLI::App* command, PatternRequest& request) {
    command->add_option("SCREWS", request.screws, "How many screws, evenly round the flange")
        ->type_name("")
        ->required();
}

void addShow(CLI::App* command, ShowRequest& request) {
    command->add_option("FRAME", request.frame, "Frame (id or path)")->type_name("")->required();
    command->add_option("FASTENER", request.fastener, "Such as T3")->type_name("")->required();
    command->add_option("--up", request.up, "Which end is up, or level")->type_name("END");
    command->add_option("--drain", request.drain, "Where the drain points, seen from the front of the bench")
        ->type_name("CLOCK");
    command->add_option("--seen-from", request.seenFrom, "The end that a level piece is looked at from")
        ->type_name("SIDE");
    command->add_option("--unit", request.unit, "Unit of the torques")->type_name("UNIT");
    command->add_option("--length", request.length, "From the middle of the grip to the wrench's drive")
        ->type_name("MM");
    command->add_option("--adapter", request.adapter, "From the drive to the middle of the fastener")
        ->type_name("MM");
    command->add_option("--angle", request.angle, "Between adapter and wrench: 0 straight out")
        ->type_name("DEG");
    command->add_option("--wrench-min", request.wrenchMin, "Least that the wrench can be set to")
        ->type_name("TORQUE");
    command->add_option("--wrench-max", request.wrenchMax, "Most that it can be set to")->type_name("TORQUE");
    command->footer(kUnits);
}

} // namespace

void addTorque(CLI::App& app, TorqueTyped& typed, bool& json) {
    using enum TorqueTyped::Act;
    CLI::App* torque =
        app.add_subcommand("torque", "Torque: units, wrench setting, preload, nut line, patterns, fasteners");
    torque->allow_extras();
    torque->require_subcommand(0, 1);
    addConvert(addAct(*torque, typed, json, Convert), typed.convert);
    addWrench(addAct(*torque, typed, json, Wrench), typed.wrench);
    addPreload(addAct(*torque, typed, json, Preload), typed.preload);
    addNutLine(addAct(*torque, typed, json, NutLine), typed.nutLine);
    addPattern(addAct(*torque, typed, json, Pattern), typed.pattern);
    addShow(addAct(*torque, typed, json, Show), typed.show);
}

TorqueRequest requestOf(const TorqueTyped& typed) {
    switch (typed.act) {
    case TorqueTyped::Act::Convert: return typed.convert;
    case TorqueTyped::Act::Wrench: return typed.wrench;
    case TorqueTyped::Act::Preload: return typed.preload;
    case TorqueTyped::Act::NutLine: return typed.nutLine;
    case TorqueTyped::Act::Pattern: return typed.pattern;
    case TorqueTyped::Act::Show: return typed.show;
    }
    return typed.convert;
}

} // namespace gapwise
