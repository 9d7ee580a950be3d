// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/search_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "post/number_words.h"
#include "post/wrapped_text.h"

namespace splicewright
{
namespace
{

constexpr int digits = 4;  // of a utilisation

std::string place_text(const KeyLine::Point& point)
{
    return fmt::format("{} at {} ({})", percent(point.outcome.utilisation, digits), point.words, point.outcome.site);
}

std::string stretch_text(const Search& search, const Search::Stretch& stretch)
{
    const bool low_meets = stretch.low.outcome.utilisation <= search.target;
    const KeyLine::Point& inside = low_meets ? stretch.low : stretch.high;
    const KeyLine::Point& outside = low_meets ? stretch.high : stretch.low;
    if (!stretch.stopped.empty())
        return fmt::format("Between {} and {}: {}.", place_text(stretch.low), place_text(stretch.high),
                           stretch.stopped);
    return fmt::format("{} = {} just meets {}: {}, {}.", search.key, inside.words, percent(search.target, digits),
                       place_text(inside), place_text(outside));
}

std::string none_text(const Search& search)
{
    std::vector<const KeyLine::Point*> judged;
    for (const KeyLine::Point& sample : search.samples)
        if (sample.outcome.end == OptionEnd::judged) judged.push_back(&sample);
    if (judged.empty()) return fmt::format("No value of {} could be judged.", search.key);
    const auto [least, most] = std::minmax_element(judged.begin(), judged.end(),
                                                   [](const auto* a, const auto* b)
                                                   { return a->outcome.utilisation < b->outcome.utilisation; });
    return fmt::format("No value of {} among those tried just meets {}: all are {} it, from {} to {}.", search.key,
                       percent(search.target, digits),
                       (*least)->outcome.utilisation > search.target ? "above" : "below", place_text(**least),
                       place_text(**most));
}

}  // namespace

std::string search_text(const Search& search)
{
    if (search.stretches.empty()) return wrapped(none_text(search), 2) + "\n";
    std::string text;
    if (search.stretches.size() > 1)
        text += fmt::format("{} values of {} just meet {}:\n", search.stretches.size(), search.key,
                            percent(search.target, digits));
    for (const Search::Stretch& stretch : search.stretches) text += wrapped(stretch_text(search, stretch), 2) + "\n";
    return text +
           wrapped(fmt::format("Known to {}; between the {} samples the utilisation is taken to pass the target "
                               "at most once.",
                               search.tolerance_words, search.samples.size()),
                   2) +
           "\n";
}

}  // namespace splicewright
