// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "solver/solid_kernels.h"
#include "solver/solid_kernels_lanes.h"

// Included by the solid_kernels_*.cpp only, each with its own vector flags: everything here has internal linkage,
// and no standard header with code is included. W lanes of Real make one vector of the processor.

// NOLINTBEGIN(misc-definitions-in-headers,modernize-loop-convert): each kernel source includes it once; unrolled loops
// count
namespace splicewright
{

namespace
{

// The x, y, z of W nodes as three vectors.
template <class Real, int W>
SPLICEWRIGHT_INLINE void gather(const Real* x, const std::uint32_t* nodes, typename Lanes<Real, W>::V* u)
{
    using L = Lanes<Real, W>;
    typename L::Row rows[W];
#pragma GCC unroll 16
    for (int l = 0; l < W; ++l) rows[l] = *reinterpret_cast<const typename L::LooseRow*>(x + std::uint64_t{nodes[l]});
    typename L::V r[4];
#pragma GCC unroll 4
    for (int k = 0; k < 4; ++k) Shuffles<W>::join(r[k], rows, k);
    transpose<Real, W>(r);
    u[0] = r[0];
    u[1] = r[1];
    u[2] = r[2];
}

// Adds three vectors to the x, y, z of W nodes, one node after the other: two lanes may name the same node.
template <class Real, int W>
SPLICEWRIGHT_INLINE void scatter(Real* y, const std::uint32_t* nodes, const typename Lanes<Real, W>::V* f)
{
    using L = Lanes<Real, W>;
    typename L::V r[4] = {f[0], f[1], f[2], f[2] - f[2]};
    transpose<Real, W>(r);
    typename L::Row rows[W];
#pragma GCC unroll 4
    for (int k = 0; k < 4; ++k) Shuffles<W>::part(r[k], rows, k);
#pragma GCC unroll 16
    for (int l = 0; l < W; ++l) *reinterpret_cast<typename L::LooseRow*>(y + std::uint64_t{nodes[l]}) += rows[l];
}

// c[3 i + a]: derivative of u_a along barycentric coordinate i + 1 against coordinate 0, at corner k.
// Shape functions: corners l (2 l - 1), edges 4 l m. Source: [Zienkiewicz2005] section 4.6.
template <int k, class V>
SPLICEWRIGHT_INLINE void corner_slopes(const V (*u)[3], V* c)
{
#pragma GCC unroll 3
    for (int a = 0; a < 3; ++a)
    {
        const V zero = k == 0 ? 3 * u[0][a] : 4 * u[k == 0 ? 0 : edge_node[0][k]][a] - u[0][a];
#pragma GCC unroll 3
        for (int i = 1; i < 4; ++i)
            c[3 * (i - 1) + a] = (i == k ? 3 * u[i][a] : 4 * u[i == k ? 0 : edge_node[i][k]][a] - u[i][a]) - zero;
    }
}

// Engineering strain xx yy zz xy yz xz from slopes c and gradients g[3 i + b] of the coordinates.
template <class V>
SPLICEWRIGHT_INLINE void strain_of(const V* c, const V* g, V* e)
{
    e[0] = c[0] * g[0] + c[3] * g[3] + c[6] * g[6];
    e[1] = c[1] * g[1] + c[4] * g[4] + c[7] * g[7];
    e[2] = c[2] * g[2] + c[5] * g[5] + c[8] * g[8];
    e[3] = c[0] * g[1] + c[3] * g[4] + c[6] * g[7] + c[1] * g[0] + c[4] * g[3] + c[7] * g[6];
    e[4] = c[1] * g[2] + c[4] * g[5] + c[7] * g[8] + c[2] * g[1] + c[5] * g[4] + c[8] * g[7];
    e[5] = c[0] * g[2] + c[3] * g[5] + c[6] * g[8] + c[2] * g[0] + c[5] * g[3] + c[8] * g[6];
}

// F[3 i + a]: stress of strain e times the gradients of the coordinates 1, 2, 3. lambda, mu: times the weight.
template <class V>
SPLICEWRIGHT_INLINE void stress_on_gradients(const V* e, const V* g, const V& lambda, const V& mu, V* F)
{
    const V pressure = lambda * (e[0] + e[1] + e[2]), twice = mu + mu;
    const V xx = pressure + twice * e[0], yy = pressure + twice * e[1], zz = pressure + twice * e[2];
    const V xy = mu * e[3], yz = mu * e[4], xz = mu * e[5];
#pragma GCC unroll 3
    for (int i = 0; i < 3; ++i)
    {
        F[3 * i] = xx * g[3 * i] + xy * g[3 * i + 1] + xz * g[3 * i + 2];
        F[3 * i + 1] = xy * g[3 * i] + yy * g[3 * i + 1] + yz * g[3 * i + 2];
        F[3 * i + 2] = xz * g[3 * i] + yz * g[3 * i + 1] + zz * g[3 * i + 2];
    }
}

// Adds the forces F of corner k to the nodes: the transpose of corner_slopes.
template <int k, class V>
SPLICEWRIGHT_INLINE void spread(const V* F, V (*f)[3])
{
#pragma GCC unroll 3
    for (int a = 0; a < 3; ++a)
    {
        const V G[4] = {-(F[a] + F[3 + a] + F[6 + a]), F[a], F[3 + a], F[6 + a]};
#pragma GCC unroll 4
        for (int i = 0; i < 4; ++i)
        {
            if (i == k) f[i][a] += 3 * G[i];
            else
            {
                f[i][a] -= G[i];
                f[i == k ? 0 : edge_node[i][k]][a] += 4 * G[i];
            }
        }
    }
}

template <int n, class V, class Real>
SPLICEWRIGHT_INLINE void load_factors(V* to, const Real* from)
{
#pragma GCC unroll 11
    for (int i = 0; i < n; ++i) to[i] = *reinterpret_cast<const V*>(from + batch_lanes * i);
}

template <class Real, int W>
SPLICEWRIGHT_INLINE void gather_element(const ElementForces<Real>& on, const std::uint32_t* nodes,
                                        typename Lanes<Real, W>::V (*u)[3])
{
#pragma GCC unroll 10
    for (int n = 0; n < 10; ++n) gather<Real, W>(on.x, nodes + batch_lanes * n, u[n]);
}

template <class Real, int W>
SPLICEWRIGHT_INLINE void scatter_element(const ElementForces<Real>& on, const std::uint32_t* targets,
                                         typename Lanes<Real, W>::V (*f)[3])
{
#pragma GCC unroll 10
    for (int n = 0; n < 10; ++n) scatter<Real, W>(on.y, targets + batch_lanes * n, f[n]);
}

// The strain of a straight element is linear: integral of s_k l_k over it is V/20 (s_k + sum of all s).
template <class Real, int W>
void straight_forces(const ElementForces<Real>& on)
{
    using V = typename Lanes<Real, W>::V;
    for (std::int64_t b = 0; b < on.n_batches; ++b)
    {
        for (int lane = 0; lane < batch_lanes; lane += W)
        {
            const std::int64_t at = b * 10 * batch_lanes + lane;
            V u[10][3], e[4][6], c[9], g[factors_of_straight], F[9], f[10][3] = {};
            gather_element<Real, W>(on, on.nodes + at, u);
            load_factors<factors_of_straight>(g, on.factors + b * factors_of_straight * batch_lanes + lane);
            corner_slopes<0>(u, c), strain_of(c, g, e[0]);
            corner_slopes<1>(u, c), strain_of(c, g, e[1]);
            corner_slopes<2>(u, c), strain_of(c, g, e[2]);
            corner_slopes<3>(u, c), strain_of(c, g, e[3]);
#pragma GCC unroll 6
            for (int i = 0; i < 6; ++i)
            {
                const V sum = e[0][i] + e[1][i] + e[2][i] + e[3][i];
#pragma GCC unroll 4
                for (int k = 0; k < 4; ++k) e[k][i] += sum;
            }
            stress_on_gradients(e[0], g, g[9], g[10], F), spread<0>(F, f);
            stress_on_gradients(e[1], g, g[9], g[10], F), spread<1>(F, f);
            stress_on_gradients(e[2], g, g[9], g[10], F), spread<2>(F, f);
            stress_on_gradients(e[3], g, g[9], g[10], F), spread<3>(F, f);
            scatter_element<Real, W>(on, on.targets + at, f);
        }
    }
}

// One orbit of four quadrature points of a curved element; factors of the orbit begin at `factors`.
template <class Real, int W, class V>
SPLICEWRIGHT_INLINE void curved_orbit(const Real* factors, double far, double near, const V (*c)[9], const V* sum,
                                      V (*corner)[9], V* all)
{
    const V a = static_cast<Real>(far) + V{}, b = static_cast<Real>(near - far) + V{};
    for (int k = 0; k < 4; ++k)
    {
        V g[factors_of_straight], slope[9], e[6], F[9];
        load_factors<factors_of_straight>(g, factors + k * factors_of_straight * batch_lanes);
#pragma GCC unroll 9
        for (int i = 0; i < 9; ++i) slope[i] = a * sum[i] + b * c[k][i];
        strain_of(slope, g, e);
        stress_on_gradients(e, g, g[9], g[10], F);
#pragma GCC unroll 9
        for (int i = 0; i < 9; ++i)
        {
            corner[k][i] += b * F[i];
            all[i] += a * F[i];
        }
    }
}

template <class Real, int W>
void curved_forces(const ElementForces<Real>& on)
{
    using V = typename Lanes<Real, W>::V;
    for (std::int64_t b = 0; b < on.n_batches; ++b)
    {
        for (int lane = 0; lane < batch_lanes; lane += W)
        {
            const std::int64_t at = b * 10 * batch_lanes + lane;
            const Real* factors = on.factors + b * factors_of_curved * batch_lanes + lane;
            V u[10][3], c[4][9], sum[9], corner[4][9] = {}, all[9] = {}, f[10][3] = {};
            gather_element<Real, W>(on, on.nodes + at, u);
            corner_slopes<0>(u, c[0]), corner_slopes<1>(u, c[1]);
            corner_slopes<2>(u, c[2]), corner_slopes<3>(u, c[3]);
            for (int i = 0; i < 9; ++i) sum[i] = c[0][i] + c[1][i] + c[2][i] + c[3][i];
            for (int o = 0; o < 2; ++o)
                curved_orbit<Real, W>(factors + o * 4 * factors_of_straight * batch_lanes, orbit_far[o], orbit_near[o],
                                      c, sum, corner, all);
            for (int k = 0; k < 4; ++k)
                for (int i = 0; i < 9; ++i) corner[k][i] += all[i];
            spread<0>(corner[0], f), spread<1>(corner[1], f);
            spread<2>(corner[2], f), spread<3>(corner[3], f);
            scatter_element<Real, W>(on, on.targets + at, f);
        }
    }
}

// D r of one node, D given by its upper triangle.
SPLICEWRIGHT_INLINE void times_diagonal(const float* D, const Lanes<float, 4>::Row& r, Lanes<float, 4>::Row& z)
{
    using Row = Lanes<float, 4>::Row;
    z = Row{D[0], D[1], D[2], 0} * r[0] + Row{D[1], D[3], D[4], 0} * r[1] + Row{D[2], D[4], D[5], 0} * r[2];
}

void start_smoothing(const SmootherStep& on)
{
    using Loose = Lanes<float, 4>::LooseRow;
    for (std::int64_t i = on.first; i < on.last; ++i)
    {
        const Lanes<float, 4>::Row r = *reinterpret_cast<const Loose*>(on.r + 4 * i);
        Lanes<float, 4>::Row z;
        times_diagonal(on.inverse_diagonal + 8 * i, r, z);
        z *= on.step;
        *reinterpret_cast<Loose*>(on.d + 4 * i) = z;
        *reinterpret_cast<Loose*>(on.u + 4 * i) = z;
    }
}

void smooth_nodes(const SmootherStep& on)
{
    using Row = Lanes<float, 4>::Row;
    using Loose = Lanes<float, 4>::LooseRow;
    for (std::int64_t i = on.first; i < on.last; ++i)
    {
        const Row r = *reinterpret_cast<const Loose*>(on.r + 4 * i) - *reinterpret_cast<const Loose*>(on.y + 4 * i);
        Row z;
        times_diagonal(on.inverse_diagonal + 8 * i, r, z);
        const Row d = on.keep * *reinterpret_cast<const Loose*>(on.d + 4 * i) + on.step * z;
        *reinterpret_cast<Loose*>(on.r + 4 * i) = r;
        *reinterpret_cast<Loose*>(on.d + 4 * i) = d;
        *reinterpret_cast<Loose*>(on.u + 4 * i) += d;
    }
}

template <int single_lanes, int double_lanes>
constexpr SolidKernels kernels_named(const char* name)
{
    return {name,
            straight_forces<float, single_lanes>,
            straight_forces<double, double_lanes>,
            curved_forces<float, single_lanes>,
            curved_forces<double, double_lanes>,
            start_smoothing,
            smooth_nodes};
}

}  // namespace

}  // namespace splicewright

#undef SPLICEWRIGHT_INLINE
// NOLINTEND(misc-definitions-in-headers,modernize-loop-convert)
