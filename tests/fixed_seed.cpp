#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>

namespace {

/// Properties are drawn from the same seed on every run, and the seed is printed; RC_PARAMS tries another
/// one.
class FixedSeed : public ::testing::Environment {
public:
    void SetUp() override {
        constexpr int kKeepWhatTheCallerSet = 0;
        setenv("RC_PARAMS", "seed=20121 max_success=300", kKeepWhatTheCallerSet);
        std::cout << "properties drawn with " << std::getenv("RC_PARAMS") << '\n';
    }
};

[[maybe_unused]] const ::testing::Environment* const kFixedSeed =
    ::testing::AddGlobalTestEnvironment(new FixedSeed); // GoogleTest deletes it.

} // namespace
