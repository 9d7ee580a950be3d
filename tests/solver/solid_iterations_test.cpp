// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <numbers>

#include "post/exact_solids.h"
#include "solver/solid_contact.h"
#include "solver/solid_loads.h"

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
};

constexpr TestedBar bars[] = {
    {"plain bar, even elements", 0, 0, false, false, 0},
    {"layers in the middle a tenth as thick", 0.9, 0, false, false, 0},
    {"two steels", 0, 198000, false, false, 0},
    {"steel in aluminium", 0, 70000, false, false, 0},
    {"slit", 0, 0, true, false, 0},
    {"half lap, faces split", 0, 0, false, true, 0},
    {"slit and half lap", 0, 198000, true, true, 0},
    {"slit tied by springs", 0, 198000, true, false, 1e6},
    {"all of it, even elements", 0, 198000, true, true, 1e5},
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
                             return bar.lap && (p.z() > length / 2 + 10 || (p.z() > length / 2 - 10 && p.y() < 0)) ? 2
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

}  // namespace

// What a splice adds to a plain bar must not cost iterations without bound, on no size of mesh.
TEST(SolidIterations, DoNotGrowWithSlitSplitFacesSteelsOrGrading)
{
    for (const TestedBar& bar : bars)
    {
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
            // Stiff springs are the weak spot: the levels of aggregates know them less well.
            EXPECT_LE(most, bar.spring > 0 ? 40 : 36) << bar.name << ", " << rings;
        }
        std::printf("\n");
    }
}

}  // namespace splicewright
