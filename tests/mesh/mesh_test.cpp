// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/mesh.h"

#include <gtest/gtest.h>

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>
#include <set>

#include "mesh/gmsh_mesher.h"
#include "mesh/triangle.h"
#include "tests/mesh/outline_measure.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

enum class Weld
{
    whole,
    lost,
};

Mesh mesh_of(const Case& asked, Weld butt = Weld::whole, Weld left = Weld::whole, Weld right = Weld::whole)
{
    Scenario scenario;
    scenario.butt_fused = butt == Weld::whole;
    scenario.sleeve_weld_fused[0] = left == Weld::whole;
    scenario.sleeve_weld_fused[1] = right == Weld::whole;
    return generate_mesh(outline(asked, scenario), {});
}

// Sets of elements that hang together by their nodes.
int bodies(const Mesh& mesh)
{
    std::vector<int> parent(static_cast<std::size_t>(mesh.n_nodes()));
    std::iota(parent.begin(), parent.end(), 0);
    const auto root = [&](int i)
    {
        while (parent[static_cast<std::size_t>(i)] != i) i = parent[static_cast<std::size_t>(i)];
        return i;
    };
    for (int t = 0; t < mesh.n_triangles(); ++t)
        for (int k = 1; k < 6; ++k)
            parent[static_cast<std::size_t>(root(mesh.triangle(k, t)))] = root(mesh.triangle(0, t));
    std::set<int> roots;
    for (int i = 0; i < mesh.n_nodes(); ++i) roots.insert(root(i));
    return static_cast<int>(roots.size());
}

bool lies_in(const Mesh& mesh, int triangle, const std::string& prefix)
{
    return mesh.region[static_cast<std::size_t>(mesh.region_of[static_cast<std::size_t>(triangle)])].starts_with(
        prefix);
}

std::set<int> nodes_on(const Mesh& mesh, const std::string& curve, const std::string& region_prefix)
{
    std::set<int> nodes;
    for (const MeshEdge& edge : mesh.curve.at(curve))
        if (lies_in(mesh, edge.triangle, region_prefix)) nodes.insert({edge.first, edge.middle, edge.last});
    return nodes;
}

std::vector<int> shared(const std::set<int>& a, const std::set<int>& b)
{
    std::vector<int> both;
    std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(both));
    return both;
}

TEST(SplitMesh, FallsIntoAsManyBodiesAsWeldsAreLost)
{
    constexpr Weld whole = Weld::whole, lost = Weld::lost;
    const Case asked = sample::splice();
    EXPECT_EQ(bodies(mesh_of(asked)), 1);
    EXPECT_EQ(bodies(mesh_of(asked, lost)), 1);
    EXPECT_EQ(bodies(mesh_of(asked, whole, lost)), 1);
    EXPECT_EQ(bodies(mesh_of(asked, lost, lost)), 2);  // one bar hangs loose
    EXPECT_EQ(bodies(mesh_of(asked, lost, whole, lost)), 2);
    EXPECT_EQ(bodies(mesh_of(asked, whole, lost, lost)), 2);  // the sleeve hangs loose
    EXPECT_EQ(bodies(mesh_of(asked, lost, lost, lost)), 3);
}

TEST(SplitMesh, FacesOfTheSlitShareNoNodeNotEvenAtTheKeyholes)
{
    for (const Case& asked : {sample::splice(), sample::tapered_splice()})
    {
        const Mesh mesh = mesh_of(asked);
        for (const char* curve : {"slit.left", "slit.right", "butt-surface.left", "butt-surface.right"})
        {
            const std::set<int> bar = nodes_on(mesh, curve, "bar"), sleeve = nodes_on(mesh, curve, "sleeve");
            ASSERT_FALSE(bar.empty()) << curve;
            EXPECT_EQ(bar.size(), sleeve.size()) << curve;
            EXPECT_TRUE(shared(bar, sleeve).empty()) << curve;
        }
    }
}

TEST(SplitMesh, FacesOfTheLandShareNoNode)
{
    const Mesh mesh = mesh_of(sample::splice());
    const std::set<int> left = nodes_on(mesh, "land", "bar.left"), right = nodes_on(mesh, "land", "bar.right");
    EXPECT_EQ(left.size(), right.size());
    EXPECT_GT(left.size(), 4U);
    EXPECT_TRUE(shared(left, right).empty());
}

TEST(SplitMesh, FusedCurvesShareEveryNode)
{
    const Mesh mesh = mesh_of(sample::splice());
    EXPECT_EQ(nodes_on(mesh, "butt", "bar.left"), nodes_on(mesh, "butt", "bar.right"));
    EXPECT_EQ(nodes_on(mesh, "fusion bar.left", "bar"), nodes_on(mesh, "fusion bar.left", "fillet"));
    EXPECT_EQ(nodes_on(mesh, "fusion sleeve.right", "sleeve"), nodes_on(mesh, "fusion sleeve.right", "fillet"));
    EXPECT_EQ(nodes_on(mesh, "sleeve section", "sleeve.left"), nodes_on(mesh, "sleeve section", "sleeve.right"));
}

TEST(SplitMesh, PairsCoincideAndCoverBothFaces)
{
    for (const Weld butt : {Weld::whole, Weld::lost})
    {
        const Mesh mesh = mesh_of(sample::splice(), butt);
        std::set<int> inner, outer, bar, sleeve;
        for (const FacePair& pair : mesh.pair)
        {
            EXPECT_NE(pair.inner, pair.outer);
            // Middles on an arc are projected from either end: round-off of coordinates below 100 mm.
            EXPECT_LT((mesh.node.col(pair.inner) - mesh.node.col(pair.outer)).norm(), 1e-13);
            if (pair.curve == "land") continue;
            inner.insert(pair.inner);
            outer.insert(pair.outer);
        }
        for (const char* curve : {"slit.left", "slit.right", "butt-surface.left", "butt-surface.right"})
        {
            bar.merge(nodes_on(mesh, curve, "bar"));
            sleeve.merge(nodes_on(mesh, curve, "sleeve"));
        }
        EXPECT_EQ(inner, bar);
        EXPECT_EQ(outer, sleeve);
        std::set<int> left, right;
        for (const FacePair& pair : mesh.pair)
            if (pair.curve == "land") left.insert(pair.inner), right.insert(pair.outer);
        EXPECT_EQ(left, nodes_on(mesh, "land", "bar.left"));
        EXPECT_EQ(right, nodes_on(mesh, "land", "bar.right"));
    }
}

TEST(SplitMesh, PairNormalsAreUnitAndPointFromBarToSleeve)
{
    const Mesh mesh = mesh_of(sample::splice());
    for (const FacePair& pair : mesh.pair)
    {
        EXPECT_NEAR(pair.normal.norm(), 1, 1e-14);  // round-off
        if (pair.curve.starts_with("slit"))
        {
            EXPECT_NEAR(pair.normal(1), 1, 1e-12) << "the slit is a cylinder, its nodes come from the mesher";
        }
        else if (pair.curve == "land")
        {
            EXPECT_NEAR(pair.normal(0), 1, 1e-12) << "from the left bar to the right one";
        }
        else
        {
            // The blend of 28 to 27 mm over 3 mm turns by less than 0.4 rad.
            EXPECT_GT(pair.normal(1), 0.9) << pair.curve;
        }
    }
}

TEST(SplitMesh, ConformsEverywhereButOnUnfusedCurves)
{
    for (const Case& asked : {sample::splice(), sample::tapered_splice()})
    {
        const Outline shape = outline(asked, {});
        const Mesh mesh = generate_mesh(shape, {});
        std::map<std::pair<int, int>, std::vector<int>> middles;
        for (int t = 0; t < mesh.n_triangles(); ++t)
            for (int e = 0; e < 3; ++e)
                middles[std::minmax(mesh.triangle(e, t), mesh.triangle((e + 1) % 3, t))].push_back(
                    mesh.triangle(3 + e, t));
        std::map<int, int> uses;
        std::set<std::string> open;
        for (const OutlineRegion& region : shape.regions)
            for (const int c : region.curves) ++uses[c];
        for (std::size_t c = 0; c < shape.curves.size(); ++c)
            if (shape.curves[c].unfused || uses[static_cast<int>(c)] == 1) open.insert(shape.curves[c].name);
        std::set<std::pair<int, int>> open_edges;
        for (const std::string& name : open)
            for (const MeshEdge& edge : mesh.curve.at(name)) open_edges.insert(std::minmax(edge.first, edge.last));
        std::size_t single = 0;
        for (const auto& [edge, middle] : middles)
        {
            ASSERT_LE(middle.size(), 2U);
            if (middle.size() == 2)
            {
                EXPECT_EQ(middle[0], middle[1]) << "two triangles see different middles";
                continue;
            }
            ++single;
            EXPECT_TRUE(open_edges.contains(edge)) << "a gap inside at z " << mesh.node(0, middle[0]);
        }
        EXPECT_EQ(single, open_edges.size());
    }
}

TEST(Mesh, HasTheAreaOfTheOutlineToTheAccuracyOfParabolicArcs)
{
    for (const Case& asked : {sample::splice(), sample::tapered_splice()})
    {
        const Outline shape = outline(asked, {});
        const Mesh mesh = generate_mesh(shape, {});
        for (std::size_t i = 0; i < shape.regions.size(); ++i)
        {
            const sample::Measure exact = sample::measure_of(shape, shape.regions[i]);
            const sample::Measure meshed = sample::measure_of(mesh, static_cast<int>(i));
            const double allowed = sample::area_allowance(shape, shape.regions[i], mesh) + 1e-13 * exact.area;
            EXPECT_NEAR(meshed.area, exact.area, allowed) << shape.regions[i].name;
            // The missing slivers lie below the sleeve's outer radius.
            EXPECT_NEAR(meshed.moment, exact.moment, 23 * allowed + 1e-12 * exact.moment) << shape.regions[i].name;
        }
    }
}

TEST(Mesh, AreaErrorOfArcsFallsWithTheFourthPowerOfTheElementSize)
{
    const Outline shape = outline(sample::splice(), {});
    double exact = 0;
    for (const OutlineRegion& region : shape.regions)
        if (region.name == "fillet.left") exact = sample::measure_of(shape, region).area;
    const auto error = [&](double per_quarter)
    {
        MeshSize size;
        size.elements_per_quarter_turn = per_quarter;
        const Mesh mesh = generate_mesh(shape, size);
        const auto at = std::find(mesh.region.begin(), mesh.region.end(), "fillet.left") - mesh.region.begin();
        return std::abs(sample::measure_of(mesh, static_cast<int>(at)).area - exact);
    };
    // n arcs miss n (1/n)^5. Elements on an arc come in whole numbers: 2 of theory 16 either way in the ratio.
    const double ratio = error(8) / error(16);
    EXPECT_GT(ratio, 10);
    EXPECT_LT(ratio, 26);
}

// A ring cut by a half-round groove of radius rho loses 2 pi (R - 4 rho / (3 pi)) pi rho^2 / 2: Pappus' theorem.
TEST(Mesh, VolumeOfAGroovedShaftIsThatOfPappus)
{
    const double pi = std::numbers::pi, R = 15, rho = 2, L = 80;
    const Case asked = sample::plain_shaft({{Millimetre{L}, Millimetre{2 * R}, Millimetre{0}}},
                                           {{Millimetre{40}, Millimetre{rho}, Millimetre{rho}}}, 10);
    MeshSize fine;
    fine.elements_per_quarter_turn = 64;  // half angle 0.0123: 128 slivers of a^5/30 rho^2 miss 5e-9 mm^2
    const Mesh mesh = generate_mesh(outline(asked, {}), fine);
    const double volume = 2 * pi * sample::measure_of(mesh, 0).moment;
    const double expected = pi * (R * R - 25) * L - 2 * pi * (R - 4 * rho / (3 * pi)) * pi * rho * rho / 2;
    EXPECT_NEAR(volume, expected, 2 * pi * R * 1e-8 + 1e-12 * expected);
}

TEST(Mesh, JacobiansArePositiveAndTheQualityTold)
{
    for (const Case& asked : {sample::splice(), sample::tapered_splice()})
        for (const double per_quarter : {2.0, 8.0, 24.0})
        {
            MeshSize size;
            size.elements_per_quarter_turn = per_quarter;
            const Mesh mesh = generate_mesh(outline(asked, {}), size);
            for (int t = 0; t < mesh.n_triangles(); ++t)
            {
                const TriangleNodes nodes = mesh.node(Eigen::all, mesh.triangle.col(t));
                for (const ReferencePoint at : jacobian_sample_points)
                    ASSERT_GT((nodes * shape_gradients(at)).determinant(), 0) << "triangle " << t;
                for (const QuadraturePoint& point : quadrature())
                    ASSERT_GT((nodes * shape_gradients(point.at)).determinant(), 0) << "triangle " << t;
            }
            EXPECT_GT(mesh.smallest_jacobian_ratio, 0);
            EXPECT_LE(mesh.smallest_jacobian_ratio, 1);
            EXPECT_GT(mesh.smallest_angle_deg, 10) << "below it, the error constants of triangles grow";
            EXPECT_LE(mesh.smallest_angle_deg, 60);
        }
}

TEST(Mesh, NodesOnArcsLieOnTheirCircle)
{
    for (const Case& asked : {sample::splice(), sample::tapered_splice()})
    {
        const Outline shape = outline(asked, {});
        const Mesh mesh = generate_mesh(shape, {});
        std::map<std::string, std::vector<std::pair<OutlinePoint, double>>> circles;
        std::set<std::string> straight;
        for (const OutlineCurve& curve : shape.curves)
            if (curve.centre)
            {
                const OutlinePoint p = shape.points[static_cast<std::size_t>(curve.start)];
                circles[curve.name].push_back(
                    {*curve.centre, std::hypot(p.z - curve.centre->z, p.r - curve.centre->r)});
            }
            else straight.insert(curve.name);
        int checked = 0;
        for (const auto& [name, candidates] : circles)
        {
            if (straight.contains(name)) continue;
            for (const MeshEdge& edge : mesh.curve.at(name))
                for (const int node : {edge.first, edge.middle, edge.last})
                {
                    double off = 1;
                    for (const auto& [centre, radius] : candidates)
                        off = std::min(
                            off,
                            std::abs(std::hypot(mesh.node(0, node) - centre.z, mesh.node(1, node) - centre.r) / radius -
                                     1));
                    EXPECT_LT(off, 1e-12) << name;  // coordinates of 50 mm in double precision on a radius of 1 mm
                    ++checked;
                }
        }
        EXPECT_GT(checked, 100);
    }
}

TEST(Mesh, CurvesKeepTheirTriangleOnTheLeft)
{
    const Mesh mesh = mesh_of(sample::splice());
    for (const auto& [name, edges] : mesh.curve)
        for (const MeshEdge& edge : edges)
        {
            const Eigen::Vector2d walk = mesh.node.col(edge.last) - mesh.node.col(edge.first);
            Eigen::Vector2d middle = Eigen::Vector2d::Zero();
            for (int k = 0; k < 3; ++k) middle += mesh.node.col(mesh.triangle(k, edge.triangle)) / 3;
            const Eigen::Vector2d in = middle - mesh.node.col(edge.first);
            EXPECT_GT(walk(0) * in(1) - walk(1) * in(0), 0) << name;
        }
}

}  // namespace
}  // namespace splicewright
