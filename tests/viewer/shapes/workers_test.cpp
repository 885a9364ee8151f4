#include "viewer/shapes/workers.h"

#include <csignal>
#include <gtest/gtest.h>
#include <map>
#include <unistd.h>

namespace gapwise::test {

namespace {

/// What each job left, and the order in which they were told.
struct Told {
    std::vector<std::size_t> order{};
    std::map<std::size_t, WorkerResult> results{};
};

Told run(std::size_t count, std::size_t atOnce, std::function<std::string(std::size_t)> job,
         unsigned cpuSeconds = 60) {
    Told told;
    runInProcesses({.count = count,
                    .atOnce = atOnce,
                    .cpuSeconds = cpuSeconds,
                    .job = std::move(job),
                    .done = [&](std::size_t i, const WorkerResult& result) {
                        told.order.push_back(i);
                        told.results[i] = result;
                    }});
    return told;
}

} // namespace

TEST(Workers, AreToldInTheOrderOfTheJobs) {
    const Told told = run(5, 3, [](std::size_t i) {
        ::usleep(static_cast<useconds_t>((5 - i) * 2000)); // the first ends last
        return std::to_string(i * i);
    });
    EXPECT_EQ(told.order, (std::vector<std::size_t>{0, 1, 2, 3, 4}));
    EXPECT_EQ(told.results.at(3).said, "9");
    EXPECT_FALSE(told.results.at(3).died);
}

TEST(Workers, LongAnswersComeWhole) {
    const Told told = run(2, 2, [](std::size_t i) { return std::string(300000 + i, 'x'); });
    EXPECT_EQ(told.results.at(0).said.size(), 300000U);
    EXPECT_EQ(told.results.at(1).said.size(), 300001U);
}

TEST(Workers, JobThatCrashesIsLostAlone) {
    const Told told = run(3, 2, [](std::size_t i) {
        if (i == 1)
            ::raise(SIGKILL);
        return std::string{"fine"};
    });
    EXPECT_EQ(told.results.at(0).said, "fine");
    ASSERT_TRUE(told.results.at(1).died);
    EXPECT_EQ(*told.results.at(1).died, "was ended by the signal 9 (Killed)");
    EXPECT_EQ(told.results.at(2).said, "fine");
}

TEST(Workers, JobThatHangsIsEnded) {
    const Told told = run(
        1, 1,
        [](std::size_t) {
            std::string endless;
            while (::getppid() != 0)
                endless = std::to_string(endless.size());
            return endless;
        },
        1);
    EXPECT_TRUE(told.results.at(0).died);
}

TEST(Workers, NoJobsNeedNoWorkers) {
    EXPECT_TRUE(run(0, 2, [](std::size_t) { return std::string{}; }).order.empty());
}

} // namespace gapwise::test
