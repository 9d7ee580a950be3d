// SPDX-License-Identifier: GPL-2.0-or-later
#include <benchmark/benchmark.h>

#include <array>
#include <filesystem>
#include <functional>
#include <stdexcept>

#include "app/check_splice.h"
#include "app/memory.h"
#include "app/scenarios.h"
#include "app/write_report.h"
#include "cases/read_case.h"
#include "mesh/gmsh_mesher.h"
#include "solver/assembly.h"
#include "solver/meridian_level.h"
#include "solver/sparse_solve.h"

// Run with: ./run bench. Ratios count, single times do not: machines are shared.
namespace splicewright
{
namespace
{

Case typical_splice()
{
    const Result<Case> asked =
        read_case_file(std::filesystem::path(SPLICEWRIGHT_SOURCE_DIR) / "cases/examples/hill-climb-rear-left.toml");
    if (!asked.has_value()) throw std::runtime_error("the example case does not read");
    return asked.value();
}

// The library's own sink corrupts large values of this compiler; a number is enough.
void keep(auto number) { benchmark::DoNotOptimize(number); }

MeshSize size_of(double elements_per_quarter_turn)
{
    MeshSize size;
    size.elements_per_quarter_turn = elements_per_quarter_turn;
    return size;
}

void mesh_only(benchmark::State& state)
{
    const Outline shape = outline(typical_splice(), {});
    for (auto _ : state) keep(generate_mesh(shape, size_of(8)).n_nodes());
}
BENCHMARK(mesh_only)->Unit(benchmark::kMillisecond);

void one_load(benchmark::State& state, LoadKind kind)
{
    const Case asked = typical_splice();
    const Mesh mesh = generate_mesh(outline(asked, {}), size_of(8));
    const std::vector<ElasticConstants> steel = steel_by_region(asked, mesh.region);
    for (auto _ : state) keep(unit_solution(mesh, steel, kind, {}).work);
}
BENCHMARK_CAPTURE(one_load, torsion, LoadKind::torsion)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(one_load, axial, LoadKind::axial)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(one_load, bending, LoadKind::bending)->Unit(benchmark::kMillisecond);

// The same three loads with one order of elimination for all, with one for each, and by the general solver, which
// finds its order in the assembled matrix: what reuse gains.
void three_loads(benchmark::State& state,
                 const std::function<double(const Mesh&, const std::vector<ElasticConstants>&)>& solved)
{
    const Case asked = typical_splice();
    const Mesh mesh = generate_mesh(outline(asked, {}), size_of(8));
    const std::vector<ElasticConstants> steel = steel_by_region(asked, mesh.region);
    for (auto _ : state) keep(solved(mesh, steel));
}
constexpr std::array<LoadKind, 3> all_loads{LoadKind::torsion, LoadKind::axial, LoadKind::bending};

void three_loads_with_one_order(benchmark::State& state)
{
    three_loads(state,
                [](const Mesh& mesh, const std::vector<ElasticConstants>& steel)
                {
                    const Elimination order = elimination_of(mesh, {});
                    double work = 0;
                    for (const LoadKind kind : all_loads) work += unit_solution(mesh, steel, kind, {}, order).work;
                    return work;
                });
}
BENCHMARK(three_loads_with_one_order)->Unit(benchmark::kMillisecond);

void three_loads_with_an_order_each(benchmark::State& state)
{
    three_loads(state,
                [](const Mesh& mesh, const std::vector<ElasticConstants>& steel)
                {
                    double work = 0;
                    for (const LoadKind kind : all_loads) work += unit_solution(mesh, steel, kind, {}).work;
                    return work;
                });
}
BENCHMARK(three_loads_with_an_order_each)->Unit(benchmark::kMillisecond);

void three_loads_by_the_general_solver(benchmark::State& state)
{
    three_loads(state,
                [](const Mesh& mesh, const std::vector<ElasticConstants>& steel)
                {
                    double sum = 0;
                    for (const LoadKind kind : all_loads)
                    {
                        const Freedoms free = freedoms(mesh, kind, {});
                        const Eigen::VectorXd f = Eigen::VectorXd::Ones(free.n_free);
                        sum += sparse_solution(assembled(element_stiffness(mesh, steel, kind, free)), f).sum();
                    }
                    return sum;
                });
}
BENCHMARK(three_loads_by_the_general_solver)->Unit(benchmark::kMillisecond);

// Mesh, three loads, recovery; growth with the number of unknowns.
void one_mesh_of_growing_size(benchmark::State& state)
{
    const Case asked = typical_splice();
    const Outline shape = outline(asked, {});
    MeshSize size = size_of(static_cast<double>(state.range(0)));
    size.growth = 0.4 * 8 / size.elements_per_quarter_turn;
    size.sections_per_wall = 2 * size.elements_per_quarter_turn / 8;
    int unknowns = 0;
    for (auto _ : state) unknowns = solved_level(asked, {}, shape, size).unknowns;
    state.SetComplexityN(unknowns);
    state.counters["unknowns"] = unknowns;
}
BENCHMARK(one_mesh_of_growing_size)->Arg(8)->Arg(16)->Arg(32)->Arg(64)->Unit(benchmark::kMillisecond)->Complexity();

void sound_splice_at_one_percent(benchmark::State& state)
{
    const Case asked = typical_splice();
    for (auto _ : state) keep(meridian_answer(asked, {}, {1.0}).twist.value);
}
BENCHMARK(sound_splice_at_one_percent)->Unit(benchmark::kMillisecond);

// What one option of a study takes.
void one_option_at_one_percent(benchmark::State& state)
{
    const Case asked = typical_splice();
    for (auto _ : state) keep(judged(asked, sound_splice(), {1.0}).checks.size());
}
BENCHMARK(one_option_at_one_percent)->Unit(benchmark::kMillisecond);

void whole_check_at_one_percent(benchmark::State& state)
{
    const Case asked = typical_splice();
    for (auto _ : state) keep(check_splice(asked, {1.0}).handbook.size());
}
BENCHMARK(whole_check_at_one_percent)->Unit(benchmark::kMillisecond);

void files_and_pictures(benchmark::State& state)
{
    const Report report = check_splice(typical_splice(), {1.0});
    const std::filesystem::path folder = std::filesystem::temp_directory_path() / "splicewright-bench";
    for (auto _ : state) keep(write_report(report, folder).pictures.size());
    std::filesystem::remove_all(folder);
}
BENCHMARK(files_and_pictures)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace splicewright

int main(int argc, char** argv)
{
    splicewright::keep_freed_memory();
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}
