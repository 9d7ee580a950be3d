// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/sample_points.h"

#include <array>
#include <cmath>
#include <random>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr std::array<int, 12> base{2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};

// Digits of n in the base, mirrored at the point.
double mirrored(int n, int in_base)
{
    double value = 0, part = 1;
    for (int left = n; left > 0; left /= in_base) value += left % in_base * (part /= in_base);
    return value;
}

}  // namespace

std::vector<std::vector<double>> sample_points(int n, std::size_t dimension, std::uint64_t seed)
{
    EXPECTS(n >= 0 && dimension >= 1);
    std::mt19937_64 random(seed);
    // The library's own distributions differ from one to another.
    const auto uniform = [&] { return static_cast<double>(random() >> 11) * 0x1p-53; };
    std::vector<double> shift(dimension);
    for (double& s : shift) s = uniform();
    std::vector<std::vector<double>> points;
    for (int i = 0; i < n; ++i)
    {
        std::vector<double> point(dimension);
        for (std::size_t k = 0; k < dimension; ++k)
        {
            const double value = k < base.size() ? mirrored(i + 1, base[k]) + shift[k] : uniform();
            point[k] = value - std::floor(value);
        }
        points.push_back(std::move(point));
    }
    return points;
}

}  // namespace splicewright
