// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_system.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "solver/regular_solids.h"
#include "solver/solid_body.h"
#include "solver/solid_coarse_factor.h"
#include "solver/solid_direct.h"
#include "solver/solid_loads.h"

namespace splicewright
{
namespace
{

using regular::Curving;

const ElasticConstants steel{210000, 0.3};

void hold_face(SolidBody& body, const SolidMesh& mesh, const std::string& face)
{
    for (const SolidMesh::Face& on : mesh.faces.at(face))
        for (const std::int32_t node : on.nodes)
            for (int axis = 0; axis < 3; ++axis) body.held.push_back({node, axis, 0});
}

// Torque, bending, pull and a cross force on the right face.
std::vector<NodeForces> four_loads(const SolidMesh& mesh)
{
    return {
        face_forces(mesh, "right", {{0, 0, 0}, {0, 0, 1e6}}), face_forces(mesh, "right", {{0, 0, 0}, {8e5, 3e5, 0}}),
        face_forces(mesh, "right", {{0, 0, 5e4}, {0, 0, 0}}), face_forces(mesh, "right", {{3e3, -1e3, 0}, {0, 0, 0}})};
}

// A spliced bar held at the left, with two steels and a slit.
struct Splice
{
    SolidMesh mesh;
    SolidBody body;
};
Splice splice(int rings, int layers)
{
    Splice made{regular::spliced_bar(rings, layers), {}};
    made.body.steel = {steel, {198000, 0.29}};
    hold_face(made.body, made.mesh, "left");
    return made;
}

double difference(const Eigen::Matrix3Xd& a, const Eigen::Matrix3Xd& b) { return (a - b).norm() / b.norm(); }

}  // namespace

TEST(SolidSystem, AgreesWithTheFactorisation)
{
    const Splice s = splice(4, 24);
    const std::vector<NodeForces> loads = four_loads(s.mesh);
    SolidSettings fine;
    fine.tolerance = 1e-10;
    const SolidSolution direct = direct_solution(s.mesh, s.body, loads);
    const SolidSolution usual = SolidSystem(s.mesh, s.body).solution(loads);
    const SolidSolution close = SolidSystem(s.mesh, s.body, fine).solution(loads);
    for (std::size_t i = 0; i < loads.size(); ++i)
    {
        EXPECT_LT(difference(usual.loads[i].displacement, direct.loads[i].displacement), 1e-7) << i;
        EXPECT_LT(difference(close.loads[i].displacement, direct.loads[i].displacement), 1e-9) << i;
    }
}

TEST(SolidSystem, SolvesSeveralLoadsAsItSolvesOne)
{
    const Splice s = splice(3, 16);
    const std::vector<NodeForces> loads = four_loads(s.mesh);
    const SolidSystem system(s.mesh, s.body);
    const SolidSolution all = system.solution(loads);
    for (std::size_t i = 0; i < loads.size(); ++i)
    {
        const SolidAnswer alone = system.solution({loads[i]}).loads[0];
        EXPECT_EQ(alone.displacement, all.loads[i].displacement);
        EXPECT_EQ(alone.iterations, all.loads[i].iterations);
    }
}

TEST(SolidSystem, GivesTheSameBitsOnAnyNumberOfThreads)
{
    const Splice s = splice(3, 16);
    const std::vector<NodeForces> loads = four_loads(s.mesh);
    SolidSettings settings;
    settings.n_threads = 1;
    const SolidSolution alone = SolidSystem(s.mesh, s.body, settings).solution(loads);
    for (const int n_threads : {2, 5})
    {
        settings.n_threads = n_threads;
        const SolidSolution shared = SolidSystem(s.mesh, s.body, settings).solution(loads);
        for (std::size_t i = 0; i < loads.size(); ++i)
            EXPECT_EQ(shared.loads[i].displacement, alone.loads[i].displacement);
    }
}

TEST(SolidSystem, ReactionsBalanceLoads)
{
    const Splice s = splice(3, 16);
    const SolidSolution solution = SolidSystem(s.mesh, s.body).solution(four_loads(s.mesh));
    EXPECT_NEAR(solution.loads[0].reaction_moment.z(), -1e6, 1e-1);
    EXPECT_NEAR(solution.loads[1].reaction_moment.x(), -8e5, 1e-1);
    EXPECT_NEAR(solution.loads[2].reaction.z(), -5e4, 1e-2);
    EXPECT_NEAR(solution.loads[3].reaction.x(), -3e3, 1e-3);
    for (const SolidAnswer& answer : solution.loads)
    {
        EXPECT_LE(answer.relative_residual, 1e-8);
        EXPECT_LT(answer.reaction_imbalance, 1e-7);
    }
}

// A multigrid that works takes as many steps on a fine mesh as on a coarse one.
TEST(SolidSystem, NeedsNoMoreIterationsOnAFinerMesh)
{
    for (const auto& [rings, layers] : {std::pair{2, 12}, std::pair{4, 24}, std::pair{6, 40}, std::pair{8, 56}})
    {
        const Splice s = splice(rings, layers);
        for (const SolidAnswer& answer : SolidSystem(s.mesh, s.body).solution(four_loads(s.mesh)).loads)
            EXPECT_LE(answer.iterations, 36) << rings;
    }
}

TEST(SolidSystem, AFreeBodyMovesAsAHeldOneButForARigidMotion)
{
    const SolidMesh mesh = regular::round_bar({10, 60, 3, 10});
    SolidBody free, held;
    free.steel = held.steel = {steel};
    // Six freedoms hold the body without straining it.
    for (const std::int64_t freedom :
         pinned_freedoms(regular::at_nodes(mesh, [](const Eigen::Vector3d& p) { return p; })))
        held.held.push_back({static_cast<std::int32_t>(freedom / 3), static_cast<int>(freedom % 3), 0});
    const NodeForces twist =
        face_forces(mesh, "right", {{0, 0, 0}, {0, 0, 1e5}}) + face_forces(mesh, "left", {{0, 0, 0}, {0, 0, -1e5}});
    const Eigen::Matrix3Xd u = SolidSystem(mesh, free).solution({twist}).loads[0].displacement;
    const Eigen::Matrix3Xd places = regular::at_nodes(mesh, [](const Eigen::Vector3d& p) { return p; });
    const Eigen::Matrix3Xd v =
        without_rigid_motion(places, SolidSystem(mesh, held).solution({twist}).loads[0].displacement);
    EXPECT_LT(difference(u, v), 1e-6);
    EXPECT_LT(difference(u, direct_solution(mesh, free, {twist}).loads[0].displacement), 1e-7);
    EXPECT_LT(u.rowwise().mean().norm(), 1e-10 * u.norm());
}

TEST(SolidSystem, RefusesLoadsOnAFreeBodyThatDoNotBalance)
{
    const SolidMesh mesh = regular::round_bar({10, 40, 2, 6});
    SolidBody body;
    body.steel = {steel};
    const SolidSystem system(mesh, body);
    EXPECT_THROW(static_cast<void>(system.solution({face_forces(mesh, "right", {{0, 0, 0}, {0, 0, 1e5}})})),
                 CannotCompute);
}

TEST(SolidSystem, RefusesALoosePart)
{
    Splice s = splice(2, 8);
    regular::split_between(s.mesh, 0, 1, "rest", [](const Eigen::Vector3d&) { return true; });
    s.body.held.clear();
    for (const SolidMesh::Face& on : s.mesh.faces.at("left"))
        if (s.mesh.regions[static_cast<std::size_t>(on.element)] == 0)
            for (const std::int32_t node : on.nodes)
                for (int axis = 0; axis < 3; ++axis) s.body.held.push_back({node, axis, 0});
    EXPECT_THROW(SolidSystem(s.mesh, s.body), CannotCompute);
    // Bonded, it is whole again.
    s.body.bonded = s.mesh.pairs["rest"];
    EXPECT_NO_THROW(SolidSystem(s.mesh, s.body));
}

TEST(SolidSystem, RefusesAModelThatDoesNotFitIntoTheMemory)
{
    const Splice s = splice(3, 16);
    SolidSettings settings;
    settings.memory_limit = 100000;
    EXPECT_THROW(SolidSystem(s.mesh, s.body, settings), CannotCompute);
}

TEST(SolidSystem, RefusesAnElementTurnedInsideOut)
{
    SolidMesh mesh = regular::round_bar({10, 40, 2, 6});
    std::swap(mesh.elements[7][0], mesh.elements[7][1]);
    SolidBody body;
    body.steel = {steel};
    EXPECT_THROW(SolidSystem(mesh, body), CannotCompute);
}

TEST(SolidSystem, BondedPairsMakeTheSplitBodyWhole)
{
    Splice split = splice(3, 16), whole = splice(3, 16);
    split.body.bonded = split.mesh.pairs["slit"];
    const std::vector<NodeForces> loads = four_loads(split.mesh);
    const SolidSolution bonded = SolidSystem(split.mesh, split.body).solution(loads);
    const SolidSolution open = SolidSystem(whole.mesh, whole.body).solution(loads);
    for (std::size_t i = 0; i < loads.size(); ++i)
    {
        const Eigen::Matrix3Xd& u = bonded.loads[i].displacement;
        for (const SolidMesh::NodePair& pair : split.mesh.pairs["slit"])
            EXPECT_EQ(u.col(pair.first), u.col(pair.second));
        // A stiffer body does less work under the same load.
        EXPECT_LT(u.cwiseProduct(loads[i]).sum(), open.loads[i].displacement.cwiseProduct(loads[i]).sum());
    }
}

TEST(SolidSystem, StiffSpringsInAllDirectionsBondAPair)
{
    Splice s = splice(3, 16);
    SolidBody bonded = s.body, tied = s.body;
    bonded.bonded = s.mesh.pairs["slit"];
    for (const SolidMesh::NodePair& pair : s.mesh.pairs["slit"])
        for (int axis = 0; axis < 3; ++axis)
            tied.springs.push_back({pair.first, pair.second, Eigen::Vector3d::Unit(axis), 1e9});
    const std::vector<NodeForces> loads = four_loads(s.mesh);
    const SolidSolution exact = SolidSystem(s.mesh, bonded).solution(loads);
    const SolidSolution stiff = SolidSystem(s.mesh, tied).solution(loads);
    const SolidSolution direct = direct_solution(s.mesh, tied, loads);
    for (std::size_t i = 0; i < loads.size(); ++i)
    {
        EXPECT_LT(difference(stiff.loads[i].displacement, direct.loads[i].displacement), 1e-6);
        // 1e9 N/mm against some 1e6 N/mm of the metal.
        EXPECT_LT(difference(stiff.loads[i].displacement, exact.loads[i].displacement), 5e-3);
    }
}

// Pairs held in all three directions are bonded ones, and one preconditioner made without them serves.
TEST(SolidSystem, PairsHeldInThreeDirectionsAreBonded)
{
    Splice s = splice(3, 16);
    SolidBody bonded = s.body;
    bonded.bonded = s.mesh.pairs["slit"];
    const std::vector<NodeForces> loads = four_loads(s.mesh);
    const SolidSolution exact = SolidSystem(s.mesh, bonded).solution(loads);
    SolidStart start;
    for (const SolidMesh::NodePair& pair : s.mesh.pairs["slit"])
        for (int axis = 0; axis < 3; ++axis)
            start.pairs.push_back({pair.first, pair.second, Eigen::Vector3d::Unit(axis), 0});
    const SolidSolution held = SolidSystem(s.mesh, s.body).solution(loads, start);
    for (std::size_t i = 0; i < loads.size(); ++i)
    {
        EXPECT_LT(difference(held.loads[i].displacement, exact.loads[i].displacement), 1e-6);
        EXPECT_LE(held.loads[i].relative_residual, 1e-8);
    }
}

// An opening is met exactly, and its forces are those of stiff springs that ask for it.
TEST(SolidSystem, HeldPairsOpenAsAskedWithTheForcesOfStiffSprings)
{
    Splice s = splice(3, 16);
    constexpr double opening = 0.01, stiffness = 1e9;
    SolidStart start;
    SolidBody sprung = s.body;
    NodeForces push = NodeForces::Zero(3, static_cast<Eigen::Index>(s.mesh.nodes.size()));
    for (const SolidMesh::NodePair& pair : s.mesh.pairs["slit"])
    {
        Eigen::Vector3d out = regular::place(s.mesh, static_cast<std::size_t>(pair.first));
        out.z() = 0;
        out.normalize();
        start.pairs.push_back({pair.first, pair.second, out, opening});
        sprung.springs.push_back({pair.first, pair.second, out, stiffness});
        push.col(pair.second) += stiffness * opening * out;
        push.col(pair.first) -= stiffness * opening * out;
    }
    const NodeForces none = NodeForces::Zero(3, push.cols());
    const SolidAnswer held = SolidSystem(s.mesh, s.body).solution({none}, start).loads[0];
    const SolidAnswer stiff = direct_solution(s.mesh, sprung, {push}).loads[0];
    EXPECT_LT(difference(held.displacement, stiff.displacement), 5e-3);
    double most = 0;
    for (const double force : held.pair_forces) most = std::max(most, std::abs(force));
    for (std::size_t i = 0; i < start.pairs.size(); ++i)
    {
        const HeldPair& pair = start.pairs[i];
        const auto opened = [&](const SolidAnswer& answer)
        { return pair.direction.dot(answer.displacement.col(pair.second) - answer.displacement.col(pair.first)); };
        EXPECT_NEAR(opened(held), opening, 1e-12);
        EXPECT_NEAR(held.pair_forces[i], stiffness * (opening - opened(stiff)), 1e-2 * most);
    }
}

TEST(SolidSystem, KeepsItsSetUpWhenSpringsChange)
{
    Splice s = splice(3, 16);
    SolidBody with_all = s.body;
    std::vector<PairSpring> half;
    for (const SolidMesh::NodePair& pair : s.mesh.pairs["slit"])
    {
        Eigen::Vector3d out = regular::place(s.mesh, static_cast<std::size_t>(pair.first));
        out.z() = 0;
        with_all.springs.push_back({pair.first, pair.second, out.normalized(), 2e5});
        if (out.x() > 0) half.push_back(with_all.springs.back());
    }
    const SolidSystem system(s.mesh, with_all);
    SolidBody with_half = s.body;
    with_half.springs = half;
    const std::vector<NodeForces> loads = four_loads(s.mesh);
    const SolidSolution changed = system.solution(loads, half);
    const SolidSolution direct = direct_solution(s.mesh, with_half, loads);
    for (std::size_t i = 0; i < loads.size(); ++i)
    {
        EXPECT_LT(difference(changed.loads[i].displacement, direct.loads[i].displacement), 1e-6);
        EXPECT_LE(changed.loads[i].iterations, 60);
    }
}

TEST(SolidSystem, ASpringToTheGroundHoldsWhatItIsFastenedTo)
{
    const SolidMesh mesh = regular::round_bar({10, 40, 2, 6});
    SolidBody body;
    body.steel = {steel};
    for (const SolidMesh::Face& face : mesh.faces.at("left"))
        for (const std::int32_t node : face.nodes)
            for (int axis = 0; axis < 3; ++axis) body.springs.push_back({node, -1, Eigen::Vector3d::Unit(axis), 1e5});
    const SolidSolution solution = SolidSystem(mesh, body).solution(four_loads(mesh));
    EXPECT_NEAR(solution.loads[0].reaction_moment.z(), -1e6, 1e-1);
    for (const SolidAnswer& answer : solution.loads) EXPECT_LT(answer.reaction_imbalance, 1e-7);
}

}  // namespace splicewright
