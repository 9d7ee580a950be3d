// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/compare_ranking.h"

namespace splicewright
{

// One value written with +-, at both of its ends while all others are as drawn.
struct ToleranceEffect
{
    std::string key, low_words, high_words;
    OptionOutcome low, high;
};

struct ToleranceAnswer
{
    OptionOutcome nominal;
    std::vector<ToleranceEffect> effects;
    std::vector<std::string> keys;        // of the corner's values
    StudyOption corner;                   // the worst one that was judged
    bool every_corner = false;            // all were tried; otherwise the one that takes each key at its worse end
    bool some_failed = false;             // corners that could not be computed
    std::vector<std::string> not_judged;  // corners that break a rule or failed, in words
    std::vector<std::string> left_out;    // keys with a tolerance that cannot be moved
};

// Utilisation at the worse end over that as drawn; absent when neither end or no nominal was judged.
std::optional<double> worst_change(const ToleranceEffect& effect, const OptionOutcome& nominal);

// The ends, those that move the governing utilisation most first; the worst corner; which dimension to watch.
std::string tolerance_text(const ToleranceAnswer& answer);

}  // namespace splicewright
