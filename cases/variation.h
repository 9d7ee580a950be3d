// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "cases/problem.h"

namespace splicewright
{

// One key of the case and the values that it is to take, as they would stand in the case file: `"60 mm"`, `2`.
struct Variation
{
    std::string key;  // "sleeve.length", "left.section[1].diameter": counted from 1
    std::vector<std::string> values;
};

constexpr std::size_t most_values = 100'000;         // of one key, judgement
constexpr std::uint64_t most_options = 100'000'000;  // of a study, judgement

// The value without its quotes, for people.
std::string plain_value(const std::string& value);

// From the command line: `sleeve.length=60mm..120mm:7` (both ends included), `sleeve.wall=4mm,6mm,8mm` or
// `sleeve.material="E355 tube +N",4130 N tube`. Every problem at once; what fits the case is checked by
// misfit_problems.
Result<Variation> variation_from_words(const std::string& words);

// What keeps the variations from being used on this case: keys that it has no place for, keys given twice, keys that
// stand for the same thing, too many options. The case text itself must be readable.
std::vector<Problem> misfit_problems(const std::vector<Variation>& variations, const std::string& case_text);

// Every combination is an option; the last key changes fastest.
std::uint64_t n_options(const std::vector<Variation>& variations);

// Which value each key takes in an option; expects index < n_options.
std::vector<std::size_t> choice_at(const std::vector<Variation>& variations, std::uint64_t index);
std::uint64_t index_of(const std::vector<Variation>& variations, const std::vector<std::size_t>& choice);

}  // namespace splicewright
