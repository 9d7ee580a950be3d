// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "post/compare_ranking.h"
#include "post/passing_share.h"

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
    SampledParts sampled;
    std::vector<std::string> left_out;  // keys with a tolerance that cannot be moved
};

// Utilisation at the worse end over that as drawn; absent when neither end or no nominal was judged.
std::optional<double> worst_change(const ToleranceEffect& effect, const OptionOutcome& nominal);

// Parts of the text, which the page shows as well.
std::vector<const ToleranceEffect*> by_change(const ToleranceAnswer& answer);  // those that move it most first
std::string tolerance_end_text(const std::string& words, const OptionOutcome& outcome);  // "64.12 % at 5 mm"
std::string as_drawn_text(const ToleranceAnswer& answer);
std::string corner_text(const ToleranceAnswer& answer);
std::string corners_tried_text(const ToleranceAnswer& answer);
std::string watch_text(const ToleranceAnswer& answer);
std::string left_out_text(const std::string& key);

// The ends, those that move the governing utilisation most first; the worst corner; the share of parts that pass; which
// dimension to watch.
std::string tolerance_text(const ToleranceAnswer& answer);

}  // namespace splicewright
