// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "post/check_row.h"
#include "post/crack_checks.h"
#include "post/fatigue_checks.h"
#include "post/handbook.h"
#include "post/making.h"
#include "post/model_rows.h"
#include "post/running_true.h"
#include "post/section_checks.h"
#include "post/torque_flow.h"
#include "post/weld_surface.h"
#include "solver/meridian.h"
#include "solver/solid_fields.h"

namespace splicewright
{

// One scenario, judged.
struct Judgement
{
    // What is judged. Where the solid model alone can show the case, its numbers; hot spots and fields are then those
    // of the same shaft as a body of revolution, which torque flow and weld surfaces are made of, and `notes` say so.
    MeridianAnswer answer;
    bool judged_by_solid = false;
    std::size_t solid_dofs = 0;        // unknowns that were asked for, where the solid model was solved
    std::optional<SolidFields> solid;  // what files and pictures show of the solid model, where it answered
    std::vector<ModelRow> models;      // both side by side, where both were solved
    bool models_must_agree = true;     // false of a body that is not of revolution
    std::vector<CheckRow> checks;
    std::vector<CrackGrowth> crack_growth;
    std::vector<std::string> notes;  // what had to be assumed for this scenario
    [[nodiscard]] bool passes() const;
};

// Why no pass is given whatever the checks say, "the asked accuracy was not reached"; empty where nothing stands
// against one.
std::string no_pass_because(const Judgement& judgement);

// The splice against its two bars alone, with their shoulders and grooves, under the same loads: the factor by which
// each may grow.
struct AgainstPlainBar
{
    double strength_splice = 0, strength_bar = 0;       // peak load may grow by this factor
    std::optional<double> fatigue_splice, fatigue_bar;  // stress may grow by this factor over the life asked for
    std::string splice_site, bar_site, fatigue_site, bar_fatigue_site;  // weakest of each
};

// The splice over one of its bars, as if the whole shaft could be had with that bar's first diameter.
struct OverBar
{
    Millimetre diameter;
    double strength = 0;            // peak load that is carried, splice over this bar with its shoulders and grooves
    std::optional<double> fatigue;  // stress over the life asked for, the same way
    std::optional<double> life;     // splice over bar; absent where one of them lasts for ever or the bar not at all
    double twist = 0;               // at the same torque, splice over a shaft with this diameter at the joint
};

// Everything that is told about a case: same case, same report, but for the seconds in the evidence.
struct Report
{
    Case asked;
    Judgement sound;
    std::vector<Judgement> what_if;
    std::vector<std::string> what_if_notes;  // what needs no scenario of its own
    std::vector<HandbookRow> handbook;
    std::optional<AgainstPlainBar> against_plain_bar;
    std::array<std::optional<OverBar>, 2> over_bar;  // [left, right]
    std::optional<ShopSheet> making;                 // with a joint
    RunningTrue running_true;
    std::vector<TorquePoint> torque_flow;    // with a sleeve
    std::vector<WeldSurface> weld_surfaces;  // with a sleeve
    std::vector<std::string> cautions;
    // Only where the finite elements do not contradict exact theory.
    [[nodiscard]] bool passes() const { return sound.passes() && contradiction(handbook).empty(); }
};

// Every check of a solved scenario.
std::vector<CheckRow> checks_of(const Case& asked, const SolvedScenario& solved);

std::optional<AgainstPlainBar> against_plain_bar(const Judgement& sound);
std::optional<OverBar> over_bar(const Case& asked, const Judgement& sound, Side side);

// Cautions that every report carries.
const std::vector<std::string>& general_cautions();
// Those of this case, then the general ones; reads all of the report but its cautions.
std::vector<std::string> cautions(const Report& report);

}  // namespace splicewright
