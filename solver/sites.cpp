// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/sites.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "solver/kept_places.h"

namespace splicewright
{
namespace
{

// A whole turn, since the shear of bending adds to that of torque on one half of it only. Bending alone peaks in its
// plane or across it, which 24 angles hold. Beside other loads the square of a stress falls short of its peak by at
// most (1 - cos 3 deg)/2, 0.07 %, of its swing.
constexpr int angles_of_bending = 24, angles_beside_others = 120;

std::vector<MeshEdge> edges_on(const Mesh& mesh, const std::string& curve, const std::string& region_prefix)
{
    std::vector<MeshEdge> edges;
    const auto found = mesh.curve.find(curve);
    if (found == mesh.curve.end()) return edges;
    for (const MeshEdge& edge : found->second)
    {
        const int region = mesh.region_of[static_cast<std::size_t>(edge.triangle)];
        if (mesh.region[static_cast<std::size_t>(region)].starts_with(region_prefix)) edges.push_back(edge);
    }
    return edges;
}

}  // namespace

std::vector<SitePath> site_paths(const Mesh& mesh, const std::vector<ElasticConstants>& steel,
                                 const std::vector<std::string>& held)
{
    std::vector<SitePath> paths;
    const std::vector<MeshEdge> free = free_edges(mesh, held);
    const auto add = [&](const std::string& id, const std::vector<std::string>& curves, const std::string& region,
                         double free_of_ends, bool lies_in_slit)
    {
        std::vector<MeshEdge> edges;
        for (const std::string& curve : curves)
        {
            const std::vector<MeshEdge> more = edges_on(mesh, curve, region);
            edges.insert(edges.end(), more.begin(), more.end());
        }
        if (edges.empty()) return;
        std::vector<SurfaceChain> chains = surface_chains(mesh, edges, steel);
        carry_on(chains, mesh, free, steel);
        paths.push_back({id, std::move(chains), free_of_ends, lies_in_slit});
    };
    const bool has_sleeve = mesh.curve.contains("sleeve-mid");
    for (const Side side : both_sides)
    {
        const std::string s = name_of(side);
        for (const char* notch : {"bar-toe.", "root.", "sleeve-toe."}) add(notch + s, {notch + s}, "", 0, false);
    }
    if (mesh.curve.contains("butt"))
        add("butt-surface", {"butt-surface.left", "butt-surface.right"}, "bar", 0, has_sleeve);
    add("land-edge", {"land-edge"}, "", 0, false);
    add("sleeve-mid", {"sleeve-mid"}, "", 0, false);
    for (const Side side : both_sides)
        add(std::string("bar.") + name_of(side), {std::string("bar.") + name_of(side)}, "", undisturbed_diameters,
            false);
    for (const auto& [curve, edges] : mesh.curve)
        if (curve.starts_with("shoulder.") || curve.starts_with("groove.")) add(curve, {curve}, "", 0, false);
    return paths;
}

namespace
{

// With the parts of bending towards angle 0 and towards a quarter turn.
PointStress solid_point_stress(const SiteStress& site, Eigen::Index place, const CombinedLoad& load, double towards,
                               double across)
{
    const auto sum = [&](Eigen::VectorXd SurfaceStress::*part)
    {
        double value = load.torque * (site.torsion.*part)(place) + towards * (site.bending.*part)(place) +
                       across * (site.bending_across.*part)(place) + load.axial * (site.axial.*part)(place);
        if ((site.press.*part).size() > 0) value += load.press * (site.press.*part)(place);
        return value;
    };
    return {sum(&SurfaceStress::along),  sum(&SurfaceStress::hoop),         sum(&SurfaceStress::shear),
            sum(&SurfaceStress::across), sum(&SurfaceStress::across_along), sum(&SurfaceStress::across_hoop)};
}

}  // namespace

PointStress point_stress(const SiteStress& site, Eigen::Index place, const CombinedLoad& load, double theta_rad)
{
    const double c = load.bending * std::cos(theta_rad), s = load.bending * std::sin(theta_rad);
    if (site.bending_across.along.size() > 0) return solid_point_stress(site, place, load, c, s);
    const auto sum = [&](Eigen::VectorXd SurfaceStress::*part, double bending)
    {
        double value = load.torque * (site.torsion.*part)(place) + bending * (site.bending.*part)(place) +
                       load.axial * (site.axial.*part)(place);
        if ((site.press.*part).size() > 0) value += load.press * (site.press.*part)(place);
        return value;
    };
    return {sum(&SurfaceStress::along, c),  sum(&SurfaceStress::hoop, c),         sum(&SurfaceStress::shear, s),
            sum(&SurfaceStress::across, c), sum(&SurfaceStress::across_along, c), sum(&SurfaceStress::across_hoop, s)};
}

double von_mises(const PointStress& stress)
{
    const double a = stress.along, h = stress.hoop, n = stress.across;
    const double shears = stress.shear * stress.shear + stress.across_along * stress.across_along +
                          stress.across_hoop * stress.across_hoop;
    return std::sqrt(((a - h) * (a - h) + (h - n) * (h - n) + (n - a) * (n - a)) / 2 + 3 * shears);
}

double largest_principal(const PointStress& stress)
{
    const double middle = (stress.along + stress.hoop) / 2;
    const double radius = std::hypot((stress.along - stress.hoop) / 2, stress.shear);
    return middle >= 0 ? middle + radius : middle - radius;
}

SitePeak site_peak(const SiteStress& site, const CombinedLoad& load)
{
    SitePeak peak;
    const bool is_alone = load.torque == 0 && load.axial == 0 && load.press == 0;
    const bool is_solid = site.bending_across.along.size() > 0;
    const int n_angles = load.bending == 0 ? 1 : is_alone && !is_solid ? angles_of_bending : angles_beside_others;
    for (Eigen::Index i = 0; i < site.z.size(); ++i)
        for (int k = 0; k < n_angles; ++k)
        {
            const double theta = 2 * std::numbers::pi * k / n_angles;
            const PointStress stress = point_stress(site, i, load, theta);
            const double equivalent = von_mises(stress);
            if (equivalent > peak.von_mises)
            {
                peak.von_mises = equivalent;
                peak.z = site.z(i);
                peak.r = site.r(i);
                peak.theta = theta;
                peak.around = is_solid ? site.around(i) : 0;
                peak.stress = stress;
            }
            peak.principal = std::max(peak.principal, std::abs(largest_principal(stress)));
            peak.shear = std::max(peak.shear, std::abs(stress.shear));
        }
    return peak;
}

}  // namespace splicewright
