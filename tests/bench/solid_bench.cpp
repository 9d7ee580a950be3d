// SPDX-License-Identifier: GPL-2.0-or-later
#include <benchmark/benchmark.h>
#include <sys/resource.h>

#include <Eigen/IterativeLinearSolvers>
#include <vector>

#include "solver/regular_solids.h"
#include "solver/solid_direct.h"
#include "solver/solid_loads.h"
#include "solver/solid_operator.h"
#include "solver/solid_system.h"

// Time and memory of the solid solver on a bar in a sleeve with two slits, two steels and a graded mesh.
// Run with: .build/release/tests/bench/solid_bench. Processor time counts on a machine that others use.
namespace splicewright
{
namespace
{

// Circles and layers of elements; unknowns are about 72 rings^2 layers.
struct Size
{
    int rings, layers;
};
constexpr Size sizes[] = {{3, 36}, {5, 56}, {7, 86}, {10, 128}, {14, 177}, {17, 240}};

struct Splice
{
    SolidMesh mesh;
    SolidBody body;
    std::vector<NodeForces> loads;  // torque, bending, pull
};

Splice splice(std::int64_t size)
{
    Splice made;
    made.mesh = regular::spliced_bar(sizes[size].rings, sizes[size].layers);
    made.body.steel = {{210000, 0.3}, {198000, 0.29}};
    for (const SolidMesh::Face& face : made.mesh.faces.at("left"))
        for (const std::int32_t node : face.nodes)
            for (int axis = 0; axis < 3; ++axis) made.body.held.push_back({node, axis, 0});
    for (const FaceLoad& load :
         {FaceLoad{{0, 0, 0}, {0, 0, 1e6}}, FaceLoad{{0, 0, 0}, {1e6, 0, 0}}, FaceLoad{{0, 0, 1e4}, {0, 0, 0}}})
        made.loads.push_back(face_forces(made.mesh, "right", load));
    return made;
}

// Peak of the whole process so far: right for the largest model of a run.
double peak_megabytes()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1e3;
}

void set_up_and_solve(benchmark::State& state)
{
    const Splice s = splice(state.range(0));
    const std::vector<NodeForces> loads(s.loads.begin(), s.loads.begin() + state.range(1));
    double set_up = 0, solve = 0, processor = 0, iterations = 0, unknowns = 0, runs = 0;
    for (auto _ : state)
    {
        const SolidSystem system(s.mesh, s.body);
        const SolidSolution solution = system.solution(loads);
        set_up += system.set_up().seconds;
        solve += solution.seconds;
        processor += system.set_up().processor_seconds + solution.processor_seconds;
        iterations = solution.loads[0].iterations;
        unknowns = static_cast<double>(system.set_up().unknowns);
        ++runs;
    }
    state.counters["unknowns"] = unknowns;
    state.counters["iterations"] = iterations;
    state.counters["set_up_s"] = set_up / runs;
    state.counters["solve_s"] = solve / runs;
    state.counters["processor_s"] = processor / runs;
    state.counters["estimate_MB"] = static_cast<double>(estimated_memory(s.mesh, static_cast<int>(loads.size()))) / 1e6;
    state.counters["peak_MB"] = peak_megabytes();
}
BENCHMARK(set_up_and_solve)
    ->ArgNames({"size", "loads"})
    ->Args({1, 1})
    ->Args({2, 1})
    ->Args({3, 1})
    ->Args({3, 3})
    ->Args({4, 1})
    ->Args({5, 1})
    ->UseRealTime()
    ->Unit(benchmark::kMillisecond);

template <class Real>
void operator_application(benchmark::State& state, const SolidKernels* kernels)
{
    if (kernels == nullptr)
    {
        state.SkipWithError("this processor does not have these vectors");
        return;
    }
    const Splice s = splice(3);
    SolidTeam team;
    const SolidLayout layout = solid_layout(team, s.mesh, {}, {});
    const ElementFactors<double> factors = element_factors(team, s.mesh, layout, s.body.steel);
    const ElementFactors<float> single = in_single_precision(team, factors);
    SolidOperator<Real> K;
    K.kernels = kernels;
    K.layout = &layout;
    if constexpr (sizeof(Real) == sizeof(float)) K.factors = &single;
    else K.factors = &factors;
    const NodeValues<Real> x(static_cast<std::size_t>(layout.n_nodes) * node_stride, Real{1});
    NodeValues<Real> y(static_cast<std::size_t>(layout.n_rows) * node_stride);
    for (auto _ : state) K.apply(team, x.data(), y.data());
    state.counters["unknowns"] = static_cast<double>(3 * layout.n_nodes);
}
void single_operator(benchmark::State& state, const SolidKernels* kernels)
{
    operator_application<float>(state, kernels);
}
void double_operator(benchmark::State& state, const SolidKernels* kernels)
{
    operator_application<double>(state, kernels);
}
BENCHMARK_CAPTURE(single_operator, portable, portable_kernels())->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(single_operator, avx2, avx2_kernels())->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(single_operator, avx512, avx512_kernels())->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(double_operator, portable, portable_kernels())->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(double_operator, avx2, avx2_kernels())->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(double_operator, avx512, avx512_kernels())->UseRealTime()->Unit(benchmark::kMillisecond);

// The factorisation, from elements to displacement.
void factorised(benchmark::State& state)
{
    const Splice s = splice(state.range(0));
    for (auto _ : state)
    {
        const double residual = direct_solution(s.mesh, s.body, {s.loads[0]}).loads[0].relative_residual;
        benchmark::DoNotOptimize(residual);
    }
    state.counters["peak_MB"] = peak_megabytes();
}
BENCHMARK(factorised)
    ->ArgName("size")
    ->Arg(0)
    ->Arg(1)
    ->Arg(2)
    ->Iterations(1)
    ->UseRealTime()
    ->Unit(benchmark::kMillisecond);

// Conjugate gradients of Eigen with an incomplete factorisation, matrix given.
void incomplete_cholesky(benchmark::State& state)
{
    const Splice s = splice(state.range(0));
    const Eigen::SparseMatrix<double> K = supported_stiffness(s.mesh, s.body);
    const Eigen::VectorXd f = K * Eigen::VectorXd::Ones(K.rows());
    double iterations = 0;
    for (auto _ : state)
    {
        Eigen::ConjugateGradient<Eigen::SparseMatrix<double>, Eigen::Lower | Eigen::Upper,
                                 Eigen::IncompleteCholesky<double>>
            solver;
        solver.setTolerance(1e-8);
        solver.compute(K);
        const Eigen::VectorXd u = solver.solve(f);
        iterations = static_cast<double>(solver.iterations());
        const double size = u.norm();
        benchmark::DoNotOptimize(size);
    }
    state.counters["iterations"] = iterations;
}
BENCHMARK(incomplete_cholesky)
    ->ArgName("size")
    ->Arg(0)
    ->Arg(1)
    ->Iterations(1)
    ->UseRealTime()
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace splicewright

BENCHMARK_MAIN();
