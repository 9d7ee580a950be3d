// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <stdexcept>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace splicewright
{

// One thing that a person can mend. A problem without a fix is unfinished.
struct Problem
{
    std::string file;   // as the user named it; empty when the input did not come from a file
    int line = 0;       // 1-based, 0: the file as a whole
    int column = 0;     // 1-based
    std::string field;  // dotted, "sleeve.weld.leg"
    std::string value;  // as found; empty when absent
    std::string rule;   // "must be above 0 and at most 6.3 mm (the sleeve wall)"
    std::string fix;    // "leg = \"5 mm\""
};

// "rear.toml:14:7: sleeve.weld.leg: is "0 mm", must be above 0 and at most 6.3 mm (the sleeve wall). Fix: leg = "5 mm""
std::string to_string(const Problem& problem);

// Either a value or every problem that stood in its way.
template <class T>
class Result
{
public:
    Result(T value) : state_(std::move(value)) {}
    Result(std::vector<Problem> problems) : state_(std::move(problems)) {}

    [[nodiscard]] bool has_value() const { return std::holds_alternative<T>(state_); }
    [[nodiscard]] const T& value() const { return std::get<T>(state_); }
    [[nodiscard]] const std::vector<Problem>& problems() const { return std::get<std::vector<Problem>>(state_); }

private:
    std::variant<T, std::vector<Problem>> state_;
};

// The physics could not be computed (no mesh, loose body, poor residual). Caught once, in main; exit status 3.
class CannotCompute : public std::runtime_error
{
public:
    explicit CannotCompute(Problem problem);
    [[nodiscard]] const Problem& problem() const { return problem_; }

private:
    Problem problem_;
};

// A promise of ours was broken. Caught once, in main; exit status 4, "please report".
class BrokenPromise : public std::logic_error
{
public:
    using std::logic_error::logic_error;
};

[[noreturn]] void broken_promise(const char* condition, const char* file, int line);

}  // namespace splicewright

// Always on, in every build type: a promise between our own functions, never a check of user input.
#define EXPECTS(condition)                                                                \
    do                                                                                    \
    {                                                                                     \
        if (!(condition)) ::splicewright::broken_promise(#condition, __FILE__, __LINE__); \
    } while (false)
