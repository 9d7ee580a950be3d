// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/compare_text.h"

namespace splicewright
{

// The value of a key at which the governing utilisation passes a target.
struct Search
{
    std::string key;
    double target = 1;
    double tolerance = 0;  // house units
    std::string tolerance_words;
    std::vector<KeyLine::Point> samples;  // by increasing value
    // Two values with the target between them, no further apart than the tolerance unless it had to stop.
    struct Stretch
    {
        KeyLine::Point low, high;
        std::string stopped;  // why it ended before; mostly empty
    };
    std::vector<Stretch> stretches;
};

// One value, several, or none, in words.
std::string search_text(const Search& search);

}  // namespace splicewright
