// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_sites.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <set>

#include "cases/bar_shape.h"
#include "solver/kept_places.h"

namespace splicewright
{
namespace
{

bool everywhere(const Eigen::Vector3d&) { return true; }

// The plain stretches of a bar, without what its ends disturb.
std::vector<std::array<double, 2>> plain_stretches(const Outline& section, const std::string& name)
{
    std::vector<std::array<double, 2>> stretches;
    for (const OutlineCurve& curve : section.curves)
    {
        if (curve.name != name || curve.centre) continue;
        const OutlinePoint a = section.points[static_cast<std::size_t>(curve.start)],
                           b = section.points[static_cast<std::size_t>(curve.end)];
        if (std::abs(a.r - b.r) > 1e-9) continue;
        const double low = std::min(a.z, b.z), high = std::max(a.z, b.z);
        if (const auto margin = end_margin(high - low, 2 * a.r, undisturbed_diameters))
            stretches.push_back({low + *margin, high - *margin});
    }
    return stretches;
}

// Where the butt's surface counts: all of it, but not where a held slit begins.
std::function<bool(const Eigen::Vector3d&)> butt_counts(const Case& asked)
{
    std::array<double, 2> outermost{INFINITY, INFINITY};
    for (const Side side : both_sides)
        if (asked.sleeve &&
            (asked.sleeve->slit[index(side)] == SlitState::snug || asked.sleeve->slit[index(side)] == SlitState::press))
            outermost[index(side)] = butt_half_length(*asked.joint) - clear_of_held_slit;
    return [outermost](const Eigen::Vector3d& p) { return p.z() > -outermost[0] && p.z() < outermost[1]; };
}

bool has_face(const SolidMesh& mesh, const std::string& face)
{
    const auto found = mesh.faces.find(face);
    return found != mesh.faces.end() && !found->second.empty();
}

std::vector<std::vector<SolidMesh::Face>> all_faces(const SolidMesh& mesh)
{
    std::vector<std::vector<SolidMesh::Face>> faces;
    for (const auto& [name, list] : mesh.faces) faces.push_back(list);
    return faces;
}

}  // namespace

std::vector<SolidSite> solid_sites(const Case& asked, const Scenario& scenario, const SolidMesh& mesh)
{
    const Outline section = solid_geometry(asked, scenario).section;
    std::vector<SolidSite> sites;
    const auto add = [&](const std::string& id, const std::vector<std::string>& faces, bool may_be_pressed,
                         std::function<bool(const Eigen::Vector3d&)> counts)
    {
        if (std::ranges::any_of(faces, [&](const std::string& face) { return has_face(mesh, face); }))
            sites.push_back({id, faces, may_be_pressed, std::move(counts)});
    };
    for (const Side side : both_sides)
        for (const char* notch : {"bar-toe.", "root.", "sleeve-toe."})
        {
            const std::string id = notch + std::string(name_of(side));
            add(id, {id}, false, everywhere);
        }
    const bool bonded =
        asked.sleeve && (asked.sleeve->slit[0] == SlitState::bonded || asked.sleeve->slit[1] == SlitState::bonded);
    if (asked.joint && scenario.butt_fused)
        add("butt-surface", {"butt-surface.left", "butt-surface.right"}, bonded, butt_counts(asked));
    add("land-edge", {"land-edge"}, false, everywhere);
    add("lap-corner.left", {"lap-corner.left"}, true, everywhere);
    add("lap-corner.right", {std::string("lap-corner.right") + other_side_suffix}, true, everywhere);
    add("sleeve-mid", {"sleeve-mid"}, false, everywhere);
    for (const Side side : both_sides)
    {
        const std::string id = std::string("bar.") + name_of(side);
        const auto stretches = plain_stretches(section, id);
        if (stretches.empty()) continue;
        add(id, {id}, false,
            [stretches](const Eigen::Vector3d& p)
            {
                return std::ranges::any_of(
                    stretches, [&](const auto& stretch) { return p.z() >= stretch[0] && p.z() <= stretch[1]; });
            });
    }
    for (const auto& [face, list] : mesh.faces)
        if ((face.starts_with("shoulder.") || face.starts_with("groove.")) && !face.ends_with(other_side_suffix))
            add(face, {face}, false, everywhere);
    return sites;
}

SolidSurfaces::SolidSurfaces(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                             const SolidUnitDisplacements& unit)
    : mesh_(mesh)
{
    std::size_t n = 0;
    for (const auto& [name, list] : mesh.faces)
    {
        first_face_[name] = n;
        n += list.size();
    }
    const bool has_lap = has_face(mesh, "lap");
    const auto faces = all_faces(mesh);
    for (const Eigen::Matrix3Xd* displacement :
         {&unit.torsion, &unit.towards_x, &unit.towards_y, &unit.axial, &unit.press})
    {
        if (displacement->size() == 0) continue;
        const FreeSurfaceStress surface = free_surface_stress(mesh, steel, *displacement, faces);
        if (loads_.empty()) places_ = framed_places(mesh, surface);
        const auto n_places = static_cast<Eigen::Index>(surface.places.size());
        Load load;
        load.surface.resize(6, n_places);
        for (Eigen::Index i = 0; i < n_places; ++i)
            load.surface.col(i) = in_frame(places_.frame[static_cast<std::size_t>(i)],
                                           surface.places[static_cast<std::size_t>(i)].stress);
        if (has_lap)
        {
            const SolidStress below = recovered_stress(mesh, steel, *displacement);
            load.below.resize(6, n_places);
            for (Eigen::Index i = 0; i < n_places; ++i)
            {
                const auto at = static_cast<std::size_t>(i);
                load.below.col(i) =
                    in_frame(places_.frame[at], below.value.col(entry_of(below, places_.node[at], places_.region[at])));
            }
        }
        loads_.push_back(std::move(load));
    }
}

// By rising number, so that all loads list them alike.
std::vector<std::int32_t> SolidSurfaces::places_of(const SolidSite& site) const
{
    std::set<std::int32_t> places;
    for (const std::string& face : site.faces)
    {
        if (!has_face(mesh_, face)) continue;
        const std::size_t first = first_face_.at(face), n = mesh_.faces.at(face).size();
        for (std::size_t f = first; f < first + n; ++f)
            for (const std::int32_t place : places_.faces[f])
                if (site.counts(places_.at.col(place))) places.insert(place);
    }
    return {places.begin(), places.end()};
}

SiteStress SolidSurfaces::at(const SolidSite& site) const
{
    const std::vector<std::int32_t> places = places_of(site);
    const auto n = static_cast<Eigen::Index>(places.size());
    SiteStress stress;
    stress.z.resize(n), stress.r.resize(n), stress.around.resize(n);
    std::vector<SurfaceStress> parts(loads_.size(), zero_surface_stress(n));
    for (Eigen::Index i = 0; i < n; ++i)
    {
        const std::int32_t place = places[static_cast<std::size_t>(i)];
        const Eigen::Vector3d at = places_.at.col(place);
        stress.z(i) = at.z(), stress.r(i) = std::hypot(at.x(), at.y()), stress.around(i) = std::atan2(at.y(), at.x());
        const std::vector<FitWeight> weights = fit_weights(places_, place);
        for (std::size_t l = 0; l < loads_.size(); ++l)
        {
            const auto& from = site.may_be_pressed ? loads_[l].below : loads_[l].surface;
            Eigen::Matrix<double, 6, 1> sum = Eigen::Matrix<double, 6, 1>::Zero();
            for (const FitWeight& weight : weights) sum += weight.weight * from.col(weight.place);
            for (std::size_t part = 0; part < surface_stress_parts.size(); ++part)
                (parts[l].*surface_stress_parts[part])(i) = sum(static_cast<Eigen::Index>(part));
        }
    }
    stress.torsion = std::move(parts[0]);
    stress.bending = std::move(parts[1]);
    stress.bending_across = std::move(parts[2]);
    stress.axial = std::move(parts[3]);
    if (loads_.size() > 4) stress.press = std::move(parts[4]);
    return stress;
}

}  // namespace splicewright
