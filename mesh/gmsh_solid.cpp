// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gmsh.h>

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "cases/problem.h"
#include "mesh/drawing.h"
#include "mesh/gmsh_session.h"
#include "mesh/refuse_mesh.h"
#include "mesh/solid_mesher.h"
#include "mesh/solid_section.h"
#include "mesh/solid_size.h"

namespace splicewright
{
namespace
{

namespace occ = gmsh::model::occ;
using Entities = gmsh::vectorpair;  // dimension and number

constexpr const char* own_part = "solid";
constexpr int triangle_element = 2, tetrahedron_element = 4;  // Gmsh's element types
constexpr double delaunay_2d = 5, delaunay_3d = 1;            // follow steep size fields best
constexpr double curve_division_precision = 1e-3;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// The angle farthest from all that has an angle of its own, where closed rings are joined to themselves.
double seam_angle(const SolidGeometry& geometry)
{
    std::vector<double> taken{0, full_turn / 2};
    for (const Sweep& sweep : geometry.sweep)
        if (sweep.extent < full_turn) taken.insert(taken.end(), {sweep.start, sweep.start + sweep.extent});
    for (const PlugShape& plug : geometry.plugs) taken.push_back(plug.angle);
    double best = 0, farthest = -1;
    for (int i = 0; i < 360; ++i)
    {
        const double angle = full_turn * (i + 0.37) / 360;
        double nearest = full_turn;
        for (const double other : taken)
            nearest = std::min(nearest, std::abs(std::remainder(angle - other, full_turn)));
        if (nearest > farthest) farthest = nearest, best = angle;
    }
    return best;
}

// Plane faces of some regions of the section in the half plane at an angle; neighbours share their edges.
Entities section_faces(const Outline& section, const std::vector<std::size_t>& regions, double angle)
{
    std::unordered_map<int, int> points, curves;
    const auto add_point = [&](OutlinePoint p)
    { return occ::addPoint(p.r * std::cos(angle), p.r * std::sin(angle), p.z); };
    const auto point = [&](int number)
    {
        const auto [place, is_new] = points.try_emplace(number, 0);
        if (is_new) place->second = add_point(section.points[at(number)]);
        return place->second;
    };
    const auto curve = [&](int number)
    {
        const auto [place, is_new] = curves.try_emplace(number, 0);
        const OutlineCurve& drawn = section.curves[at(number)];
        if (!is_new) return place->second;
        const int start = point(drawn.start), end = point(drawn.end);
        place->second =
            drawn.centre ? occ::addCircleArc(start, add_point(*drawn.centre), end) : occ::addLine(start, end);
        return place->second;
    };
    Entities faces;
    for (const std::size_t region : regions)
    {
        std::vector<int> loops;
        for (const std::vector<int>& loop : loops_of(section, section.regions[region]))
        {
            std::vector<int> numbers;
            for (const int c : loop) numbers.push_back(curve(std::abs(c) - 1));
            loops.push_back(occ::addCurveLoop(numbers));
        }
        faces.emplace_back(2, occ::addPlaneSurface(loops));
    }
    return faces;
}

Entities only(const Entities& entities, int dimension)
{
    Entities kept;
    std::copy_if(entities.begin(), entities.end(), std::back_inserter(kept),
                 [&](const std::pair<int, int>& entity) { return entity.first == dimension; });
    return kept;
}

// Closed rings are swept in one go, so that neighbours share their faces; the others one by one.
// Returns the volume of each region of the section.
std::vector<int> swept_volumes(const SolidGeometry& geometry)
{
    std::vector<int> volumes(geometry.sweep.size());
    std::vector<std::size_t> closed;
    Entities out;
    for (std::size_t i = 0; i < geometry.sweep.size(); ++i)
    {
        const Sweep& sweep = geometry.sweep[i];
        if (sweep.extent == full_turn)
        {
            closed.push_back(i);
            continue;
        }
        out.clear();
        occ::revolve(section_faces(geometry.section, {i}, sweep.start), 0, 0, 0, 0, 0, 1, sweep.extent, out);
        volumes[i] = only(out, 3).at(0).second;
    }
    out.clear();
    const Entities faces = section_faces(geometry.section, closed, seam_angle(geometry));
    occ::revolve(faces, 0, 0, 0, 0, 0, 1, full_turn, out);
    occ::remove(faces, true);
    const Entities rings = only(out, 3);
    if (rings.size() != closed.size())
        refuse_mesh(own_part, fmt::format("{} rings of the section came out as {}", closed.size(), rings.size()));
    for (std::size_t i = 0; i < closed.size(); ++i) volumes[closed[i]] = rings[i].second;
    return volumes;
}

int only_volume(const Entities& out, const std::string& what)
{
    const Entities volumes = only(out, 3);
    if (volumes.size() != 1) refuse_mesh(own_part, fmt::format("{} came out in {} pieces", what, volumes.size()));
    return volumes.front().second;
}

// Holes cut into the sleeve, and the weld metal that fills them.
void add_plugs(const SolidGeometry& geometry, std::vector<int>& volumes, Entities& all)
{
    std::vector<Entities> holes(volumes.size());
    Entities out;
    std::vector<Entities> map;
    for (const PlugShape& plug : geometry.plugs)
    {
        const auto sleeve = static_cast<std::size_t>(
            std::find_if(geometry.section.regions.begin(), geometry.section.regions.end(),
                         [&](const OutlineRegion& region) { return region.name == plug.sleeve; }) -
            geometry.section.regions.begin());
        const double from = 0.2 * plug.bar_radius, x = std::cos(plug.angle), y = std::sin(plug.angle);
        const int drill = occ::addCylinder(from * x, from * y, plug.z, (plug.outer - from) * x, (plug.outer - from) * y,
                                           0, plug.radius);
        occ::intersect({{3, drill}}, {{3, volumes[sleeve]}}, out, map, -1, true, false);
        const int hole = only_volume(out, plug.name);
        holes[sleeve].emplace_back(3, hole);
        Entities metal;
        occ::copy({{3, hole}}, metal);
        if (plug.top)
        {
            const double half = 1.5 * plug.radius;
            const int filled = occ::addCylinder(0, 0, plug.z - half, 0, 0, 2 * half, *plug.top);
            occ::intersect(metal, {{3, filled}}, out, map);
            metal = {{3, only_volume(out, plug.name)}};
        }
        all.insert(all.end(), metal.begin(), metal.end());
    }
    for (std::size_t i = 0; i < volumes.size(); ++i)
    {
        if (holes[i].empty()) continue;
        occ::cut({{3, volumes[i]}}, holes[i], out, map);
        volumes[i] = only_volume(out, geometry.section.regions[i].name);
    }
}

// The stepped face between the bars, as wide as they are: what is unfused of it apart from what the butt weld fuses.
Entities lap_faces(const LapShape& lap, int bars)
{
    const double h = lap.half_length, rho = lap.corner_radius, wide = lap.outer;
    const auto point = [&](double y, double z) { return occ::addPoint(-wide, y, z); };
    const int points[] = {point(wide, h),    point(rho, h),   point(0, h - rho),
                          point(0, rho - h), point(-rho, -h), point(-wide, -h)};
    const int upper = point(rho, h - rho), lower = point(-rho, rho - h);
    const Entities profile{{1, occ::addLine(points[0], points[1])},
                           {1, occ::addCircleArc(points[1], upper, points[2])},
                           {1, occ::addLine(points[2], points[3])},
                           {1, occ::addCircleArc(points[3], lower, points[4])},
                           {1, occ::addLine(points[4], points[5])}};
    Entities swept, trimmed, inner, outer;
    std::vector<Entities> map;
    occ::extrude(profile, 2 * wide, 0, 0, swept);
    occ::intersect(only(swept, 2), {{3, bars}}, trimmed, map, -1, true, false);
    trimmed = only(trimmed, 2);
    if (lap.fused_from >= lap.outer) return trimmed;
    const int land = occ::addCylinder(0, 0, -2 * h, 0, 0, 4 * h, lap.fused_from);
    occ::intersect(trimmed, {{3, land}}, inner, map, -1, false, false);
    occ::cut(trimmed, {{3, land}}, outer, map);
    inner.insert(inner.end(), outer.begin(), outer.end());
    return only(inner, 2);
}

void build_geometry(const SolidGeometry& geometry)
{
    std::vector<int> volumes = swept_volumes(geometry);
    Entities all, faces, out;
    std::vector<Entities> map;
    if (!geometry.plugs.empty()) add_plugs(geometry, volumes, all);
    for (const int volume : volumes) all.emplace_back(3, volume);
    if (geometry.lap)
        for (std::size_t i = 0; i < volumes.size(); ++i)
            if (geometry.section.regions[i].name == joined_bars) faces = lap_faces(*geometry.lap, volumes[i]);
    const bool is_open = std::any_of(geometry.sweep.begin(), geometry.sweep.end(),
                                     [](const Sweep& sweep) { return sweep.extent < full_turn; });
    if (!geometry.plugs.empty() || is_open) occ::fragment(all, faces, out, map);
    else if (!faces.empty())
    {
        // The faces touch nothing but the bars and the sleeve around them; the others keep what they share with these.
        Entities touched;
        for (std::size_t i = 0; i < volumes.size(); ++i)
            if (!geometry.section.regions[i].name.starts_with("fillet")) touched.emplace_back(3, volumes[i]);
        occ::fragment(touched, faces, out, map);
    }
    occ::synchronize();
}

FlatSolid taken_mesh()
{
    FlatSolid flat;
    std::unordered_map<std::size_t, int> index_of;
    const auto node_index = [&](std::size_t tag)
    {
        const auto [place, is_new] = index_of.try_emplace(tag, static_cast<int>(flat.nodes.size()));
        if (is_new) flat.nodes.push_back({});
        return place->second;
    };
    Entities entities;
    gmsh::model::getEntities(entities, 3);
    if (entities.empty()) refuse_mesh(own_part, "no body is left: " + GmshSession::last_words());
    std::vector<std::size_t> elements, nodes;
    for (const auto& [dimension, number] : entities)
    {
        elements.clear(), nodes.clear();
        gmsh::model::mesh::getElementsByType(tetrahedron_element, elements, nodes, number);
        if (elements.empty()) refuse_mesh(own_part, "no elements in a body: " + GmshSession::last_words());
        for (std::size_t e = 0; e < elements.size(); ++e)
        {
            flat.tetrahedra.push_back({node_index(nodes[4 * e]), node_index(nodes[4 * e + 1]),
                                       node_index(nodes[4 * e + 2]), node_index(nodes[4 * e + 3])});
            flat.region.push_back(number);
        }
    }
    gmsh::model::getEntities(entities, 2);
    for (const auto& [dimension, number] : entities)
    {
        elements.clear(), nodes.clear();
        gmsh::model::mesh::getElementsByType(triangle_element, elements, nodes, number);
        for (std::size_t e = 0; e < elements.size(); ++e)
            flat.triangles.push_back(
                {{node_index(nodes[3 * e]), node_index(nodes[3 * e + 1]), node_index(nodes[3 * e + 2])}, number});
    }
    std::vector<std::size_t> tags;
    std::vector<double> coordinates, parameters;
    gmsh::model::mesh::getNodes(tags, coordinates, parameters);
    for (std::size_t i = 0; i < tags.size(); ++i)
        if (const auto found = index_of.find(tags[i]); found != index_of.end())
            flat.nodes[at(found->second)] = {coordinates[3 * i], coordinates[3 * i + 1], coordinates[3 * i + 2]};
    return flat;
}

}  // namespace

FlatSolid tetrahedra(const SolidGeometry& geometry, const std::vector<FaceShape>& shapes, const SolidSizeField& field,
                     double scale)
{
    FlatSolid flat;
    with_mesher(own_part,
                [&]
                {
                    gmsh::option::setNumber("Mesh.Algorithm", delaunay_2d);
                    gmsh::option::setNumber("Mesh.Algorithm3D", delaunay_3d);
                    gmsh::option::setNumber("Mesh.LcIntegrationPrecision", curve_division_precision);
                    build_geometry(geometry);
                    gmsh::model::mesh::setSizeCallback(
                        [&](int, int, double x, double y, double z) {
                            return field.at({x, y, z}, scale);
                        });
                    gmsh::model::mesh::generate(3);
                    flat = taken_mesh();
                });
    recognise_parts(flat, geometry, shapes);
    part_flat_elements(flat);
    mend_flat_solid(flat);
    return flat;
}

}  // namespace splicewright
