// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <map>
#include <vector>

#include "post/compare_ranking.h"

namespace splicewright
{

// What is weighed against mass.
enum class Merit
{
    life,         // the more the better; all lives beyond what has a meaning are equal
    utilisation,  // the less the better; where no option ever fails in fatigue
};
const char* name_of(Merit merit);  // as in options.csv: "life"

// Lives beyond the longest with a meaning are equal, and so is none at all.
double counted_life(const OptionOutcome& outcome);

// Options that pass, and that no other passing option beats: none is as light and as good without being the same in
// both. Takes options one by one and keeps those only.
class TradeOff
{
public:
    explicit TradeOff(double reserve);
    void add(const StudyOption& option);
    [[nodiscard]] Merit merit() const { return has_life_ ? Merit::life : Merit::utilisation; }
    // Once all were added.
    [[nodiscard]] bool holds(const OptionOutcome& outcome) const;
    [[nodiscard]] std::vector<StudyOption> options() const;  // by increasing mass; the first of equal ones

private:
    using Front = std::map<double, StudyOption>;  // by mass
    [[nodiscard]] const Front& front() const { return has_life_ ? by_life_ : by_utilisation_; }

    double reserve_;
    bool has_life_ = false;
    Front by_life_, by_utilisation_;
};

}  // namespace splicewright
