// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/compare_text.h"
#include "post/sheet.h"
#include "post/trade_off.h"

namespace splicewright
{

// What every chart of a study says beside its own.
struct ChartOrigin
{
    std::string case_file;  // its name without folders
    double reserve = 1;     // factor on all stresses: an option passes up to 1 / reserve
    double accuracy_pct = 1;
    std::string held;  // "sleeve.weld.leg = 6 mm", keys that stay; may be empty
    std::string note;  // what is not shown; may be empty
};

// Utilisation against one key with numbers, a line for each value of another key. The region that passes is shaded; a
// numbered tag stands where a line begins and where its governing site changes.
struct UtilisationChart
{
    ChartOrigin origin;
    std::string key, line_key;  // line_key: empty with one line alone
    struct Line
    {
        std::string name;                    // value of line_key
        std::vector<KeyLine::Point> points;  // by increasing value; two of them judged at least
    };
    std::vector<Line> lines;
};
Sheet utilisation_sheet(const UtilisationChart& chart, const TextWidth& width);

// Every option by mass and merit; those that no other beats are joined, tagged and listed.
struct TradeOffChart
{
    ChartOrigin origin;
    Merit merit = Merit::life;
    std::vector<std::string> keys;
    struct Place
    {
        double mass_kg = 0, merit = 0;
        bool passes = false;
    };
    std::vector<Place> others;      // at least one of them or of `best`
    std::vector<StudyOption> best;  // by increasing mass
};
Sheet trade_off_sheet(const TradeOffChart& chart, const TextWidth& width);

// Utilisation for every pair of values of two keys: colour, and the number where there is room for it. A thick line
// parts what passes from what does not.
struct HeatMap
{
    ChartOrigin origin;
    std::string x_key, y_key;
    std::vector<std::string> x_words, y_words;
    std::vector<OptionOutcome> cells;  // row by row from below, x changes fastest
};
Sheet heat_map_sheet(const HeatMap& map, const TextWidth& width);

// Lower and upper end of a utilisation's error bar: what is reported stands at the upper one.
double lower_end(const OptionOutcome& outcome);

}  // namespace splicewright
