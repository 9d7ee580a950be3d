// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <cstdint>
#include <memory>
#include <vector>

#include "solver/solid_blocks.h"

namespace splicewright
{

// Factorisation of the last level in double precision; hides the library that makes it.
class CoarseFactor
{
public:
    template <int F>
    CoarseFactor(const BlockMatrix<double, F, F>& A, const std::vector<std::int64_t>& pinned);
    ~CoarseFactor();
    CoarseFactor(CoarseFactor&&) noexcept;
    // x of A x = b, [n] each.
    [[nodiscard]] Eigen::VectorXd solution(const Eigen::VectorXd& b) const;
    [[nodiscard]] std::int64_t bytes() const;

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

// Freedoms (3 node + axis) whose holding takes the six rigid motions out of a free body and strains it nowhere.
std::vector<std::int64_t> pinned_freedoms(const Eigen::Matrix3Xd& places);

}  // namespace splicewright
