// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Eigenvalues>
#include <cmath>
#include <vector>

namespace splicewright
{

// Largest eigenvalue of D^-1 A from the coefficients of conjugate gradients preconditioned by D: the tridiagonal matrix
// of Lanczos. Finds an eigenvalue that stands alone, as one bad element makes it, in few steps; power iteration with
// as many steps misses it. Source: [Saad2003] section 6.7.
class Spectrum
{
public:
    // step: r.z / p.Kp; next: (r.z of the next residual) / (r.z of this one).
    void add(double step, double next)
    {
        steps_.push_back(step);
        nexts_.push_back(next);
    }
    [[nodiscard]] double largest() const
    {
        const auto n = static_cast<Eigen::Index>(steps_.size());
        if (n == 0) return 1;
        Eigen::VectorXd diagonal(n), beside(n > 1 ? n - 1 : 0);
        for (Eigen::Index i = 0; i < n; ++i)
        {
            const auto at = static_cast<std::size_t>(i);
            diagonal(i) = 1 / steps_[at] + (i > 0 ? nexts_[at - 1] / steps_[at - 1] : 0);
            if (i + 1 < n) beside(i) = std::sqrt(nexts_[at]) / steps_[at];
        }
        Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver;
        solver.computeFromTridiagonal(diagonal, beside, Eigen::EigenvaluesOnly);
        return solver.eigenvalues().maxCoeff();
    }

private:
    std::vector<double> steps_, nexts_;
};

// A start for it that is not smooth and the same every time: number i of a vector.
inline double rough_number(std::int64_t i)
{
    // A linear congruential step scatters the bits. Source: [Knuth1997] section 3.2.1.
    const std::uint64_t scattered = (static_cast<std::uint64_t>(i) + 1) * 6364136223846793005ULL;
    return static_cast<double>(scattered >> 40) / static_cast<double>(1 << 24) - 0.5;
}

}  // namespace splicewright
