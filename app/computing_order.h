// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "app/study.h"

namespace splicewright
{

// The order in which options are computed: in runs of equal shape and stiffness, whose options differ only in what is
// judged, so that one solution serves a run.
class ComputingOrder
{
public:
    explicit ComputingOrder(const Study& study);
    [[nodiscard]] std::uint64_t n_runs() const { return n_runs_; }
    [[nodiscard]] std::uint64_t run_length() const { return run_length_; }
    [[nodiscard]] std::uint64_t index_at(std::uint64_t run, std::uint64_t place) const;  // number of the option
    [[nodiscard]] std::uint64_t run_of(std::uint64_t index) const;

private:
    struct Key
    {
        std::uint64_t n_values = 1;
        std::uint64_t step = 1;  // between the numbers of options that differ by one value of it
    };
    std::vector<Key> keys_;  // those that change the shape first; the last changes fastest
    std::uint64_t n_runs_ = 1, run_length_ = 1;
};

}  // namespace splicewright
