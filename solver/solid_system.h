// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <memory>
#include <vector>

#include "mesh/solid_mesh.h"
#include "solver/elements.h"

namespace splicewright
{

// One direction of one node whose displacement is given; axis 0 x, 1 y, 2 z.
struct HeldFreedom
{
    std::int32_t node = 0;
    int axis = 0;
    double displacement = 0;  // mm
};

// Resists the motion of `first` against `second` along one direction: a tie or a contact in its normal direction.
struct PairSpring
{
    std::int32_t first = 0, second = -1;  // mesh nodes; second -1: the ground
    Eigen::Vector3d direction{0, 0, 0};   // unit
    double stiffness = 0;                 // N/mm
};

// What stays the same for all loads. Without held freedoms and ground springs the body is free: its loads must
// balance, and the mean displacement and rotation of its nodes are zero.
struct SolidBody
{
    std::vector<ElasticConstants> steel;  // by region
    std::vector<HeldFreedom> held;
    std::vector<SolidMesh::NodePair> bonded;  // each pair moves as one node
    std::vector<PairSpring> springs;          // in the stiffness and in the preconditioner
    std::vector<std::int32_t> linkable;       // further nodes that the springs of a solution may name
};

struct SolidSettings
{
    double tolerance = 1e-8;  // of the residual, relative to the load
    int most_iterations = 300;
    int n_threads = 0;              // 0: as many as the processor runs at once
    std::int64_t memory_limit = 0;  // bytes; 0: none
};

// Forces on the nodes, N: [3, n mesh nodes].
using NodeForces = Eigen::Matrix3Xd;

struct SolidAnswer
{
    Eigen::Matrix3Xd displacement;  // [3, n mesh nodes] mm
    // Of all that holds the body, the moment about the origin: N, N mm.
    Eigen::Vector3d reaction{0, 0, 0}, reaction_moment{0, 0, 0};
    int iterations = 0;
    double relative_residual = 0;  // |f - K u| / |f| over the free freedoms, computed anew at the end
    // What loads and reactions leave unbalanced, over the sum of their sizes: the worse of force and moment.
    double reaction_imbalance = 0;
    std::vector<double> pair_forces;  // [n held pairs] N along their directions on `second`
};

// Two nodes whose distance along a direction is given: n . (u_second - u_first) = opening.
struct HeldPair
{
    std::int32_t first = 0, second = 0;  // mesh nodes
    Eigen::Vector3d direction{0, 0, 0};  // unit
    double opening = 0;                  // mm
};

// What one solution has of its own: pairs that are held, where the iteration begins, and when it ends.
struct SolidStart
{
    std::vector<HeldPair> pairs;
    std::vector<bool> opened;                     // [n loads] whether the openings count, or are zero; empty: they do
    std::vector<Eigen::Matrix3Xd> displacements;  // [n loads] [3, n mesh nodes] mm; empty: zero
    double tolerance = 0;                         // 0: that of the settings
};

struct SolidSolution
{
    std::vector<SolidAnswer> loads;
    double seconds = 0, processor_seconds = 0;
};

// Times of the set-up and what it keeps.
struct SolidSetUp
{
    std::int64_t unknowns = 0;
    int levels = 0;
    double layout_seconds = 0, elements_seconds = 0, coarse_seconds = 0, seconds = 0, processor_seconds = 0;
    std::int64_t bytes = 0;           // kept by the system
    std::int64_t bytes_for_load = 0;  // more during a solution, for each load
};

// Bytes that set-up and solution need at most beside the mesh, before anything is built.
std::int64_t estimated_memory(const SolidMesh& mesh, int n_loads);

// Linear elasticity on curved ten-node tetrahedra, solved by conjugate gradients that p-multigrid makes converge.
// One set-up serves all loads, and all springs among pairs of the mesh and linkable nodes.
class SolidSystem
{
public:
    // Throws CannotCompute for a mesh turned inside out, a loose part, or too little memory.
    SolidSystem(const SolidMesh& mesh, SolidBody body, SolidSettings settings = {});
    ~SolidSystem();
    SolidSystem(SolidSystem&&) noexcept;

    [[nodiscard]] const SolidSetUp& set_up() const;
    [[nodiscard]] const SolidBody& body() const;
    // All loads at once, each with its own iteration. Throws CannotCompute when the residual stays too large.
    [[nodiscard]] SolidSolution solution(const std::vector<NodeForces>& loads) const;
    [[nodiscard]] SolidSolution solution(const std::vector<NodeForces>& loads, const SolidStart& start) const;
    // The same with other springs in the stiffness; the preconditioner keeps those of the body.
    [[nodiscard]] SolidSolution solution(const std::vector<NodeForces>& loads, const std::vector<PairSpring>& springs,
                                         const SolidStart& start = {}) const;
    // Makes the preconditioner anew for springs that differ much from those it has; layout and elements stay.
    // mesh: the same.
    void precondition_for(const SolidMesh& mesh, const std::vector<PairSpring>& springs);

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

}  // namespace splicewright
