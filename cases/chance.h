// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cmath>
#include <cstdint>
#include <random>
#include <vector>

namespace splicewright
{

// Draws that are the same on every machine: the engine is fixed by the C++ standard, the distributions of the
// library are not and stay unused.
class Chance
{
public:
    explicit Chance(std::uint64_t seed) : engine_(seed) {}

    // 0 <= number < 1
    double fraction() { return static_cast<double>(engine_() >> 11U) * 0x1p-53; }
    double between(double low, double high) { return low + (high - low) * fraction(); }
    // Every decade as likely as another; both above 0.
    double across_decades(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }
    // 0 .. n - 1
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(fraction() * static_cast<double>(n)); }
    bool happens(double probability) { return fraction() < probability; }

    template <class T>
    const T& pick(const std::vector<T>& values)
    {
        return values[below(values.size())];
    }

private:
    std::mt19937_64 engine_;
};

}  // namespace splicewright
