// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/press_bore_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "post/strength_limits.h"
#include "post/worked.h"

namespace splicewright
{
namespace
{

bool presses(const Case& asked, Side side) { return asked.sleeve->slit[index(side)] == SlitState::press; }

double lame_pressure(const Case& asked, Side side) { return press_fit_of(asked, side).value.pressure.value(); }

double mean_lame_pressure(const Case& asked)
{
    double sum = 0;
    int count = 0;
    for (const Side side : both_sides)
        if (presses(asked, side)) sum += lame_pressure(asked, side), ++count;
    return sum / count;
}

// MPa, at the bore of the sleeve over one bar.
struct BoreStress
{
    double bore = 0, outer = 0;  // mm
    double pressure = 0, hoop = 0, shear = 0, along = 0, von_mises = 0;
};

BoreStress bore_stress(const Case& asked, const MeridianAnswer& answer, Side side)
{
    const double pi = std::numbers::pi;
    BoreStress at;
    at.bore = asked.bar[index(side)]->sections.front().diameter.value();
    at.outer = asked.sleeve->outer_diameter.value();
    const double outer_2 = at.outer * at.outer, bore_2 = at.bore * at.bore;
    at.pressure = answer.fit_pressure.value * lame_pressure(asked, side) / mean_lame_pressure(asked);
    at.hoop = at.pressure * (outer_2 + bore_2) / (outer_2 - bore_2);
    const double polar = pi / 32 * (outer_2 * outer_2 - bore_2 * bore_2);
    at.shear = std::abs(answer.share.torsion.value) * asked.load.peak_torque.value() * at.bore / 2 / polar;
    at.along = std::abs(answer.share.bending.value) * asked.load.peak_bending.value() * at.bore / polar +
               std::abs(answer.share.axial.value * asked.load.axial.value()) * 4 / (pi * (outer_2 - bore_2));
    // Compression along is the worse side of the turn beside tension around.
    const double s = -at.along, h = at.hoop, n = -at.pressure;
    at.von_mises = std::sqrt(((s - h) * (s - h) + (h - n) * (h - n) + (n - s) * (n - s)) / 2 + 3 * at.shear * at.shear);
    return at;
}

// A share below a thousandth adds no stress that is seen.
double error_pct(const Case& asked, const MeridianAnswer& answer)
{
    const auto of = [](const Measured& value)
    { return std::abs(value.value) > 1e-3 ? 100 * value.error / std::abs(value.value) : 0; };
    double worst = of(answer.fit_pressure);
    if (asked.load.peak_torque.value() != 0) worst = std::max(worst, of(answer.share.torsion));
    if (asked.load.peak_bending.value() != 0) worst = std::max(worst, of(answer.share.bending));
    if (asked.load.axial.value() != 0) worst = std::max(worst, of(answer.share.axial));
    return worst;
}

std::vector<WorkedStep> bore_steps(const Case& asked, const MeridianAnswer& answer, Side side, const BoreStress& at)
{
    std::vector<WorkedStep> steps{
        read_step(fmt::format("mean pressure of the fit {}", by_finite_elements(error_pct(asked, answer))),
                  answer.fit_pressure.value, "MPa"),
        read_step(fmt::format("pressure over the {} bar by thick cylinders, over the mean of the pressed sides",
                              name_of(side)),
                  at.pressure / answer.fit_pressure.value, ""),
        worked_step("pressure there", "p = k p_m",
                    put_in("{}*{}", {at.pressure / answer.fit_pressure.value, answer.fit_pressure.value}), at.pressure,
                    "MPa"),
        worked_step("hoop stress at the bore", "h = p (D^2 + d^2)/(D^2 - d^2)",
                    put_in("{}*({}^2+{}^2)/({}^2-{}^2)", {at.pressure, at.outer, at.bore, at.outer, at.bore}), at.hoop,
                    "MPa"),
        read_step("sleeve's part of the torque, from the finite elements", std::abs(answer.share.torsion.value), ""),
        worked_step(
            "shear at the bore by it", "t = 16 k T d/(pi (D^4 - d^4))",
            put_in("16*{}*{}*{}/(pi*({}^4-{}^4))",
                   {std::abs(answer.share.torsion.value), asked.load.peak_torque.value(), at.bore, at.outer, at.bore}),
            at.shear, "MPa"),
        read_step("stress along by the sleeve's part of bending and axial force, on the side that is compressed",
                  at.along, "MPa"),
        worked_step("von Mises stress", "sigma_v = sqrt(((s + h)^2 + (h + p)^2 + (s - p)^2)/2 + 3 t^2)",
                    put_in("sqrt((({}+{})^2+({}+{})^2+({}-{})^2)/2+3*{}^2)",
                           {at.along, at.hoop, at.hoop, at.pressure, at.along, at.pressure, at.shear}),
                    at.von_mises, "MPa")};
    return steps;
}

}  // namespace

Sourced<PressFitStress> press_fit_of(const Case& asked, Side side)
{
    EXPECTS(asked.sleeve && presses(asked, side));
    const Bar& bar = *asked.bar[index(side)];
    return press_fit_stress({bar.sections.front().diameter, bar.bore, asked.sleeve->outer_diameter,
                             -asked.sleeve->clearance[index(side)], bar.material.elastic_modulus,
                             asked.sleeve->material.elastic_modulus, bar.material.poisson_ratio,
                             asked.sleeve->material.poisson_ratio});
}

std::optional<CheckRow> press_bore_check(const Case& asked, const MeridianAnswer& answer)
{
    if (!asked.sleeve || answer.fit_pressure.value <= 0) return std::nullopt;
    std::optional<Side> side;
    BoreStress worst;
    for (const Side of : both_sides)
    {
        if (!presses(asked, of)) continue;
        const BoreStress at = bore_stress(asked, answer, of);
        if (!side || at.von_mises > worst.von_mises) side = of, worst = at;
    }
    if (!side) return std::nullopt;
    const Limit limit = yield_of(asked.sleeve->material);
    CheckRow row;
    row.id = "strength/sleeve-mid/press-bore";
    row.site = "sleeve-mid";
    row.check = "yield of the sleeve at its pressed bore";
    row.unit = "MPa";
    row.demand = worst.von_mises;
    row.capacity = limit.stress.value();
    row.error_pct = error_pct(asked, answer);
    row.utilisation = row.demand * (1 + row.error_pct / 100) / row.capacity;
    row.method = "thick cylinder under the pressure by finite elements, with the sleeve's part of the peak load";
    row.source = fmt::format("{}; von Mises [Mises1913]; limit: {}", press_fit_of(asked, *side).source, limit.whose);
    row.provenance = weaker(Provenance::derived, limit.provenance);
    row.note =
        "pressure rises towards the ends of the fit, which is not counted; a press fit may be meant to yield at "
        "its bore, then less pressure is left than is counted elsewhere";
    row.worked = bore_steps(asked, answer, *side, worst);
    row.worked.push_back(limit_step(limit));
    row.worked.push_back(utilisation_step(row.demand, row.capacity, row.error_pct, row.utilisation));
    return row;
}

}  // namespace splicewright
