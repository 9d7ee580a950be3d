// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/press_bore_check.h"
#include "post/rated_curves.h"
#include "post/service.h"
#include "post/site_loads.h"
#include "post/strength_checks.h"

namespace splicewright
{
namespace
{

std::vector<CheckRow> rows_where(const std::vector<CheckRow>& rows, CheckKind kind, bool of_splice)
{
    std::vector<CheckRow> kept;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(kept),
                 [&](const CheckRow& row) { return row.kind == kind && is_plain_metal(row.site) != of_splice; });
    return kept;
}

// Where the case states a misalignment, strength rows say why it is not in them.
void tell_misalignment(std::vector<CheckRow>& strength, const Rating& rating)
{
    if (rating.misalignment_factor == 1) return;
    for (CheckRow& row : strength)
        if (feels_misalignment(row.site))
            append_note(row.note,
                        "the misalignment factor is not counted: it is a rise of stress in fatigue, which a ductile "
                        "section evens out before it flows ([Hobbacher2016] 3.8, from memory)");
}

}  // namespace

bool Judgement::passes() const
{
    return no_pass_because(*this).empty() && !checks.empty() &&
           std::all_of(checks.begin(), checks.end(), [](const CheckRow& row) { return row.passes(); });
}

std::string no_pass_because(const Judgement& judgement)
{
    if (!judgement.answer.evidence.reached) return "the asked accuracy was not reached";
    const std::vector<std::string> sites = sites_without_valid_row(judgement.checks);
    if (sites.empty()) return "";
    return fmt::format("no check may judge {}", fmt::join(sites, ", "));
}

std::vector<CheckRow> checks_of(const Case& asked, const SolvedScenario& solved)
{
    std::vector<CheckRow> rows = strength_checks(asked, solved.answer);
    const std::vector<CheckRow> sections = section_checks(asked, solved.answer);
    rows.insert(rows.end(), sections.begin(), sections.end());
    if (auto bore = press_bore_check(asked, solved.answer)) rows.push_back(std::move(*bore));
    tell_misalignment(rows, asked.rating);
    const std::vector<CheckRow> fatigue = fatigue_checks(asked, solved);
    rows.insert(rows.end(), fatigue.begin(), fatigue.end());
    return rows;
}

std::optional<AgainstPlainBar> against_plain_bar(const Judgement& sound)
{
    const auto pick = [&](CheckKind kind, bool of_splice) -> std::optional<CheckRow>
    {
        const std::vector<CheckRow> rows = rows_where(sound.checks, kind, of_splice);
        const CheckRow* worst = governing(rows);
        return worst && worst->utilisation > 0 ? std::optional<CheckRow>(*worst) : std::nullopt;
    };
    const auto splice = pick(CheckKind::strength, true), bar = pick(CheckKind::strength, false);
    if (!splice || !bar) return std::nullopt;
    AgainstPlainBar result;
    result.strength_splice = 1 / splice->utilisation;
    result.strength_bar = 1 / bar->utilisation;
    result.splice_site = splice->site;
    result.bar_site = bar->site;
    const auto splice_fatigue = pick(CheckKind::fatigue, true), bar_fatigue = pick(CheckKind::fatigue, false);
    if (splice_fatigue) result.fatigue_splice = 1 / splice_fatigue->utilisation;
    if (bar_fatigue) result.fatigue_bar = 1 / bar_fatigue->utilisation;
    if (splice_fatigue) result.fatigue_site = splice_fatigue->site;
    if (bar_fatigue) result.bar_fatigue_site = bar_fatigue->site;
    return result;
}

std::optional<OverBar> over_bar(const Case& asked, const Judgement& sound, Side side)
{
    if (!asked.joint) return std::nullopt;
    std::vector<CheckRow> splice, bar;
    for (const CheckRow& row : sound.checks)
        if (!is_plain_metal(row.site)) splice.push_back(row);
        else if (side_of(row.site) == side) bar.push_back(row);
    const auto used = [](const std::vector<CheckRow>& rows, CheckKind kind)
    {
        const CheckRow* worst = governing(rows, kind);
        return worst != nullptr ? worst->utilisation : 0;
    };
    if (used(splice, CheckKind::strength) <= 0 || used(bar, CheckKind::strength) <= 0) return std::nullopt;
    OverBar result;
    result.diameter = asked.bar[index(side)]->sections.front().diameter;
    result.strength = used(bar, CheckKind::strength) / used(splice, CheckKind::strength);
    if (used(splice, CheckKind::fatigue) > 0 && used(bar, CheckKind::fatigue) > 0)
        result.fatigue = used(bar, CheckKind::fatigue) / used(splice, CheckKind::fatigue);
    const auto splice_life = least_life(splice), bar_life = least_life(bar);
    if (splice_life && bar_life && std::isfinite(splice_life->least) && std::isfinite(bar_life->least) &&
        bar_life->least > 0)
        result.life = splice_life->least / bar_life->least;
    result.twist = sound.answer.twist.value / twist_with_diameter_of(asked, side);
    return result;
}

const std::vector<std::string>& general_cautions()
{
    // NOLINTBEGIN(bugprone-suspicious-missing-comma): none is missing
    static const std::vector<std::string> list = {
        "Advisory only: local vehicle law, club rules, the insurer and a qualified engineer or inspector decide.",
        "Identify the steel first. Unknown or highly heat-treated bar: assume the worst, or do not weld.",
        "Low-hydrogen process, preheat held to the last pass, slow cooling; wait a day or two before inspecting, cold "
        "cracks come late. Look, then magnetic particles or penetrant; ultrasound for the butt.",
        "Coatings off (zinc, epoxy), fresh air, eyes, skin and ears covered, a fire watch. No welding current through "
        "bearings or joints; no joint, boot, seal or sensor ring in the heat.",
        "A broken shaft can lock a wheel or flail: guard it, prove it, inspect it again, limit its life."};
    // NOLINTEND(bugprone-suspicious-missing-comma)
    return list;
}

std::vector<std::string> cautions(const Report& report)
{
    const Judgement& sound = report.sound;
    std::vector<std::string> list = report.asked.cautions;
    list.insert(list.end(), sound.notes.begin(), sound.notes.end());
    if (!sound.answer.evidence.reached)
        list.push_back(
            fmt::format("The asked accuracy of {:g} % was not reached: the worst site is known to {:.2g} % only. "
                        "No pass is given.",
                        sound.answer.evidence.accuracy_pct, sound.answer.evidence.worst_error_pct));
    if (const auto sites = sites_without_valid_row(sound.checks); !sites.empty())
        list.push_back(
            fmt::format("No check holds for {}: all that was tried is shown with the reason why it may not "
                        "govern. No pass is given.",
                        fmt::join(sites, ", ")));
    const std::vector<std::string> running = running_cautions(report.asked, report.running_true);
    list.insert(list.end(), running.begin(), running.end());
    if (const std::string wrong = contradiction(report.handbook); !wrong.empty())
        list.push_back(
            fmt::format("COULD NOT BE COMPUTED: {}. One of them is wrong, and so may be every number here. No pass is "
                        "given; please report it with the case file.",
                        wrong));
    const auto disagree = std::count_if(report.handbook.begin(), report.handbook.end(),
                                        [](const HandbookRow& row) { return !row.agrees; });
    if (disagree > 0)
        list.push_back(
            fmt::format("{} handbook value{} disagree{} with the finite elements beyond what can be trusted: the "
                        "line that begins with Handbook names them, check --all lists all.",
                        disagree, disagree == 1 ? "" : "s", disagree == 1 ? "s" : ""));
    list.insert(list.end(), general_cautions().begin(), general_cautions().end());
    return list;
}

}  // namespace splicewright
