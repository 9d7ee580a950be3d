// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/places.h"

namespace splicewright
{

enum class Kept
{
    yes,
    no,
};

// Gathers broken rules. Every rule is written so that it is broken by a comparison that holds:
// a value that could not be read (not a number) then breaks none.
class RuleReport
{
public:
    RuleReport(const Places& places, const std::string& file) : places_(&places), file_(&file) {}

    void add(const std::string& field, std::string rule, std::string fix);
    // Adds a problem when the length is out of range (a bound that is not a number bounds nothing); the reason stands
    // behind the numbers. The fix of what is designed is the limit; what is measured or proven is left to the person.
    Kept keep_between(const std::string& field, double value_mm, double least_mm, double greatest_mm,
                      const std::string& reason = {});
    // The same for a range so wide that only a slip of the unit or the sign leaves it.
    Kept keep_plausible(const std::string& field, double value_mm, double least_mm, double greatest_mm);
    // The last key that gave a field its value: "wall" for sleeve.outer_diameter where the wall was written.
    [[nodiscard]] std::string key_of(const std::string& field) const;
    [[nodiscard]] std::vector<Problem> take() { return std::move(problems_); }

private:
    const Places* places_;
    const std::string* file_;
    std::vector<Problem> problems_;
};

// "6.3 mm"
std::string mm(double length_mm);

// To the hundredth of a millimetre, so that a fix given as such a number keeps the rule.
double rounded_up(double length_mm);
double rounded_down(double length_mm);

// `leg = "6 mm"` for the last key of a field.
std::string fix_to(const std::string& field, double length_mm);

}  // namespace splicewright
