// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <functional>

namespace splicewright
{

// Does n pieces of work on some threads; a piece must touch nothing that another one touches. Once all have ended, what
// the first of the pieces that failed threw is thrown again: the same however many threads there are.
void done_side_by_side(std::size_t n, int n_threads, const std::function<void(std::size_t piece)>& work);

}  // namespace splicewright
