// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_coarse_factor.h"

#include <Eigen/CholmodSupport>
#include <Eigen/Geometry>

#include "cases/problem.h"
#include "solver/one_thread.h"

namespace splicewright
{

struct CoarseFactor::Parts
{
    mutable Eigen::CholmodDecomposition<Eigen::SparseMatrix<double>, Eigen::Lower> cholmod;
    std::vector<std::int64_t> pinned;
};

template <int F>
CoarseFactor::CoarseFactor(const BlockMatrix<double, F, F>& A, const std::vector<std::int64_t>& pinned)
    : parts_(std::make_unique<Parts>())
{
    use_one_thread();  // the threads here are our own
    std::vector<char> out(static_cast<std::size_t>(A.n_rows * F), 0);
    for (const std::int64_t freedom : pinned) out[static_cast<std::size_t>(freedom)] = 1;
    std::vector<Eigen::Triplet<double>> entries;
    for (std::int64_t i = 0; i < A.n_rows; ++i)
        for (std::int64_t n = A.start(i); n < A.end(i); ++n)
            for (int a = 0; a < F; ++a)
                for (int b = 0; b < F; ++b)
                {
                    const std::int64_t row = i * F + a, column = A.place(n) * F + b;
                    const bool held =
                        out[static_cast<std::size_t>(row)] != 0 || out[static_cast<std::size_t>(column)] != 0;
                    if (row >= column && (!held || row == column))
                        entries.emplace_back(static_cast<int>(row), static_cast<int>(column), A.block(n)(a, b));
                }
    const auto size = static_cast<int>(A.n_rows * F);
    Eigen::SparseMatrix<double> lower(size, size);
    lower.setFromTriplets(entries.begin(), entries.end());
    parts_->pinned = pinned;
    parts_->cholmod.cholmod().print = 0;
    parts_->cholmod.setMode(Eigen::CholmodSupernodalLLt);
    parts_->cholmod.compute(lower);
    if (parts_->cholmod.info() != Eigen::Success)
        throw CannotCompute({"", 0, 0, "solver", "", "the stiffness could not be factorised: a part may hang loose",
                             "check that every part is joined to the shaft"});
}

CoarseFactor::~CoarseFactor() = default;
CoarseFactor::CoarseFactor(CoarseFactor&&) noexcept = default;

Eigen::VectorXd CoarseFactor::solution(const Eigen::VectorXd& b) const
{
    Eigen::VectorXd right = b;
    for (const std::int64_t freedom : parts_->pinned) right(freedom) = 0;
    return parts_->cholmod.solve(right);
}

std::int64_t CoarseFactor::bytes() const { return static_cast<std::int64_t>(parts_->cholmod.cholmod().memory_inuse); }

template CoarseFactor::CoarseFactor(const BlockMatrix<double, 3, 3>&, const std::vector<std::int64_t>&);
template CoarseFactor::CoarseFactor(const BlockMatrix<double, 6, 6>&, const std::vector<std::int64_t>&);

std::vector<std::int64_t> pinned_freedoms(const Eigen::Matrix3Xd& places)
{
    const auto farthest = [&](const auto& measure)
    {
        Eigen::Index best = 0;
        for (Eigen::Index i = 1; i < places.cols(); ++i)
            if (measure(places.col(i)) > measure(places.col(best))) best = i;
        return best;
    };
    const Eigen::Vector3d centre = places.rowwise().mean();
    const Eigen::Index a = farthest([&](const Eigen::Vector3d& p) { return -(p - centre).norm(); });
    const Eigen::Vector3d pa = places.col(a);
    const Eigen::Index b = farthest([&](const Eigen::Vector3d& p) { return (p - pa).norm(); });
    const Eigen::Vector3d along = places.col(b) - pa;
    const Eigen::Index c = farthest([&](const Eigen::Vector3d& p) { return along.cross(p - pa).norm(); });
    std::vector<std::int64_t> freedoms{3 * a, 3 * a + 1, 3 * a + 2};
    Eigen::Index main = 0, turning = 0;
    along.cwiseAbs().maxCoeff(&main);
    for (Eigen::Index axis = 0; axis < 3; ++axis)
        if (axis != main) freedoms.push_back(3 * b + axis);
    along.cross(Eigen::Vector3d(places.col(c) - pa)).cwiseAbs().maxCoeff(&turning);
    freedoms.push_back(3 * c + turning);
    return freedoms;
}

}  // namespace splicewright
