// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <limits>
#include <numbers>

#include "cases/problem.h"
#include "post/revolve.h"
#include "post/vtk_files.h"
#include "read_back.h"
#include "sample_fields.h"

namespace splicewright
{
namespace
{

constexpr int vtk_quadratic_triangle = 22, vtk_quadratic_wedge = 26;  // VTK's file format
constexpr double pi = std::numbers::pi;

std::filesystem::path empty_folder(const std::string& name)
{
    const auto folder = std::filesystem::path(testing::TempDir()) / (name + std::to_string(getpid()));
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    return folder;
}

FieldFileRequest request(const SolvedFields& fields, const std::filesystem::path& folder)
{
    return {fields, {1.15e6, 7e4, 2e3, 0}, "peak torque 1150 N·m", "A shaft", "0.1.0", folder};
}

double second_moment(const sample::Shape& shape) { return pi * std::pow(shape.bar, 4) / 4; }

TEST(SectionFile, GivesBackNodesCellsNamesAndValues)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 0);
    const auto folder = empty_folder("section");
    write_section_file(request(fields, folder));
    const sample::ReadGrid grid = sample::read_grid(folder / "section.vtu");
    EXPECT_EQ(grid.n_cells, fields.mesh.n_triangles());
    EXPECT_EQ(grid.cell_type, vtk_quadratic_triangle);
    EXPECT_EQ(grid.region, fields.mesh.region_of);
    EXPECT_EQ(grid.field.at("region_names"), fields.mesh.region);
    EXPECT_EQ(grid.field.at("load").front(), "peak torque 1150 N·m");
    EXPECT_EQ(grid.component.at("torsion_per_kNm_stress_MPa"),
              (std::vector<std::string>{"rr", "tt", "zz", "rt", "tz", "rz"}));
    const double I = second_moment(shape), area = pi * shape.bar * shape.bar;
    ASSERT_EQ(grid.point.cols(), static_cast<Eigen::Index>(fields.region_nodes.node.size()));
    for (Eigen::Index i = 0; i < grid.point.cols(); ++i)
    {
        const double r = grid.point(1, i), z = grid.point(0, i);
        const double tau = 1e6 * r / (2 * I), sigma = 1e6 * r / I;
        // Doubles are written as they are; the sums differ by round-off.
        EXPECT_NEAR(grid.point_array.at("torsion_per_kNm_stress_MPa")(4, i), tau, 1e-9);
        EXPECT_NEAR(grid.point_array.at("torsion_per_kNm_von_mises_MPa")(0, i), std::sqrt(3) * tau, 1e-9);
        EXPECT_NEAR(grid.point_array.at("bending_per_kNm_von_mises_MPa")(0, i), sigma, 1e-9);
        EXPECT_NEAR(grid.point_array.at("axial_per_kN_von_mises_MPa")(0, i), 1e3 / area, 1e-9);
        EXPECT_NEAR(grid.point_array.at("torsion_per_kNm_displacement_mm")(1, i), 1e6 * r * z / (8.1e4 * 2 * I), 1e-12);
        EXPECT_NEAR(grid.point_array.at("von_mises_MPa")(0, i),
                    std::hypot(0.07 * sigma + 2e3 / area, std::sqrt(3) * 1.15 * tau), 1e-9);
    }
}

TEST(SectionFile, KeepsTheTwoFacesOfTheSlitApart)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 0);
    const auto folder = empty_folder("slit");
    write_section_file(request(fields, folder));
    const sample::ReadGrid grid = sample::read_grid(folder / "section.vtu");
    int n_in_slit = 0;
    for (Eigen::Index i = 0; i < grid.point.cols(); ++i)
        n_in_slit += std::abs(grid.point(1, i) - shape.bar) < 1e-9 && std::abs(grid.point(0, i) + 21) < 1e-9;
    EXPECT_EQ(n_in_slit, 2);
}

TEST(RevolvedFile, CartesianValuesAreThoseOfABarInTorsionBendingAndTension)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 0);
    const auto folder = empty_folder("revolved");
    write_revolved_file(request(fields, folder));
    const sample::ReadGrid grid = sample::read_grid(folder / "revolved.vtu");
    EXPECT_EQ(grid.n_cells, n_revolved_sectors * fields.mesh.n_triangles());
    EXPECT_EQ(grid.cell_type, vtk_quadratic_wedge);
    EXPECT_EQ(grid.component.at("stress_MPa"), (std::vector<std::string>{"xx", "yy", "zz", "xy", "yz", "xz"}));
    const double I = second_moment(shape), J = 2 * I, area = pi * shape.bar * shape.bar, E = 2.1e5, G = 8.1e4;
    const double T = 1.15e6, M = 7e4, F = 2e3;
    for (Eigen::Index i = 0; i < grid.point.cols(); ++i)
    {
        const double x = grid.point(0, i), y = grid.point(1, i), z = grid.point(2, i);
        Eigen::Matrix<double, 6, 1> stress;
        stress << 0, 0, M * x / I + F / area, 0, T * x / J, -T * y / J;
        const Eigen::Vector3d u(-T * z * y / (G * J) - M * z * z / (2 * E * I), T * z * x / (G * J),
                                M * x * z / (E * I) + F * z / (E * area));
        // Single precision: 6e-8 of up to 400 MPa and 4 mm.
        ASSERT_NEAR((grid.point_array.at("stress_MPa").col(i) - stress).norm(), 0, 1e-4) << x << ' ' << y << ' ' << z;
        ASSERT_NEAR((grid.point_array.at("displacement_mm").col(i) - u).norm(), 0, 1e-6) << x << ' ' << y << ' ' << z;
        const double von_mises = std::hypot(stress(2), std::sqrt(3) * std::hypot(stress(4), stress(5)));
        ASSERT_NEAR(grid.point_array.at("von_mises_MPa")(0, i), von_mises, 1e-4);
    }
}

TEST(RevolvedFile, VolumeIsThatOfTheBodyOfRevolution)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 0);
    const auto folder = empty_folder("volume");
    write_revolved_file(request(fields, folder));
    const double R = shape.bar, S = shape.sleeve, leg = shape.leg;
    // Bars, sleeve, and two triangular rings by the rule of Pappus.
    const double volume = pi * R * R * (shape.right - shape.left) + pi * (S * S - R * R) * 2 * shape.sleeve_half +
                          2 * 2 * pi * (R + leg / 3) * leg * leg / 2;
    // A parabola through three points of a 15 degree arc encloses 9.2e-6 less than the arc:
    // (sin a cos a + 4/3 sin a (1 - cos a)) / a - 1 with a = 7.5 degrees.
    const double a = pi / n_revolved_sectors;
    const double parabola = (std::sin(a) * std::cos(a) + 4. / 3 * std::sin(a) * (1 - std::cos(a))) / a;
    EXPECT_NEAR(parabola, 1, 1e-5);
    EXPECT_NEAR(sample::read_grid(folder / "revolved.vtu").volume / (volume * parabola), 1, 1e-9);
}

TEST(RevolvedBody, AxisNodesAreOnePointAndMidNodesLieOnTheCircle)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 0);
    const RevolvedBody body = revolved(fields, 12);
    std::vector<int> n_points(fields.region_nodes.node.size(), 0);
    for (Eigen::Index p = 0; p < body.point.cols(); ++p)
    {
        const int i = body.region_node[std::size_t(p)];
        ++n_points[std::size_t(i)];
        const double r = fields.mesh.node(1, fields.region_nodes.node[std::size_t(i)]);
        EXPECT_NEAR(body.point.col(p).head<2>().norm(), r, 1e-12);  // round-off
    }
    for (std::size_t i = 0; i < n_points.size(); ++i)
    {
        if (fields.mesh.node(1, fields.region_nodes.node[i]) < 1e-12) EXPECT_EQ(n_points[i], 1);
        else EXPECT_TRUE(n_points[i] == 12 || n_points[i] == 24) << n_points[i];
    }
}

TEST(VtkFiles, AFileThatCannotBeWrittenIsNamed)
{
    const SolvedFields fields = sample::solved_fields({}, 0);
    const auto missing = std::filesystem::path(testing::TempDir()) / "no-such-folder";
    const auto full = empty_folder("full");
    std::filesystem::create_symlink("/dev/full", full / "section.vtu");
    for (const auto& folder : {missing, full}) try
        {
            write_section_file(request(fields, folder));
            ADD_FAILURE() << folder;
        }
        catch (const CannotCompute& failure)
        {
            EXPECT_EQ(failure.problem().file, (folder / "section.vtu").string());
        }
}

TEST(VtkFiles, ANumberThatIsNotFiniteBreaksThePromise)
{
    SolvedFields fields = sample::solved_fields({}, 0);
    fields.torsion.value(4, 7) = std::numeric_limits<double>::quiet_NaN();
    const auto folder = empty_folder("finite");
    EXPECT_THROW(write_section_file(request(fields, folder)), BrokenPromise);
    EXPECT_THROW(write_revolved_file(request(fields, folder)), BrokenPromise);
}

}  // namespace
}  // namespace splicewright
