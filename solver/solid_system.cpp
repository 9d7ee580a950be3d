// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_system.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <chrono>
#include <cmath>
#include <ctime>

#include "cases/problem.h"
#include "solver/solid_body.h"
#include "solver/solid_conjugate.h"
#include "solver/solid_diagonal.h"
#include "solver/solid_element.h"
#include "solver/solid_hold.h"

namespace splicewright
{

namespace
{

// Seconds since it was made, on the wall and in all threads of this process.
class Watch
{
public:
    [[nodiscard]] double seconds() const
    {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count();
    }
    [[nodiscard]] double processor_seconds() const
    {
        return static_cast<double>(std::clock() - clock_) / CLOCKS_PER_SEC;
    }

private:
    std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
    std::clock_t clock_ = std::clock();
};

// The iteration is begun anew from the true residual at most so often.
constexpr int most_restarts = 3;

// Bytes per node and per element, measured on bars and splices. Source: judgement; a test holds them.
constexpr std::int64_t bytes_of_node = 520;
constexpr std::int64_t bytes_of_node_and_load = 300;
constexpr std::int64_t bytes_of_straight_element = 340;
constexpr std::int64_t bytes_of_curved_element = 1350;

}  // namespace

std::int64_t estimated_memory(const SolidMesh& mesh, int n_loads)
{
    std::int64_t sum =
        static_cast<std::int64_t>(mesh.nodes.size()) * (bytes_of_node + n_loads * bytes_of_node_and_load);
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        sum += is_straight(nodes_of(mesh, e)) ? bytes_of_straight_element : bytes_of_curved_element;
    return sum;
}

struct SolidSystem::Parts
{
    Parts(const SolidMesh& mesh, SolidBody given, SolidSettings chosen);

    SolidBody body;
    SolidSettings settings;
    mutable SolidTeam team;
    SolidLayout layout;
    std::vector<HeldNode> held;
    std::vector<LayoutSpring> springs;
    ElementFactors<double> factors;
    ElementFactors<float> single_factors;
    Eigen::Matrix3Xd places;           // [3, n mesh nodes] mm
    std::vector<Eigen::Index> firsts;  // [n layout nodes] a mesh node of each
    bool free_body = false;
    std::unique_ptr<SolidMultigrid> multigrid;
    SolidSetUp set_up;

    // What one solution works with.
    struct Problem
    {
        const std::vector<LayoutSpring>& springs;
        SolidHold hold;
    };

    // held_here: null keeps the forces at held freedoms.
    [[nodiscard]] SolidOperator<double> stiffness(const std::vector<LayoutSpring>& with,
                                                  const std::vector<HeldNode>* held_here) const
    {
        return {&best_kernels(), &layout, &factors, &with, held_here};
    }
    [[nodiscard]] NodeValues<double> in_layout(const Eigen::Matrix3Xd& values) const;
    [[nodiscard]] Eigen::Matrix3Xd at_mesh_nodes(const NodeValues<double>& values) const;
    [[nodiscard]] NodeValues<double> first_displacement(const Eigen::Matrix3Xd& start) const;
    [[nodiscard]] ConjugateLoad started(const Problem& problem, const NodeValues<double>& f,
                                        const Eigen::Matrix3Xd& start, bool opened) const;
    void renew_residual(const Problem& problem, const NodeValues<double>& f, ConjugateLoad& load) const;
    [[nodiscard]] SolidAnswer answer(const Problem& problem, const NodeForces& force, ConjugateLoad load) const;
    [[nodiscard]] SolidSolution solution(const std::vector<NodeForces>& loads, const std::vector<LayoutSpring>& with,
                                         const SolidStart& start) const;
    void add_reactions(const std::vector<LayoutSpring>& with, const NodeForces& force, ConjugateLoad& load,
                       SolidAnswer& result) const;
    void refuse_too_little_memory(std::int64_t wanted) const;
    void make_preconditioner(const SolidMesh& mesh);
};

void SolidSystem::Parts::refuse_too_little_memory(std::int64_t wanted) const
{
    if (settings.memory_limit <= 0 || wanted <= settings.memory_limit) return;
    constexpr double gigabyte = 1e9;
    throw CannotCompute({"", 0, 0, "solid model", fmt::format("{:.1f} GB", static_cast<double>(wanted) / gigabyte),
                         fmt::format("the solution needs more memory than the {:.1f} GB that it may use",
                                     static_cast<double>(settings.memory_limit) / gigabyte),
                         "ask for fewer unknowns or free some memory"});
}

SolidSystem::Parts::Parts(const SolidMesh& mesh, SolidBody given, SolidSettings chosen)
    : body(std::move(given)), settings(chosen), team(chosen.n_threads)
{
    const Watch watch;
    refuse_too_little_memory(settings.memory_limit > 0 ? estimated_memory(mesh, 1) : 0);
    layout = solid_layout(team, mesh, body.bonded, linked_nodes(mesh, body));
    refuse_loose_parts(mesh, layout, body);
    held = held_nodes(layout, body.held);
    springs = layout_springs(layout, body.springs);
    free_body = is_free(body);
    places.resize(3, static_cast<Eigen::Index>(mesh.nodes.size()));
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        places.col(static_cast<Eigen::Index>(i)) =
            Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]);
    firsts.resize(static_cast<std::size_t>(layout.n_nodes));
    for (std::size_t i = 0; i < layout.node_of.size(); ++i)
        if (layout.node_of[i] >= 0) firsts[static_cast<std::size_t>(layout.node_of[i])] = static_cast<Eigen::Index>(i);
    set_up.layout_seconds = watch.seconds();
    factors = element_factors(team, mesh, layout, body.steel);
    single_factors = in_single_precision(team, factors);
    set_up.elements_seconds = watch.seconds() - set_up.layout_seconds;
    make_preconditioner(mesh);
    set_up.unknowns = 3 * layout.n_nodes;
    set_up.levels = multigrid->n_levels();
    set_up.seconds = watch.seconds();
    set_up.processor_seconds = watch.processor_seconds();
    set_up.coarse_seconds = set_up.seconds - set_up.layout_seconds - set_up.elements_seconds;
    const auto bytes_of = [](const auto& numbers)
    { return static_cast<std::int64_t>(sizeof(numbers[0]) * numbers.size()); };
    set_up.bytes = multigrid->bytes() + bytes_of(factors.straight) + bytes_of(factors.curved) +
                   bytes_of(single_factors.straight) + bytes_of(single_factors.curved) +
                   bytes_of(layout.straight.nodes) + bytes_of(layout.curved.nodes) + bytes_of(layout.node_of) +
                   24 * places.cols();
    set_up.bytes_for_load = layout.n_nodes * bytes_of_node_and_load;
}

void SolidSystem::Parts::make_preconditioner(const SolidMesh& mesh)
{
    multigrid = std::make_unique<SolidMultigrid>(
        team, SolidOperator<float>{&best_kernels(), &layout, &single_factors, &springs, &held},
        stiffness_diagonal(team, stiffness(springs, nullptr)),
        linear_level(team, mesh, layout, body.steel, springs, held), free_body);
}

NodeValues<double> SolidSystem::Parts::in_layout(const Eigen::Matrix3Xd& values) const
{
    EXPECTS(values.cols() == places.cols());
    NodeValues<double> result(static_cast<std::size_t>(layout.n_nodes) * node_stride, 0.0);
    for (Eigen::Index i = 0; i < values.cols(); ++i)
    {
        const std::int32_t node = layout.node_of[static_cast<std::size_t>(i)];
        if (node < 0) continue;
        // Bonded nodes share what acts on them.
        for (int a = 0; a < 3; ++a)
            result[static_cast<std::size_t>(node_stride * std::int64_t{node} + a)] += values(a, i);
    }
    return result;
}

Eigen::Matrix3Xd SolidSystem::Parts::at_mesh_nodes(const NodeValues<double>& values) const
{
    Eigen::Matrix3Xd result = Eigen::Matrix3Xd::Zero(3, places.cols());
    for (Eigen::Index i = 0; i < result.cols(); ++i)
    {
        const std::int32_t node = layout.node_of[static_cast<std::size_t>(i)];
        if (node < 0) continue;
        for (int a = 0; a < 3; ++a)
            result(a, i) = values[static_cast<std::size_t>(node_stride * std::int64_t{node} + a)];
    }
    return result;
}

// That of the start, empty for zero, with what is given at held freedoms.
NodeValues<double> SolidSystem::Parts::first_displacement(const Eigen::Matrix3Xd& start) const
{
    NodeValues<double> u(static_cast<std::size_t>(layout.n_nodes) * node_stride, 0.0);
    EXPECTS(start.cols() == 0 || start.cols() == places.cols());
    for (Eigen::Index i = 0; i < start.cols(); ++i)
        if (const std::int32_t node = layout.node_of[static_cast<std::size_t>(i)]; node >= 0)
            for (int a = 0; a < 3; ++a) u[static_cast<std::size_t>(node_stride * std::int64_t{node} + a)] = start(a, i);
    for (const HeldFreedom& h : body.held)
        u[static_cast<std::size_t>(node_stride * std::int64_t{layout.node_of[static_cast<std::size_t>(h.node)]} +
                                   h.axis)] = h.displacement;
    return u;
}

// r = f - K u over the free freedoms, without the forces at held pairs.
void SolidSystem::Parts::renew_residual(const Problem& problem, const NodeValues<double>& f, ConjugateLoad& load) const
{
    stiffness(problem.springs, &held).apply(team, load.u.data(), load.q.data());
    load.r = f;
    for (std::size_t i = 0; i < load.r.size(); ++i) load.r[i] -= load.q[i];
    for (const HeldNode& h : held)
        for (int a = 0; a < 3; ++a)
            if (((h.freedoms >> a) & 1) != 0)
                load.r[static_cast<std::size_t>(node_stride * std::int64_t{h.node} + a)] = 0;
    load.pair_forces = problem.hold.forces(load.r.data());
    problem.hold.project(load.r.data());
    load.r_norm = std::sqrt(node_product(team, load.r, load.r, layout.n_nodes));
}

ConjugateLoad SolidSystem::Parts::started(const Problem& problem, const NodeValues<double>& f,
                                          const Eigen::Matrix3Xd& start, bool opened) const
{
    ConjugateLoad load;
    load.p.assign(f.size(), 0.0);
    load.q.assign(static_cast<std::size_t>(layout.n_rows) * node_stride, 0.0);
    load.work = multigrid->work_vectors();
    const auto begin_at = [&](const Eigen::Matrix3Xd& displacement)
    {
        load.u = first_displacement(displacement);
        problem.hold.open(load.u.data(), opened);
        renew_residual(problem, f, load);
    };
    begin_at({});
    // What given displacements ask for counts as load.
    load.f_norm = load.r_norm;
    if (start.cols() > 0) begin_at(start);
    return load;
}

SolidAnswer SolidSystem::Parts::answer(const Problem& problem, const NodeForces& force, ConjugateLoad load) const
{
    SolidAnswer result;
    result.iterations = load.iterations;
    result.relative_residual = load.f_norm > 0 ? load.r_norm / load.f_norm : 0;
    result.displacement = at_mesh_nodes(load.u);
    result.pair_forces = load.pair_forces;
    if (free_body) result.displacement = without_rigid_motion(places, result.displacement);
    add_reactions(problem.springs, force, load, result);
    return result;
}

// K u - f where something is held, and what springs from the ground do to the body.
void SolidSystem::Parts::add_reactions(const std::vector<LayoutSpring>& with, const NodeForces& force,
                                       ConjugateLoad& load, SolidAnswer& result) const
{
    stiffness(with, nullptr).apply(team, load.u.data(), load.q.data());
    const NodeValues<double> f = in_layout(force);
    const Eigen::Vector3d centre = places.rowwise().mean();
    const Resultant asked = resultant_of(places, force);
    double force_sizes = force.colwise().norm().sum();
    double moment_sizes = (places.colwise() - centre).colwise().norm().dot(force.colwise().norm());
    const auto react = [&](std::int32_t node, const Eigen::Vector3d& pull)
    {
        const Eigen::Vector3d at = places.col(firsts[static_cast<std::size_t>(node)]);
        result.reaction += pull;
        result.reaction_moment += at.cross(pull);
        force_sizes += pull.norm();
        moment_sizes += (at - centre).norm() * pull.norm();
    };
    for (const HeldNode& h : held)
    {
        Eigen::Vector3d pull(0, 0, 0);
        for (int a = 0; a < 3; ++a)
        {
            const auto at = static_cast<std::size_t>(node_stride * std::int64_t{h.node} + a);
            if (((h.freedoms >> a) & 1) != 0) pull(a) = load.q[at] - f[at];
        }
        react(h.node, pull);
    }
    for (const LayoutSpring& spring : with)
    {
        if (spring.second >= 0) continue;
        const Eigen::Vector3d n(spring.direction[0], spring.direction[1], spring.direction[2]);
        const double* u = load.u.data() + node_stride * std::int64_t{spring.first};
        react(spring.first, -spring.stiffness * n.dot(Eigen::Vector3d(u[0], u[1], u[2])) * n);
    }
    const Eigen::Vector3d moment_left =
        asked.moment + result.reaction_moment - centre.cross(asked.force + result.reaction);
    if (force_sizes > 0)
        result.reaction_imbalance =
            std::max((asked.force + result.reaction).norm() / force_sizes, moment_left.norm() / moment_sizes);
}

SolidSolution SolidSystem::Parts::solution(const std::vector<NodeForces>& loads, const std::vector<LayoutSpring>& with,
                                           const SolidStart& start) const
{
    const Watch watch;
    const double tolerance = start.tolerance > 0 ? start.tolerance : settings.tolerance;
    refuse_too_little_memory(set_up.bytes + static_cast<std::int64_t>(loads.size()) * set_up.bytes_for_load);
    std::vector<NodeForces> forces;
    for (const NodeForces& load : loads) forces.push_back(free_body ? balanced(places, load) : load);
    const Problem problem{with, SolidHold(layout, start.pairs, held)};
    std::vector<NodeValues<double>> f;
    std::vector<ConjugateLoad> running;
    EXPECTS(start.opened.empty() || start.opened.size() == loads.size());
    EXPECTS(start.displacements.empty() || start.displacements.size() == loads.size());
    for (std::size_t i = 0; i < forces.size(); ++i)
    {
        f.push_back(in_layout(forces[i]));
        running.push_back(started(problem, f.back(),
                                  start.displacements.empty() ? Eigen::Matrix3Xd() : start.displacements[i],
                                  start.opened.empty() || start.opened[i]));
    }
    const SolidOperator<double> K = stiffness(with, &held);
    for (int begun = 0; begun <= most_restarts; ++begun)
    {
        iterate(team, K, *multigrid, problem.hold, running, tolerance, settings.most_iterations);
        // The recurrence drifts from the true residual by round-off: what counts is the true one.
        bool enough = true;
        for (std::size_t i = 0; i < running.size(); ++i)
        {
            renew_residual(problem, f[i], running[i]);
            enough = enough && !(running[i].r_norm > tolerance * running[i].f_norm);
        }
        if (enough) break;
    }
    SolidSolution result;
    for (std::size_t i = 0; i < running.size(); ++i)
    {
        const double reached = running[i].r_norm / running[i].f_norm;
        if (running[i].f_norm > 0 && !(reached <= tolerance))
            throw CannotCompute(
                {"", 0, 0, "solver", fmt::format("{:.1e} after {} iterations", reached, running[i].iterations),
                 fmt::format("the residual of the solid model must fall to {:.1e} of the load", tolerance),
                 "a part may hang loose or an element be badly shaped: check joints and mesh"});
        result.loads.push_back(answer(problem, forces[i], std::move(running[i])));
    }
    result.seconds = watch.seconds();
    result.processor_seconds = watch.processor_seconds();
    return result;
}

SolidSystem::SolidSystem(const SolidMesh& mesh, SolidBody body, SolidSettings settings)
    : parts_(std::make_unique<Parts>(mesh, std::move(body), settings))
{
}

SolidSystem::~SolidSystem() = default;
SolidSystem::SolidSystem(SolidSystem&&) noexcept = default;

const SolidSetUp& SolidSystem::set_up() const { return parts_->set_up; }
const SolidBody& SolidSystem::body() const { return parts_->body; }

void SolidSystem::precondition_for(const SolidMesh& mesh, const std::vector<PairSpring>& springs)
{
    parts_->springs = layout_springs(parts_->layout, springs);
    parts_->make_preconditioner(mesh);
}

SolidSolution SolidSystem::solution(const std::vector<NodeForces>& loads) const
{
    return parts_->solution(loads, parts_->springs, {});
}

SolidSolution SolidSystem::solution(const std::vector<NodeForces>& loads, const SolidStart& start) const
{
    return parts_->solution(loads, parts_->springs, start);
}

SolidSolution SolidSystem::solution(const std::vector<NodeForces>& loads, const std::vector<PairSpring>& springs,
                                    const SolidStart& start) const
{
    return parts_->solution(loads, layout_springs(parts_->layout, springs), start);
}

}  // namespace splicewright
