// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// A number that the program computes, held against one that somebody else published or that theory gives.

enum class ToleranceKind
{
    round_off,           // the same formula in another order
    discretisation,      // finite elements against an exact solution
    digits_printed,      // half a unit of the last digit that the source prints
    chart_band,          // a chart or a fit to one: never exact
    idealisation,        // a theory that leaves something out
    negligible_against,  // an expected zero
};

// computed - expected may lie from low to high, in the unit of the row.
struct CheckTolerance
{
    ToleranceKind kind = ToleranceKind::round_off;
    double low = 0, high = 0;
    std::string reason;
};

CheckTolerance round_off(double expected);
CheckTolerance discretisation(double share, double expected, std::string reason);
CheckTolerance decimals_printed(int decimals);               // digits after the point
CheckTolerance digits_printed(int digits, double expected);  // significant digits
CheckTolerance chart_band(double low_pct, double high_pct, double expected, std::string reason);
CheckTolerance idealisation(double low_pct, double high_pct, double expected, std::string reason);
CheckTolerance negligible_against(double scale, double share, std::string reason);

enum class SourceKind
{
    exact_theory,
    published_table,  // or a printed number
    published_chart,  // or a fit to one
    worked_example,
    derived,  // computed for this project by another route
};
const char* name_of(SourceKind kind);  // "exact theory", ...

struct PublishedCheck
{
    std::string name;  // "shoulder.bending.D1.50.r0.10.pilkey", unique
    std::string claim;
    double expected = 0;
    std::string unit;
    CheckTolerance allowed;
    std::string source;  // document, edition, section, with its key in docs/references.bib
    SourceKind kind = SourceKind::exact_theory;
    Provenance provenance = Provenance::theory;  // how we know what the source says
};

// Checks that one computation answers.
struct CheckGroup
{
    std::string name;
    std::vector<PublishedCheck> checks;
    std::function<std::vector<double>()> computed;  // one number for each check, in their order
};

struct ProvenCheck
{
    PublishedCheck check;
    double computed = 0;           // not a number when it could not be computed
    std::string why_not_computed;  // empty when it was
    [[nodiscard]] bool agrees() const;
};

// Runs one computation. A case that cannot be computed gives rows that do not agree.
std::vector<ProvenCheck> proven(const CheckGroup& group);

// A check and the number that answers it, read from what one computation gave.
template <class Answer>
struct AnsweredCheck
{
    PublishedCheck check;
    std::function<double(const Answer&)> number;
};

template <class Answer>
CheckGroup check_group(std::string name, std::function<Answer()> computation, std::vector<AnsweredCheck<Answer>> rows)
{
    CheckGroup group{std::move(name), {}, {}};
    for (const auto& row : rows) group.checks.push_back(row.check);
    group.computed = [computation = std::move(computation), rows = std::move(rows)]
    {
        const Answer answer = computation();
        std::vector<double> numbers;
        for (const auto& row : rows) numbers.push_back(row.number(answer));
        return numbers;
    };
    return group;
}

// A closed form needs no computation to share.
struct ClosedFormCheck
{
    PublishedCheck check;
    double computed = 0;
};
CheckGroup closed_form_group(std::string name, std::vector<ClosedFormCheck> rows);

// Every check of the program, in the order of docs/validation.md.
std::vector<CheckGroup> published_checks();

}  // namespace splicewright
