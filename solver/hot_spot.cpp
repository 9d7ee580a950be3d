// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/hot_spot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "cases/bar_shape.h"

namespace splicewright
{
namespace
{

constexpr double at_toe = 0.6;  // thicknesses: a surface that begins farther from the weld is another one

// A smooth surface that begins at a toe.
struct ToeSurface
{
    std::string site;
    double toe_z = 0;  // end of the weld, mm
    double thickness = 0;
    std::string curve, region;
};

std::vector<ToeSurface> toe_surfaces(const Case& asked, Side side)
{
    const Bar& bar = *asked.bar[index(side)];
    const Sleeve& sleeve = *asked.sleeve;
    const double sign = side == Side::right ? 1 : -1, reach = sleeve_reach(sleeve, side);
    const double diameter = bar.sections.front().diameter.value();
    const std::string s = name_of(side);
    std::vector<ToeSurface> surfaces;
    surfaces.push_back({"bar-toe." + s, sign * (reach + sleeve.weld.leg_on_bar.value()),
                        (diameter - bar.bore.value()) / 2, "bar." + s, "bar." + s});
    const double wall = (sleeve.end_diameter.value() - diameter) / 2;
    if (sleeve.weld.leg_on_sleeve.value() >= wall - 1e-6)
        surfaces.push_back({"sleeve-toe." + s, sign * reach, wall, "sleeve-mid", "sleeve." + s});
    return surfaces;
}

// Stress on a chain at a distance from the end that is nearer to the toe, linear between its places.
class ChainReader
{
public:
    ChainReader(const Level& level, const SurfaceChain& chain, const Bracket& bracket, double toe_z)
        : places_(surface_places(level.mesh, chain)),
          torsion_(free_surface_stress(level.mesh, chain, places_, bracket.torsion)),
          bending_(free_surface_stress(level.mesh, chain, places_, bracket.bending)),
          axial_(free_surface_stress(level.mesh, chain, places_, bracket.axial)),
          from_end_(std::abs(places_.z.back() - toe_z) < std::abs(places_.z.front() - toe_z))
    {
    }

    [[nodiscard]] double length() const { return places_.s.back(); }
    [[nodiscard]] double first_z() const { return from_end_ ? places_.z.back() : places_.z.front(); }

    template <std::size_t n>
    [[nodiscard]] ExtrapolatedStress extrapolated(const std::array<ReadingPoint, n>& readings, double thickness) const
    {
        ExtrapolatedStress sum;
        for (const ReadingPoint& reading : readings)
        {
            const double s = reading.distance * thickness;
            sum.torsion_read.push_back({reading.distance, reading.weight, at(torsion_.shear, s)});
            sum.bending_read.push_back({reading.distance, reading.weight, at(bending_.along, s)});
            sum.torsion_shear.value += reading.weight * sum.torsion_read.back().value;
            sum.bending_normal.value += reading.weight * sum.bending_read.back().value;
            sum.axial_normal.value += reading.weight * at(axial_.along, s);
        }
        return sum;
    }

private:
    [[nodiscard]] double at(const Eigen::VectorXd& values, double distance) const
    {
        const double s = from_end_ ? length() - distance : distance;
        const auto after =
            std::clamp<std::ptrdiff_t>(std::lower_bound(places_.s.begin(), places_.s.end(), s) - places_.s.begin(), 1,
                                       static_cast<std::ptrdiff_t>(places_.s.size()) - 1);
        const auto i = static_cast<std::size_t>(after);
        const double share = (s - places_.s[i - 1]) / (places_.s[i] - places_.s[i - 1]);
        return (1 - share) * values(after - 1) + share * values(after);
    }

    SurfacePlaces places_;
    SurfaceStress torsion_, bending_, axial_;
    bool from_end_;
};

void keep_larger(ExtrapolatedStress& kept, const ExtrapolatedStress& other)
{
    const auto is_larger = [&](Measured ExtrapolatedStress::*part)
    { return std::abs((other.*part).value) > std::abs((kept.*part).value); };
    if (is_larger(&ExtrapolatedStress::torsion_shear))
        kept.torsion_shear = other.torsion_shear, kept.torsion_read = other.torsion_read;
    if (is_larger(&ExtrapolatedStress::bending_normal))
        kept.bending_normal = other.bending_normal, kept.bending_read = other.bending_read;
    if (is_larger(&ExtrapolatedStress::axial_normal)) kept.axial_normal = other.axial_normal;
}

std::optional<HotSpot> hot_spot(const Level& level, const ToeSurface& surface)
{
    std::vector<MeshEdge> edges;
    const auto found = level.mesh.curve.find(surface.curve);
    if (found == level.mesh.curve.end()) return std::nullopt;
    for (const MeshEdge& edge : found->second)
        if (level.mesh
                .region[static_cast<std::size_t>(level.mesh.region_of[static_cast<std::size_t>(edge.triangle)])] ==
            surface.region)
            edges.push_back(edge);
    for (const SurfaceChain& chain : surface_chains(level.mesh, edges, level.steel))
    {
        const double last_reading = quadratic_readings.back().distance * surface.thickness;
        HotSpot spot{surface.site, surface.thickness, {}, {}};
        bool here = true;
        for (const Bracket& bracket : level.brackets)
        {
            const ChainReader reader(level, chain, bracket, surface.toe_z);
            here = here && std::abs(reader.first_z() - surface.toe_z) < at_toe * surface.thickness &&
                   reader.length() >= last_reading;
            if (!here) break;
            keep_larger(spot.linear, reader.extrapolated(linear_readings, surface.thickness));
            keep_larger(spot.quadratic, reader.extrapolated(quadratic_readings, surface.thickness));
        }
        if (here) return spot;
    }
    return std::nullopt;
}

}  // namespace

std::vector<HotSpot> hot_spots(const Case& asked, const Level& level)
{
    std::vector<HotSpot> spots;
    if (!asked.sleeve) return spots;
    for (const Side side : both_sides)
    {
        if (!level.weld[index(side)]) continue;
        for (const ToeSurface& surface : toe_surfaces(asked, side))
            if (const std::optional<HotSpot> spot = hot_spot(level, surface)) spots.push_back(*spot);
    }
    return spots;
}

}  // namespace splicewright
