// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/solid_judgement.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "app/settled_case.h"
#include "cases/beyond_revolution.h"
#include "cases/problem.h"
#include "cases/shape_limits.h"
#include "post/notch_checks.h"
#include "post/number_words.h"
#include "post/site_loads.h"
#include "post/view_sites.h"
#include "post/weld_metal_checks.h"

namespace splicewright
{
namespace
{

SolidBudget with_free_memory(const ModelUse& use)
{
    SolidBudget budget = use.budget;
    if (budget.memory_limit == 0) budget.memory_limit = free_memory();
    return budget;
}

std::string parts_text(const Case& asked)
{
    std::string text;
    for (const BeyondRevolution& part : beyond_revolution(asked))
        text += fmt::format("{}{}", text.empty() ? "" : ", ", part.what);
    return text;
}

constexpr Accuracy for_pictures{3};  // of the body of revolution that pictures show

SolidShowing showing(const Case& asked, const ModelUse& use)
{
    SolidShowing wanted{use.shown, peak_load(asked), {}};
    for (const ViewLoad& one : view_loads(asked)) wanted.each.push_back(one.load);
    return wanted;
}

double worst_target(const Accuracy& accuracy) { return std::max(accuracy.target_pct, solid_accuracy_pct); }

// The case as the peak load finds its slit: open gaps that close are taken as snug.
struct SettledSolid
{
    Case asked;
    SolidModelAnswer answer;
    std::vector<std::string> notes;
};

SettledSolid settled_solid(const Case& asked, const Scenario& scenario, const SolidBudget& budget, double target,
                           const SolidShowing& showing)
{
    SettledSolid settled{asked, solid_model_answer(asked, scenario, budget, target, showing), {}};
    const auto closed = close_slits(settled.asked, settled.answer.closes);
    if (!closed) return settled;
    settled.notes.push_back(closed_note(*closed));
    settled.answer = solid_model_answer(settled.asked, scenario, budget, target, showing);
    return settled;
}

std::string contact_note(const Case& asked, const LapContact& contact)
{
    const double torque = asked.load.peak_torque.value();
    std::string text = fmt::format(
        "{} by contact: its faces touch without friction and hand over {:.3g} % of the peak torque, pressed with "
        "up to {:.0f} MPa; {} of {} places closed, penetration {:.0e} mm, pull {:.0e} of the pressure",
        asked.joint && asked.joint->half_lap.value() > 0 ? "half lap" : "land",
        torque != 0 ? 100 * std::abs(contact.torque / torque) : 0, contact.peak_pressure, contact.closed,
        contact.places, contact.penetration, contact.tension);
    if (contact.relieved_by_bending > 0.01)
        text += fmt::format(
            "; bending takes away {:.0f} % of the pressing force at its worst in a turn, and the answer "
            "holds closed places together there: free faces are judged beside it, the worse counts",
            100 * contact.relieved_by_bending);
    return text;
}

std::optional<std::string> free_lap_note(const SolidModelAnswer& solid)
{
    if (solid.contact_left_out.empty()) return std::nullopt;
    return fmt::format(
        "the contact of the half lap did not settle ({}): its faces are taken as free, which leaves all to "
        "sleeve and welds; the lap's corners are not known",
        solid.contact_left_out);
}

std::string evidence_note(const SolidEvidence& evidence)
{
    return fmt::format(
        "solid model: {} unknowns and {} on a coarser mesh, {} tetrahedra, {:.1f} elements on a quarter turn of a 1 mm "
        "notch, residual {:.0e}, balance {:.0e}, at most {} iterations",
        counted(static_cast<double>(evidence.dofs)), counted(static_cast<double>(evidence.coarse_dofs)),
        counted(static_cast<double>(evidence.elements)), evidence.elements_per_quarter_turn, evidence.residual,
        std::max(evidence.reaction_imbalance, 1e-16), evidence.iterations);
}

// Of the sites that the meridian model does not have.
bool is_lap_corner(const std::string& site) { return site.starts_with("lap-corner"); }

void append_rows(std::vector<CheckRow>& rows, std::vector<CheckRow> more)
{
    std::move(more.begin(), more.end(), std::back_inserter(rows));
}

// What the meridian model judges and this one does not, and what none does.
void append_left_out(std::vector<std::string>& notes, const Case& asked)
{
    if (!asked.sleeve) return;
    if (std::ranges::count(asked.sleeve->slit, SlitState::press) > 0)
        notes.emplace_back(
            "the pressure of the press fit is not read from the solid model, so the sleeve's bore is not held "
            "against yield under it: check the same sleeve with welds all round and no plugs as well");
    if (has_thin_wall(asked))
        notes.emplace_back(
            "a wall or throat is under 5 mm, and the notch of 0.05 mm for such walls is not made in the "
            "solid model: toes may have no method that governs");
    if (!asked.sleeve->plugs.empty())
        notes.emplace_back(
            "the bar's metal under the edge of a plug weld is not judged, only the weld's own force; a weld on "
            "the bar is a notch in it: keep plugs away from where the bar is used most");
}

}  // namespace

Judgement judged_by_solid(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, const ModelUse& use)
{
    const SolidBudget budget = with_free_memory(use);
    const double target = worst_target(accuracy);
    SettledSolid settled = settled_solid(asked, scenario, budget, target, showing(asked, use));
    Judgement result;
    result.judged_by_solid = true;
    result.solid_dofs = use.budget.dofs;
    const std::string parts = parts_text(asked);
    result.models_must_agree = is_of_revolution(asked, scenario);
    std::optional<SolidModelAnswer> notched;
    if (!toes_are_reference(asked))
    {
        Scenario reference = scenario;
        reference.toe_radius = reference.root_radius = reference_notch_radius;
        notched = solid_model_answer(settled.asked, reference, budget, target);
    }
    result.answer = settled.answer.answer;
    result.solid = std::move(settled.answer.fields);
    result.checks = checks_of(asked, {result.answer, notched ? notched->answer : result.answer, nullptr});
    append_rows(result.checks, weld_metal_checks(asked, settled.answer));
    result.notes = settled.notes;
    result.notes.push_back(parts.empty() ? "answered by the solid model, as asked"
                                         : fmt::format("answered by the solid model, because of {}", parts));
    result.notes.push_back(evidence_note(settled.answer.evidence));
    result.notes.push_back(
        fmt::format("error bars up to {:g} % count as reached in the solid model (judgement), and every bar is "
                    "counted into its utilisation; crack growth and structural stress extrapolated to a toe are not "
                    "judged by it",
                    target));
    append_left_out(result.notes, settled.asked);
    if (!settled.answer.evidence.coarse_sites.empty())
        result.notes.push_back(fmt::format(
            "{} notches have fewer elements than their stress needs, so their error bars cannot be relied on "
            "and no pass is given: ask for more --solid-dofs",
            settled.answer.evidence.coarse_sites.size()));
    if (const auto note = free_lap_note(settled.answer)) result.notes.push_back(*note);
    if (settled.answer.contact) result.notes.push_back(contact_note(asked, *settled.answer.contact));
    MeridianAnswer shown = meridian_answer(as_body_of_revolution(settled.asked, scenario), scenario, for_pictures);
    result.answer.fields = std::move(shown.fields);
    result.answer.hot_spots = std::move(shown.hot_spots);
    return result;
}

void add_solid(Judgement& result, const Case& asked, const ModelUse& use)
{
    const Scenario& scenario = result.answer.scenario;
    const std::string parts = parts_text(asked);
    result.models_must_agree = is_of_revolution(asked, scenario);
    SolidModelAnswer solid =
        solid_model_answer(asked, scenario, with_free_memory(use), solid_accuracy_pct, {use.shown, peak_load(asked)});
    result.solid = std::move(solid.fields);
    result.solid_dofs = use.budget.dofs;
    result.models = model_rows(result.answer, solid.answer);
    const std::vector<std::string> worse = sites_worse_in_solid(result.models);
    for (CheckRow& row : checks_of(asked, {solid.answer, solid.answer, nullptr}))
    {
        const bool is_own = is_lap_corner(row.site);
        if (!is_own && std::find(worse.begin(), worse.end(), row.site) == worse.end()) continue;
        if (!is_own) row.id += "/solid";
        row.check += ", solid model";
        result.checks.push_back(row);
    }
    append_rows(result.checks, weld_metal_checks(asked, solid));
    result.notes.push_back(fmt::format("the solid model stands beside the meridian model{}{}",
                                       parts.empty() ? "" : ", because of ", parts));
    result.notes.push_back(evidence_note(solid.evidence));
    if (std::ranges::any_of(solid.evidence.coarse_sites, is_lap_corner))
    {
        result.answer.evidence.reached = false;
        result.notes.emplace_back(
            "the lap's corners have fewer elements than their stress needs, so their error bars cannot be relied on "
            "and no pass is given: ask for more --solid-dofs");
    }
    if (const auto note = free_lap_note(solid)) result.notes.push_back(*note);
    if (solid.contact) result.notes.push_back(contact_note(asked, *solid.contact));
}

}  // namespace splicewright
