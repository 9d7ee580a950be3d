// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <string>
#include <vector>

namespace splicewright
{

// Numbers and arrays as the payload of the view has them, little-endian; see view_payload.h.

template <class Number>
void append(std::string& bytes, Number value)
{
    static_assert(std::endian::native == std::endian::little);
    std::array<char, sizeof(Number)> raw{};
    std::memcpy(raw.data(), &value, sizeof(Number));
    bytes.append(raw.data(), raw.size());
}

// The step of a channel whose largest value takes all of 15 bits.
inline double step_of(double largest) { return largest / 32767; }

inline void append_in_steps(std::string& bytes, double value, double step)
{
    append(bytes, static_cast<std::int16_t>(step > 0 ? std::lround(value / step) : 0));
}

template <std::size_t n>
void append_indices(std::string& bytes, const std::vector<std::array<int, n>>& list)
{
    for (const std::array<int, n>& one : list)
        for (const int i : one) append(bytes, static_cast<std::uint16_t>(i));
}

}  // namespace splicewright
