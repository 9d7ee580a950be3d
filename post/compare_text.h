// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/compare_ranking.h"
#include "post/compare_table.h"

namespace splicewright
{

// The options that differ from one of them in a single key, which has a unit: by increasing value.
struct KeyLine
{
    std::string key;
    struct Point
    {
        double value = 0;   // house units
        std::string words;  // "60 mm"
        OptionOutcome outcome;
    };
    std::vector<Point> points;
};

// Where more of this key stops helping: from the first value whose utilisation is within this of the least.
constexpr double no_more_help = 0.01;  // judgement

// Parts of it, which the page of a study shows as well. Of the rows the first is the head.
using TextRow = std::vector<std::string>;
std::string counts_text(const StudyOrigin& origin, const StudyCounts& counts);
std::vector<TextRow> option_rows(const StudyOrigin& origin, const Ranking& ranking);
std::string recommendation_text(const StudyOrigin& origin, const Ranking& ranking);
std::string not_judged_text(const StudyOrigin& origin, const StudyOption& option);

// The ranked table, the counts, what was not judged, and the recommendation in words. `lines` run through the option
// that is recommended or, when none passes, the least used one.
std::string compare_text(const StudyOrigin& origin, const Ranking& ranking, Merit merit,
                         const std::vector<KeyLine>& lines);

// "sleeve.length: from 80 mm on it gains less than 1 % (64 % used, bar-toe.left governs)"; empty for a line with fewer
// than two judged points.
std::string key_line_text(const KeyLine& line);

}  // namespace splicewright
