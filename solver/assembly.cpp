// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/assembly.h"

#include <algorithm>

namespace splicewright
{
namespace
{

std::size_t at(int i) { return static_cast<std::size_t>(i); }

template <int n>
void add_product(const ElementStiffness& stiffness, const Eigen::VectorXd& x, Eigen::VectorXd& f)
{
    using Vector = Eigen::Matrix<double, n, 1>;
    for (int e = 0; e < stiffness.n_elements(); ++e)
    {
        const auto first = stiffness.entry.begin() + stiffness.start[at(e)],
                   last = stiffness.entry.begin() + stiffness.start[at(e + 1)];
        Vector u = Vector::Zero();
        for (auto k = first; k != last; ++k) u(k->local) += k->factor * x(k->free);
        const Vector force = Eigen::Map<const Eigen::Matrix<double, n, n>>(stiffness.block(e)) * u;
        for (auto k = first; k != last; ++k) f(k->free) += k->factor * force(k->local);
    }
}

}  // namespace

ElementStiffness element_stiffness(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                                   const Freedoms& free)
{
    const int per_node = unknowns_per_node(kind);
    ElementStiffness result;
    result.n = 6 * per_node;
    result.n_free = free.n_free;
    result.value.resize(at(result.n * result.n) * at(mesh.n_triangles()));
    result.start.push_back(0);
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        const TriangleNodes nodes = mesh.node(Eigen::all, mesh.triangle.col(t));
        const ElementMatrix K = element_stiffness(kind, steel[at(mesh.region_of[at(t)])], nodes);
        std::copy(K.data(), K.data() + K.size(), result.value.data() + at(result.n * result.n) * at(t));
        for (int i = 0; i < result.n; ++i)
        {
            const Freedoms::Unknown& row = free.unknown[at(mesh.triangle(i / per_node, t) * per_node + i % per_node)];
            for (int k = 0; k < row.n_terms; ++k)
                result.entry.push_back({row.term[at(k)].free, i, row.term[at(k)].factor});
        }
        result.start.push_back(static_cast<int>(result.entry.size()));
    }
    return result;
}

Eigen::VectorXd product(const ElementStiffness& stiffness, const Eigen::VectorXd& x)
{
    Eigen::VectorXd f = Eigen::VectorXd::Zero(stiffness.n_free);
    switch (stiffness.n)
    {
        case 6: add_product<6>(stiffness, x, f); break;
        case 12: add_product<12>(stiffness, x, f); break;
        default: add_product<18>(stiffness, x, f); break;
    }
    return f;
}

Eigen::SparseMatrix<double> assembled(const ElementStiffness& stiffness)
{
    std::vector<Eigen::Triplet<double>> entries;
    for (int e = 0; e < stiffness.n_elements(); ++e)
    {
        const Eigen::Map<const Eigen::MatrixXd> K(stiffness.block(e), stiffness.n, stiffness.n);
        for (int i = stiffness.start[at(e)]; i < stiffness.start[at(e + 1)]; ++i)
            for (int j = stiffness.start[at(e)]; j < stiffness.start[at(e + 1)]; ++j)
            {
                const ElementStiffness::Entry &row = stiffness.entry[at(i)], &column = stiffness.entry[at(j)];
                if (row.free >= column.free)
                    entries.emplace_back(row.free, column.free,
                                         row.factor * column.factor * K(row.local, column.local));
            }
    }
    Eigen::SparseMatrix<double> K(stiffness.n_free, stiffness.n_free);
    K.setFromTriplets(entries.begin(), entries.end());
    return K;
}

Eigen::VectorXd force_on_free(const Freedoms& free, const Eigen::VectorXd& load)
{
    Eigen::VectorXd f = Eigen::VectorXd::Zero(free.n_free);
    for (Eigen::Index i = 0; i < load.size(); ++i)
    {
        const Freedoms::Unknown& row = free.unknown[static_cast<std::size_t>(i)];
        for (int k = 0; k < row.n_terms; ++k) f(row.term[at(k)].free) += row.term[at(k)].factor * load(i);
    }
    return f;
}

Eigen::VectorXd force_of_constants(const Mesh& mesh, const ElementStiffness& stiffness, const Freedoms& free)
{
    const int n = stiffness.n, per_node = n / 6;
    Eigen::VectorXd f = Eigen::VectorXd::Zero(free.n_free);
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        Eigen::VectorXd constant(n);
        for (int i = 0; i < n; ++i)
            constant(i) = free.unknown[at(mesh.triangle(i / per_node, t) * per_node + i % per_node)].constant;
        if (constant.isZero(0)) continue;
        const Eigen::VectorXd force = Eigen::Map<const Eigen::MatrixXd>(stiffness.block(t), n, n) * constant;
        for (int k = stiffness.start[at(t)]; k < stiffness.start[at(t + 1)]; ++k)
            f(stiffness.entry[at(k)].free) -= stiffness.entry[at(k)].factor * force(stiffness.entry[at(k)].local);
    }
    return f;
}

}  // namespace splicewright
