// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/published_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "cases/problem.h"
#include "post/check_groups.h"

namespace splicewright
{
namespace
{

constexpr double round_off_share = 1e-9;  // a few hundred operations, each with 1e-16, and cancellation

CheckTolerance symmetric(ToleranceKind kind, double half_width, std::string reason)
{
    return {kind, -half_width, half_width, std::move(reason)};
}

CheckTolerance in_percent(ToleranceKind kind, double low_pct, double high_pct, double expected, std::string reason)
{
    const double a = low_pct / 100 * expected, b = high_pct / 100 * expected;
    return {kind, std::min(a, b), std::max(a, b), std::move(reason)};
}

}  // namespace

CheckTolerance round_off(double expected)
{
    return symmetric(ToleranceKind::round_off, round_off_share * std::abs(expected), "round-off");
}

CheckTolerance discretisation(double share, double expected, std::string reason)
{
    return symmetric(ToleranceKind::discretisation, share * std::abs(expected), std::move(reason));
}

CheckTolerance decimals_printed(int decimals)
{
    return symmetric(ToleranceKind::digits_printed, 0.5001 * std::pow(10.0, -decimals),
                     fmt::format("{} decimals printed", decimals));
}

CheckTolerance digits_printed(int digits, double expected)
{
    const double magnitude = std::floor(std::log10(std::abs(expected)));
    return symmetric(ToleranceKind::digits_printed, 0.5001 * std::pow(10.0, magnitude + 1 - digits),
                     fmt::format("{} digits printed", digits));
}

CheckTolerance chart_band(double low_pct, double high_pct, double expected, std::string reason)
{
    return in_percent(ToleranceKind::chart_band, low_pct, high_pct, expected, std::move(reason));
}

CheckTolerance idealisation(double low_pct, double high_pct, double expected, std::string reason)
{
    return in_percent(ToleranceKind::idealisation, low_pct, high_pct, expected, std::move(reason));
}

CheckTolerance negligible_against(double scale, double share, std::string reason)
{
    return symmetric(ToleranceKind::negligible_against, share * std::abs(scale), std::move(reason));
}

const char* name_of(SourceKind kind)
{
    switch (kind)
    {
        case SourceKind::exact_theory: return "exact theory";
        case SourceKind::published_table: return "published table";
        case SourceKind::published_chart: return "published chart";
        case SourceKind::worked_example: return "worked example";
        case SourceKind::derived: return "derived";
    }
    return "";
}

bool ProvenCheck::agrees() const
{
    const double difference = computed - check.expected;
    return difference >= check.allowed.low && difference <= check.allowed.high;
}

std::vector<ProvenCheck> proven(const CheckGroup& group)
{
    std::vector<ProvenCheck> rows;
    try
    {
        const std::vector<double> numbers = group.computed();
        EXPECTS(numbers.size() == group.checks.size());
        for (std::size_t i = 0; i < numbers.size(); ++i) rows.push_back({group.checks[i], numbers[i], ""});
    }
    catch (const CannotCompute& error)
    {
        for (const PublishedCheck& check : group.checks)
            rows.push_back({check, std::numeric_limits<double>::quiet_NaN(), error.what()});
    }
    return rows;
}

CheckGroup closed_form_group(std::string name, std::vector<ClosedFormCheck> rows)
{
    CheckGroup group{std::move(name), {}, {}};
    std::vector<double> numbers;
    for (ClosedFormCheck& row : rows)
    {
        numbers.push_back(row.computed);
        group.checks.push_back(std::move(row.check));
    }
    group.computed = [numbers = std::move(numbers)] { return numbers; };
    return group;
}

std::vector<CheckGroup> published_checks()
{
    std::vector<CheckGroup> all;
    for (const auto& part : {shaft_checks, fit_checks, shoulder_checks, groove_checks, cavity_checks, lap_checks,
                             weld_checks, fatigue_checks_of_books, rotor_checks, solid_checks})
        for (CheckGroup& group : part()) all.push_back(std::move(group));
    return all;
}

}  // namespace splicewright
