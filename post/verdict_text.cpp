// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/verdict_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/cautions.h"
#include "cases/units.h"
#include "post/asked_words.h"
#include "post/flat_element.h"
#include "post/making_text.h"
#include "post/number_words.h"
#include "post/service.h"
#include "post/site_loads.h"
#include "post/version.h"
#include "post/wrapped_text.h"
#include "solver/unit_solution.h"

namespace splicewright
{
namespace
{

std::string painted(const std::string& text, const char* code, Emphasis emphasis)
{
    return emphasis == Emphasis::terminal ? fmt::format("\x1b[{}m{}\x1b[0m", code, text) : text;
}

std::string pass_word(bool passes, Emphasis emphasis)
{
    return passes ? painted("passes", "1;34", emphasis) : painted("DOES NOT PASS", "1;33", emphasis);
}

std::string headline(const Report& report, Emphasis emphasis)
{
    if (const std::string wrong = contradiction(report.handbook); !wrong.empty())
        return painted("COULD NOT BE COMPUTED", "1;33", emphasis) + ": the finite elements contradict exact theory\n" +
               fmt::format("  {}\n  Rely on no number below; please report it with the case file.\n",
                           wrapped(wrong, 4));
    const CheckRow* row = governing(report.sound.checks);
    const bool passes = report.passes();
    std::string text = passes ? painted("PASSES", "1;34", emphasis) : painted("DOES NOT PASS", "1;33", emphasis);
    if (row == nullptr) return text + ": nothing could be checked\n";
    if (const std::string why = no_pass_because(report.sound); !why.empty()) text += ": " + why;
    return text + fmt::format(": {:.0f} % of what is allowed is used, at {} in {}\n", 100 * row->utilisation, row->site,
                              kind_name(row->kind));
}

std::string load_lines(const Case& asked)
{
    std::string text;
    for (const std::string& line : load_words(asked))
        text += fmt::format("{:<10}{}\n", text.empty() ? "Load" : "", wrapped(line, 12));
    return text;
}

std::string steel_line(const Case& asked, Emphasis emphasis)
{
    const auto warning = unknown_steel_warning(asked);
    return warning ? painted(wrapped(*warning, 2), "1", emphasis) + "\n" : "";
}

// How far the limits of a row can be relied on, one character.
char reliance(Provenance provenance)
{
    switch (provenance)
    {
        case Provenance::from_memory: return 'm';
        case Provenance::judgement:
        case Provenance::common_practice: return 'j';
        default: return ' ';
    }
}

std::string reliance_lines(const std::vector<CheckRow>& rows)
{
    const auto count = [&](char mark)
    {
        return std::count_if(rows.begin(), rows.end(),
                             [mark](const CheckRow& row) { return reliance(row.provenance) == mark; });
    };
    return wrapped(fmt::format("m: a limit of this row is from memory ({} of {} rows); j: one is judgement or practice "
                               "without a source ({}). Verify them before you rely on them.",
                               count('m'), rows.size(), count('j')),
                   2) +
           "\n";
}

// What stands first in a line: kind and site, or the id that `explain` takes.
struct FirstColumns
{
    RowsShown shown;
    std::size_t width;
    [[nodiscard]] std::string of(const CheckRow& row) const
    {
        return shown == RowsShown::all ? fmt::format("{:<{}}", row.id, width)
                                       : fmt::format("{:<9} {:<17}", kind_name(row.kind), row.site);
    }
    [[nodiscard]] std::string heading() const
    {
        return shown == RowsShown::all ? fmt::format("{:<{}}", "Check", width)
                                       : fmt::format("{:<9} {:<17}", "Check", "site");
    }
};

FirstColumns first_columns(const std::vector<CheckRow>& rows, RowsShown shown)
{
    FirstColumns columns{shown, 0};
    for (const CheckRow& row : rows) columns.width = std::max(columns.width, row.id.size());
    return columns;
}

std::string check_line(const CheckRow& row, char mark, const FirstColumns& first, Emphasis emphasis)
{
    const std::string line =
        fmt::format("{} {:>5.0f} % {} {:<17} {:<8} {} {}", first.of(row), 100 * row.utilisation, mark,
                    demand_words(row), error_words(row.error_pct), reliance(row.provenance), row.check);
    if (row.valid()) return line + "\n";
    return painted(line, "2", emphasis) + "\n" +
           painted(fmt::format("          does not govern: {}", wrapped(row.not_valid_because, 12)), "2", emphasis) +
           "\n";
}

bool governs_site(const std::vector<CheckRow>& rows, const CheckRow& row)
{
    const CheckRow* worst = governing(rows, row.kind, row.site);
    return worst == nullptr || worst == &row;
}

// Rows on one screen; every row that does not pass is shown beyond them.
constexpr std::size_t rows_on_screen = 10;

std::vector<const CheckRow*> ordered_rows(const std::vector<CheckRow>& rows, RowsShown shown)
{
    std::vector<const CheckRow*> ordered;
    for (const CheckRow& row : rows)
        if (shown == RowsShown::all || governs_site(rows, row)) ordered.push_back(&row);
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const CheckRow* a, const CheckRow* b)
                     {
                         if (a->valid() != b->valid()) return a->valid();
                         return a->utilisation > b->utilisation;
                     });
    return ordered;
}

std::string check_lines(const std::vector<CheckRow>& rows, Emphasis emphasis, RowsShown shown)
{
    std::vector<const CheckRow*> ordered = ordered_rows(rows, shown);
    const std::size_t n_all = ordered.size();
    if (shown == RowsShown::governing)
        while (ordered.size() > rows_on_screen && ordered.back()->passes()) ordered.pop_back();
    const FirstColumns first = first_columns(rows, shown);
    std::string text =
        fmt::format("{} {:>7}   {:<17} {:<8}   {}\n", first.heading(), "used", "demand", "error", "against");
    for (const CheckRow* row : ordered)
    {
        const bool governs = row->valid() && governs_site(rows, *row);
        const char mark = !row->passes() ? '!' : shown == RowsShown::all && governs ? '*' : ' ';
        text += check_line(*row, mark, first, emphasis);
    }
    if (shown == RowsShown::all)
        text += "*: governs its site; !: does not pass; splicewright explain CASE CHECK works a row through\n";
    else
    {
        const auto invalid = std::count_if(rows.begin(), rows.end(), [](const CheckRow& row) { return !row.valid(); });
        const std::string more =
            n_all > ordered.size() ? fmt::format("; {} more are used less", n_all - ordered.size()) : std::string();
        text += wrapped(fmt::format("The worst method of each site{}. --all shows all {} rows, of which {} may not "
                                    "govern.",
                                    more, rows.size(), invalid),
                        2) +
                "\n";
    }
    return text + reliance_lines(rows);
}

// What the scenario carries and how long it lasts.
std::string service_text(const Case& asked, const std::vector<CheckRow>& rows)
{
    const Service service = service_of(asked, rows);
    std::string text;
    if (asked.load.peak_torque.value() > 0 && service.torque_carried > 0)
        text += fmt::format("carries {} N·m once", in_newton_metre(NewtonMillimetre(service.torque_carried)));
    if (service.life) text += fmt::format("{}life {}", text.empty() ? "" : "; ", life_text(asked.load, *service.life));
    return text;
}

std::string splice_line(const Report& report)
{
    if (!report.asked.joint) return "";
    const Service service = service_of(report.asked, report.sound.checks);
    std::string text = service_text(report.asked, report.sound.checks);
    if (text.empty()) return text;
    if (service.life) text += fmt::format(" ({})", other_methods_text(*service.life));
    return wrapped(fmt::format("The splice {}", text), 2) + "\n\n";
}

constexpr double longer = 1.005;  // times a life: less is not seen in its digits, judgement

// One that lasts longer than the sound splice gains nothing: its notes say why.
bool outlasts(const Report& report, const Judgement& scenario)
{
    const auto sound = least_life(report.sound.checks), changed = least_life(scenario.checks);
    return sound && changed && changed->least > longer * sound->least;
}

std::string what_if_lines(const Report& report, Emphasis emphasis, RowsShown shown)
{
    std::string text;
    std::size_t n_remarks = report.what_if_notes.size();
    for (const Judgement& scenario : report.what_if)
    {
        const CheckRow* strength = governing(scenario.checks, CheckKind::strength);
        const CheckRow* fatigue = governing(scenario.checks, CheckKind::fatigue);
        std::string line =
            fmt::format("{:<23} {}", scenario.answer.scenario.name, pass_word(scenario.passes(), emphasis));
        if (const std::string why = no_pass_because(scenario); !why.empty()) line += ", " + why;
        if (strength) line += fmt::format(": strength {:.0f} % ({})", 100 * strength->utilisation, strength->site);
        if (fatigue) line += fmt::format(", fatigue {:.0f} % ({})", 100 * fatigue->utilisation, fatigue->site);
        std::string service = service_text(report.asked, scenario.checks);
        if (shown == RowsShown::governing && outlasts(report, scenario)) service += "; count no gain";
        text += fmt::format("{}\n  {}\n", line, wrapped(service, 4));
        n_remarks += scenario.notes.size();
        if (shown == RowsShown::all)
            for (const std::string& note : scenario.notes) text += fmt::format("  {}\n", wrapped(note, 4));
    }
    if (shown == RowsShown::all)
        for (const std::string& note : report.what_if_notes) text += fmt::format("{}\n", wrapped(note, 2));
    if (text.empty()) return text;
    const std::string remarks = shown == RowsShown::governing && n_remarks > 0
                                    ? fmt::format("; --all has {} remark{}", n_remarks, n_remarks == 1 ? "" : "s")
                                    : std::string();
    return fmt::format("What if (for information, not part of the verdict{})\n{}", remarks, text);
}

std::string over_bar_line(const Report& report)
{
    std::string text;
    for (const Side side : both_sides)
    {
        if (!report.over_bar[index(side)]) continue;
        const OverBar& over = *report.over_bar[index(side)];
        text += fmt::format("{} the {} bar of {:.4g} mm: {:.0f} % of strength", text.empty() ? "Over" : "; over",
                            name_of(side), over.diameter.value(), 100 * over.strength);
        if (over.fatigue) text += fmt::format(", {:.0f} % of fatigue stress", 100 * *over.fatigue);
        if (over.life) text += fmt::format(", life {}", life_words(*over.life));
        text += fmt::format(", {:.0f} % of twist", 100 * over.twist);
    }
    return text.empty() ? text : wrapped(text, 2) + "\n";
}

std::string against_lines(const Report& report, RowsShown shown)
{
    if (!report.against_plain_bar) return "";
    if (shown == RowsShown::governing) return over_bar_line(report);
    const AgainstPlainBar& a = *report.against_plain_bar;
    std::string text = fmt::format("Against the bars alone: {:.0f} % of their strength ({} against {})",
                                   100 * a.strength_splice / a.strength_bar, a.splice_site, a.bar_site);
    if (a.fatigue_splice && a.fatigue_bar)
        text += fmt::format(", {:.0f} % of their fatigue stress ({} against {})",
                            100 * *a.fatigue_splice / *a.fatigue_bar, a.fatigue_site, a.bar_fatigue_site);
    return wrapped(text, 2) + "\n" + over_bar_line(report);
}

std::string stiffness_line(const Report& report)
{
    const MeridianAnswer& answer = report.sound.answer;
    const double degrees = 180 / std::numbers::pi;
    std::string text = fmt::format("Twist {:.2f}° at the peak torque",
                                   answer.twist.value * report.asked.load.peak_torque.value() * degrees);
    if (report.asked.sleeve)
        text +=
            fmt::format("; the sleeve carries {:.1f} % of the torque past the joint", 100 * answer.share.torsion.value);
    return text + "\n";
}

std::string handbook_line(const std::vector<HandbookRow>& rows)
{
    const auto agree = std::count_if(rows.begin(), rows.end(), [](const HandbookRow& row) { return row.agrees; });
    std::string text =
        fmt::format("Handbook: {} of {} values agree within what they can be trusted", agree, rows.size());
    for (const HandbookRow& row : rows)
        if (!row.agrees)
            text += fmt::format("; {}: {:+.1f} %, allowed {:+.1f} to {:+.1f} %", row.what, row.difference_pct,
                                row.band_low_pct, row.band_high_pct);
    return wrapped(text, 2) + "\n";
}

// Every comparison with the handbook, those that disagree marked.
std::string handbook_table(const std::vector<HandbookRow>& rows)
{
    std::size_t width = 0;
    for (const HandbookRow& row : rows) width = std::max(width, row.what.size());
    std::string text = fmt::format("\n{:<{}}  {:>9} {:>9} {:<4} {:>8}  {:<19} {:<8} {}\n", "Handbook", width,
                                   "elements", "handbook", "unit", "apart", "allowed", "error", "source");
    for (const HandbookRow& row : rows)
    {
        const std::string allowed = fmt::format("{:+.1f} to {:+.1f} %", row.band_low_pct, row.band_high_pct);
        text += fmt::format("{:<{}}  {:>9.4g} {:>9.4g} {:<4} {:>+6.1f} %{} {:<19} {:<8} {}\n", row.what, width, row.fe,
                            row.handbook, row.unit, row.difference_pct, row.agrees ? ' ' : '!', allowed,
                            error_words(row.fe_error_pct), row.source);
    }
    return text + "!: apart by more than is allowed and the error together\n\n";
}

// Rounded up to a power of ten, not below what every solution is held to: round-off differs from machine to machine.
double round_off_bound(const Evidence& e)
{
    const double worst = std::max({e.residual, e.reaction_imbalance, e.section_imbalance});
    return worst <= residual_allowed ? residual_allowed : std::pow(10, std::ceil(std::log10(worst)));
}

std::string evidence_line(const MeridianAnswer& answer)
{
    const Evidence& e = answer.evidence;
    std::string text = fmt::format(
        "Evidence: {} elements after {} meshes, stress at every site within {:.2g} % ({:g} % asked); residual "
        "and balance of the loads within {:.0e}",
        e.elements, e.levels, e.worst_error_pct, e.accuracy_pct, round_off_bound(e));
    if (const std::string flat = flat_element_words(answer); !flat.empty()) text += "; " + flat;
    return wrapped(text, 2) + "\n";
}

// One running paragraph.
std::string paragraph(const std::string& title, const std::vector<std::string>& items)
{
    std::string text;
    for (const std::string& item : items) text += fmt::format("{}{}", text.empty() ? "" : "; ", item);
    return text.empty() ? text : fmt::format("\n{}", wrapped(fmt::format("{}: {}", title, text), 2));
}

std::string list_lines(const std::string& title, const std::vector<std::string>& items)
{
    std::string text;
    for (const std::string& item : items) text += fmt::format("  {}\n", wrapped(item, 4));
    return text.empty() ? text : fmt::format("{}\n{}", title, text);
}

std::string default_text(const Case& asked, RowsShown shown)
{
    std::vector<std::string> lines;
    for (const DefaultUsed& used : asked.defaults) lines.push_back(default_words(used));
    if (lines.empty() || shown == RowsShown::all) return paragraph("Defaults", lines);
    return fmt::format(
        "\n{}", wrapped(fmt::format("Defaults: {} value{} you did not give {} taken; read them in "
                                    "report.html or with --all",
                                    lines.size(), lines.size() == 1 ? "" : "s", lines.size() == 1 ? "was" : "were"),
                        2));
}

// On one screen those of the case, who decides, and what a broken shaft does.
std::string caution_lines(const Report& report, RowsShown shown)
{
    if (shown == RowsShown::all) return list_lines("Cautions", report.cautions);
    const std::vector<std::string>& general = general_cautions();
    std::vector<std::string> lines;
    for (const std::string& caution : report.cautions)
        if (std::find(general.begin(), general.end(), caution) == general.end()) lines.push_back(caution);
    lines.push_back(general.front());
    lines.push_back(general.back());
    return list_lines(fmt::format("Cautions; {} more for whoever welds stand in report.html", general.size() - 2),
                      lines);
}

}  // namespace

std::string verdict_text(const Report& report, Emphasis emphasis, RowsShown shown)
{
    std::string text = fmt::format("{}\n{}{}\n{}\n{}\n", report.asked.title, headline(report, emphasis),
                                   steel_line(report.asked, emphasis), load_lines(report.asked),
                                   check_lines(report.sound.checks, emphasis, shown));
    text += splice_line(report);
    const std::string what_if = what_if_lines(report, emphasis, shown);
    if (!what_if.empty()) text += what_if + "\n";
    text += against_lines(report, shown) + stiffness_line(report) + running_lines(report.asked, report.running_true) +
            handbook_line(report.handbook) +
            (shown == RowsShown::all ? handbook_table(report.handbook) : std::string()) +
            model_text(report.sound.models, report.sound.models_must_agree) + evidence_line(report.sound.answer);
    text += paragraph("Not there", report.sound.answer.absent_sites);
    text += default_text(report.asked, shown);
    return text + fmt::format("\n\n{}", caution_lines(report, shown));
}

}  // namespace splicewright
