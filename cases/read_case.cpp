// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/read_case.h"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "cases/case_text.h"
#include "cases/cautions.h"
#include "cases/check_geometry.h"
#include "cases/check_loads.h"
#include "cases/check_making.h"
#include "cases/compare_table.h"
#include "cases/read_parts.h"
#include "cases/size_bands.h"
#include "cases/syntax_problem.h"

namespace splicewright
{
namespace
{

double joint_diameter(const std::optional<Bar>& bar)
{
    return bar && !bar->sections.empty() ? bar->sections.front().diameter.value() : unread;
}

std::string title_of(const CaseTable& top, const std::string& file)
{
    if (const auto title = top.text("title")) return *title;
    if (top.has("title")) return {};
    const std::string stem = std::filesystem::path(file).stem().string();
    top.note_default("title", stem, "name of the file");
    return stem;
}

void check_parts(const CaseTable& top)
{
    const bool left = top.has("left"), right = top.has("right");
    if (!left && !right)
        top.report("left", "is missing: a case needs a bar",
                   "add [left] and [right], or one of them for a plain shaft");
    if (left && right && !top.has("joint"))
        top.report("joint", "is missing: two bars need one",
                   "add [joint] with its penetration, or leave one bar out for a plain shaft");
    if (top.has("joint") && left != right)
        top.report("joint", fmt::format("needs two bars, and [{}] is missing", left ? "right" : "left"),
                   fmt::format("add [{}], or remove [joint] for a plain shaft", left ? "right" : "left"));
    if (top.has("sleeve") && !top.has("joint"))
        top.report("sleeve", "needs a joint to cover", "add [joint], or remove [sleeve] for a plain shaft");
    if (!top.has("load"))
        top.report("load", "is missing: nothing can be judged without a load",
                   "add [load] with peak_torque = \"... N*m\"");
}

void note_unused_materials(Findings& findings, const Case& asked, const std::vector<Material>& stated)
{
    std::vector<std::string> used;
    for (const auto& bar : asked.bar)
        if (bar) used.push_back(bar->material.name);
    if (asked.joint) used.push_back(asked.joint->filler.name);
    if (asked.sleeve) used.push_back(asked.sleeve->material.name);
    if (asked.sleeve) used.push_back(asked.sleeve->weld.filler.name);
    for (const Material& material : stated)
        if (std::find(used.begin(), used.end(), material.name) == used.end())
            findings.cautions.push_back(fmt::format("The material \"{}\" is defined and used nowhere.", material.name));
}

Case case_at(const CaseTable& top, const std::string& file)
{
    Case asked;
    asked.title = title_of(top, file);
    const std::vector<Material> stated = stated_materials(top);
    for (const Side side : both_sides)
        if (const auto table = top.table(name_of(side))) asked.bar[index(side)] = bar_at(*table, stated);

    const std::array<double, 2> diameters{joint_diameter(asked.bar[0]), joint_diameter(asked.bar[1])};
    const auto joint = top.table("joint"), sleeve = top.table("sleeve");
    const auto weld = sleeve ? sleeve->table("weld") : std::nullopt;
    const Fillers fillers = fillers_of(joint, weld, stated);
    if (joint) asked.joint = joint_at(*joint, diameters, fillers.joint);
    if (sleeve) asked.sleeve = sleeve_at(*sleeve, weld, diameters, stated, fillers.sleeve_weld);
    asked.making = making_at(top, asked);
    if (const auto load = top.table("load")) asked.load = load_at(*load);
    if (asked.joint || top.has("judgement")) asked.rating = rating_at(top);
    fit_to_size(asked, top.findings().cautions);
    check_parts(top);
    compare_at(top);  // its problems; the study itself is read by compare
    note_unused_materials(top.findings(), asked, stated);
    top.report_unknown_keys();
    return asked;
}

// Those of the case file first, then those of the files that it names.
void sort_by_place(std::vector<Problem>& problems, const std::string& file)
{
    const auto place = [&](const Problem& problem)
    { return std::tuple(problem.file != file, problem.line, problem.column); };
    std::stable_sort(problems.begin(), problems.end(),
                     [&](const Problem& first, const Problem& second) { return place(first) < place(second); });
}

// A misspelt key is one mistake: that its right spelling is missing is not told as well.
void drop_told_twice(std::vector<Problem>& problems)
{
    std::set<std::string> meant;
    for (const Problem& problem : problems)
        if (problem.rule == "unknown key") meant.insert(problem.fix);
    std::erase_if(problems,
                  [&](const Problem& problem)
                  {
                      return problem.rule.starts_with("is missing") &&
                             meant.contains(fmt::format("did you mean {}?", without_indices(problem.field)));
                  });
}

bool is_whole(const Case& asked)
{
    bool whole = true;
    const auto look = [&](double value) { whole = whole && std::isfinite(value); };
    for (const auto& bar : asked.bar)
    {
        if (!bar) continue;
        look(bar->bore.value() + bar->material.yield.value());
        for (const Section& section : bar->sections)
            look(section.length.value() + section.diameter.value() + section.fillet.value());
        for (const Groove& groove : bar->grooves)
            look(groove.at.value() + groove.depth.value() + groove.radius.value());
    }
    if (asked.joint) look(asked.joint->blend.value() + asked.joint->half_lap.value());
    if (asked.joint && asked.joint->penetration) look(asked.joint->penetration->value());
    if (asked.sleeve)
        look(asked.sleeve->length.value() + asked.sleeve->offset.value() + asked.sleeve->outer_diameter.value() +
             asked.sleeve->end_diameter.value() + asked.sleeve->taper_length.value() +
             asked.sleeve->clearance[0].value() + asked.sleeve->clearance[1].value() +
             asked.sleeve->weld.leg_on_bar.value() + asked.sleeve->weld.leg_on_sleeve.value() +
             asked.sleeve->weld.toe_radius.value());
    if (asked.joint)
        look(asked.joint->offset.value() + asked.joint->tilt.value() + asked.joint->offset_angle.value() +
             asked.joint->lap_corner_radius.value());
    if (asked.sleeve)
        for (const PlugRing& ring : asked.sleeve->plugs)
            look(ring.diameter.value() + ring.at.value() + ring.start.value() +
                 ring.depth.value_or(Millimetre()).value());
    if (asked.sleeve)
        look(asked.sleeve->weld.coverage.value() + asked.sleeve->weld.start[0].value() +
             asked.sleeve->weld.start[1].value());
    if (asked.making)
        look(asked.making->overall_length.value_or(Millimetre()).value() + asked.making->root_gap.value() +
             asked.making->root_face.value() + asked.making->groove_angle.value() + asked.making->weld_shrink.value() +
             asked.making->plunge_available.value_or(Millimetre()).value() + asked.making->plunge_used.value() +
             asked.making->heat_input.value() + asked.making->hydrogen);
    look(asked.load.peak_torque.value() + asked.load.running_torque.value() + asked.load.peak_bending.value() +
         asked.load.running_bending.value() + asked.load.axial.value() + asked.load.revolutions);
    return whole;
}

}  // namespace

Result<Case> read_case(const std::string& text, const std::string& file_name, const CompanionFiles& companions)
{
    std::vector<Problem> unreadable = text_problems(text, file_name);
    if (!unreadable.empty()) return unreadable;
    Findings findings;
    findings.file = file_name;
    findings.companions = companions;
    Case asked;
    try
    {
        const toml::table file = toml::parse(std::string_view(text));
        asked = case_at(CaseTable(file, "", findings), file_name);
    }
    catch (const toml::parse_error& error)
    {
        const auto& begin = error.source().begin;
        return std::vector<Problem>{syntax_problem(text, file_name, static_cast<int>(begin.line),
                                                   static_cast<int>(begin.column), error.description())};
    }
    for (auto check : {geometry_problems, load_problems, making_problems})
        for (Problem& problem : check(asked, findings.places, file_name))
            findings.problems.push_back(std::move(problem));
    drop_told_twice(findings.problems);
    sort_by_place(findings.problems, file_name);
    if (!findings.problems.empty()) return findings.problems;

    EXPECTS(is_whole(asked));
    asked.file = file_name;
    asked.text = text;
    asked.defaults = findings.defaults;
    asked.tolerances = findings.tolerances;
    asked.cautions = cautions_of(asked);
    asked.cautions.insert(asked.cautions.end(), findings.cautions.begin(), findings.cautions.end());
    return asked;
}

}  // namespace splicewright
