// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "mesh/gmsh_mesher.h"
#include "post/check_groups.h"
#include "post/check_shapes.h"
#include "post/shear_lag.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr const char* source = "Adams & Peppiatt 1977, J. Adhesion 9 [AdamsPeppiatt1977]; derived again";

// Bar 50 mm and sleeve 70/50 mm of steel around a layer whose middle lies at 25 mm.
struct Layer
{
    double thickness = 0, shear_modulus = 0, length = 0;  // mm, MPa, mm
    [[nodiscard]] double inner() const { return 25 - thickness / 2; }
    [[nodiscard]] double outer() const { return 25 + thickness / 2; }
};

const std::vector<double> cut_shares{0.1, 0.25, 0.5, 0.75, 0.9};  // of the length

TubularLap lap_of(const Layer& layer)
{
    const double G = check_steel.G();
    return {G * pi / 2 * std::pow(layer.inner(), 4),
            G * pi / 2 * (std::pow(35, 4) - std::pow(layer.outer(), 4)),
            Millimetre{25},
            Millimetre{layer.thickness},
            Millimetre{layer.length},
            Megapascal{layer.shear_modulus},
            NewtonMillimetre{1}};
}

// Torque in the bar over the whole torque at the cuts.
std::vector<double> bar_torques(const Layer& layer)
{
    LappedTubes shape{layer.inner(), layer.thickness, 35 - layer.outer(), layer.length, 100, {}};
    for (const double share : cut_shares) shape.cuts.push_back(share * layer.length);
    MeshSize size;
    size.sections_per_wall = 1;
    const Mesh mesh = generate_mesh(outline_of(shape), size);
    std::vector<ElasticConstants> steel;
    for (const std::string& region : mesh.region)
        steel.push_back(region == "layer" ? ElasticConstants{2.6 * layer.shear_modulus, 0.3} : check_steel);
    const UnitSolution twist = unit_solution(mesh, steel, LoadKind::torsion, {});
    std::vector<double> torques;
    for (std::size_t i = 0; i < cut_shares.size(); ++i)
        torques.push_back(
            section_force(mesh, steel, twist, fmt::format("cut.{}", i), fmt::format("bar.{}", i + 1)).moment);
    return torques;
}

CheckGroup lap_group(const std::string& name, const Layer& layer, double band_pct, const std::string& reason)
{
    std::vector<AnsweredCheck<std::vector<double>>> rows;
    for (std::size_t i = 0; i < cut_shares.size(); ++i)
    {
        const double expected =
            lap_state(lap_of(layer), Millimetre{cut_shares[i] * layer.length}).value.bar_torque.value();
        rows.push_back(
            {{fmt::format("{}.x{:.2f}", name, cut_shares[i]),
              fmt::format("share of the torque still in the bar {:g} of {:g} mm into a lap, by finite elements",
                          cut_shares[i] * layer.length, layer.length),
              expected, "-", idealisation(-band_pct, band_pct, expected, reason), source, SourceKind::derived,
              Provenance::derived},
             [i](const std::vector<double>& torques) { return torques[i]; }});
    }
    return check_group<std::vector<double>>(
        name, [layer] { return bar_torques(layer); }, rows);
}

ClosedFormCheck closed(const std::string& name, const std::string& claim, double expected, const std::string& unit,
                       double computed)
{
    return {
        {name, claim, expected, unit, digits_printed(5, expected), source, SourceKind::derived, Provenance::derived},
        computed};
}

// Bar 50 mm, sleeve 70/50 mm, layer of 0.2 mm and 1200 MPa at 25 mm, 60 mm long, 1 kN m; evaluated
// outside the program; the rods' equations integrated by a boundary-value solver agree within 0.1 %.
CheckGroup lap_in_closed_form()
{
    const double G = 80769.23;
    const TubularLap lap{G * pi / 2 * std::pow(25, 4),
                         G * pi / 2 * (std::pow(35, 4) - std::pow(25, 4)),
                         Millimetre{25},
                         Millimetre{0.2},
                         Millimetre{60},
                         Megapascal{1200},
                         NewtonMillimetre{1e6}};
    const auto at = [&](double x) { return lap_state(lap, Millimetre{x}).value; };
    return closed_form_group(
        "lap.closed",
        {closed("lap.closed.entry", "shear of the layer where the torque enters", 23.8853, "MPa",
                at(0).layer_shear.value()),
         closed("lap.closed.middle", "shear in the middle", 0.720426, "MPa", at(30).layer_shear.value()),
         closed("lap.closed.exit", "shear where it leaves", 8.42640, "MPa", at(60).layer_shear.value()),
         closed("lap.closed.bar", "torque in the bar in the middle", 270997, "N·mm", at(30).bar_torque.value())});
}

}  // namespace

std::vector<CheckGroup> lap_checks()
{
    return {lap_group("lap.long", {0.5, 100, 150}, 1,
                      "torque passes over 43 mm, long against the bar's radius: rods are a fair picture"),
            lap_group("lap.short", {0.2, 1200, 60}, 15,
                      "torque passes over 8 mm, a third of the bar's radius: the bar is no rod there, it shears too"),
            lap_in_closed_form()};
}

}  // namespace splicewright
