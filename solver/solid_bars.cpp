// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_bars.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <numeric>

#include "cases/problem.h"
#include "solver/surface_fit.h"

namespace splicewright
{

namespace
{

constexpr double hot = 0.9;  // of the peak

// Bar over change for elements half the size, chosen on the fitting bodies in tests/solver and judged on others. Of an
// error of order p a change over 2^p - 1 is left: a third at order 2, which the surface stress has on smooth meshes,
// all of it at order 1, which is what notches show whose quarter turn has two elements before and four now.
constexpr double over_typical = 1.5;
constexpr double over_largest = 0.9;
constexpr double over_peak = 1;
// Relative: below it two meshes agree by chance.
constexpr double least_share = 1e-4;

}  // namespace

double solid_von_mises(const Stress6& s)
{
    const double a = s(0) - s(1), b = s(1) - s(2), c = s(2) - s(0);
    return std::sqrt((a * a + b * b + c * c) / 2 + 3 * s.tail<3>().squaredNorm());
}

double largest_solid_principal(const Stress6& s)
{
    Eigen::Matrix3d tensor;
    tensor << s(0), s(3), s(5), s(3), s(1), s(4), s(5), s(4), s(2);
    Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver;
    const Eigen::Vector3d values = solver.computeDirect(tensor, Eigen::EigenvaluesOnly).eigenvalues();
    return std::abs(values(0)) > std::abs(values(2)) ? values(0) : values(2);
}

SolidReading solid_reading(const SolidMesh& mesh, const FreeSurfaceStress& surface,
                           const std::function<bool(const Eigen::Vector3d&)>& counts,
                           const std::function<double(const Stress6&)>& number)
{
    SolidReading reading;
    const FramedPlaces places = framed_places(mesh, surface);
    const auto n = static_cast<Eigen::Index>(surface.places.size());
    Eigen::Matrix<double, 6, Eigen::Dynamic> local(6, n);
    for (Eigen::Index i = 0; i < n; ++i)
        local.col(i) =
            in_frame(places.frame[static_cast<std::size_t>(i)], surface.places[static_cast<std::size_t>(i)].stress);
    reading.place.resize(3, n);
    reading.value.resize(n);
    Eigen::Index kept = 0;
    for (Eigen::Index i = 0; i < n; ++i)
    {
        if (!counts(places.at.col(i))) continue;
        Stress6 s = Stress6::Zero();
        for (const FitWeight& fit : fit_weights(places, static_cast<std::int32_t>(i)))
            s += fit.weight * local.col(fit.place);
        reading.place.col(kept) = places.at.col(i);
        // In the order of a stress whose axes are those of the frame.
        reading.value(kept++) = number({s(0), s(1), s(3), s(2), s(5), s(4)});
    }
    reading.place.conservativeResize(3, kept);
    reading.value.conservativeResize(kept);
    return reading;
}

std::vector<Eigen::Index> nearest_places(const Eigen::Matrix3Xd& from, const Eigen::Matrix3Xd& to)
{
    std::vector<Eigen::Index> nearest(static_cast<std::size_t>(from.cols()), 0);
    if (to.cols() == 0) return nearest;
    // By rising z, so that only places within the least distance so far along z are looked at.
    std::vector<Eigen::Index> order(static_cast<std::size_t>(to.cols()));
    std::iota(order.begin(), order.end(), 0);
    std::ranges::sort(order, [&](Eigen::Index a, Eigen::Index b) { return to(2, a) < to(2, b); });
    for (Eigen::Index i = 0; i < from.cols(); ++i)
    {
        const Eigen::Vector3d at = from.col(i);
        const auto middle = std::ranges::lower_bound(order, at.z(), {}, [&](Eigen::Index k) { return to(2, k); });
        double least = INFINITY;
        const auto look = [&](Eigen::Index k)
        {
            const double squares = (to.col(k) - at).squaredNorm();
            if (squares < least) least = squares, nearest[static_cast<std::size_t>(i)] = k;
        };
        for (auto up = middle; up != order.end() && std::pow(to(2, *up) - at.z(), 2) < least; ++up) look(*up);
        for (auto down = middle; down != order.begin() && std::pow(to(2, *(down - 1)) - at.z(), 2) < least; --down)
            look(*(down - 1));
    }
    return nearest;
}

StretchChange solid_change(const SolidReading& now, const SolidReading& before)
{
    return solid_change(now.value, before.value, nearest_places(before.place, now.place));
}

StretchChange solid_change(const Eigen::VectorXd& now, const Eigen::VectorXd& before,
                           const std::vector<Eigen::Index>& nearest)
{
    StretchChange change;
    if (now.size() == 0) return change;
    const double peak = now.cwiseAbs().maxCoeff();
    double squares = 0;
    int n = 0;
    for (Eigen::Index i = 0; i < before.size(); ++i)
    {
        const double here = now(nearest[static_cast<std::size_t>(i)]);
        if (std::abs(here) < hot * peak) continue;
        // By size: where both signs are as large, chance decides which is the largest.
        const double moved = std::abs(std::abs(here) - std::abs(before(i)));
        squares += moved * moved;
        change.largest = std::max(change.largest, moved);
        ++n;
    }
    change.typical = n > 0 ? std::sqrt(squares / n) : 0;
    return change;
}

Measured solid_peak(const SolidReading& now, const SolidReading& before, double ratio)
{
    return solid_peak(now.value, before.value, nearest_places(before.place, now.place), ratio);
}

Measured solid_peak(const Eigen::VectorXd& now, const Eigen::VectorXd& before, const std::vector<Eigen::Index>& nearest,
                    double ratio)
{
    if (now.size() == 0 || before.size() == 0)
        throw CannotCompute(
            {"", 0, 0, "solid model", "", "a site has no place on the surface", "check the name of its face"});
    EXPECTS(ratio > 1);
    const StretchChange change = solid_change(now, before, nearest);
    const double value = now.cwiseAbs().maxCoeff();
    // The factors are those of halved elements; a smaller step leaves more, counted with order 2.
    const double left = 3 / (ratio * ratio - 1);
    return {value, std::max({left * over_typical * change.typical, left * over_largest * change.largest,
                             left * over_peak * std::abs(value - before.cwiseAbs().maxCoeff()), least_share * value})};
}

}  // namespace splicewright
