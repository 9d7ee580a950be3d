// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_bars.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "post/exact_solids.h"

namespace splicewright
{
namespace
{

using exact::ExactBody;

struct Row
{
    double error = 0, bar = 0;  // relative to the exact peak
};

struct Solved
{
    ExactBody exact;
    FreeSurfaceStress surface;
};

Solved solved(ExactBody exact)
{
    FreeSurfaceStress surface =
        free_surface_stress(exact.mesh, exact.body.steel, exact::displacement_of(exact), exact.face, exact.pressure);
    return {std::move(exact), std::move(surface)};
}

// The bar speaks of the peak over the site; the exact peak is that over the places of the finest mesh.
void add_rows(std::vector<Row>& rows, const std::function<ExactBody(int)>& make, const std::vector<int>& sizes)
{
    std::vector<Solved> meshes;
    for (const int n : sizes) meshes.push_back(solved(make(n)));
    const std::vector<std::function<double(const Stress6&)>> numbers{solid_von_mises, largest_solid_principal};
    for (const auto& number : numbers)
    {
        double truth = 0;
        const ExactBody& finest = meshes.back().exact;
        for (const SurfacePlace& place : meshes.back().surface.places)
            if (const Eigen::Vector3d p = regular::place(finest.mesh, static_cast<std::size_t>(place.node));
                finest.counts(p))
                truth = std::max(truth, std::abs(number(finest.stress(p))));
        std::vector<SolidReading> readings;
        for (const Solved& mesh : meshes)
            readings.push_back(solid_reading(mesh.exact.mesh, mesh.surface, mesh.exact.counts, number));
        for (std::size_t i = 1; i < meshes.size(); ++i)
        {
            const Measured peak =
                solid_peak(readings[i], readings[i - 1], static_cast<double>(sizes[i]) / sizes[i - 1]);
            rows.push_back({std::abs(peak.value - truth) / truth, peak.error / truth});
            std::printf("    %s, n = %d: off by %.3f %%, bar %.3f %%\n", finest.name.c_str(), sizes[i],
                        100 * rows.back().error, 100 * rows.back().bar);
        }
    }
}

}  // namespace

TEST(SolidBars, HoldTheTrueErrorOfExactBodiesAndAreNotMuchLarger)
{
    std::vector<Row> rows;
    const std::vector<int> sizes{1, 2, 4};
    for (const auto& [inner, outer] : {std::pair{20.0, 40.0}, {20.0, 25.0}, {10.0, 50.0}})
    {
        add_rows(rows, [&](int n) { return exact::thick_cylinder(n, inner, outer); }, {2, 4, 8});
        add_rows(
            rows, [&](int n) { return exact::thick_sphere(n, inner, outer); }, sizes);
    }
    for (const double nu : {0.0, 0.3, 0.45})
        add_rows(rows, [&](int n) { return exact::plate_with_hole(n, nu); }, {2, 4, 8});
    add_rows(rows, exact::twisted_bar, sizes);
    add_rows(rows, exact::bent_bar, sizes);
    add_rows(rows, exact::twisted_ellipse, sizes);
    int within = 0;
    std::vector<double> over;
    for (const Row& row : rows)
    {
        within += row.error <= row.bar ? 1 : 0;
        over.push_back(row.bar / row.error);
    }
    std::ranges::sort(over);
    std::printf("    %d of %zu within, median of bar over true error %.2f\n", within, rows.size(),
                over[over.size() / 2]);
    EXPECT_GE(within, 0.95 * static_cast<double>(rows.size()));
    EXPECT_LT(over[over.size() / 2], 4);
}

}  // namespace splicewright
