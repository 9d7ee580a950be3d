// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/explain_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/units.h"
#include "post/site_loads.h"
#include "post/wrapped_text.h"

namespace splicewright
{
namespace
{

constexpr std::size_t shown_blocks = 4, indent = 11;

std::string with_unit(double value, const std::string& unit)
{
    return unit.empty() ? fmt::format("{:.6g}", value) : fmt::format("{:.6g} {}", value, unit);
}

std::string entry(const char* name, const std::string& text)
{
    return text.empty() ? "" : fmt::format("{:<{}}{}\n", name, indent, wrapped(text, indent));
}

double newton_metre(NewtonMillimetre moment) { return moment.value() / newton_millimetre_per_newton_metre; }

// The loads of the row's kind: at the peak, or over the life asked for.
std::string loads(const Case& asked, CheckKind kind)
{
    const Load& load = asked.load;
    std::string text = entry("Loads", peak_load_text(asked));
    if (kind == CheckKind::strength) return text;
    const std::size_t n_shown = std::min(shown_blocks, load.blocks.size());
    for (std::size_t at = 0; at < n_shown; ++at)
        text += entry("", fmt::format("{:.7g} cycles of torque from {:.6g} to {:.6g} N·m", load.blocks[at].count,
                                      newton_metre(load.blocks[at].low), newton_metre(load.blocks[at].high)));
    if (load.blocks.size() > n_shown)
        text += entry("", fmt::format("and {} more blocks", load.blocks.size() - n_shown));
    if (load.running_bending.value() > 0)
        text += entry("", fmt::format("{:.7g} revolutions under {:.6g} N·m of bending", load.revolutions,
                                      newton_metre(load.running_bending)));
    return text;
}

std::string worked_lines(const WorkedStep& step)
{
    const std::string pad(6, ' ');
    if (step.numbers.empty() && step.formula.empty())
        return fmt::format("{}= {}\n", pad, with_unit(step.result, step.unit));
    if (step.numbers.empty())
        return fmt::format("{}{}\n{}found: {}\n", pad, step.formula, pad, with_unit(step.result, step.unit));
    return fmt::format("{0}{1}\n{0}= {2}\n{0}= {3}\n", pad, step.formula, step.numbers,
                       with_unit(step.result, step.unit));
}

std::string steps(const CheckRow& row)
{
    std::string text;
    int number = 0;
    for (const WorkedStep& step : row.worked)
        text += fmt::format("{:>3}.  {}\n{}", ++number, wrapped(step.what, 6), worked_lines(step));
    return text;
}

std::string result(const CheckRow& row)
{
    const std::string used = fmt::format("{:.1f} % of what is allowed is used", 100 * row.utilisation);
    if (!row.valid()) return fmt::format("{}; does not govern", used);
    return fmt::format("{}: {}", used, row.passes() ? "passes" : "DOES NOT PASS");
}

}  // namespace

std::string explain_text(const Case& asked, const Judgement& judged, const CheckRow& row)
{
    std::string text = fmt::format("{}\n{}\n\n", asked.title, row.id);
    text += entry("Scenario", judged.answer.scenario.name);
    text += entry("Compares", row.check);
    text += loads(asked, row.kind);
    text += fmt::format("\n{}\n", steps(row));
    text += entry("Method", row.method);
    text += entry("Valid", row.valid() ? "here" : fmt::format("not here: {}", row.not_valid_because));
    text += entry("Source", row.source);
    text += entry("Provenance", name_of(row.provenance));
    text += entry("Note", row.note);
    if (row.life)
        text += entry("Life", std::isfinite(*row.life) ? fmt::format("{:.4g} times the life asked for", *row.life)
                                                       : "no load counted leads to failure");
    return text + entry("Result", result(row));
}

std::string explainable_text(const Judgement& judged)
{
    std::size_t width = 0;
    for (const CheckRow& row : judged.checks) width = std::max(width, row.id.size());
    std::string text;
    for (const CheckRow& row : judged.checks) text += fmt::format("{:<{}}  {}\n", row.id, width, row.check);
    return text;
}

}  // namespace splicewright
