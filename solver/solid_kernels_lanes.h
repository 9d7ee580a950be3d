// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

// Vector types of the kernels and their shuffles; part of solver/solid_kernels_body.h, with the same rules.

#define SPLICEWRIGHT_INLINE inline __attribute__((always_inline))

namespace splicewright
{

namespace
{

// The vector types of one kernel. Row: x, y, z and the unused number of one node.
template <class Real, int W>
struct Lanes;

// NOLINTBEGIN(bugprone-macro-parentheses): a type takes no parentheses
#define SPLICEWRIGHT_LANES(Real, W)                                                       \
    template <>                                                                           \
    struct Lanes<Real, W>                                                                 \
    {                                                                                     \
        typedef Real V __attribute__((vector_size(W * sizeof(Real))));                    \
        typedef Real Row __attribute__((vector_size(4 * sizeof(Real))));                  \
        typedef Real LooseV __attribute__((vector_size(W * sizeof(Real)), aligned(8)));   \
        typedef Real LooseRow __attribute__((vector_size(4 * sizeof(Real)), aligned(8))); \
    };
// NOLINTEND(bugprone-macro-parentheses)
SPLICEWRIGHT_LANES(float, 4)
SPLICEWRIGHT_LANES(float, 8)
SPLICEWRIGHT_LANES(float, 16)
SPLICEWRIGHT_LANES(double, 4)
SPLICEWRIGHT_LANES(double, 8)
#undef SPLICEWRIGHT_LANES

// Four rows each of W / 4 groups side by side: row k of group g stands at 4 g of vector k.
template <int W>
struct Shuffles;

template <>
struct Shuffles<4>
{
    template <class V, class Row>
    static SPLICEWRIGHT_INLINE void join(V& to, const Row* rows, int k)
    {
        to = rows[k];
    }
    template <class V, class Row>
    static SPLICEWRIGHT_INLINE void part(const V& from, Row* rows, int k)
    {
        rows[k] = from;
    }
};

template <>
struct Shuffles<8>
{
    template <class V, class Row>
    static SPLICEWRIGHT_INLINE void join(V& to, const Row* rows, int k)
    {
        to = __builtin_shufflevector(rows[k], rows[4 + k], 0, 1, 2, 3, 4, 5, 6, 7);
    }
    template <class V, class Row>
    static SPLICEWRIGHT_INLINE void part(const V& from, Row* rows, int k)
    {
        rows[k] = __builtin_shufflevector(from, from, 0, 1, 2, 3);
        rows[4 + k] = __builtin_shufflevector(from, from, 4, 5, 6, 7);
    }
};

template <>
struct Shuffles<16>
{
    template <class V, class Row>
    static SPLICEWRIGHT_INLINE void join(V& to, const Row* rows, int k)
    {
        const auto low = __builtin_shufflevector(rows[k], rows[4 + k], 0, 1, 2, 3, 4, 5, 6, 7);
        const auto high = __builtin_shufflevector(rows[8 + k], rows[12 + k], 0, 1, 2, 3, 4, 5, 6, 7);
        to = __builtin_shufflevector(low, high, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15);
    }
    template <class V, class Row>
    static SPLICEWRIGHT_INLINE void part(const V& from, Row* rows, int k)
    {
        rows[k] = __builtin_shufflevector(from, from, 0, 1, 2, 3);
        rows[4 + k] = __builtin_shufflevector(from, from, 4, 5, 6, 7);
        rows[8 + k] = __builtin_shufflevector(from, from, 8, 9, 10, 11);
        rows[12 + k] = __builtin_shufflevector(from, from, 12, 13, 14, 15);
    }
};

// Pairs of numbers side by side: a0 b0 a1 b1 of each group in single, a0 b0 a2 b2 in double precision.
template <class Real, int W, class V>
SPLICEWRIGHT_INLINE V low_pairs(const V& a, const V& b)
{
    if constexpr (sizeof(Real) == 8 && W == 4) return __builtin_shufflevector(a, b, 0, 4, 2, 6);
    else if constexpr (sizeof(Real) == 8) return __builtin_shufflevector(a, b, 0, 8, 2, 10, 4, 12, 6, 14);
    else if constexpr (W == 4) return __builtin_shufflevector(a, b, 0, 4, 1, 5);
    else if constexpr (W == 8) return __builtin_shufflevector(a, b, 0, 8, 1, 9, 4, 12, 5, 13);
    else return __builtin_shufflevector(a, b, 0, 16, 1, 17, 4, 20, 5, 21, 8, 24, 9, 25, 12, 28, 13, 29);
}

// a2 b2 a3 b3 of each group in single, a1 b1 a3 b3 in double precision.
template <class Real, int W, class V>
SPLICEWRIGHT_INLINE V high_pairs(const V& a, const V& b)
{
    if constexpr (sizeof(Real) == 8 && W == 4) return __builtin_shufflevector(a, b, 1, 5, 3, 7);
    else if constexpr (sizeof(Real) == 8) return __builtin_shufflevector(a, b, 1, 9, 3, 11, 5, 13, 7, 15);
    else if constexpr (W == 4) return __builtin_shufflevector(a, b, 2, 6, 3, 7);
    else if constexpr (W == 8) return __builtin_shufflevector(a, b, 2, 10, 3, 11, 6, 14, 7, 15);
    else return __builtin_shufflevector(a, b, 2, 18, 3, 19, 6, 22, 7, 23, 10, 26, 11, 27, 14, 30, 15, 31);
}

// First halves of each group of a and of b.
template <int W, class V>
SPLICEWRIGHT_INLINE V first_halves(const V& a, const V& b)
{
    if constexpr (W == 4) return __builtin_shufflevector(a, b, 0, 1, 4, 5);
    else if constexpr (W == 8) return __builtin_shufflevector(a, b, 0, 1, 8, 9, 4, 5, 12, 13);
    else return __builtin_shufflevector(a, b, 0, 1, 16, 17, 4, 5, 20, 21, 8, 9, 24, 25, 12, 13, 28, 29);
}

template <int W, class V>
SPLICEWRIGHT_INLINE V second_halves(const V& a, const V& b)
{
    if constexpr (W == 4) return __builtin_shufflevector(a, b, 2, 3, 6, 7);
    else if constexpr (W == 8) return __builtin_shufflevector(a, b, 2, 3, 10, 11, 6, 7, 14, 15);
    else return __builtin_shufflevector(a, b, 2, 3, 18, 19, 6, 7, 22, 23, 10, 11, 26, 27, 14, 15, 30, 31);
}

// Transposes the 4 x 4 squares of each group.
template <class Real, int W, class V>
SPLICEWRIGHT_INLINE void transpose(V* r)
{
    const V a = low_pairs<Real, W>(r[0], r[1]), b = high_pairs<Real, W>(r[0], r[1]);
    const V c = low_pairs<Real, W>(r[2], r[3]), d = high_pairs<Real, W>(r[2], r[3]);
    r[0] = first_halves<W>(a, c);
    r[3] = second_halves<W>(b, d);
    if constexpr (sizeof(Real) == 8)
    {
        r[1] = first_halves<W>(b, d);
        r[2] = second_halves<W>(a, c);
    }
    else
    {
        r[1] = second_halves<W>(a, c);
        r[2] = first_halves<W>(b, d);
    }
}

}  // namespace

}  // namespace splicewright
