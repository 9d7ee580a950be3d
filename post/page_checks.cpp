// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/asked_words.h"
#include "post/number_words.h"
#include "post/page_sections.h"
#include "post/service.h"

namespace splicewright
{
namespace
{

std::string with_unit(double value, const std::string& unit)
{
    return unit.empty() ? fmt::format("{:.6g}", value) : fmt::format("{:.6g} {}", value, unit);
}

Markup step_markup(const WorkedStep& step)
{
    Markup lines;
    if (!step.formula.empty()) lines += element("code", step.formula + " ");
    if (!step.numbers.empty()) lines += element("code", "= " + step.numbers + " ");
    const bool searched = step.numbers.empty() && !step.formula.empty();
    lines += element("code", {{"class", "result"}},
                     words((searched ? "found: " : "= ") + with_unit(step.result, step.unit)));
    return element("li", element("span", step.what) + lines);
}

// Share used, with a bar of that length beside it.
PageCell used_cell(const CheckRow& row)
{
    const double width = std::clamp(100 * row.utilisation, 0.0, 100.0);
    const Markup bar = element("span", {{"class", row.passes() ? "bar" : "bar over"}, {"aria-hidden", "true"}},
                               element("span", {{"style", fmt::format("width:{:.0f}%", width)}}, {}));
    const std::string text = fmt::format("{:.0f} %{}", 100 * row.utilisation, row.passes() ? "" : " !");
    return {element("span", text) + bar, true};
}

bool governs_site(const std::vector<CheckRow>& rows, const CheckRow& row)
{
    const CheckRow* worst = governing(rows, row.kind, row.site);
    return worst == nullptr || worst == &row;
}

std::vector<const CheckRow*> by_use(const std::vector<CheckRow>& rows, bool governing_ones)
{
    std::vector<const CheckRow*> ordered;
    for (const CheckRow& row : rows)
        if (governs_site(rows, row) == governing_ones) ordered.push_back(&row);
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const CheckRow* a, const CheckRow* b)
                     {
                         if (a->valid() != b->valid()) return a->valid();
                         return a->utilisation > b->utilisation;
                     });
    return ordered;
}

Markup checks_table(const std::string& caption, const std::vector<const CheckRow*>& rows)
{
    PageTable shown{caption, {"Site", "Kind", "Used", "Demand", "Error", "Held against", "Relied on"}, {}};
    for (const CheckRow* row : rows)
    {
        PageRow line{
            {words_cell(row->site), words_cell(kind_name(row->kind)), used_cell(*row), words_cell(demand_words(*row)),
             number_cell(error_words(row->error_pct)), words_cell(row->check), words_cell(name_of(row->provenance))},
            {},
            !row->valid()};
        line.id = row->id;
        if (!row->valid())
            line.below = element("p", {{"class", "invalid"}}, words("Does not govern: " + row->not_valid_because));
        line.below += folded(fmt::format("Worked: {}", row->id), worked_check(*row));
        shown.rows.push_back(std::move(line));
    }
    return table(shown);
}

std::string used_at(const CheckRow* row)
{
    return row == nullptr ? std::string("not checked")
                          : fmt::format("{:.0f} % at {}", 100 * row->utilisation, row->site);
}

PageRow scenario_row(const Report& report, const Judgement& judgement)
{
    const Service service = service_of(report.asked, judgement.checks);
    const bool carries = report.asked.load.peak_torque.value() > 0 && service.torque_carried > 0;
    PageRow row{{words_cell(judgement.answer.scenario.name),
                 {pass_mark(judgement.passes()) +
                  words(no_pass_because(judgement).empty() ? "" : " " + no_pass_because(judgement))},
                 words_cell(used_at(governing(judgement.checks, CheckKind::strength))),
                 words_cell(used_at(governing(judgement.checks, CheckKind::fatigue))),
                 number_cell(carries ? in_newton_metre(NewtonMillimetre(service.torque_carried)) + " N·m" : "-"),
                 {service.life ? user_words(life_text(report.asked.load, *service.life)) : words("-")}},
                list_of(judgement.notes),
                false};
    return row;
}

// With its sign, but for a difference that rounds to nothing.
std::string difference_words(double pct)
{
    return std::abs(pct) < 0.05 ? std::string("0.0 %") : fmt::format("{:+.1f} %", pct);
}

}  // namespace

Markup worked_check(const CheckRow& row)
{
    Markup steps;
    for (const WorkedStep& step : row.worked) steps += step_markup(step);
    Facts list{{"Method", words(row.method)},
               {"Valid", words(row.valid() ? "here" : "not here: " + row.not_valid_because)},
               {"Source", words(row.source)},
               {"Relied on", words(name_of(row.provenance))}};
    if (!row.note.empty()) list.emplace_back("Note", words(row.note));
    if (row.life)
        list.emplace_back("Life",
                          words(std::isfinite(*row.life) ? fmt::format("{:.4g} times the life asked for", *row.life)
                                                         : std::string("no load counted leads to failure")));
    Markup told;
    for (const auto& [name, value] : list) told += element("dt", name) + element("dd", value);
    return element("ol", {{"class", "worked"}}, steps) + element("dl", told);
}

Markup checks_section(const PageContent& page)
{
    const std::vector<CheckRow>& rows = page.report.sound.checks;
    Markup inside = element("p", fmt::format("{} lines in all: first the worst method of each site, then every other "
                                             "method. Each line opens to its formula with the numbers put in.",
                                             rows.size()));
    inside += element("p", {{"class", "on-paper"}},
                      words("On paper the governing check alone is worked through, above; the file opens every line."));
    inside += checks_table("The worst method of each site", by_use(rows, true));
    const std::vector<const CheckRow*> others = by_use(rows, false);
    if (!others.empty()) inside += checks_table("All other methods", others);
    return section(page.terms, "checks", "The checks", inside);
}

Markup what_if_section(const PageContent& page)
{
    const Report& report = page.report;
    if (report.what_if.empty() && report.what_if_notes.empty()) return {};
    Markup inside = paragraph(
        "The same shaft computed again with one weld broken: a look at what is left, for "
        "information and not part of the verdict.");
    PageTable shown{"If a weld fails",
                    {"What fails", "Verdict", "Strength used", "Fatigue used", "Carries", "Life"},
                    {scenario_row(report, report.sound)}};
    shown.rows.front().cells.front() = words_cell("nothing: sound");
    for (const Judgement& judgement : report.what_if) shown.rows.push_back(scenario_row(report, judgement));
    inside += table(shown) + list_of(report.what_if_notes);
    inside +=
        page_picture(page, "scenarios.png",
                     "The same half section once for each scenario, one under the other, in one range of colours; "
                     "the names and shares used stand beside each.",
                     "The splice sound and with each weld lost: one camera, one scale, one range of colours.");
    return section(page.terms, "what-if", "What if a weld fails", inside);
}

Markup handbook_section(const PageContent& page)
{
    const std::vector<HandbookRow>& rows = page.report.handbook;
    if (rows.empty()) return {};
    const auto agree = std::count_if(rows.begin(), rows.end(), [](const HandbookRow& row) { return row.agrees; });
    Markup inside =
        element("p", fmt::format("{} of {} values agree within what they can be trusted.", agree, rows.size()));
    PageTable shown{"Handbook formulas against finite elements",
                    {"What", "Finite elements", "Handbook", "Difference", "Trusted within", "Agrees"},
                    {}};
    for (const HandbookRow& row : rows)
    {
        const std::string unit = row.unit == "-" ? "" : " " + row.unit;
        shown.rows.push_back(
            {{words_cell(row.what), number_cell(fmt::format("{:.4g}{}", row.fe, unit)),
              number_cell(fmt::format("{:.4g}{}", row.handbook, unit)),
              number_cell(difference_words(row.difference_pct)),
              number_cell(fmt::format("{:+.1f} to {:+.1f} %", row.band_low_pct, row.band_high_pct)),
              words_cell(row.agrees ? "yes" : "NO")},
             folded("Source and band", element("p", row.band_reason) +
                                           element("p", fmt::format("{} ({})", row.source, name_of(row.provenance)))),
             false});
    }
    return section(page.terms, "handbook", "Handbook against finite elements", inside + table(shown));
}

}  // namespace splicewright
