// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <string>

#include "cases/case.h"
#include "mesh/outline.h"
#include "solver/solid_answer.h"

namespace splicewright
{

// Which model answers.
enum class ModelChoice
{
    where_needed,  // the meridian model; the solid one where plug welds or welds that do not go all round leave it
                   // nothing to show
    meridian,
    solid,
    both,
};

struct ModelUse
{
    ModelChoice choice = ModelChoice::where_needed;
    SolidBudget budget;
    SolidDetail shown = SolidDetail::none;  // what a judgement keeps of the solid model for files and pictures
    std::function<void(const std::string& line)> tell = [](const std::string&) {};  // of solves that take minutes
};

// The models that one scenario is solved with.
struct ModelsTaken
{
    bool meridian = false, solid = false;
};
ModelsTaken models_taken(const Case& asked, ModelChoice choice);

// Whether the models must agree on a scenario.
bool is_of_revolution(const Case& asked, const Scenario& scenario);

// Free memory of this machine in bytes, 0 where it cannot be told.
std::int64_t free_memory();

// The case as a body of revolution: welds all round, no plug welds; the sleeve left out where both of its welds are
// lost. What pictures of the section show of a case that is none.
Case as_body_of_revolution(const Case& asked, const Scenario& scenario);

// Worst error bar of a site with which the solid model's numbers count as reached, percent: notches of 1 mm on a shaft
// cannot be had finer with a million unknowns, and every bar is counted into its utilisation. Judgement.
constexpr double solid_accuracy_pct = 40;

}  // namespace splicewright
