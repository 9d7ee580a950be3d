// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "mesh/solid_mesher.h"
#include "tests/mesh/outline_measure.h"
#include "tests/mesh/sample_cases.h"
#include "tests/mesh/solid_measure.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;

SolidMeshAnswer meshed(const Case& asked, std::size_t dofs, const Scenario& scenario = {})
{
    SolidMeshSize size;
    size.dofs = dofs;
    size.tolerance = 0.5;  // nothing here depends on the number of unknowns
    return solid_mesh(asked, scenario, size);
}

const std::vector<std::string> both_bars{"bar.left", "bar.right"};

std::size_t at(std::int32_t i) { return static_cast<std::size_t>(i); }

double distance(const SolidMesh& mesh, std::int32_t a, std::int32_t b)
{
    double sum = 0;
    for (std::size_t d = 0; d < 3; ++d) sum += std::pow(mesh.nodes[at(a)][d] - mesh.nodes[at(b)][d], 2);
    return std::sqrt(sum);
}

// Volumes of the rings that the regions sweep, by the theorem of Pappus.
std::map<std::string, double> swept_volumes(const Case& asked)
{
    std::map<std::string, double> volumes;
    const SolidGeometry geometry = solid_geometry(asked, {});
    for (std::size_t i = 0; i < geometry.section.regions.size(); ++i)
        volumes[geometry.section.regions[i].name] +=
            geometry.sweep[i].extent * sample::measure_of(geometry.section, geometry.section.regions[i]).moment;
    return volumes;
}

double worst_volume_error(const Case& asked, const SolidMeshAnswer& answer)
{
    double worst = 0;
    for (const auto& [region, volume] : swept_volumes(asked))
        worst = std::max(worst, std::abs(sample::measure_of(answer, region).volume / volume - 1));
    return worst;
}

TEST(SolidMesh, VolumesOfBodiesOfRevolutionAreThoseOfPappus)
{
    // A parabola leaves its circle by a fifth power of the angle that it spans, 1e-4 of the radius for the longest
    // ones. Fillets are small, and a few of their edges that a curve would fold are straight: 1 % of their volume.
    for (const Case& asked : {sample::splice(), sample::tapered_splice(), sample::pressed_splice(30, 46, 90, 0.02),
                              sample::plain_shaft({{Millimetre{60}, Millimetre{30}, Millimetre{0}},
                                                   {Millimetre{80}, Millimetre{40}, Millimetre{3}}},
                                                  {}, 12)})
    {
        const SolidMeshAnswer answer = meshed(asked, 130000);
        for (const auto& [region, volume] : swept_volumes(asked))
            EXPECT_NEAR(sample::measure_of(answer, region).volume / volume, 1,
                        region.starts_with("fillet") ? 1e-2 : 5e-4)
                << region;
    }
}

// Of a round bar: where arcs are hollow a few edges stay straight, and their share of the error falls more slowly.
TEST(SolidMesh, VolumesConvergeWithAtLeastTheThirdPower)
{
    const Case asked = sample::plain_shaft({{Millimetre{90}, Millimetre{30}, Millimetre{0}}});
    const SolidGeometry geometry = solid_geometry(asked, {});
    const std::vector<FaceShape> shapes = face_shapes(geometry);
    const FlatSolid coarse = tetrahedra(geometry, shapes, SolidSizeField(geometry), 3);
    const auto error = [&](const FlatSolid& flat)
    {
        SolidMeshAnswer answer;
        answer.mesh = finished_solid(flat, geometry, shapes).mesh;
        answer.regions = geometry.regions;
        return worst_volume_error(asked, answer);
    };
    const double before = error(coarse), after = error(refined(coarse, shapes));
    EXPECT_LT(after, before / 8) << before << " to " << after;
}

TEST(SolidMesh, HalvesOfALapMakeUpForEachOther)
{
    const Case asked = sample::half_lap_splice();
    const SolidMeshAnswer answer = meshed(asked, 100000);
    // Each tongue takes from the other bar what it gives away: the volumes are those of two plain bars of 135 mm.
    Case square = asked;
    square.joint->half_lap = Millimetre{0};
    square.joint->penetration.reset();
    for (const std::string& bar : both_bars)
        EXPECT_NEAR(sample::measure_of(answer, bar).volume / swept_volumes(square).at(bar), 1, 2e-3);
    // Half a turn about the x axis changes left and right: moments along y and z change their sign.
    const auto left = sample::measure_of(answer, "bar.left"), right = sample::measure_of(answer, "bar.right");
    EXPECT_NEAR(left.moment[1] / left.volume, -right.moment[1] / right.volume, 1e-2);
    EXPECT_NEAR(left.moment[2] / left.volume, -right.moment[2] / right.volume, 0.1);
    EXPECT_NEAR(left.moment[0] / left.volume, 0, 1e-2);
    // The tongues, half discs of 10 mm less their rounded corners, pull the bars' centres to their side: 4R/(3 pi) of
    // half a disc over 2 x 10 mm. The rounding takes (1 - pi/4) mm^2 over the width of the bar at y = 0.
    const double R = 16, half_disc = pi * R * R / 2;
    EXPECT_NEAR(left.moment[1], 20 * half_disc * 4 * R / (3 * pi), 0.01 * 20 * half_disc * 4 * R / (3 * pi));
}

TEST(SolidMesh, AreasOfFacesAreThoseOfTheDrawing)
{
    const SolidMeshAnswer answer = meshed(sample::half_lap_splice(), 100000);
    const SolidMesh& mesh = answer.mesh;
    EXPECT_NEAR(sample::area_of(mesh, "end.left") / (pi * 256), 1, 1e-3);
    EXPECT_NEAR(sample::area_of(mesh, "end.right") / (pi * 256), 1, 1e-3);
    // 1 mm of each slit belongs to the circle at its root, 2 mm beside the joint to the butt's surface.
    EXPECT_NEAR(sample::area_of(mesh, "slit.left") / (2 * pi * 16 * 52), 1, 1e-3);
    EXPECT_NEAR(sample::area_of(mesh, "butt-surface.right") / (2 * pi * 16 * 2), 1, 1e-3);
    // The flat of the lap is 2 x 8 mm wide and 18 mm long between its rounded corners.
    EXPECT_NEAR(sample::area_of(mesh, "lap") / (16 * 18), 1, 1e-9);
    // A half disc of 8 mm less the strip of 1 mm along its diameter.
    const double strip = std::sqrt(63.0) + 64 * std::asin(1.0 / 8);
    EXPECT_NEAR(sample::area_of(mesh, "land") / (pi * 64 - 2 * strip), 1, 1e-3);
    EXPECT_NEAR(sample::area_of(mesh, "sleeve section") / (pi * (625 - 256)), 1, 1e-3);
    for (const char* face : {"slit.left", "lap", "land", "lap-corner.left", "lap-corner.right"})
        EXPECT_NEAR(sample::area_of(mesh, face), sample::area_of(mesh, std::string(face) + other_side_suffix), 1e-3)
            << face;
}

TEST(SolidMesh, PairsLieInTheSamePlaceAndCoverTheUnfusedFaces)
{
    for (const Case& asked : {sample::splice(), sample::half_lap_splice(), sample::plugged_splice()})
    {
        const SolidMeshAnswer answer = meshed(asked, 80000);
        ASSERT_FALSE(answer.mesh.pairs.empty());
        for (const auto& [name, pairs] : answer.mesh.pairs)
        {
            std::set<std::int32_t> first, second, on_second;
            for (const SolidMesh::NodePair& pair : pairs)
            {
                EXPECT_LT(distance(answer.mesh, pair.first, pair.second), 1e-9);
                EXPECT_NE(pair.first, pair.second);
                first.insert(pair.first), second.insert(pair.second);
            }
            for (const SolidMesh::Face& face : answer.mesh.faces.at(name + other_side_suffix))
                on_second.insert(face.nodes.begin(), face.nodes.end());
            // A node of the first side has a partner, or is one with the other side: the border.
            for (const SolidMesh::Face& face : answer.mesh.faces.at(name))
                for (const std::int32_t node : face.nodes)
                    EXPECT_NE(first.contains(node), on_second.contains(node)) << name;
            for (const std::int32_t node : on_second) EXPECT_TRUE(second.contains(node) || !first.contains(node));
        }
    }
}

TEST(SolidMesh, NothingIsFusedAcrossAnUnfusedFaceByAccident)
{
    Scenario butt_lost;
    butt_lost.butt_fused = false;
    for (const Case& asked : {sample::splice(), sample::half_lap_splice(), sample::partly_welded_splice()})
    {
        const SolidMeshAnswer sound = meshed(asked, 60000), lost = meshed(asked, 60000, butt_lost);
        EXPECT_EQ(sample::parts_of(sound, both_bars), 1);
        const bool has_round_roots =
            asked.sleeve->weld.goes_all_round();  // a sharp root's nodes are the bar's and the sleeve's
        EXPECT_EQ(sample::parts_of(sound, {"bar.left", "bar.right", "sleeve.left", "sleeve.right"}),
                  has_round_roots ? 2 : 1);
        EXPECT_EQ(sample::parts_of(lost, both_bars), 2);
        EXPECT_EQ(sample::parts_of(lost, lost.regions), 1);
        EXPECT_EQ(sample::parts_of(lost, {"bar.left", "sleeve.left", "sleeve.right", "fillet.left"}), 1);
        EXPECT_EQ(sample::parts_of(lost, {"bar.right", "sleeve.left", "sleeve.right", "fillet.left"}),
                  has_round_roots ? 2 : 1);
    }
    Scenario all_lost = butt_lost;
    all_lost.sleeve_weld_fused[0] = all_lost.sleeve_weld_fused[1] = false;
    const SolidMeshAnswer loose = meshed(sample::half_lap_splice(), 60000, all_lost);
    EXPECT_EQ(sample::parts_of(loose, loose.regions), 3);
    const SolidMeshAnswer plugged = meshed(sample::plugged_splice(), 80000, all_lost);
    EXPECT_EQ(sample::parts_of(plugged, plugged.regions), 1);
}

TEST(SolidMesh, FacesPointOutOfTheirElements)
{
    const SolidMeshAnswer answer = meshed(sample::plugged_splice(), 80000);
    for (const auto& [name, faces] : answer.mesh.faces)
        for (const SolidMesh::Face& face : faces)
        {
            const auto& element = answer.mesh.elements[at(face.element)];
            std::array<SolidPoint, 4> p;
            for (std::size_t i = 0; i < 3; ++i)
            {
                const auto& node = answer.mesh.nodes[at(face.nodes[i])];
                p[i] = {node[0], node[1], node[2]};
                EXPECT_TRUE(std::find(element.begin(), element.end(), face.nodes[i + 3]) != element.end());
            }
            const auto opposite =
                std::find_if(element.begin(), element.begin() + 4,
                             [&](std::int32_t node)
                             { return std::find(face.nodes.begin(), face.nodes.end(), node) == face.nodes.end(); });
            const auto& node = answer.mesh.nodes[at(*opposite)];
            p[3] = {node[0], node[1], node[2]};
            ASSERT_LT(six_volumes(p[0], p[1], p[2], p[3]), 0) << name;
        }
}

TEST(SolidMesh, ElementsAreNowhereFolded)
{
    Case crooked = sample::half_lap_splice();
    crooked.joint->offset = Millimetre{1};
    crooked.joint->tilt = Radian{0.01};
    for (const Case& asked : {sample::splice(), sample::partly_welded_splice(), crooked})
    {
        const SolidMeshAnswer answer = meshed(asked, 80000);
        EXPECT_GT(answer.smallest_jacobian_ratio, 0.01);
        EXPECT_LT(static_cast<double>(answer.straightened_edges), 0.1 * static_cast<double>(answer.curved_edges));
        for (const auto& element : answer.mesh.elements)
        {
            std::array<SolidPoint, 10> nodes;
            for (std::size_t i = 0; i < 10; ++i)
                nodes[i] = {answer.mesh.nodes[at(element[i])][0], answer.mesh.nodes[at(element[i])][1],
                            answer.mesh.nodes[at(element[i])][2]};
            ASSERT_GT(jacobian_range(nodes)[0], 0);
        }
    }
}

TEST(SolidMesh, PlugFillsTheHoleBetweenBarAndOutside)
{
    const SolidMeshAnswer answer = meshed(sample::plugged_splice(), 120000);
    // A round bar of radius a across a tube between radii R and S: the integral of its height over its disc, by
    // Simpson's rule in the angle around the disc.
    const auto volume = [](double a, double R, double S)
    {
        constexpr int steps = 200;
        double sum = 0;
        for (int i = 0; i <= steps; ++i)
        {
            const double x = a * std::sin(pi * (static_cast<double>(i) / steps - 0.5)),
                         width = std::sqrt(a * a - x * x);
            const double weight = i == 0 || i == steps ? 1 : (i % 2 == 1 ? 4 : 2);
            sum += weight * 2 * width * (std::sqrt(S * S - x * x) - std::sqrt(R * R - x * x)) * width;
        }
        return sum * pi / steps / 3;
    };
    const double exact = 3 * volume(5, 16, 25) + 2 * volume(4, 16, 21);
    EXPECT_NEAR(sample::measure_of(answer, "plug").volume / exact, 1, 2e-3);
    for (int i = 1; i <= 5; ++i) EXPECT_FALSE(answer.edge_nodes.at("plug-edge." + std::to_string(i)).empty());
}

TEST(SolidMesh, PartialWeldHasTheVolumeOfItsSweepAndTwoEnds)
{
    const Case asked = sample::partly_welded_splice();
    const SolidMeshAnswer answer = meshed(asked, 120000);
    const auto volumes = swept_volumes(asked);
    for (const char* fillet : {"fillet.left", "fillet.right"})
        EXPECT_NEAR(sample::measure_of(answer, fillet).volume / volumes.at(fillet), 1, 2e-3);
    // Each end is the triangle of the legs, with the rounded toes added and no penetration.
    const double legs = 5 * 5 / 2.0;
    for (int end = 1; end <= 4; ++end)
    {
        const double area = sample::area_of(answer.mesh, "weld-end." + std::to_string(end));
        EXPECT_GT(area, legs);
        EXPECT_LT(area, 1.1 * legs);
    }
}

TEST(SolidMesh, BarOutOfLineKeepsItsVolume)
{
    Case crooked = sample::half_lap_splice();
    const SolidMeshAnswer straight = meshed(crooked, 80000);
    crooked.joint->offset = Millimetre{1};
    crooked.joint->tilt = Radian{0.01};
    const SolidMeshAnswer answer = meshed(crooked, 80000);
    for (const std::string& bar : both_bars)
        EXPECT_NEAR(sample::measure_of(answer, bar).volume / sample::measure_of(straight, bar).volume, 1, 1e-4);
    // The centre of the far end lies out of line by the offset and the tilt over its distance.
    double sum = 0;
    std::set<std::int32_t> nodes;
    for (const SolidMesh::Face& face : answer.mesh.faces.at("end.right"))
        nodes.insert(face.nodes.begin(), face.nodes.end());
    double low = 1e300, high = -1e300;
    for (const std::int32_t node : nodes)
    {
        low = std::min(low, answer.mesh.nodes[at(node)][0]), high = std::max(high, answer.mesh.nodes[at(node)][0]);
        sum += answer.mesh.nodes[at(node)][1];
    }
    EXPECT_NEAR((low + high) / 2, 1 + 0.01 * 135, 0.1);
    EXPECT_NEAR(sum / static_cast<double>(nodes.size()), 0, 0.5);
}

TEST(SolidMesh, BudgetIsMetWithinItsTolerance)
{
    for (const std::size_t dofs : {std::size_t{80000}, std::size_t{700000}})
    {
        SolidMeshSize size;
        size.dofs = dofs;
        const SolidMeshAnswer answer = solid_mesh(sample::half_lap_splice(), {}, size);
        EXPECT_TRUE(answer.within_budget);
        EXPECT_NEAR(static_cast<double>(answer.dofs()) / static_cast<double>(dofs), 1, 0.2);
    }
}

TEST(SolidMesh, BudgetThatTheShapeCannotMeetIsTold)
{
    const SolidMeshAnswer answer = meshed(sample::splice(), 3000);
    EXPECT_FALSE(answer.within_budget);
    ASSERT_FALSE(answer.coarse_sites.empty());
    EXPECT_NE(answer.coarse_sites.front().find("elements on a quarter turn"), std::string::npos);
}

}  // namespace
}  // namespace splicewright
