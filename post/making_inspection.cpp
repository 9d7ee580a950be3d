// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>

#include "cases/problem.h"
#include "post/making.h"
#include "post/weld_line.h"

namespace splicewright
{
namespace
{

constexpr const char* iso_5817 = "ISO 5817:2014 [ISO5817] table 1";
constexpr double run_out_mm = 0.2;        // total indicator reading; judgement
constexpr double blend_allowance = 0.05;  // mm; what counts as flush. Judgement
constexpr double austenitic_chromium = 10;

bool is_b(const Case& asked) { return asked.making->quality == QualityLevel::B; }

double wall(const Case& asked)
{
    double depth = INFINITY;
    for (const auto& bar : asked.bar) depth = std::min(depth, (bar->sections.front().diameter - bar->bore).value() / 2);
    return asked.joint->penetration ? std::min(depth, asked.joint->penetration->value()) : depth;
}

// Imperfections 5011 and 5012: 0.05 t (B) or 0.1 t (C), at most 0.5 mm.
double undercut(const Case& asked, double thickness) { return std::min(0.5, (is_b(asked) ? 0.05 : 0.1) * thickness); }

std::string crack_method(const Case& asked)
{
    double chromium = asked.joint->filler.composition.Cr;
    if (asked.sleeve) chromium = std::max(chromium, asked.sleeve->weld.filler.composition.Cr);
    return chromium > austenitic_chromium ? "penetrant (the weld metal is not magnetic)" : "magnetic particles";
}

// Hours from the end of welding to the search for cracks.
struct Wait
{
    int hours = 48;
    std::string source;
    Provenance provenance = Provenance::judgement;
};

// Hours by the size of the weld, the heat input and the grade; 0: until it is cool. Source: [EN1090-2] table 23, read
// on a copied page.
int hold_hours(double size_mm, double heat_input_kj_per_mm, double yield_MPa)
{
    constexpr double hot_kj_per_mm = 3, weak_grade_MPa = 420;
    const bool is_hot = heat_input_kj_per_mm > hot_kj_per_mm, is_strong = yield_MPa > weak_grade_MPa;
    if (size_mm <= 6) return is_strong ? 24 : 0;
    if (size_mm <= 12) return is_hot ? (is_strong ? 40 : 16) : (is_strong ? 24 : 8);
    return is_hot ? (is_strong ? 48 : 40) : (is_strong ? 40 : 16);
}

// `size_mm`: throat of a fillet, thickness of a weld fused through, depth of one that is not.
Wait wait_of(const Case& asked, const HeatPlan& heat, double size_mm)
{
    if (!heat.is_standard)
        return {48, "longest of EN 1090-2:2008 table 23 [EN1090-2], for a steel outside its scope",
                Provenance::judgement};
    constexpr int usual_hours = 16;  // Source: [EN1011-2] clause 18, read in a secondary source
    double yield = asked.sleeve ? asked.sleeve->material.yield.value() : 0;
    for (const auto& bar : asked.bar) yield = std::max(yield, bar->material.yield.value());
    return {std::max(usual_hours, hold_hours(size_mm, heat.welding.heat_input_kj_per_mm, yield)),
            "the longer of EN 1011-2:2001 clause 18 [EN1011-2] and EN 1090-2:2008 table 23 [EN1090-2]",
            Provenance::secondary};
}

double fillet_throat(const Case& asked)
{
    const SleeveWeld& weld = asked.sleeve->weld;
    return throat({weld.leg_on_bar, weld.leg_on_sleeve, asked.bar[0]->sections.front().diameter}).value();
}

std::vector<InspectionStep> before_welding(const Case& asked)
{
    const double gap = asked.making->root_gap.value();
    // Imperfection 507 of circumferential welds: 0.5 t, at most 2 mm (B) or 3 mm (C).
    const double offset = std::min(is_b(asked) ? 2.0 : 3.0, 0.5 * wall(asked));
    return {{"steel", "certificate, spark or hardness", "before cutting",
             "each bar is the steel that the case names; as received hardness written down", "practice",
             Provenance::common_practice},
            {"fit-up", "ruler, feeler, dial gauge", "before tacking",
             fmt::format("gap {:.1f} ± 0.5 mm; offset at most {:.2g} mm for the weld, and for balance as low as the "
                         "fixture gives",
                         gap, offset),
             iso_5817, Provenance::from_memory},
            {"tacks", "eye, dial gauge", "before the first pass",
             fmt::format("no crack, preheat held; run-out at the joint at most {:.1f} mm", run_out_mm), "judgement",
             Provenance::judgement}};
}

std::vector<InspectionStep> of_the_butt(const Case& asked, const Wait& wait)
{
    const std::string later = fmt::format("{} h after welding, ground flush, before the sleeve hides it", wait.hours);
    const std::string depth = asked.joint->penetration
                                  ? fmt::format("fused {:.4g} mm deep all round", asked.joint->penetration->value())
                                  : "fused over the whole section";
    return {{"butt weld", "eye", "after cooling",
             fmt::format("no crack, pore or lack of fusion at the surface; undercut at most {:.2g} mm, gone after "
                         "grinding (flush within {:.2f} mm)",
                         undercut(asked, wall(asked)), blend_allowance),
             iso_5817, Provenance::secondary},
            {"butt weld", crack_method(asked), later, "no crack at all",
             fmt::format("{}; wait: {}", iso_5817, wait.source), wait.provenance},
            {"butt weld", "ultrasonic, from the bar", later,
             fmt::format("{}; no plane reflector{}", depth,
                         asked.joint->half_lap.value() > 0 ? "; a half lap can hide its faces" : ""),
             "judgement", Provenance::judgement},
            {"shaft", "dial gauge, between the ends", "before the sleeve goes on",
             fmt::format("run-out at most {:.1f} mm; write down offset and tilt for [joint]", run_out_mm), "judgement",
             Provenance::judgement}};
}

std::string fillet_limits(const Case& asked)
{
    const Sleeve& sleeve = *asked.sleeve;
    const FilletWeld weld{sleeve.weld.leg_on_bar, sleeve.weld.leg_on_sleeve, asked.bar[0]->sections.front().diameter};
    const double a = throat(weld).value();
    const double b = 2 * a;  // width of a fillet of equal legs
    const bool level_b = is_b(asked);
    return fmt::format(
        "throat not below {:.3g} mm{}; legs within {:.2g} mm of each other; convexity at most {:.2g} mm; "
        "undercut at most {:.2g} mm; toe angle at least {} deg",
        a, level_b ? "" : fmt::format(" ({:.2g} mm less over a short length)", std::min(1.0, 0.3 + 0.1 * a)),
        (level_b ? 1.5 : 2.0) + 0.15 * a, level_b ? std::min(3.0, 1 + 0.1 * b) : std::min(4.0, 1 + 0.15 * b),
        undercut(asked, (sleeve.end_diameter - asked.bar[0]->sections.front().diameter).value() / 2),
        level_b ? 110 : 100);
}

// Imperfection 617: 0.5 + 0.1 a, at most 2 mm (B); 0.5 + 0.2 a, at most 3 mm (C).
double fillet_gap(const Case& asked, double a)
{
    return is_b(asked) ? std::min(2.0, 0.5 + 0.1 * a) : std::min(3.0, 0.5 + 0.2 * a);
}

std::vector<InspectionStep> of_the_sleeve(const Case& asked, const Wait& wait)
{
    const double a = fillet_throat(asked);
    return {
        {"sleeve fit", "micrometer, feeler", "before tacking",
         fmt::format("bore within its limits; gap at the ends as bored, far inside the {:.2g} mm of the level",
                     fillet_gap(asked, a)),
         iso_5817, Provenance::from_memory},
        {"sleeve welds", "eye, fillet gauge", "after cooling", fillet_limits(asked), iso_5817, Provenance::from_memory},
        {"sleeve welds", crack_method(asked), fmt::format("{} h after welding", wait.hours), "no crack at all",
         fmt::format("{}; wait: {}", iso_5817, wait.source), wait.provenance},
        {"shaft", "dial gauge, between the ends", "last",
         fmt::format("run-out at most {:.1f} mm on bars and sleeve; hardness beside the welds written down",
                     run_out_mm),
         "judgement", Provenance::judgement}};
}

}  // namespace

std::vector<InspectionStep> inspection_list(const Case& asked, const HeatPlan& heat)
{
    EXPECTS(asked.joint && asked.making && asked.bar[0] && asked.bar[1]);
    double thickness = 0;
    for (const auto& bar : asked.bar)
        thickness = std::max(thickness, bar->bore.value() > 0 ? (bar->sections.front().diameter - bar->bore).value() / 2
                                                              : bar->sections.front().diameter.value());
    const Wait wait = wait_of(asked, heat, asked.joint->penetration ? asked.joint->penetration->value() : thickness);
    std::vector<InspectionStep> steps = before_welding(asked);
    const auto add = [&](std::vector<InspectionStep> more) { steps.insert(steps.end(), more.begin(), more.end()); };
    add(of_the_butt(asked, wait));
    if (asked.sleeve) add(of_the_sleeve(asked, wait_of(asked, heat, fillet_throat(asked))));
    return steps;
}

}  // namespace splicewright
