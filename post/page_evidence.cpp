// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/key_kinds.h"
#include "cases/units.h"
#include "post/line_chart.h"
#include "post/making_text.h"
#include "post/model_rows.h"
#include "post/number_words.h"
#include "post/page_sections.h"
#include "post/service.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

PageRow life_row(const Report& report, const Judgement& judgement, const std::string& name)
{
    const Load& load = report.asked.load;
    const auto life = least_life(judgement.checks);
    const auto starts = starts_asked(load);
    const auto kilometres = kilometres_asked(load);
    const bool counts = life && std::isfinite(life->least);
    return {{words_cell(name), number_cell(life ? life_words(life->least) : "-"),
             number_cell(counts && starts ? rounded_down(life->least * starts->count) : "-"),
             number_cell(counts && kilometres ? rounded_down(life->least * *kilometres) : "-"),
             words_cell(life ? other_methods_text(*life) : "-")},
            {},
            false};
}

Markup crack_table(const std::vector<CrackGrowth>& cracks)
{
    if (cracks.empty()) return {};
    PageTable shown{"Cracks that grow from faces that are not joined", {"Site", "Life", "Longest length, mm"}, {}};
    for (const CrackGrowth& crack : cracks)
        shown.rows.push_back({{words_cell(crack.site), number_cell(life_words(crack.life.life)),
                               number_cell(fmt::format("{:.3g}", crack.life.last))},
                              {},
                              false});
    return table(shown);
}

// Lives further apart than this do not share an axis; a life asked for that is a smaller part of it is not marked.
constexpr double widest_ratio = 10, least_part = 0.02;

LineChart crack_chart(const std::vector<const CrackGrowth*>& cracks)
{
    LineChart chart;
    chart.id = "crack-growth-" + cracks.front()->site;
    chart.title = "Length of the crack over the life";
    chart.x_label = "life used, in lives asked for";
    chart.y_label = "length, mm";
    double longest = 0;
    for (const CrackGrowth* crack : cracks)
    {
        ChartCurve curve{crack->site, {}};
        for (const CrackPoint& point : crack->life.curve) curve.points.emplace_back(point.life, point.length_mm);
        longest = std::max(longest, crack->life.life);
        chart.description +=
            fmt::format("At {} from {:.3g} mm to {:.3g} mm, where it breaks after {}. ", crack->site,
                        crack->life.curve.front().length_mm, crack->life.last, life_words(crack->life.life));
        chart.curves.push_back(curve);
    }
    if (longest >= 1 && longest * least_part <= 1) chart.places = {{1, "life asked for"}};
    return chart;
}

// Those that grow to an end; a crack that stops or breaks at once has its line in the table.
Markup crack_figures(const std::vector<CrackGrowth>& cracks)
{
    std::vector<const CrackGrowth*> growing;
    for (const CrackGrowth& crack : cracks)
        if (std::isfinite(crack.life.life) && crack.life.life > 0 && crack.life.curve.size() > 1)
            growing.push_back(&crack);
    std::stable_sort(growing.begin(), growing.end(),
                     [](const CrackGrowth* a, const CrackGrowth* b) { return a->life.life < b->life.life; });
    Markup all;
    constexpr std::ptrdiff_t most_curves = 4;
    for (auto first = growing.begin(); first != growing.end();)
    {
        const double least = (*first)->life.life;
        auto last = std::find_if(first, growing.end(),
                                 [&](const CrackGrowth* crack) { return crack->life.life > widest_ratio * least; });
        last = std::min(last, first + std::min(most_curves, growing.end() - first));
        all += figure(chart_svg(crack_chart({first, last})),
                      "How the crack grows at each place until the peak load breaks what is left.");
        first = last;
    }
    return all;
}

std::string tolerance_words(const Tolerance& tolerance, double value)
{
    const auto kind = kind_of_key(tolerance.field);
    const bool has_unit = kind && (kind->form == KeyForm::quantity || kind->form == KeyForm::quantity_or_word);
    return has_unit ? in_words(value, kind->dimension) : fmt::format("{:.6g}", value);
}

void add_material(PageTable& shown, const std::string& part, const Material& steel)
{
    shown.rows.push_back({{words_cell(part),
                           user_cell(steel.name),
                           number_cell(fmt::format("{:.0f}", steel.yield.value())),
                           number_cell(fmt::format("{:.0f}", steel.tensile.value())),
                           number_cell(fmt::format("{:.0f}", steel.elastic_modulus.value() / 1e3)),
                           {user_words(steel.source) + words(fmt::format(" ({})", name_of(steel.provenance)))}},
                          {},
                          false});
}

Markup material_table(const Case& asked)
{
    PageTable shown{"Metals", {"Part", "Material", "Yield, MPa", "Tensile, MPa", "Modulus, GPa", "Source"}, {}};
    for (const Side side : both_sides)
        if (const auto& bar = asked.bar[index(side)])
            add_material(shown, fmt::format("{} bar", name_of(side)), bar->material);
    if (asked.joint) add_material(shown, "butt weld", asked.joint->filler);
    if (asked.sleeve)
    {
        add_material(shown, "sleeve", asked.sleeve->material);
        add_material(shown, "sleeve welds", asked.sleeve->weld.filler);
    }
    return table(shown);
}

Markup error_table(const MeridianAnswer& answer)
{
    const auto error = [](const UnitPeak& peak)
    {
        const Measured& m = peak.von_mises;
        return number_cell(m.value != 0 ? error_words(100 * m.error / std::abs(m.value)) : "-");
    };
    PageTable shown{"Error bar of the stress at each site, by load", {"Site", "Torsion", "Bending", "Axial"}, {}};
    for (const SiteAnswer& site : answer.sites)
        shown.rows.push_back(
            {{words_cell(site.id), error(site.torsion), error(site.bending), error(site.axial)}, {}, false});
    return table(shown);
}

Markup model_table(const Judgement& sound)
{
    if (sound.models.empty()) return {};
    const auto error = [](const Measured& value)
    { return number_cell(value.value != 0 ? error_words(100 * value.error / value.value) : "-"); };
    PageTable shown{"Von Mises stress by both models, MPa per kN·m, axial per kN",
                    {"Site", "Load", "Meridian model", "Error", "Solid model", "Error", "Apart"},
                    {}};
    for (const ModelRow& row : sound.models)
        shown.rows.push_back(
            {{words_cell(row.site), words_cell(row.load), number_cell(fmt::format("{:.4g}", row.meridian.value)),
              error(row.meridian), number_cell(fmt::format("{:.4g}", row.solid.value)), error(row.solid),
              number_cell(
                  fmt::format("{:+.1f} %{}", apart_pct(row), sound.models_must_agree && !row.agrees ? " !" : ""))},
             {},
             false});
    return subsection("Two models side by side",
                      paragraph(agreement_words(sound.models, sound.models_must_agree) + ".") + table(shown));
}

// Of the solid model the size; its accuracy is what that size gives.
std::string run_again_options(const Judgement& sound)
{
    if (sound.judged_by_solid) return fmt::format("--model solid --solid-dofs {}", sound.solid_dofs);
    const std::string accuracy = fmt::format("--accuracy {:g}", sound.answer.evidence.accuracy_pct);
    return sound.models.empty() ? accuracy : fmt::format("{} --model both --solid-dofs {}", accuracy, sound.solid_dofs);
}

}  // namespace

Markup kept_file(const PageFile& file, const char* role)
{
    const Markup link =
        element("a", {{"download", file.name}, {"href", "data:text/plain;charset=utf-8;base64," + base64(file.bytes)}},
                words("Save ") + user_words(file.name));
    return element("p", words(std::string(role) + ": ") + link + words("; SHA-256 ") +
                            element("code", {{"class", "hash"}}, words(file.checksum)));
}

Markup life_section(const PageContent& page)
{
    const Report& report = page.report;
    Markup inside;
    if (least_life(report.sound.checks))
    {
        const auto starts = starts_asked(report.asked.load);
        PageTable shown{"Shortest life of all methods, rounded down",
                        {"Scenario", "Life", starts ? starts->what : "Starts", "Kilometres", "Place and other methods"},
                        {life_row(report, report.sound, "sound")}};
        for (const Judgement& judgement : report.what_if)
            shown.rows.push_back(life_row(report, judgement, judgement.answer.scenario.name));
        inside += table(shown);
        inside += element("p", fmt::format("Kilometres are revolutions times the girth of a tyre of {:.2f} m radius.",
                                           report.asked.load.tyre_radius.value() / 1e3));
        inside += crack_table(report.sound.crack_growth) + crack_figures(report.sound.crack_growth);
    }
    else inside += paragraph("The case states no cycles and no bending while running: no life can be told.");
    Markup running;
    for (const std::string& sentence : running_words(report.asked, report.running_true))
        running += element("li", sentence);
    return section(page.terms, "life", "Life in starts and kilometres",
                   inside + subsection("Running true", element("ul", running)));
}

Markup tolerances_section(const PageContent& page)
{
    const Case& asked = page.report.asked;
    Markup inside;
    if (!asked.tolerances.empty())
    {
        PageTable shown{"Values that the case writes with a tolerance", {"Key", "As drawn", "Plus or minus"}, {}};
        for (const Tolerance& tolerance : asked.tolerances)
            shown.rows.push_back(
                {{user_cell(tolerance.field), number_cell(tolerance_words(tolerance, tolerance.nominal)),
                  number_cell(tolerance_words(tolerance, tolerance.plus_minus))},
                 {},
                 false});
        inside += paragraph(
            "This report is of the part as drawn. splicewright compare --tolerances computes both ends of each value "
            "and the worst corner.");
        inside += table(shown);
    }
    if (!page.extras.options.empty()) inside += subsection("Options that were compared", page.extras.options);
    return inside.empty() ? inside : section(page.terms, "tolerances", "Tolerances and options", inside);
}

Markup assumptions_section(const PageContent& page)
{
    const Report& report = page.report;
    Markup inside;
    PageTable shown{"Defaults used", {"Key", "Taken as", "Why"}, {}};
    for (const DefaultUsed& used : report.asked.defaults)
        shown.rows.push_back({{words_cell(used.field), user_cell(used.value), user_cell(used.reason)}, {}, false});
    if (!shown.rows.empty()) inside += table(shown);
    inside += material_table(report.asked);
    if (!report.sound.notes.empty()) inside += subsection("Taken for this shaft", list_of(report.sound.notes));
    if (!report.sound.answer.absent_sites.empty())
        inside += subsection("Sites that this shape does not have", list_of(report.sound.answer.absent_sites));
    return section(page.terms, "assumptions", "Assumptions and defaults", inside);
}

Markup evidence_section(const PageContent& page)
{
    const MeridianAnswer& answer = page.report.sound.answer;
    const Evidence& e = answer.evidence;
    const Judgement& sound = page.report.sound;
    Facts list{
        {"Mesh", words(fmt::format("{} {}, {} nodes, {} unknowns, after {} meshes", e.elements,
                                   sound.judged_by_solid ? "tetrahedra of ten nodes" : "elements of six nodes", e.nodes,
                                   e.unknowns, e.levels))},
        {"Accuracy", words(fmt::format("stress at every site within {:.2g} %, {:g} % asked: {}{}", e.worst_error_pct,
                                       e.accuracy_pct, e.reached ? "reached" : "NOT REACHED",
                                       sound.crack_growth.empty() ? "" : "; crack growth has error bars of its own"))},
        {"Residual", words(fmt::format("{:.1e}", e.residual))}};
    if (sound.judged_by_solid)
    {
        list.emplace_back("Balance of the loads", words(fmt::format("{:.1e}", e.reaction_imbalance)));
        list.emplace_back("Worst element", words(fmt::format("Jacobian ratio {:.2f}", e.smallest_jacobian_ratio)));
    }
    else
    {
        list.emplace_back("Balance of the loads", words(fmt::format("{:.1e} at the ends, {:.1e} at the joint",
                                                                    e.reaction_imbalance, e.section_imbalance)));
        list.emplace_back("Worst element", words(fmt::format("smallest angle {:.1f}°, smallest Jacobian ratio {:.2f}",
                                                             e.smallest_angle_deg, e.smallest_jacobian_ratio)));
    }
    list.emplace_back("Program", words(fmt::format("splicewright {}", version())));
    Markup inside = facts("Mesh, error and balance", list) + error_table(answer) + model_table(sound);
    const PageExtras& extras = page.extras;
    Markup again = kept_file(extras.case_file, "The case");
    for (const PageFile& file : extras.companions) again += kept_file(file, "It names");
    for (const std::string& name : extras.left_out)
        again += element("p", {{"class", "warning"}},
                         words("Too large to be kept in this page, keep it beside the case: ") + user_words(name));
    again += element("p", fmt::format("Save it and run it again: splicewright check CASE {}. The same case and version "
                                      "give the same numbers.",
                                      run_again_options(sound)));
    again += folded("The case file",
                    element("pre", {{"tabindex", "0"}, {"dir", "auto"}}, words(extras.case_file.bytes)), true);
    return section(page.terms, "evidence", "Evidence", inside + subsection("The case itself", again));
}

Markup cautions_section(const PageContent& page)
{
    return section(page.terms, "cautions", "Cautions", list_of(page.report.cautions));
}

}  // namespace splicewright
