// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/rainflow.h"
#include "post/check_groups.h"
#include "post/damage.h"
#include "post/machine_design.h"
#include "post/sn_curve.h"

namespace splicewright
{
namespace
{

constexpr const char* shigley_problem = "Shigley, 8th ed. 2008, problem 7-1, printed solution [Shigley2008]";
constexpr const char* shigley_example = "Shigley, 9th ed. 2011, example 7-1 [Shigley2011]";
constexpr const char* mean_stress =
    "Shigley, 9th ed. 2011, sec. 6-12 [Shigley2011]; Dowling, 4th ed. 2013, ch. 9 [Dowling2013]";

ClosedFormCheck row(std::string name, std::string claim, double expected, std::string unit, CheckTolerance allowed,
                    const char* source, SourceKind kind, Provenance provenance, double computed)
{
    return {
        {std::move(name), std::move(claim), expected, std::move(unit), std::move(allowed), source, kind, provenance},
        computed};
}

// Bending and torque, alternating and mean, with their notch factors. Coherent in any units: inch and lbf give psi.
struct ShaftLoad
{
    double bending_alternating = 0, bending_mean = 0, torque_alternating = 0, torque_mean = 0;
};

EquivalentStress shaft_stress(double diameter, const ShaftLoad& load)
{
    const double W = std::numbers::pi * diameter * diameter * diameter;
    return equivalent_stress({Megapascal{32 * load.bending_alternating / W}, Megapascal{32 * load.bending_mean / W},
                              Megapascal{16 * load.torque_alternating / W}, Megapascal{16 * load.torque_mean / W}});
}

// Stress goes with the cube of the diameter: the diameter for a safety from the safety at 1 in.
double diameter_for(double safety_asked, double safety_at_one) { return std::cbrt(safety_asked / safety_at_one); }

// Ma 600, Mm 500, Ta 400, Tm 300 lbf in, Kf 2.2, Kfs 1.8, Se 30, S_ut 100, Sy 80 kpsi, n = 2.
CheckGroup shaft_diameters()
{
    const EquivalentStress stress = shaft_stress(1, {2.2 * 600, 2.2 * 500, 1.8 * 400, 1.8 * 300});
    const Megapascal Se{30000}, S_ut{100000}, Sy{80000};
    const auto printed = [](std::string name, std::string claim, double expected, double computed)
    {
        return row(std::move(name), std::move(claim), expected, "in", decimals_printed(3), shigley_problem,
                   SourceKind::worked_example, Provenance::secondary, computed);
    };
    return closed_form_group(
        "shigley.7-1.problem",
        {printed("shigley.7-1.problem.goodman", "diameter of a shaft under bending and torque, safety 2, Goodman",
                 1.073, diameter_for(2, goodman_safety(stress, Se, S_ut).value)),
         printed("shigley.7-1.problem.soderberg", "the same with the line through the yield (Soderberg)", 1.090,
                 diameter_for(2, goodman_safety(stress, Se, Sy).value)),
         printed("shigley.7-1.problem.gerber", "the same by Gerber", 1.016,
                 diameter_for(2, gerber_safety(stress, Se, S_ut).value))});
}

// d 1.1 in, Ma 1260, Tm 1100 lbf in, Kf 1.58, Kfs 1.37, Se 29.3, S_ut 105, Sy 82 kpsi.
CheckGroup shaft_safety()
{
    const EquivalentStress stress = shaft_stress(1.1, {1.58 * 1260, 0, 0, 1.37 * 1100});
    const Megapascal Se{29300}, S_ut{105000}, Sy{82000};
    const auto printed =
        [](std::string name, std::string claim, double expected, CheckTolerance allowed, double computed)
    {
        return row(std::move(name), std::move(claim), expected, "-", std::move(allowed), shigley_example,
                   SourceKind::worked_example, Provenance::from_memory, computed);
    };
    return closed_form_group(
        "shigley.7-1.example",
        {printed("shigley.7-1.example.goodman", "safety of a shoulder in reversed bending and steady torque, Goodman",
                 1.63, decimals_printed(2), goodman_safety(stress, Se, S_ut).value),
         printed("shigley.7-1.example.soderberg", "the same by Soderberg", 1.56, decimals_printed(2),
                 goodman_safety(stress, Se, Sy).value),
         printed("shigley.7-1.example.gerber", "the same by Gerber", 1.87,
                 idealisation(-0.8, 0.8, 1.87, "the example rounds its two terms on the way, 0.8 % covers it"),
                 gerber_safety(stress, Se, S_ut).value)});
}

// Amplitude 150, mean 100, endurance 250, tensile 600, yield 400, true fracture strength 945 MPa.
CheckGroup mean_stress_rules()
{
    const EquivalentStress cycle{Megapascal{150}, Megapascal{100}};
    const Megapascal Se{250};
    const auto derived = [](std::string name, std::string claim, double expected, std::string unit, double computed)
    {
        return row(std::move(name), std::move(claim), expected, std::move(unit), digits_printed(6, expected),
                   mean_stress, SourceKind::exact_theory, Provenance::derived, computed);
    };
    return closed_form_group(
        "mean-stress", {derived("mean-stress.goodman", "safety of 150 MPa about 100 MPa, Goodman", 1.30435, "-",
                                goodman_safety(cycle, Se, Megapascal{600}).value),
                        derived("mean-stress.soderberg", "the same, line through the yield (Soderberg)", 1.17647, "-",
                                goodman_safety(cycle, Se, Megapascal{400}).value),
                        derived("mean-stress.morrow", "the same, line through the true fracture strength (Morrow)",
                                1.41679, "-", goodman_safety(cycle, Se, Megapascal{945}).value),
                        derived("mean-stress.gerber", "the same, Gerber's parabola", 1.55476, "-",
                                gerber_safety(cycle, Se, Megapascal{600}).value),
                        derived("mean-stress.reversed", "fully reversed amplitude of the same damage, Goodman", 180,
                                "MPa", goodman_reversed(cycle, Megapascal{600})->value())});
}

CheckGroup marin()
{
    const auto printed = [](std::string name, std::string claim, double expected, CheckTolerance allowed,
                            const char* source, double computed)
    {
        return row(std::move(name), std::move(claim), expected, "-", std::move(allowed), source,
                   SourceKind::worked_example, Provenance::from_memory, computed);
    };
    const EnduranceLimit machined = *endurance_limit({Megapascal{520}, Millimetre{32}}).value;
    const EnduranceLimit cold_drawn = *endurance_limit({Megapascal{690}, Millimetre{32}}).value;
    const double q = *notch_sensitivity(Megapascal{690}, Millimetre{3}, NotchLoad::bending).value.q;
    const ShaftSnLine hot_rolled{Megapascal{90}, Megapascal{45}, 0.86}, shaft{Megapascal{690}, Megapascal{236}, 0.844};
    return closed_form_group(
        "shigley.6",
        {printed("shigley.6-3", "surface factor of a machined steel of 520 MPa", 0.860, decimals_printed(3),
                 "Shigley, 9th ed. 2011, example 6-3 [Shigley2011]", machined.surface),
         printed(
             "shigley.6-4", "size factor of 32 mm in rotating bending", 0.858,
             idealisation(-0.3, 0.3, 0.858, "the book writes 7.62^0.107 as 1.24 in one form of its equation: 0.2 %"),
             "Shigley, 9th ed. 2011, example 6-4 [Shigley2011]", cold_drawn.size),
         printed("shigley.6-9.surface", "surface factor of a cold-drawn steel of 690 MPa", 0.798, decimals_printed(3),
                 "Shigley, 9th ed. 2011, example 6-9 [Shigley2011]", cold_drawn.surface),
         printed("shigley.6-6", "fatigue notch factor, 690 MPa, 3 mm, static factor 1.65", 1.55, decimals_printed(2),
                 "Shigley, 9th ed. 2011, example 6-6 [Shigley2011]", fatigue_notch_factor(1.65, q)),
         printed("shigley.6-2", "life at 55 kpsi, strength 90 and endurance 45 kpsi, share 0.86", 77500,
                 idealisation(-0.7, 0.7, 77500, "the slope is rounded to three digits before it is used"),
                 "Shigley, 9th ed. 2011, example 6-2 [Shigley2011]", shaft_cycles(hot_rolled, Megapascal{55})),
         printed("shigley.6-9.life", "life of a rotating shaft at 335.1 MPa, endurance 236 MPa, share 0.844", 68000,
                 digits_printed(2, 68000), "Shigley, 9th ed. 2011, example 6-9 [Shigley2011]",
                 shaft_cycles(shaft, Megapascal{335.1})),
         printed("shigley.6-18", "share of 690 MPa that lasts 1000 cycles", 0.844,
                 chart_band(-1, 1, 0.844, "a fit of a later edition against a reading off a curve"),
                 "Shigley, 9th ed. 2011, fig. 6-18, as read in example 6-9 [Shigley2011]",
                 *thousand_cycle_share(Megapascal{690}).value)});
}

CheckGroup weld_curves()
{
    const SnCurve normal100 = normal_curve(Megapascal{100}, 1, Provenance::from_memory),
                  normal80 = normal_curve(Megapascal{80}, 1, Provenance::from_memory),
                  shear100 = shear_curve(Megapascal{100}, 1, Provenance::from_memory),
                  shear80 = shear_curve(Megapascal{80}, 1, Provenance::from_memory);
    const auto printed = [](std::string name, std::string claim, double expected, std::string unit,
                            CheckTolerance allowed, const char* source, double computed)
    {
        return row(std::move(name), std::move(claim), expected, std::move(unit), std::move(allowed), source,
                   SourceKind::published_table, Provenance::from_memory, computed);
    };
    const char* iiw = "IIW-2259-15 (Hobbacher 2016), table of S-N curves [Hobbacher2016]";
    const char* eurocode = "EN 1993-1-9:2005, 7.1 [Eurocode3Fatigue2005]";
    const auto range = [](const SnCurve& curve, double n)
    { return allowable_range(curve, n, Amplitude::constant).value(); };
    return closed_form_group(
        "weld-curve",
        {printed("weld-curve.iiw.100", "range of FAT 100 at its knee, 1e7 cycles", 58.5, "MPa", decimals_printed(1),
                 iiw, knee_range(normal100).value()),
         printed("weld-curve.iiw.80", "range of FAT 80 at its knee", 46.8, "MPa", decimals_printed(1), iiw,
                 knee_range(normal80).value()),
         printed("weld-curve.iiw.shear100", "range of FAT 100 in shear at 1e8 cycles", 45.7, "MPa", decimals_printed(1),
                 iiw, knee_range(shear100).value()),
         printed("weld-curve.iiw.shear80", "range of FAT 80 in shear at 1e8 cycles", 36.6, "MPa", decimals_printed(1),
                 iiw, knee_range(shear80).value()),
         printed("weld-curve.ec3.normal", "constant-amplitude limit at 5e6 cycles over the class, slope 3", 0.737, "-",
                 decimals_printed(3), eurocode, range(normal100, 5e6) / 100),
         printed("weld-curve.ec3.shear", "cut-off limit at 1e8 cycles over the class in shear, slope 5", 0.457, "-",
                 decimals_printed(3), eurocode, range(shear100, 1e8) / 100)});
}

// Three blocks that use up 1/5, 1/4 and 1/5 of their lives.
CheckGroup miner()
{
    const SnCurve curve = normal_curve(Megapascal{63}, 1, Provenance::from_memory);
    const auto block = [&](double life, double count) {
        return StressCycles{allowable_range(curve, life, Amplitude::constant), count};
    };
    const Spectrum spectrum{block(5e4, 1e4), block(2e5, 5e4), block(1e6, 2e5)};
    return closed_form_group(
        "miner", {row("miner.blocks", "damage of 1e4 of 5e4, 5e4 of 2e5 and 2e5 of 1e6 cycles", 0.65, "-",
                      round_off(0.65), "Miner 1945 [Miner1945]", SourceKind::exact_theory, Provenance::theory,
                      miner_sum(spectrum, curve, Amplitude::constant))});
}

// The standard's own example: peaks -2, 1, -3, 5, -1, 3, -4, 4, -2.
CheckGroup counting()
{
    const std::vector<RainflowCycle> cycles = rainflow({-2, 1, -3, 5, -1, 3, -4, 4, -2});
    const std::vector<RainflowCycle> printed{{3, -0.5, 0.5}, {4, -1, 0.5}, {4, 1, 1},  {8, 1, 0.5},
                                             {9, 0.5, 0.5},  {8, 0, 0.5},  {6, 1, 0.5}};
    const char* source = "ASTM E1049-85, 5.4.4 and fig. 6 [ASTM-E1049]";
    const auto exact = [&](std::string name, std::string claim, double expected, std::string unit, double computed)
    {
        return row(std::move(name), std::move(claim), expected, std::move(unit),
                   negligible_against(1, 1e-12, "counting is exact"), source, SourceKind::published_table,
                   Provenance::secondary, computed);
    };
    const auto count = [&](double range)
    {
        double sum = 0;
        for (const RainflowCycle& cycle : cycles)
            if (cycle.range == range) sum += cycle.count;
        return sum;
    };
    double in_table = 0;
    for (const RainflowCycle& cycle : cycles)
        in_table += std::count(printed.begin(), printed.end(), cycle) == 1 ? 1 : 0;
    std::vector<ClosedFormCheck> rows;
    for (const auto& [range, expected] :
         {std::pair{3.0, 0.5}, std::pair{4.0, 1.5}, std::pair{6.0, 0.5}, std::pair{8.0, 1.0}, std::pair{9.0, 0.5}})
        rows.push_back(exact(fmt::format("rainflow.range{:g}", range), fmt::format("cycles of range {:g}", range),
                             expected, "cycles", count(range)));
    rows.push_back(exact("rainflow.table", "lines of the table of seven found with their means", 7, "lines",
                         cycles.size() == printed.size() ? in_table : -1));
    return closed_form_group("rainflow", rows);
}

}  // namespace

std::vector<CheckGroup> fatigue_checks_of_books()
{
    return {shaft_diameters(), shaft_safety(), mean_stress_rules(), marin(), weld_curves(), miner(), counting()};
}

}  // namespace splicewright
