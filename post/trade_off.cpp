// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/trade_off.h"

#include <algorithm>
#include <iterator>

#include "cases/problem.h"
#include "post/number_words.h"

namespace splicewright
{
namespace
{

// The more the better.
double worth(const OptionOutcome& outcome, Merit merit)
{
    return merit == Merit::life ? counted_life(outcome) : -outcome.utilisation;
}

// Along the front mass and worth both rise, so that only its neighbours can beat an option.
void take(std::map<double, StudyOption>& front, const StudyOption& option, Merit merit)
{
    const double mass = option.outcome.mass_kg, own = worth(option.outcome, merit);
    const auto heavier = front.upper_bound(mass);
    if (heavier != front.begin() && worth(std::prev(heavier)->second.outcome, merit) >= own) return;
    auto beaten = front.lower_bound(mass);
    while (beaten != front.end() && worth(beaten->second.outcome, merit) <= own) beaten = front.erase(beaten);
    front.emplace(mass, option);
}

}  // namespace

const char* name_of(Merit merit) { return merit == Merit::life ? "life" : "utilisation"; }

double counted_life(const OptionOutcome& outcome)
{
    return outcome.life ? std::min(*outcome.life, longest_life) : longest_life;
}

TradeOff::TradeOff(double reserve) : reserve_(reserve) { EXPECTS(reserve > 0); }

void TradeOff::add(const StudyOption& option)
{
    const OptionOutcome& outcome = option.outcome;
    if (outcome.end != OptionEnd::judged) return;
    has_life_ = has_life_ || counted_life(outcome) < longest_life;
    if (!passes_with(outcome, reserve_)) return;
    take(by_life_, option, Merit::life);
    take(by_utilisation_, option, Merit::utilisation);
}

bool TradeOff::holds(const OptionOutcome& outcome) const
{
    if (!passes_with(outcome, reserve_)) return false;
    const auto same = front().find(outcome.mass_kg);
    return same != front().end() && worth(same->second.outcome, merit()) == worth(outcome, merit());
}

std::vector<StudyOption> TradeOff::options() const
{
    std::vector<StudyOption> options;
    for (const auto& [mass, option] : front()) options.push_back(option);
    return options;
}

}  // namespace splicewright
