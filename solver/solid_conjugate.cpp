// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_conjugate.h"

#include <cmath>

namespace splicewright
{

namespace
{

constexpr std::int64_t piece_size = 4096;

// Sums over all nodes, piece by piece in a fixed order: part(first, last) gives N sums of its nodes.
template <std::size_t N, class Part>
std::array<double, N> sums(SolidTeam& team, std::int64_t n_nodes, const Part& part)
{
    std::vector<std::array<double, N>> pieces(static_cast<std::size_t>((n_nodes + piece_size - 1) / piece_size));
    team.run_pieces(n_nodes, piece_size,
                    [&](std::int64_t first, std::int64_t last)
                    { pieces[static_cast<std::size_t>(first / piece_size)] = part(first, last); });
    std::array<double, N> all{};
    for (const auto& piece : pieces)
        for (std::size_t i = 0; i < N; ++i) all[i] += piece[i];
    return all;
}

// One load with what the recurrence carries along.
struct Running
{
    ConjugateLoad* load = nullptr;
    double scale = 1;  // the preconditioner got r / scale
    double rz = 0;     // r . z of the last direction, 0: none yet
    double alpha = 0;  // last step
    double rz_new = 0;
};

void put_residual(SolidTeam& team, Running& run, std::int64_t n_nodes)
{
    run.scale = run.load->r_norm;
    const double factor = 1 / run.scale;
    team.run_pieces(n_nodes, piece_size,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (auto i = static_cast<std::size_t>(node_stride * first);
                             i < static_cast<std::size_t>(node_stride * last); ++i)
                            run.load->work.r[i] = static_cast<float>(factor * run.load->r[i]);
                    });
}

// p = z + beta p, with beta from the change of the residual.
void turn(SolidTeam& team, Running& run, std::int64_t n_nodes)
{
    ConjugateLoad& l = *run.load;
    const auto [rz, qz] = sums<2>(team, n_nodes,
                                  [&](std::int64_t first, std::int64_t last)
                                  {
                                      std::array<double, 2> sum{};
                                      for (std::int64_t i = first; i < last; ++i)
                                          for (std::int64_t a = node_stride * i; a < node_stride * i + 3; ++a)
                                          {
                                              const auto at = static_cast<std::size_t>(a);
                                              sum[0] += l.r[at] * double{l.work.u[at]};
                                              sum[1] += l.q[at] * double{l.work.u[at]};
                                          }
                                      return sum;
                                  });
    run.rz_new = run.scale * rz;
    const double beta = run.rz > 0 ? -run.alpha * run.scale * qz / run.rz : 0;
    run.rz = run.rz_new;
    team.run_pieces(n_nodes, piece_size,
                    [&](std::int64_t first, std::int64_t last)
                    {
                        for (auto i = static_cast<std::size_t>(node_stride * first);
                             i < static_cast<std::size_t>(node_stride * last); ++i)
                            l.p[i] = run.scale * double{l.work.u[i]} + beta * l.p[i];
                    });
}

// u += alpha p, r -= alpha q, and the residual for the preconditioner.
void step(SolidTeam& team, Running& run, double pq, std::int64_t n_nodes)
{
    ConjugateLoad& l = *run.load;
    run.alpha = run.rz / pq;
    run.scale = l.r_norm;
    const double factor = 1 / run.scale;
    const auto [rr] = sums<1>(team, n_nodes,
                              [&](std::int64_t first, std::int64_t last)
                              {
                                  std::array<double, 1> sum{};
                                  for (std::int64_t i = first; i < last; ++i)
                                      for (std::int64_t a = node_stride * i; a < node_stride * i + 3; ++a)
                                      {
                                          const auto at = static_cast<std::size_t>(a);
                                          l.u[at] += run.alpha * l.p[at];
                                          l.r[at] -= run.alpha * l.q[at];
                                          l.work.r[at] = static_cast<float>(factor * l.r[at]);
                                          sum[0] += l.r[at] * l.r[at];
                                      }
                                  return sum;
                              });
    l.r_norm = std::sqrt(rr);
    ++l.iterations;
}

// q = K p for all loads at once; returns p . q of each.
std::vector<double> products(SolidTeam& team, const SolidOperator<double>& K, const std::vector<Running>& running)
{
    std::vector<OperatorLoad<double>> on;
    for (const Running& run : running) on.push_back({run.load->p.data(), run.load->q.data()});
    std::vector<std::vector<double>> parts(running.size(), std::vector<double>(static_cast<std::size_t>(K.n_tasks())));
    K.apply(team, on,
            [&](std::int64_t task, std::size_t load, std::int64_t first, std::int64_t last)
            {
                double sum = 0;
                for (std::int64_t i = first; i < last; ++i)
                    for (std::int64_t a = node_stride * i; a < node_stride * i + 3; ++a)
                        sum += on[load].x[a] * on[load].y[a];
                parts[load][static_cast<std::size_t>(task)] = sum;
            });
    std::vector<double> result;
    for (const auto& part : parts)
    {
        double sum = 0;
        for (const double value : part) sum += value;
        result.push_back(sum);
    }
    return result;
}

}  // namespace

double node_product(SolidTeam& team, const NodeValues<double>& a, const NodeValues<double>& b, std::int64_t n_nodes)
{
    const auto [sum] = sums<1>(team, n_nodes,
                               [&](std::int64_t first, std::int64_t last)
                               {
                                   std::array<double, 1> part{};
                                   for (std::int64_t i = first; i < last; ++i)
                                       for (std::int64_t c = node_stride * i; c < node_stride * i + 3; ++c)
                                           part[0] += a[static_cast<std::size_t>(c)] * b[static_cast<std::size_t>(c)];
                                   return part;
                               });
    return sum;
}

void iterate(SolidTeam& team, const SolidOperator<double>& K, const SolidMultigrid& multigrid, const SolidHold& hold,
             std::vector<ConjugateLoad>& loads, double tolerance, int most_iterations)
{
    const std::int64_t n_nodes = K.layout->n_nodes;
    std::vector<Running> running;
    const auto ends = [&](const ConjugateLoad& load)
    { return !(load.r_norm > tolerance * load.f_norm) || load.iterations >= most_iterations; };
    for (ConjugateLoad& load : loads)
        if (!ends(load)) running.push_back({&load});
    for (Running& run : running) put_residual(team, run, n_nodes);
    while (!running.empty())
    {
        std::vector<MultigridWork*> work;
        for (Running& run : running) work.push_back(&run.load->work);
        multigrid.cycle(team, work);
        for (Running& run : running)
        {
            turn(team, run, n_nodes);
            hold.project(run.load->p.data());
        }
        const std::vector<double> pq = products(team, K, running);
        // r moves no pair then, so that r . z and q . z are those of a projected z; p moves none, so p . q stays.
        for (Running& run : running) hold.project(run.load->q.data());
        for (std::size_t i = 0; i < running.size(); ++i)
        {
            // Neither happens with a stiffness that is positive: the residual then stays, and the caller refuses it.
            if (!(pq[i] > 0) || !(running[i].rz > 0)) running[i].load->iterations = most_iterations;
            else step(team, running[i], pq[i], n_nodes);
        }
        std::erase_if(running, [&](const Running& run) { return ends(*run.load); });
    }
}

}  // namespace splicewright
