// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>
#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <functional>
#include <numbers>
#include <random>
#include <string>

#include "cases/problem.h"
#include "mesh/gmsh_mesher.h"
#include "mesh/size_field.h"
#include "tests/mesh/sample_cases.h"

namespace splicewright
{
namespace
{

// What `act` writes to a file descriptor, whoever writes it.
std::string written_to(int descriptor, const std::function<void()>& act)
{
    std::FILE* file = std::tmpfile();
    std::fflush(nullptr);
    const int kept = dup(descriptor);
    dup2(fileno(file), descriptor);
    act();
    std::fflush(nullptr);
    dup2(kept, descriptor);
    close(kept);
    std::string text;
    std::rewind(file);
    for (int c = std::fgetc(file); c != EOF; c = std::fgetc(file)) text.push_back(static_cast<char>(c));
    std::fclose(file);
    return text;
}

// Two triangles that meet in a point: its boundary crosses itself, so it cannot be meshed as one surface.
Outline bow_tie()
{
    Outline shape;
    shape.points = {{0, 0}, {10, 10}, {10, 0}, {0, 10}};
    for (int i = 0; i < 4; ++i) shape.curves.push_back({i, (i + 1) % 4, {}, "edge", false, 0});
    shape.regions.push_back({"bar.left", {0, 1, 2, 3}});
    return shape;
}

TEST(Capture, SeesWhatIsWritten)
{
    EXPECT_EQ(written_to(STDOUT_FILENO, [] { EXPECT_EQ(write(STDOUT_FILENO, "out", 3), 3); }), "out");
}

TEST(Mesher, PrintsNothing)
{
    const Outline shape = outline(sample::splice(), {});
    EXPECT_EQ(written_to(STDOUT_FILENO, [&] { generate_mesh(shape, {}); }), "");
    EXPECT_EQ(written_to(STDERR_FILENO, [&] { generate_mesh(shape, {}); }), "");
}

TEST(Mesher, GivesTheSameMeshAgain)
{
    const Outline shape = outline(sample::splice(), {});
    const Mesh first = generate_mesh(shape, {}), second = generate_mesh(shape, {});
    ASSERT_EQ(first.n_nodes(), second.n_nodes());
    EXPECT_EQ(first.node, second.node);
    EXPECT_EQ(first.triangle, second.triangle);
}

TEST(Mesher, RefusesAShapeThatCrossesItselfSilentlyAndWorksAgainAfterwards)
{
    std::string words;
    const auto attempt = [&]
    {
        try
        {
            generate_mesh(bow_tie(), {});
        }
        catch (const CannotCompute& refused)
        {
            words = to_string(refused.problem());
        }
    };
    EXPECT_EQ(written_to(STDOUT_FILENO, attempt), "");
    EXPECT_EQ(written_to(STDERR_FILENO, attempt), "");
    EXPECT_NE(words.find("could not be meshed"), std::string::npos) << words;
    EXPECT_GT(generate_mesh(outline(sample::splice(), {}), {}).n_triangles(), 100);
}

TEST(SizeField, OnANotchIsAtMostItsQuarterTurnOverTheElementsAskedFor)
{
    const Outline shape = outline(sample::splice(), {});
    const SizeField field(shape, {});
    for (const OutlineCurve& curve : shape.curves)
    {
        if (curve.notch_radius != 1) continue;
        const double asked = std::numbers::pi / 2 / 8,
                     at = field.at(shape.points[static_cast<std::size_t>(curve.start)]);
        EXPECT_LE(at, asked + 1e-9) << curve.name;  // ends of arcs to 1e-9 mm
        if (curve.name.starts_with("root") || curve.name == "land-edge")
        {
            EXPECT_NEAR(at, asked, 1e-9) << curve.name;
        }
    }
}

TEST(SizeField, GrowsAtMostByTheGrowthPerDistance)
{
    MeshSize size;
    size.growth = 0.2;
    const SizeField field(outline(sample::splice(), {}), size);
    std::mt19937 chance(7);
    std::uniform_real_distribution<double> z(-100, 100), r(0, 21), step(-3, 3);
    for (int i = 0; i < 20000; ++i)
    {
        const OutlinePoint a{z(chance), r(chance)}, b{a.z + step(chance), a.r + step(chance)};
        EXPECT_LE(std::abs(field.at(a) - field.at(b)), 0.2 * std::hypot(a.z - b.z, a.r - b.r) + 1e-12);  // round-off
    }
}

TEST(SizeField, GrowsLinearlyAwayFromANotchUntilTheWallCapsIt)
{
    const Case asked = sample::plain_shaft({{Millimetre{100}, Millimetre{30}, Millimetre{0}}},
                                           {{Millimetre{50}, Millimetre{2}, Millimetre{2}}});
    MeshSize size;
    size.growth = 0.25;
    size.sections_per_wall = 3;
    const SizeField field(outline(asked, {}), size);
    const double at_notch = std::numbers::pi / 2 * 2 / 8;
    EXPECT_NEAR(field.at({-50, 13 - 4}), at_notch + 0.25 * 4, 1e-9);  // 4 mm below the bottom; arcs to 1e-9 mm
    EXPECT_NEAR(field.at({-2, 0}), 15.0 / 3, 1e-12);                  // the wall: 15 mm in three; round-off
}

TEST(SizeField, AFinerCurveIsFinerAlone)
{
    const Outline shape = outline(sample::splice(), {});
    MeshSize size;
    size.finer["root.left"] = 2;
    const SizeField plain(shape, {}), finer(shape, size);
    for (const OutlineCurve& curve : shape.curves)
    {
        if (!curve.name.starts_with("root") && curve.name != "land-edge") continue;
        const OutlinePoint end = shape.points[static_cast<std::size_t>(curve.end)];
        const double expected = curve.name == "root.left" ? 2 : 1;
        EXPECT_NEAR(plain.at(end) / finer.at(end), expected, 1e-8) << curve.name;  // arcs to 1e-9 mm
    }
}

TEST(MeshedNotch, HasTheElementsAskedFor)
{
    const Mesh mesh = generate_mesh(outline(sample::splice(), {}), {});
    // A full circle of four quarter arcs around the root, each seen from one triangle: 8 elements on each, the mesher
    // rounds up to whole elements and to the size in their middle.
    const auto n = mesh.curve.at("root.left").size();
    EXPECT_GE(n, 4U * 8U);
    EXPECT_LE(n, 4U * 11U);
}

}  // namespace
}  // namespace splicewright
