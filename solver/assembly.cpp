// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/assembly.h"

#include <algorithm>

namespace splicewright
{
namespace
{

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// One term of one unknown of one element.
struct Entry
{
    int free = 0;
    int local = 0;  // unknown within the element
    double factor = 0;
};

// Entries of all elements behind each other, and for each free unknown the entries that name it.
struct Incidence
{
    std::vector<Entry> entry;
    std::vector<int> element_start;  // [n_triangles + 1] into entry
    std::vector<int> owner;          // element of each entry
    std::vector<int> column_start;   // [n_free + 1] into by_column
    std::vector<int> by_column;      // entries sorted by free unknown
};

Incidence incidence(const Mesh& mesh, int n, const Freedoms& free)
{
    Incidence result;
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        result.element_start.push_back(static_cast<int>(result.entry.size()));
        for (int i = 0; i < 6 * n; ++i)
        {
            const Freedoms::Unknown& row = free.unknown[at(mesh.triangle(i / n, t) * n + i % n)];
            for (int k = 0; k < row.n_terms; ++k)
            {
                result.entry.push_back({row.term[at(k)].free, i, row.term[at(k)].factor});
                result.owner.push_back(t);
            }
        }
    }
    result.element_start.push_back(static_cast<int>(result.entry.size()));
    result.column_start.assign(at(free.n_free + 1), 0);
    for (const Entry& entry : result.entry) ++result.column_start[at(entry.free + 1)];
    for (int c = 0; c < free.n_free; ++c) result.column_start[at(c + 1)] += result.column_start[at(c)];
    std::vector<int> next(result.column_start.begin(), result.column_start.end() - 1);
    result.by_column.resize(result.entry.size());
    for (std::size_t e = 0; e < result.entry.size(); ++e)
        result.by_column[at(next[at(result.entry[e].free)]++)] = static_cast<int>(e);
    return result;
}

Eigen::SparseMatrix<double> summed(const Incidence& in, const std::vector<ElementMatrix>& Ke, int n_free)
{
    std::vector<int> outer{0}, inner;
    std::vector<double> value;
    std::vector<int> place(at(n_free), -1);  // of a row within the present column
    std::vector<int> rows;
    for (int column = 0; column < n_free; ++column)
    {
        rows.clear();
        const int first = in.column_start[at(column)], last = in.column_start[at(column + 1)];
        for (int e = first; e < last; ++e)
        {
            const int t = in.owner[at(in.by_column[at(e)])];
            for (int k = in.element_start[at(t)]; k < in.element_start[at(t + 1)]; ++k)
            {
                const int row = in.entry[at(k)].free;
                if (row < column || place[at(row)] >= 0) continue;
                place[at(row)] = 0;
                rows.push_back(row);
            }
        }
        std::sort(rows.begin(), rows.end());
        const int start = static_cast<int>(inner.size());
        for (std::size_t i = 0; i < rows.size(); ++i) place[at(rows[i])] = start + static_cast<int>(i);
        inner.insert(inner.end(), rows.begin(), rows.end());
        value.resize(inner.size(), 0.0);
        for (int e = first; e < last; ++e)
        {
            const Entry& right = in.entry[at(in.by_column[at(e)])];
            const int t = in.owner[at(in.by_column[at(e)])];
            for (int k = in.element_start[at(t)]; k < in.element_start[at(t + 1)]; ++k)
            {
                const Entry& left = in.entry[at(k)];
                if (left.free >= column)
                    value[at(place[at(left.free)])] += left.factor * right.factor * Ke[at(t)](left.local, right.local);
            }
        }
        for (const int row : rows) place[at(row)] = -1;
        outer.push_back(static_cast<int>(inner.size()));
    }
    return Eigen::Map<const Eigen::SparseMatrix<double>>(n_free, n_free, static_cast<int>(inner.size()), outer.data(),
                                                         inner.data(), value.data());
}

}  // namespace

System assembled(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind, const Freedoms& free,
                 const Eigen::VectorXd& load)
{
    const int n = unknowns_per_node(kind);
    const Incidence in = incidence(mesh, n, free);
    System system{{}, Eigen::VectorXd::Zero(free.n_free)};
    for (Eigen::Index i = 0; i < load.size(); ++i)
    {
        const Freedoms::Unknown& row = free.unknown[static_cast<std::size_t>(i)];
        for (int k = 0; k < row.n_terms; ++k) system.f(row.term[at(k)].free) += row.term[at(k)].factor * load(i);
    }
    std::vector<ElementMatrix> Ke(at(mesh.n_triangles()));
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const TriangleNodes nodes = mesh.node(Eigen::all, mesh.triangle.col(t));
        Ke[at(t)] = element_stiffness(kind, steel[at(mesh.region_of[at(t)])], nodes);
        Eigen::VectorXd constant(6 * n);
        for (int i = 0; i < 6 * n; ++i) constant(i) = free.unknown[at(mesh.triangle(i / n, t) * n + i % n)].constant;
        if (constant.isZero(0)) continue;
        const Eigen::VectorXd force = Ke[at(t)] * constant;
        for (int k = in.element_start[at(t)]; k < in.element_start[at(t + 1)]; ++k)
            system.f(in.entry[at(k)].free) -= in.entry[at(k)].factor * force(in.entry[at(k)].local);
    }
    system.K = summed(in, Ke, free.n_free);
    return system;
}

}  // namespace splicewright
