// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/side_by_side.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>
#include <vector>

namespace splicewright
{

void done_side_by_side(std::size_t n, int n_threads, const std::function<void(std::size_t piece)>& work)
{
    std::atomic<std::size_t> next{0};
    std::vector<std::exception_ptr> thrown(n);
    const auto take_pieces = [&]
    {
        for (std::size_t piece = next++; piece < n; piece = next++)
        {
            try
            {
                work(piece);
            }
            catch (...)
            {
                thrown[piece] = std::current_exception();
            }
        }
    };
    std::vector<std::jthread> others;
    for (std::size_t t = 1; t < std::min(n, static_cast<std::size_t>(std::max(n_threads, 1))); ++t)
        others.emplace_back(take_pieces);
    take_pieces();
    others.clear();
    for (const std::exception_ptr& exception : thrown)
        if (exception) std::rethrow_exception(exception);
}

}  // namespace splicewright
