// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>

namespace splicewright
{

// The inner loops of the solid solver, compiled once for each kind of processor and chosen when the program runs.
// Each kind is a source file of its own with vector flags of its own and includes nothing that could leak code
// compiled with these flags into the rest of the program.

// Elements are worked on sixteen at a time, lane by lane; nodes carry x, y, z and one unused number.
constexpr int batch_lanes = 16;
constexpr int node_stride = 4;
// Straight element: gradients of the barycentric coordinates 1, 2, 3, then V lambda / 20 and V mu / 20.
constexpr int factors_of_straight = 11;
// Curved element: the same eleven at each of eight quadrature points, with the weight in place of V / 20.
constexpr int curved_points = 8;
constexpr int factors_of_curved = 11 * curved_points;

// Degree-3 rule with positive weights: point k of an orbit has `near` at corner k and `far` at the three others.
// Source: [Keast1986]; the first number from memory: verify, the others solved from it
// to all digits. A test integrates all monomials of degree 3.
constexpr double orbit_far[2] = {0.328054696711427, 0.10695227393293449168};
constexpr double orbit_near[2] = {1 - 3 * orbit_far[0], 1 - 3 * orbit_far[1]};
constexpr double orbit_weight[2] = {0.023087994418642369986, 0.018578672248024296680};

// Edge between two corners, as a node of the element.
constexpr int edge_node[4][4] = {{-1, 4, 6, 7}, {4, -1, 5, 8}, {6, 5, -1, 9}, {7, 8, 9, -1}};

// Adds the forces K x of n_batches elements to y.
template <class Real>
struct ElementForces
{
    const Real* factors = nullptr;           // [n_batches, factors, batch_lanes]
    const std::uint32_t* nodes = nullptr;    // [n_batches, 10, batch_lanes] first number of a node in x
    const std::uint32_t* targets = nullptr;  // [n_batches, 10, batch_lanes] first number of a row in y
    std::int64_t n_batches = 0;
    const Real* x = nullptr;  // [n, node_stride] mm
    Real* y = nullptr;        // [n, node_stride] N
};

// One step of the Chebyshev-Jacobi smoother over the nodes first to last, at the start without y and d:
// r -= y; d = keep d + step inverse_diagonal r; u += d.
struct SmootherStep
{
    const float* inverse_diagonal = nullptr;  // [n, 8]: xx xy xz yy yz zz 0 0
    const float* y = nullptr;                 // [n, node_stride]
    float *r = nullptr, *d = nullptr, *u = nullptr;
    float keep = 0, step = 0;
    std::int64_t first = 0, last = 0;
};

struct SolidKernels
{
    const char* name = "";
    void (*straight_single)(const ElementForces<float>&) = nullptr;
    void (*straight_double)(const ElementForces<double>&) = nullptr;
    void (*curved_single)(const ElementForces<float>&) = nullptr;
    void (*curved_double)(const ElementForces<double>&) = nullptr;
    void (*smooth_start)(const SmootherStep&) = nullptr;  // d = step inverse_diagonal r; u = d
    void (*smooth)(const SmootherStep&) = nullptr;
};

// Null where the compiler or the processor does not know the vectors.
const SolidKernels* portable_kernels();
const SolidKernels* avx2_kernels();
const SolidKernels* avx512_kernels();

// The fastest that this processor runs.
const SolidKernels& best_kernels();

}  // namespace splicewright
