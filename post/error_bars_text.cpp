// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "post/error_bars.h"

namespace splicewright
{
namespace
{

constexpr std::size_t n_worst = 8;

constexpr const char* introduction =
    R"(# Do the error bars hold?

Written by `{}`, version {}; do not edit.

Every number of an answer carries an error bar, which speaks of the mesh alone.
Here the bars are put to the test: random cases, the same ones that `splicewright soak` draws, are solved to the asked accuracy and once more on a reference mesh, which has 45 elements on a quarter turn of every notch (81 where an accuracy below 1 % is tested) and is fine everywhere else in proportion; the difference of the two is taken for the true error.
How many references reach a twentieth of the asked accuracy at every site, by their own bars, stands below.
A number counts as within when its true error is no larger than its bar.
The goals are 95 of 100 within at every accuracy, and a median of bar over true error below 4, because a bar that is always huge is useless.

- Percentages are of the number itself, or of 5 % of what the load does to the thinnest plain bar when that is larger; numbers below 0.1 % of it stand for no load and are not compared.
- A reference has a bar of its own: where that is more than a quarter of both the tested bar and the difference, the number is left out, and counted as left out.
- True errors below 0.0001 % are round-off: they count as within, and give no ratio.
- Numbers of one case are not independent: von Mises, principal and shear stress of one site under one load come from one field.
- The exact bodies are a solid, a hollow and a butt-welded plain bar, whose stress and deformation are known in closed form; they are counted apart.
)";

std::set<std::string> kinds_of(const std::vector<BarTrial>& trials)
{
    std::set<std::string> kinds;
    for (const BarTrial& trial : trials) kinds.insert(trial.kind);
    return kinds;
}

std::string ratio_text(double ratio) { return ratio > 0 ? fmt::format("{:.1f}", ratio) : "none"; }

double factor(const BarTrial& trial) { return trial.off_pct / std::max(trial.bar_pct, 1e-12); }

std::vector<BarTrial> worst(const BarStudy& study)
{
    std::vector<BarTrial> missed;
    for (const auto* trials : {&study.trials, &study.exact_trials})
        std::copy_if(trials->begin(), trials->end(), std::back_inserter(missed),
                     [](const BarTrial& trial) { return trial.verdict == BarVerdict::beyond; });
    std::sort(missed.begin(), missed.end(), [](const BarTrial& a, const BarTrial& b) { return factor(a) > factor(b); });
    if (missed.size() > n_worst) missed.resize(n_worst);
    return missed;
}

std::string factor_text(const BarTrial& trial)
{
    return trial.bar_pct > 0 ? fmt::format("{:.3g}", factor(trial)) : "no bar";
}

std::string headline(const BarStudy& study)
{
    const BarTally all = tally(study.trials, ""), exact = tally(study.exact_trials, "");
    std::string text = fmt::format(
        "{} cases, {} numbers compared, {} left out: {:.1f} % within the bar, median of bar over true error {}.\n",
        study.n_cases, all.n_compared(), all.n_left_out, 100 * all.share_within(), ratio_text(all.median_ratio));
    text += fmt::format("{} answers reached the accuracy, {} references a twentieth of it.\n", study.n_reached,
                        study.n_references_reached);
    text += fmt::format("Exact bodies: {} of {} numbers within.\n", exact.n_within, exact.n_compared());
    for (const std::string& failure : study.failures)
        text += fmt::format("Not compared: {}.\n", failure.substr(0, failure.find(". ")));
    return text;
}

}  // namespace

std::string bar_study_text(const BarStudy& study)
{
    std::string text = fmt::format("Accuracy {:g} %: {}", study.accuracy_pct, headline(study));
    text += fmt::format("{:26}{:>9}{:>10}{:>9}{:>14}\n", "", "compared", "left out", "within", "median ratio");
    for (const std::string& kind : kinds_of(study.trials))
    {
        const BarTally part = tally(study.trials, kind);
        text += fmt::format("{:26}{:>9}{:>10}{:>7.1f} %{:>14}\n", kind, part.n_compared(), part.n_left_out,
                            100 * part.share_within(), ratio_text(part.median_ratio));
    }
    for (const BarTrial& trial : worst(study))
        text += fmt::format("  beyond: {}, {}: off {:.3g} %, bar {:.3g} %, factor {}\n", trial.case_name, trial.name,
                            trial.off_pct, trial.bar_pct, factor_text(trial));
    return text + (meets_goal(study) ? "  goal met\n" : "  GOAL MISSED\n");
}

std::string bar_study_document(const std::vector<BarStudy>& studies, const std::string& command,
                               const std::string& version)
{
    std::string text = fmt::format(fmt::runtime(introduction), command, version);
    text +=
        "\n| accuracy | cases | compared | left out | within | median ratio | goal |\n|---|---|---|---|---|---|---|\n";
    for (const BarStudy& study : studies)
    {
        const BarTally all = tally(study.trials, "");
        text += fmt::format("| {:g} % | {} | {} | {} | {:.1f} % | {} | {} |\n", study.accuracy_pct, study.n_cases,
                            all.n_compared(), all.n_left_out, 100 * all.share_within(), ratio_text(all.median_ratio),
                            meets_goal(study) ? "met" : "**missed**");
    }
    for (const BarStudy& study : studies)
    {
        text += fmt::format("\n## Accuracy {:g} %\n\n{}\n", study.accuracy_pct, headline(study));
        text += "| kind of number | compared | left out | within | median ratio |\n|---|---|---|---|---|\n";
        for (const std::string& kind : kinds_of(study.trials))
        {
            const BarTally part = tally(study.trials, kind);
            text += fmt::format("| {} | {} | {} | {:.1f} % | {} |\n", kind, part.n_compared(), part.n_left_out,
                                100 * part.share_within(), ratio_text(part.median_ratio));
        }
        const std::vector<BarTrial> missed = worst(study);
        if (missed.empty()) continue;
        text += "\nThe worst misses:\n\n| case | number | true error | bar | factor |\n|---|---|---|---|---|\n";
        for (const BarTrial& trial : missed)
            text += fmt::format("| {} | {} | {:.3g} % | {:.3g} % | {} |\n", trial.case_name, trial.name, trial.off_pct,
                                trial.bar_pct, factor_text(trial));
    }
    return text;
}

}  // namespace splicewright
