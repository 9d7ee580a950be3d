// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/error_bars.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr double least_scale = 0.05;          // of the whole: a smaller number is judged against this
constexpr double unloaded = 1e-3;             // of the whole: a smaller number stands for no load at all
constexpr double without_meaning_pct = 1e-4;  // round-off of these solves is not far below
constexpr double known_well = 0.25;           // the reference's own bar over the tested bar or the difference
constexpr double goal_share = 0.95, goal_ratio = 4;

struct Load
{
    const char* name;
    UnitPeak SiteAnswer::*peak;
    double nominal;  // surface stress of the thinnest section under the unit load: normal, or shear in torsion
};

double thinnest(const Case& asked)
{
    double smallest = INFINITY;
    for (const auto& bar : asked.bar)
        if (bar)
            for (const Section& section : bar->sections) smallest = std::min(smallest, section.diameter.value());
    return smallest;
}

std::string kind_of(const std::string& site)
{
    if (site.starts_with("bar.")) return "stress of plain bars";
    if (site == "sleeve-mid" || site == "butt-surface") return "stress at mid-splice";
    return "stress at notches";
}

void add_stresses(const Case& asked, const MeridianAnswer& answer, std::vector<BarredNumber>& to)
{
    const double d = thinnest(asked);
    const Load loads[] = {{"torsion", &SiteAnswer::torsion, 16 / (pi * d * d * d)},
                          {"bending", &SiteAnswer::bending, 32 / (pi * d * d * d)},
                          {"axial", &SiteAnswer::axial, 4 / (pi * d * d)}};
    for (const SiteAnswer& site : answer.sites)
        for (const Load& load : loads)
        {
            const UnitPeak& peak = site.*load.peak;
            const auto add = [&](const char* name, const Measured& stress) {
                to.push_back({kind_of(site.id), site.id + " " + load.name + " " + name, stress.value, stress.error,
                              load.nominal});
            };
            add("von Mises", peak.von_mises);
            add("principal", peak.principal);
            add("shear", peak.shear);
        }
}

void add_weld_forces(const MeridianAnswer& answer, std::vector<BarredNumber>& to)
{
    for (const Side side : both_sides)
    {
        if (!answer.weld[index(side)]) continue;
        const WeldForce& weld = *answer.weld[index(side)];
        const double ring = 2 * pi * weld.radius;
        const double torque = 1 / (weld.radius * ring), couple = 2 / (weld.radius * ring), pull = 1 / ring;
        const auto add = [&](const char* name, double force, double whole)
        {
            const double error = weld.error_pct / 100 * std::max(std::abs(force), least_scale * whole);
            to.push_back(
                {"force on sleeve welds", std::string("weld.") + name_of(side) + " " + name, force, error, whole});
        };
        add("torsion tangential", weld.torsion_tangential, torque);
        add("bending outward", weld.bending_outward, couple);
        add("bending radial", weld.bending_radial, couple);
        add("bending tangential", weld.bending_tangential, couple);
        add("axial outward", weld.axial_outward, pull);
        add("axial radial", weld.axial_radial, pull);
    }
}

}  // namespace

std::vector<BarredNumber> barred_numbers(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<BarredNumber> numbers;
    add_stresses(asked, answer, numbers);
    add_weld_forces(answer, numbers);
    const auto add = [&](const char* kind, const char* name, const Measured& number, double whole) {
        numbers.push_back({kind, name, number.value, number.error, whole});
    };
    add("share of the sleeve", "share torsion", answer.share.torsion, 1);
    add("share of the sleeve", "share bending", answer.share.bending, 1);
    add("share of the sleeve", "share axial", answer.share.axial, 1);
    add("deformation", "twist", answer.twist, answer.twist.value);
    add("deformation", "end rotation", answer.end_rotation, answer.end_rotation.value);
    add("deformation", "extension", answer.extension, answer.extension.value);
    add("fit pressure", "fit pressure", answer.fit_pressure, answer.fit_pressure.value);
    return numbers;
}

std::vector<BarTrial> bar_trials(const std::string& case_name, const std::vector<BarredNumber>& numbers,
                                 const std::vector<BarredNumber>& references)
{
    EXPECTS(numbers.size() == references.size());
    std::vector<BarTrial> trials;
    for (std::size_t i = 0; i < numbers.size(); ++i)
    {
        const BarredNumber &tested = numbers[i], &reference = references[i];
        EXPECTS(tested.name == reference.name);
        const double scale = std::max(std::abs(reference.value), least_scale * std::abs(reference.whole));
        if (scale == 0 || std::abs(reference.value) < unloaded * std::abs(reference.whole)) continue;
        BarTrial trial{tested.kind, tested.name, case_name};
        trial.bar_pct = 100 * tested.error / scale;
        trial.off_pct = 100 * std::abs(tested.value - reference.value) / scale;
        trial.reference_bar_pct = 100 * reference.error / scale;
        const double seen = std::max({trial.bar_pct, trial.off_pct, without_meaning_pct});
        if (trial.reference_bar_pct > known_well * seen) trial.verdict = BarVerdict::left_out;
        else
            trial.verdict =
                trial.off_pct <= std::max(trial.bar_pct, without_meaning_pct) ? BarVerdict::within : BarVerdict::beyond;
        trials.push_back(std::move(trial));
    }
    return trials;
}

double BarTally::share_within() const
{
    return n_compared() > 0 ? static_cast<double>(n_within) / static_cast<double>(n_compared()) : 0;
}

BarTally tally(const std::vector<BarTrial>& trials, const std::string& kind)
{
    BarTally result;
    std::vector<double> ratios;
    for (const BarTrial& trial : trials)
    {
        if (!kind.empty() && trial.kind != kind) continue;
        switch (trial.verdict)
        {
            case BarVerdict::within: ++result.n_within; break;
            case BarVerdict::beyond: ++result.n_beyond; break;
            case BarVerdict::left_out: ++result.n_left_out; continue;
        }
        if (trial.off_pct > without_meaning_pct) ratios.push_back(trial.bar_pct / trial.off_pct);
    }
    if (ratios.empty()) return result;
    const auto middle = ratios.begin() + static_cast<std::ptrdiff_t>(ratios.size() / 2);
    std::nth_element(ratios.begin(), middle, ratios.end());
    result.median_ratio = *middle;
    return result;
}

bool meets_goal(const BarStudy& study)
{
    const BarTally all = tally(study.trials, "");
    return all.n_compared() > 0 && all.share_within() >= goal_share && all.median_ratio < goal_ratio &&
           tally(study.exact_trials, "").n_beyond == 0;
}

}  // namespace splicewright
