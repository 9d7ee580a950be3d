// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/problem.h"

#include <fmt/format.h>

namespace splicewright
{

std::string to_string(const Problem& problem)
{
    std::string text;
    if (!problem.file.empty())
    {
        text += problem.file;
        if (problem.line > 0) text += fmt::format(":{}:{}", problem.line, problem.column);
        text += ": ";
    }
    if (!problem.field.empty()) text += problem.field + ": ";
    if (!problem.value.empty()) text += fmt::format("is {}, ", problem.value);
    text += problem.rule + ".";
    if (!problem.fix.empty()) text += " Fix: " + problem.fix;
    return text;
}

CannotCompute::CannotCompute(Problem problem) : std::runtime_error(to_string(problem)), problem_(std::move(problem)) {}

void broken_promise(const char* condition, const char* file, int line)
{
    throw BrokenPromise(fmt::format("{}:{}: expected {}", file, line, condition));
}

}  // namespace splicewright
