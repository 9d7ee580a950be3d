// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/side_by_side.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <string>
#include <vector>

namespace splicewright
{
namespace
{

TEST(SideBySide, DoesEveryPieceOnceWhateverTheNumberOfThreads)
{
    for (const int n_threads : {0, 1, 3, 50})
    {
        std::vector<int> done(20, 0);
        done_side_by_side(done.size(), n_threads, [&](std::size_t piece) { ++done[piece]; });
        EXPECT_EQ(done, std::vector<int>(20, 1));
    }
}

TEST(SideBySide, ThrowsWhatTheFirstPieceThatFailedThrewAfterAllHaveEnded)
{
    for (const int n_threads : {1, 4})
    {
        std::vector<int> done(9, 0);
        std::string said;
        try
        {
            done_side_by_side(done.size(), n_threads,
                              [&](std::size_t piece)
                              {
                                  done[piece] = 1;
                                  if (piece == 3 || piece == 7) throw std::runtime_error(std::to_string(piece));
                              });
        }
        catch (const std::runtime_error& error)
        {
            said = error.what();
        }
        EXPECT_EQ(said, "3");
        EXPECT_EQ(done, std::vector<int>(9, 1));
    }
}

}  // namespace
}  // namespace splicewright
