// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <vector>

namespace splicewright
{

// n points in the unit cube of the given dimension, spread more evenly than chance: the Halton sequence, moved as a
// whole by a random shift of the seed so that no value is favoured. Beyond 12 dimensions its bases are too large to be
// even, and the further values are random. Sources: [Halton1960], [CranleyPatterson1976].
// The same numbers on every machine. Expects n >= 0, dimension >= 1.
std::vector<std::vector<double>> sample_points(int n, std::size_t dimension, std::uint64_t seed);

}  // namespace splicewright
