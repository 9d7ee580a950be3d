// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "post/check_row.h"
#include "post/crack_checks.h"
#include "post/fatigue_checks.h"
#include "post/handbook.h"
#include "post/making.h"
#include "post/running_true.h"
#include "post/section_checks.h"
#include "solver/meridian.h"

namespace splicewright
{

// One scenario, judged.
struct Judgement
{
    MeridianAnswer answer;
    std::vector<CheckRow> checks;
    std::vector<CrackGrowth> crack_growth;
    std::vector<std::string> notes;  // what had to be assumed for this scenario
    [[nodiscard]] bool passes() const;
};

// The splice against its two bars alone, with their shoulders and grooves, under the same loads: the factor by which
// each may grow.
struct AgainstPlainBar
{
    double strength_splice = 0, strength_bar = 0;       // peak load may grow by this factor
    std::optional<double> fatigue_splice, fatigue_bar;  // stress may grow by this factor over the life asked for
    std::string splice_site, bar_site, fatigue_site, bar_fatigue_site;  // weakest of each
};

// Everything that is told about a case: same case, same report, but for the seconds in the evidence.
struct Report
{
    Case asked;
    Judgement sound;
    std::vector<Judgement> what_if;  // "hidden weld lost", "left sleeve weld lost", "right sleeve weld lost"
    std::vector<HandbookRow> handbook;
    std::optional<AgainstPlainBar> against_plain_bar;
    std::optional<ShopSheet> making;  // with a joint
    RunningTrue running_true;
    std::vector<std::string> cautions;
    [[nodiscard]] bool passes() const { return sound.passes(); }
};

// Every check of a solved scenario.
std::vector<CheckRow> checks_of(const Case& asked, const SolvedScenario& solved);

std::optional<AgainstPlainBar> against_plain_bar(const Judgement& sound);

// Cautions that every report carries, and those of this case; reads all of the report but its cautions.
std::vector<std::string> cautions(const Report& report);

}  // namespace splicewright
