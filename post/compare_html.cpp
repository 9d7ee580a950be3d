// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/compare_html.h"

#include <fmt/format.h>

#include <algorithm>

#include "cases/variation.h"
#include "post/line_chart.h"
#include "post/page_sections.h"
#include "post/sheet_svg.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

constexpr std::size_t most_values_named = 12;

// All of them, or of many the first and the last.
std::string values_words(const Variation& variation)
{
    if (variation.values.size() > most_values_named)
        return fmt::format("{} values from {} to {}", variation.values.size(), plain_value(variation.values.front()),
                           plain_value(variation.values.back()));
    std::string text;
    for (const std::string& value : variation.values) text += (text.empty() ? "" : ", ") + plain_value(value);
    return text;
}

Markup asked_part(const ComparePage& page, Terms& terms)
{
    Markup inside = element("p", {{"class", "verdict"}}, user_words(recommendation_text(page.origin, page.ranking)));
    inside += element("p", user_words(counts_text(page.origin, page.ranking.counts())));
    if (!page.full_report.empty())
        inside += element("p", element("a", {{"href", page.full_report}},
                                       words("The full report of the recommended option: drawing, weak welds, every "
                                             "check worked through, shop sheet, cautions")));
    if (!page.why_no_report.empty())
        inside += element("p", {{"class", "warning"}},
                          user_words("The recommended option has no full report: " + page.why_no_report));
    inside += terms.explain_those_in(inside);
    PageTable keys{"Keys that were varied", {"Key", "Values"}, {}};
    for (const Variation& variation : page.origin.variations)
    {
        keys.rows.push_back({{user_cell(variation.key), user_cell(values_words(variation))}, {}, false});
    }
    return section("asked", "What was asked, and the answer", inside + table(keys));
}

}  // namespace

Markup options_table(const StudyOrigin& origin, const Ranking& ranking)
{
    const std::vector<TextRow> rows = option_rows(origin, ranking);
    PageTable shown{"Passing options by mass, then the others by what they use", rows.front(), {}};
    // The column of marks has no head of its own.
    const auto marks =
        static_cast<std::size_t>(std::find(rows.front().begin(), rows.front().end(), "") - rows.front().begin());
    shown.heads[marks] = "passes";
    for (std::size_t i = 1; i < rows.size(); ++i)
    {
        PageRow row;
        for (const std::string& words : rows[i]) row.cells.push_back(user_cell(words));
        const std::string mark = rows[i][marks];
        row.cells[marks] = words_cell(mark == "!" ? "NO" : mark == "*" ? "yes *" : "yes");
        shown.rows.push_back(std::move(row));
    }
    if (shown.rows.empty()) return paragraph("No option could be judged.");
    return table(shown) + paragraph("*: no other one that passes is as light and lives as long.");
}

namespace
{

Markup options_part(const ComparePage& page, Terms& terms)
{
    Markup inside = options_table(page.origin, page.ranking);
    if (page.ranking.counts().judged() > page.ranking.best().size())
        inside += paragraph("More options were judged: options.csv beside this file lists all.");
    std::vector<std::string> not_judged;
    for (const StudyOption& option : page.ranking.examples())
        not_judged.push_back(not_judged_text(page.origin, option));
    if (!not_judged.empty()) inside += subsection("Not judged", list_of(not_judged));
    return section(terms, "options", "The options", inside);
}

// The share used over the values of one key, house units.
Markup line_figure(const KeyLine& line)
{
    LineChart chart;
    chart.id = fmt::format("line-{}", line.key);
    for (char& letter : chart.id)
        if (letter == '.' || letter == '[' || letter == ']') letter = '-';
    chart.title = fmt::format("Share used over {}", line.key);
    chart.x_label = fmt::format("{}, house units (mm, N·mm, MPa)", line.key);
    chart.y_label = "used, %";
    chart.least_top = 100;
    ChartCurve used{"governing check", {}};
    ChartMarks passing{"passes", ChartSign::disc, {}}, failing{"does not pass", ChartSign::cross, {}};
    for (const KeyLine::Point& point : line.points)
    {
        if (point.outcome.end != OptionEnd::judged) continue;
        const SheetPoint at(point.value, 100 * point.outcome.utilisation);
        used.points.push_back(at);
        (point.outcome.passes ? passing : failing).points.push_back(at);
        chart.description += fmt::format("{}: {:.0f} %. ", point.words, at.y());
    }
    if (used.points.size() < 2 || used.points.front().x() == used.points.back().x()) return {};
    chart.curves = {used};
    for (const ChartMarks& marks : {passing, failing})
        if (!marks.points.empty()) chart.marks.push_back(marks);
    return figure(chart_svg(chart), key_line_text(line));
}

struct ChartWords
{
    const char *name, *alt, *caption;
};
constexpr ChartWords chart_words[] = {
    {"utilisation",
     "Share used against one key, a line for each value of another, the region that passes shaded, governing sites "
     "tagged where they change. The table of options has the numbers.",
     "How much of what is allowed is used. A numbered tag names the governing site from there on."},
    {"trade-off",
     "Mass against life of every option; those that no other one beats are joined and listed. The table of options has "
     "the numbers.",
     "Mass against life: the joined options are those that no other passing one beats in both."},
    {"heat-map", "Share used for each pair of values of two keys. The table of options has the numbers.",
     "How much is used for each pair of values; grey pairs are no valid case or were not computed."}};

Markup charts_part(const ComparePage& page)
{
    Markup inside;
    for (const NamedSheet& chart : page.charts)
        for (const ChartWords& words : chart_words)
            if (chart.name == words.name) inside += svg_figure(sheet_svg(chart.sheet), words.alt, words.caption);
    return inside.empty() ? inside : section("charts", "Charts", inside);
}

Markup lines_part(const ComparePage& page)
{
    Markup inside;
    for (const KeyLine& line : page.lines) inside += line_figure(line);
    if (!inside.empty()) inside += paragraph("The other keys stay as in the first option of the table.");
    if (!page.search_words.empty()) inside += element("pre", {{"tabindex", "0"}}, words(page.search_words));
    return inside.empty() ? inside : section("lines", "What one key alone does", inside);
}

Markup evidence_part(const ComparePage& page, Terms& terms)
{
    Facts list{{"Accuracy asked", words(fmt::format("{:g} %", page.origin.accuracy_pct))},
               {"Reserve asked", words(fmt::format("{:g}", page.origin.reserve))},
               {"Program", words(fmt::format("splicewright {}", version()))}};
    Markup inside = facts("How it was computed", list) + kept_file(page.case_file, "The case");
    inside += paragraph(
        "Mass: bars with fillets and grooves, butt, sleeve and sleeve welds from end to end as drawn. "
        "Judged is the sound splice, where the meridian model answers with the faces of a land or half lap free: run "
        "check on another option that you choose, for its cautions, its weak welds and its shop sheet.");
    return section(
        terms, "evidence", "Evidence",
        inside + folded("The case file",
                        element("pre", {{"tabindex", "0"}, {"dir", "auto"}}, words(page.case_file.bytes)), true));
}

}  // namespace

std::string compare_html(const ComparePage& page)
{
    Terms terms;
    Markup sections = asked_part(page, terms);
    sections += options_part(page, terms);
    sections += charts_part(page);
    sections += lines_part(page);
    sections += evidence_part(page, terms);
    const std::string title = "Options of " + page.origin.case_file;
    const Markup header = element(
        "header", element("p", {{"class", "kind"}}, words("Comparison of options")) + element("h1", user_words(title)) +
                      element("p", {{"class", "kind"}}, words(std::string("splicewright ") + version())));
    return html_document(page_head(title, PageScript::none), header + element("main", sections));
}

}  // namespace splicewright
