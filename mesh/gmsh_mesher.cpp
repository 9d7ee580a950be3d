// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/gmsh_mesher.h"

#include <fmt/format.h>
#include <gmsh.h>

#include <algorithm>
#include <mutex>
#include <string>
#include <unordered_map>
#include <vector>

#include "cases/problem.h"
#include "mesh/drawing.h"
#include "mesh/gmsh_session.h"
#include "mesh/refuse_mesh.h"

namespace splicewright
{
namespace
{

constexpr const char* own_part = "section";
constexpr int line_element = 1, triangle_element = 2;  // Gmsh's element types
constexpr double curve_division_precision =
    1e-3;                              // of the integral that divides a curve; its default 1e-9 costs half the time
constexpr double smoothing_steps = 0;  // they cost a third of the mesher's time and leave larger errors at roots
constexpr double delaunay = 5;         // Gmsh's 2D algorithm that follows steep size fields best

void build_geometry(const Outline& outline)
{
    namespace geo = gmsh::model::geo;
    for (std::size_t i = 0; i < outline.points.size(); ++i)
        geo::addPoint(outline.points[i].z, outline.points[i].r, 0, 0, static_cast<int>(i) + 1);
    for (std::size_t i = 0; i < outline.curves.size(); ++i)
    {
        const OutlineCurve& curve = outline.curves[i];
        const int tag = static_cast<int>(i) + 1;
        if (curve.centre)
        {
            const int centre = geo::addPoint(curve.centre->z, curve.centre->r, 0);
            geo::addCircleArc(curve.start + 1, centre, curve.end + 1, tag);
        }
        else geo::addLine(curve.start + 1, curve.end + 1, tag);
    }
    for (std::size_t i = 0; i < outline.regions.size(); ++i)
    {
        std::vector<int> loop_tags;
        for (const std::vector<int>& loop : loops_of(outline, outline.regions[i]))
            loop_tags.push_back(geo::addCurveLoop(loop));
        geo::addPlaneSurface(loop_tags, static_cast<int>(i) + 1);
    }
    geo::synchronize();
}

FlatMesh taken_mesh(const Outline& outline)
{
    FlatMesh flat;
    std::unordered_map<std::size_t, int> index_of;
    const auto node_index = [&](std::size_t tag)
    {
        const auto [place, is_new] = index_of.try_emplace(tag, static_cast<int>(flat.node.size()));
        if (is_new) flat.node.push_back({});
        return place->second;
    };
    for (std::size_t r = 0; r < outline.regions.size(); ++r)
    {
        std::vector<std::size_t> elements, nodes;
        gmsh::model::mesh::getElementsByType(triangle_element, elements, nodes, static_cast<int>(r) + 1);
        if (elements.empty())
            refuse_mesh(own_part, fmt::format("no elements in region {}: {}", outline.regions[r].name,
                                              GmshSession::last_words()));
        for (std::size_t t = 0; t < elements.size(); ++t)
        {
            flat.triangle.push_back(
                {node_index(nodes[3 * t]), node_index(nodes[3 * t + 1]), node_index(nodes[3 * t + 2])});
            flat.region.push_back(static_cast<int>(r));
        }
    }
    for (std::size_t c = 0; c < outline.curves.size(); ++c)
    {
        std::vector<std::size_t> elements, nodes;
        gmsh::model::mesh::getElementsByType(line_element, elements, nodes, static_cast<int>(c) + 1);
        for (std::size_t e = 0; e < elements.size(); ++e)
            flat.edge.push_back({node_index(nodes[2 * e]), node_index(nodes[2 * e + 1]), static_cast<int>(c)});
    }
    std::vector<std::size_t> tags;
    std::vector<double> coordinates, parameters;
    gmsh::model::mesh::getNodes(tags, coordinates, parameters);
    for (std::size_t i = 0; i < tags.size(); ++i)
        if (const auto found = index_of.find(tags[i]); found != index_of.end())
            flat.node[static_cast<std::size_t>(found->second)] = {coordinates[3 * i], coordinates[3 * i + 1]};
    return flat;
}

}  // namespace

GmshSession::GmshSession(const char* model)
{
    gmsh::initialize(0, nullptr, false);
    gmsh::option::setNumber("General.Terminal", 0);
    gmsh::option::setNumber("General.AbortOnError", 0);
    gmsh::option::setNumber("General.NumThreads", 1);
    gmsh::option::setNumber("Mesh.MeshSizeExtendFromBoundary", 0);
    gmsh::option::setNumber("Mesh.MeshSizeFromPoints", 0);
    gmsh::option::setNumber("Mesh.MeshSizeFromCurvature", 0);
    gmsh::logger::start();
    gmsh::model::add(model);
}

GmshSession::~GmshSession()
{
    try
    {
        gmsh::logger::stop();
        gmsh::finalize();
    }
    catch (...)  // a destructor must not throw, and there is nothing left to save
    {
    }
}

std::string GmshSession::last_words()
{
    std::vector<std::string> log;
    gmsh::logger::get(log);
    const auto last =
        std::find_if(log.rbegin(), log.rend(),
                     [](const std::string& line) { return line.starts_with("Error") || line.starts_with("Warning"); });
    return last != log.rend() ? *last : "the mesher gave no reason";
}

void with_mesher(const char* part, const std::function<void()>& work)
{
    static std::mutex one_session_at_a_time;
    const std::lock_guard guard(one_session_at_a_time);
    try
    {
        const GmshSession session(part);
        work();
    }
    catch (const CannotCompute&)
    {
        throw;
    }
    catch (const BrokenPromise&)
    {
        throw;
    }
    catch (const std::exception& error)
    {
        refuse_mesh(part, error.what());
    }
    catch (...)
    {
        refuse_mesh(part, "the mesher gave no reason");
    }
}

FlatMesh triangulation(const Outline& outline, const MeshSize& size)
{
    const SizeField field(outline, size);
    FlatMesh flat;
    with_mesher(own_part,
                [&]
                {
                    gmsh::option::setNumber("Mesh.Algorithm", delaunay);
                    gmsh::option::setNumber("Mesh.LcIntegrationPrecision", curve_division_precision);
                    gmsh::option::setNumber("Mesh.Smoothing", smoothing_steps);
                    build_geometry(outline);
                    gmsh::model::mesh::setSizeCallback(
                        [&field](int, int, double z, double r, double) {
                            return field.at({z, r});
                        });
                    gmsh::model::mesh::generate(2);
                    flat = taken_mesh(outline);
                });
    return flat;
}

Mesh generate_mesh(const Outline& outline, const MeshSize& size)
{
    return finished_mesh(outline, triangulation(outline, size));
}

}  // namespace splicewright
