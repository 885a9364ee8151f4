#include "models/measure/bench.h"

#include "tests/support/print_error.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <unistd.h>

namespace gapwise {

namespace {

using nlohmann::json;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

namespace fs = std::filesystem;

const DataFolder kBundled{fs::path{GAPWISE_TEST_SHARE}};

/// A bench file with two instruments, in a folder of its own.
class BenchFile {
public:
    BenchFile() : folder_{fs::path{testing::TempDir()} / ("gapwise-bench-" + std::to_string(::getpid()))} {
        fs::create_directories(folder_);
    }
    BenchFile(const BenchFile&) = delete;
    BenchFile& operator=(const BenchFile&) = delete;
    ~BenchFile() {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }

    Errors errors(const std::string& text) const {
        const fs::path file = folder_ / "b.json";
        std::ofstream{file} << text;
        const Result<Bench> bench = readBench(kBundled, file);
        return bench ? Errors{} : bench.errors();
    }
    Errors changed(const char* pointer, const json& value) const {
        json document = json::parse(kGood);
        document[json::json_pointer{pointer}] = value;
        return errors(document.dump());
    }

    static constexpr const char* kGood = R"({"format": "gapwise.bench/1", "name": "bench", "instruments": [
        {"id": "M1", "kind": "flat_anvil_micrometer", "name": "micrometer", "unit": "mm", "resolution": 0.001,
         "uncertainty": 0.003, "least": 0, "most": 25, "calibrated_until": "2027-02-28"},
        {"id": "B1", "kind": "balancing_machine", "name": "machine", "unit": "g_mm", "resolution": 0.001,
         "uncertainty": 0.005, "least": 0, "most": 50}]})";

private:
    fs::path folder_;
};

} // namespace

TEST(Bench, TheDemoBenchIsRead) {
    const Result<Bench> bench = demoBench(kBundled);
    ASSERT_TRUE(bench) << describe(bench.errors().front());
    EXPECT_EQ(bench->name, "Sedgeloft Rotor Bench");
    const Instrument& ball = *instrumentOf(Build{}, *bench, "MIC-11");
    EXPECT_EQ(ball.kind, "ball_anvil_micrometer");
    EXPECT_EQ(ball.unit, "mm");
    EXPECT_EQ(ball.resolution, 0.001);
    EXPECT_EQ(ball.uncertainty, 0.003);
    EXPECT_EQ(ball.least, 0.0);
    EXPECT_EQ(ball.most, 25.0);
    EXPECT_EQ(ball.calibratedUntil, "2027-03-31");
    EXPECT_EQ(ball.pointer, "/instruments/2");
}

// All invented: what the demo jobs are measured with.
TEST(Bench, TheDemoJobsFindTheirInstruments) {
    const Bench bench = demoBench(kBundled).value();
    for (const char* id :
         {"MIC-07", "MIC-11", "MIC-12", "BOR-03", "DIA-02", "DEP-01", "FEE-04", "GRO-01", "CAL-05", "BAL-01"})
        EXPECT_TRUE(instrumentOf(Build{}, bench, id)) << id;
    EXPECT_EQ(instrumentOf(Build{}, bench, "MIC-99"), nullptr);
}

TEST(Bench, TheSheetsOwnInstrumentComesFirst) {
    const Bench bench = demoBench(kBundled).value();
    Build build;
    build.instruments.push_back(Instrument{.id = "MIC-07", .name = "borrowed"});
    EXPECT_EQ(instrumentOf(build, bench, "MIC-07"), &build.instruments[0]);
    EXPECT_EQ(instrumentOf(build, bench, "MIC-11")->name, bench.instruments[2].name);
}

TEST(Bench, ARightFileIsRead) {
    EXPECT_THAT(BenchFile{}.errors(BenchFile::kGood), IsEmpty());
}

TEST(Bench, TwoInstrumentsOfOneNumberAreRefused) {
    const Errors errors = BenchFile{}.changed("/instruments/1/id", "M1");
    ASSERT_THAT(errors, SizeIs(1));
    EXPECT_THAT(errors[0].where, HasSubstr("b.json#/instruments/1/id"));
    EXPECT_EQ(errors[0].found, "\"M1\", as at /instruments/0");
    EXPECT_EQ(errors[0].allowed, "each instrument once");
}

TEST(Bench, ARangeRises) {
    for (const double most : {0.0, -1.0}) {
        const Errors errors = BenchFile{}.changed("/instruments/0/most", most);
        ASSERT_THAT(errors, SizeIs(1)) << most;
        EXPECT_THAT(errors[0].where, HasSubstr("#/instruments/0/most"));
        EXPECT_EQ(errors[0].allowed, "above the least, 0");
    }
}

TEST(Bench, ADayIsOneOfTheCalendar) {
    EXPECT_THAT(BenchFile{}.changed("/instruments/0/calibrated_until", "2028-02-29"), IsEmpty());
    for (const char* day : {"2027-02-29", "2027-13-01", "2027-00-10", "27-01-01", "next year", "2027-01-1x"})
        EXPECT_THAT(BenchFile{}.changed("/instruments/0/calibrated_until", day),
                    Contains(Field(&Error::where, HasSubstr("#/instruments/0/calibrated_until"))))
            << day;
}

TEST(Bench, ImpossibleValuesAreRefusedAtTheirPlace) {
    const auto refused = [](const char* pointer, const json& value) {
        EXPECT_THAT(BenchFile{}.changed(pointer, value),
                    Contains(Field(&Error::where, HasSubstr(std::string{"#"} + pointer))))
            << value;
    };
    for (const char* size : {"/instruments/0/resolution", "/instruments/0/uncertainty"})
        for (const json& value : {json(-0.001), json("0.001"), json(nullptr), json(6000)})
            refused(size, value);
    refused("/instruments/0/kind", "ruler");
    refused("/instruments/0/unit", "inch");
    refused("/instruments/0/id", "");
    refused("/instruments/0/colour", "red");
    refused("/format", "gapwise.bench/2");
    refused("/instruments/1", 7);
}

TEST(Bench, EveryTruncatedLengthIsRefused) {
    const std::string good = BenchFile::kGood;
    const BenchFile file;
    for (std::size_t length = 0; length + 1 < good.size(); length += 5)
        ASSERT_THAT(file.errors(good.substr(0, length)), Not(IsEmpty())) << length;
}

TEST(Bench, AMissingFileIsAnError) {
    EXPECT_FALSE(readBench(kBundled, "no/such/bench.json"));
}

} // namespace gapwise
