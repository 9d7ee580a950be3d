// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/tolerance_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/number_words.h"
#include "post/wrapped_text.h"

namespace splicewright
{
namespace
{

constexpr double worth_watching = 0.01;  // of the utilisation as drawn, judgement
constexpr double bar_for_all = 30;       // signs of the longest bar

constexpr int digits = 4;  // of a utilisation

double span_of(const ToleranceEffect& effect, const OptionOutcome& nominal)
{
    return worst_change(effect, nominal).value_or(INFINITY);
}

std::string effect_text(const ToleranceEffect& effect, const OptionOutcome& nominal, double largest)
{
    const std::optional<double> change = worst_change(effect, nominal);
    const double share = change && largest > 0 ? std::abs(*change) / largest : 0;
    const std::string bar(static_cast<std::size_t>(std::lround(bar_for_all * std::min(share, 1.0))), '#');
    std::string text = fmt::format(
        "{:<30} {:>8}  {:<26} {:<26} {}", effect.key, change ? fmt::format("{:+.2g} %", 100 * *change) : "",
        tolerance_end_text(effect.low_words, effect.low), tolerance_end_text(effect.high_words, effect.high), bar);
    text.erase(text.find_last_not_of(' ') + 1);
    for (const OptionOutcome* end : {&effect.low, &effect.high})
        if (end->end != OptionEnd::judged) text += "\n  " + wrapped(end->reason, 4);
    return text + "\n";
}

}  // namespace

std::optional<double> worst_change(const ToleranceEffect& effect, const OptionOutcome& nominal)
{
    if (nominal.end != OptionEnd::judged || nominal.utilisation == 0) return std::nullopt;
    std::optional<double> worst;
    for (const OptionOutcome* end : {&effect.low, &effect.high})
        if (end->end == OptionEnd::judged)
        {
            const double change = end->utilisation / nominal.utilisation - 1;
            if (!worst || change > *worst) worst = change;
        }
    return worst;
}

std::vector<const ToleranceEffect*> by_change(const ToleranceAnswer& answer)
{
    std::vector<const ToleranceEffect*> ordered;
    for (const ToleranceEffect& effect : answer.effects) ordered.push_back(&effect);
    std::stable_sort(ordered.begin(), ordered.end(),
                     [&](const auto* a, const auto* b)
                     { return span_of(*a, answer.nominal) > span_of(*b, answer.nominal); });
    return ordered;
}

std::string tolerance_end_text(const std::string& words, const OptionOutcome& outcome)
{
    if (outcome.end != OptionEnd::judged) return fmt::format("{}: {}", words, name_of(outcome.end));
    return fmt::format("{} at {}", percent(outcome.utilisation, digits), words);
}

std::string as_drawn_text(const ToleranceAnswer& answer)
{
    const OptionOutcome& nominal = answer.nominal;
    if (nominal.end != OptionEnd::judged) return fmt::format("As drawn it could not be judged: {}", nominal.reason);
    return fmt::format("As drawn {} is used, {} governs.", percent(nominal.utilisation, digits), nominal.check);
}

std::string corner_text(const ToleranceAnswer& answer)
{
    const OptionOutcome& o = answer.corner.outcome;
    if (o.end != OptionEnd::judged) return "No corner could be judged.";
    return fmt::format("Worst corner ({}) {}: {} used, {} governs.", o.passes ? "passes" : "DOES NOT PASS",
                       key_values_text(answer.keys, answer.corner.values), percent(o.utilisation, digits), o.check);
}

std::string corners_tried_text(const ToleranceAnswer& answer)
{
    return answer.every_corner ? "Every corner was tried."
                               : "It takes each value at its own worse end; corners in which values work on each other "
                                 "may be worse.";
}

std::string watch_text(const ToleranceAnswer& answer)
{
    std::string watch;
    for (const ToleranceEffect* effect : by_change(answer))
        if (worst_change(*effect, answer.nominal).value_or(0) >= worth_watching)
            watch += fmt::format("{}{}", watch.empty() ? "" : ", then ", effect->key);
    return watch.empty() ? fmt::format("No dimension alone moves it by {:g} %.", 100 * worth_watching)
                         : fmt::format("Watch {}.", watch);
}

std::string left_out_text(const std::string& key) { return fmt::format("Not moved: {}, which is one of a pair.", key); }

std::string tolerance_text(const ToleranceAnswer& answer)
{
    const OptionOutcome& nominal = answer.nominal;
    if (nominal.end != OptionEnd::judged) return as_drawn_text(answer) + "\n";
    const std::vector<const ToleranceEffect*> ordered = by_change(answer);
    double largest = 0;
    for (const ToleranceEffect* effect : ordered)
        largest = std::max(largest, std::abs(worst_change(*effect, nominal).value_or(0)));
    std::string text = as_drawn_text(answer) + " Each tolerance alone, at both of its ends:\n\n";
    for (const ToleranceEffect* effect : ordered) text += effect_text(*effect, nominal, largest);
    text += "\n" + wrapped(corner_text(answer), 2) + "\n" + wrapped(corners_tried_text(answer), 2) + "\n";
    for (const std::string& words : answer.not_judged) text += wrapped(words, 2) + "\n";
    text += wrapped(sampled_text(answer.sampled), 2) + "\n";
    text += wrapped(watch_text(answer), 2) + "\n";
    for (const std::string& key : answer.left_out) text += left_out_text(key) + "\n";
    return text;
}

}  // namespace splicewright
