#include "geometry/base/result.h"

#include <gtest/gtest.h>

namespace gapwise {

TEST(Error, SaysWhereFoundAndAllowed) {
    const Error error{
        .where = "k1.json#/rules/3/seen_from", .found = "\"left\"", .allowed = "compressor or turbine"};
    EXPECT_EQ(describe(error), "k1.json#/rules/3/seen_from: found \"left\"; allowed: compressor or turbine");
}

TEST(Error, SaysOnlyWhatItKnows) {
    EXPECT_EQ(describe(Error{.where = "a", .found = "b", .allowed = ""}), "a: found b");
    EXPECT_EQ(describe(Error{.where = "a", .found = "", .allowed = "c"}), "a: c");
}

TEST(Result, HoldsAValueOrAllErrors) {
    const Result<int> good{7};
    const Result<int> bad{Errors{Error{.where = "x"}, Error{.where = "y"}}};
    ASSERT_TRUE(good);
    EXPECT_EQ(*good, 7);
    ASSERT_FALSE(bad);
    EXPECT_EQ(bad.errors().size(), 2U);
}

} // namespace gapwise
