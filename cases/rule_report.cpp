// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/rule_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "cases/own_value.h"
#include "cases/shape_limits.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

// Bars are there already, a fusion is proven, and how a splice is made is known to who makes it.
bool is_measured(const std::string& field)
{
    return field.starts_with("left.") || field.starts_with("right.") || field == "joint.penetration" ||
           field == "joint.offset" || field.starts_with("making.");
}

}  // namespace

void RuleReport::add(const std::string& field, std::string rule, std::string fix)
{
    Problem problem = problem_at(*places_, *file_, field, std::move(rule), std::move(fix));
    // A value that several rules name, or that both sides share, is told once for each rule.
    const auto same = [&](const Problem& other)
    { return other.field == problem.field && other.rule == problem.rule && other.line == problem.line; };
    if (std::none_of(problems_.begin(), problems_.end(), same)) problems_.push_back(std::move(problem));
}

std::string RuleReport::key_of(const std::string& field) const
{
    const auto place = places_->find(field);
    return last_key_of(place == places_->end() ? field : place->second.field);
}

Kept RuleReport::keep_plausible(const std::string& field, double value_mm, double least_mm, double greatest_mm)
{
    const bool is_out = value_mm < least_mm - same_length.value() || value_mm > greatest_mm + same_length.value();
    if (is_out)
        add(field, fmt::format("must be at least {} and at most {}", mm(least_mm), mm(greatest_mm)),
            own_quantity(key_of(field), Dimension::length));
    return is_out ? Kept::no : Kept::yes;
}

Kept RuleReport::keep_between(const std::string& field, double value_mm, double least_mm, double greatest_mm,
                              const std::string& reason)
{
    if (std::isnan(least_mm) || std::isnan(greatest_mm)) return Kept::yes;
    const std::string why = reason.empty() ? "" : fmt::format(" ({})", reason);
    const auto fix = [&](double limit_mm)
    { return is_measured(field) ? own_quantity(key_of(field), Dimension::length) : fix_to(key_of(field), limit_mm); };
    const std::string rule = fmt::format("must be at least {} and at most {}", mm(least_mm), mm(greatest_mm));
    const bool is_low = value_mm < least_mm - same_length.value();
    const bool is_high = value_mm > greatest_mm + same_length.value();
    if (least_mm > greatest_mm) add(field, rule + ", which leaves nothing" + why, "change the dimensions around it");
    else if (is_low) add(field, rule + why, fix(rounded_up(least_mm)));
    else if (is_high) add(field, rule + why, fix(rounded_down(greatest_mm)));
    return least_mm > greatest_mm || is_low || is_high ? Kept::no : Kept::yes;
}

double rounded_up(double length_mm) { return std::ceil(length_mm * 100.0 - same_length.value()) / 100.0 + 0.0; }

double rounded_down(double length_mm) { return std::floor(length_mm * 100.0 + same_length.value()) / 100.0; }

std::string mm(double length_mm) { return in_words(length_mm, Dimension::length); }

std::string fix_to(const std::string& field, double length_mm)
{
    return fmt::format("{} = \"{}\"", last_key_of(field), mm(length_mm));
}

}  // namespace splicewright
