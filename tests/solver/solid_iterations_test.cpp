// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <numbers>

#include "cases/problem.h"
#include "solver/regular_solids.h"
#include "solver/solid_loads.h"
#include "solver/solid_system.h"

namespace splicewright
{
namespace
{

constexpr double length = 120, outside = 15;  // mm

// What a splice has that a plain bar has not.
struct TestedBar
{
    const char* name = "";
    double grading = 0;   // 0: even; 0.9: layers in the middle a tenth as thick, their elements flat
    double sleeve_E = 0;  // MPa, of a sleeve from 0.75 of the radius on; 0: one steel
    bool slit = false;    // between bar and sleeve but at its ends
    bool lap = false;     // half lap in the middle, its faces free of each other below the sleeve
    double spring = 0;    // N/mm between the pairs, along x or y; 0: none
    double lap_off = 0;   // mm, by which the ends of the lap miss the layers of elements
};

// What costs iterations but does not grow with the size of the mesh.
constexpr TestedBar steady_bars[] = {
    {"plain bar, even elements", 0, 0, false, false, 0}, {"two steels", 0, 198000, false, false, 0},
    {"steel in aluminium", 0, 70000, false, false, 0},   {"slit", 0, 0, true, false, 0},
    {"half lap, faces split", 0, 0, false, true, 0},     {"slit and half lap", 0, 198000, true, true, 0},
};

// What does grow: elements that are much wider than high, and stiff springs between faces. A tenth and a twenty-fifth
// of the length of an even layer are left in the middle.
constexpr TestedBar growing_bars[] = {
    {"layers in the middle a tenth as thick", 0.9, 0, false, false, 0},
    {"layers in the middle a twenty-fifth as thick", 0.96, 0, false, false, 0},
    {"slit tied by springs", 0, 198000, true, false, 1e6},
    {"slit, half lap, two steels and springs", 0, 198000, true, true, 1e5},
    {"the same with layers a tenth as thick", 0.9, 198000, true, true, 1e5},
    {"the same, ends of the lap inside elements", 0, 198000, true, true, 1e5, 3},
};

struct Made
{
    SolidMesh mesh;
    SolidBody body;
};

Made made(const TestedBar& bar, int rings)
{
    regular::BarShape shape{outside, length, rings, 6 * rings};
    shape.layer_at = [&](double part)
    {
        const double t = 2 * part - 1;
        return 0.5 + 0.5 * t * (1 - bar.grading + bar.grading * t * t);
    };
    Made result{regular::round_bar(shape), {}};
    const double bore = outside * std::floor(0.75 * rings) / rings;
    regular::set_regions(result.mesh,
                         [&](const Eigen::Vector3d& p)
                         {
                             if (bar.sleeve_E > 0 || bar.slit)
                                 if (p.head<2>().norm() > bore * std::cos(std::numbers::pi / (3 * rings))) return 1;
                             return bar.lap && (p.z() > length / 2 + 10 + bar.lap_off ||
                                                (p.z() > length / 2 - 10 + bar.lap_off && p.y() < 0))
                                        ? 2
                                        : 0;
                         });
    if (bar.lap)
        regular::split_between(result.mesh, 0, 2, "lap",
                               [&](const Eigen::Vector3d& p) { return p.head<2>().norm() < 0.7 * bore; });
    const auto in_slit = [](const Eigen::Vector3d& p) { return std::abs(p.z() - length / 2) < 40; };
    if (bar.slit)
        for (const int region : {0, 2}) regular::split_between(result.mesh, region, 1, "slit", in_slit);
    result.body.steel = {{210000, 0.3}, {bar.sleeve_E > 0 ? bar.sleeve_E : 210000, 0.3}, {210000, 0.3}};
    regular::hold(result.body, result.mesh, [](const Eigen::Vector3d& p) { return p.z() == 0 ? 7 : 0; });
    if (bar.spring > 0)
        for (const auto& pair : result.mesh.pairs["slit"])
            result.body.springs.push_back(
                {pair.first, pair.second,
                 Eigen::Vector3d(regular::place(result.mesh, static_cast<std::size_t>(pair.first)).x(),
                                 regular::place(result.mesh, static_cast<std::size_t>(pair.first)).y(), 0)
                     .normalized(),
                 bar.spring});
    return result;
}

// The third size is left to who wants to see it: it takes most of the time.
std::vector<int> sizes()
{
    if (std::getenv("SPLICEWRIGHT_LARGE_SOLIDS") != nullptr) return {4, 6, 10};
    return {4, 6};
}

// The most of torque, bending and pull, at each size.
std::vector<int> iterations(const TestedBar& bar)
{
    std::vector<int> all;
    std::printf("    | %s |", bar.name);
    for (const int rings : sizes())
    {
        const Made m = made(bar, rings);
        const SolidSystem system(m.mesh, m.body);
        int most = 0;
        for (const FaceLoad& load :
             {FaceLoad{{0, 0, 0}, {0, 0, 1e6}}, FaceLoad{{0, 0, 0}, {1e6, 0, 0}}, FaceLoad{{0, 0, 1e4}, {0, 0, 0}}})
            most = std::max(most, system.solution({face_forces(m.mesh, "right", load)}).loads[0].iterations);
        std::printf(" %d (%lld) |", most, static_cast<long long>(system.set_up().unknowns));
        all.push_back(most);
    }
    std::printf("\n");
    return all;
}

}  // namespace

// Three times as many unknowns move the number by two or three either way, as parts and aggregates fall; the plain bar
// alone does.
TEST(SolidIterations, DoNotGrowWithSlitSplitFacesAndSteels)
{
    const int plain = iterations(steady_bars[0]).front();
    for (const TestedBar& bar : steady_bars)
    {
        const std::vector<int> most = iterations(bar);
        for (std::size_t i = 1; i < most.size(); ++i) EXPECT_LE(most[i], most[i - 1] + 3) << bar.name;
        EXPECT_LE(most.front(), plain + 12) << bar.name;
    }
}

// The weak spot of the preconditioner, told as it is: flat elements and stiff springs cost more, and more on larger
// meshes. The limit of 300 is far off at any size that a shaft needs, and that is all that is claimed.
TEST(SolidIterations, GrowWithFlatElementsAndStiffSpringsAndStayFarFromTheLimit)
{
    for (const TestedBar& bar : growing_bars)
        for (const int most : iterations(bar)) EXPECT_LE(most, 100) << bar.name;
}

// Worst of all is a thin plate that is one layer of elements: it is soft in bending and stiff in its plane. It takes
// some twenty iterations for each time that the elements are wider than high, and is refused, never answered wrongly,
// where those do not suffice. A shaft has no such plate.
TEST(SolidIterations, OfAPlateOfOneFlatLayerAreManyAndEndInARefusal)
{
    const auto plate_iterations = [](double wider_than_high)
    {
        const SolidMesh mesh = regular::box({1, 2, 1 / (8 * wider_than_high), 8, 16, 1});
        SolidBody body;
        body.steel = {{210000, 0.3}};
        regular::hold(body, mesh, [](const Eigen::Vector3d& p) { return p.y() == 0 ? 7 : 0; });
        return SolidSystem(mesh, body).solution({pressure_forces(mesh, "x1", -10)}).loads[0].iterations;
    };
    EXPECT_LE(plate_iterations(4), 100);
    EXPECT_GT(plate_iterations(8), plate_iterations(4));
    EXPECT_THROW(static_cast<void>(plate_iterations(20)), CannotCompute);
}

}  // namespace splicewright
