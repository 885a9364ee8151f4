#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace gapwise {

/// One thing that was wrong with what the world gave us: where it stood, what was found there, what is
/// allowed.
struct Error {
    std::string where{};   ///< A file, a file with a JSON pointer (`k1.json#/rules/3`), or an option's name.
    std::string found{};   ///< What stood there, quoted if it is text.
    std::string allowed{}; ///< What may stand there, in words.

    bool operator==(const Error&) const = default;
};

/// Everything that was wrong, in the order of the input. Never empty where it is returned as a failure.
using Errors = std::vector<Error>;

/// `where: found …, allowed: …` on one line, for standard error.
std::string describe(const Error& error);

/// Either a value or all the errors that kept it from being made.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : state_{std::move(value)} {}
    Result(Error error) : state_{Errors{std::move(error)}} {}
    Result(Errors errors) : state_{std::move(errors)} { assert(!this->errors().empty()); }

    explicit operator bool() const { return std::holds_alternative<T>(state_); }
    const T& value() const& { return std::get<T>(state_); }
    T& value() & { return std::get<T>(state_); }
    T&& value() && { return std::get<T>(std::move(state_)); }
    const T* operator->() const { return &value(); }
    const T& operator*() const& { return value(); }
    const Errors& errors() const { return std::get<Errors>(state_); }

private:
    std::variant<T, Errors> state_;
};

} // namespace gapwise
