// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/critical_speed.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

#include "cases/problem.h"

// Legend: h element length mm, EI bending stiffness N*mm^2, m mass per length tonne/mm, K N/mm, M tonne,
// w critical speed rad/s; unknowns of a node: deflection mm, slope rad.

namespace splicewright
{
namespace
{

constexpr double same_place_mm = 1e-9;

struct Element
{
    double start = 0, h = 0, EI = 0, m = 0;
};

// Places of nodes: each length in equal parts, and a break at each mass.
std::vector<Element> elements_of(const std::vector<RotorLength>& rotor, const std::vector<RotorMass>& masses,
                                 int elements_per_length)
{
    std::vector<Element> elements;
    double start = 0;
    for (const RotorLength& part : rotor)
    {
        const double length = part.length.value();
        EXPECTS(length > 0 && part.elastic_modulus.value() > 0 && part.density >= 0);
        std::vector<double> breaks;
        for (int i = 0; i <= elements_per_length; ++i) breaks.push_back(start + length * i / elements_per_length);
        for (const RotorMass& mass : masses)
            if (mass.at.value() > start && mass.at.value() < start + length) breaks.push_back(mass.at.value());
        std::sort(breaks.begin(), breaks.end());
        for (std::size_t i = 0; i + 1 < breaks.size(); ++i)
            if (breaks[i + 1] - breaks[i] > same_place_mm)
                elements.push_back({breaks[i], breaks[i + 1] - breaks[i],
                                    part.elastic_modulus.value() * second_moment_of_area(part.section),
                                    part.density * section_area(part.section)});
        start += length;
    }
    return elements;
}

Eigen::Matrix4d stiffness(const Element& e)
{
    const double h = e.h;
    Eigen::Matrix4d K;
    K << 12, 6 * h, -12, 6 * h,               //
        6 * h, 4 * h * h, -6 * h, 2 * h * h,  //
        -12, -6 * h, 12, -6 * h,              //
        6 * h, 2 * h * h, -6 * h, 4 * h * h;
    return e.EI / (h * h * h) * K;
}

Eigen::Matrix4d mass(const Element& e)
{
    const double h = e.h;
    Eigen::Matrix4d M;
    M << 156, 22 * h, 54, -13 * h,              //
        22 * h, 4 * h * h, 13 * h, -3 * h * h,  //
        54, 13 * h, 156, -22 * h,               //
        -13 * h, -3 * h * h, -22 * h, 4 * h * h;
    return e.m * h / 420 * M;
}

Eigen::MatrixXd without(const Eigen::MatrixXd& matrix, const std::vector<int>& kept) { return matrix(kept, kept); }

}  // namespace

Sourced<RadianPerSecond> first_critical_speed(const std::vector<RotorLength>& rotor,
                                              const std::vector<RotorMass>& masses, int elements_per_length)
{
    EXPECTS(elements_per_length > 0);
    const std::vector<Element> elements = elements_of(rotor, masses, elements_per_length);
    EXPECTS(!elements.empty());
    const int n = 2 * (static_cast<int>(elements.size()) + 1);
    Eigen::MatrixXd K = Eigen::MatrixXd::Zero(n, n), M = K;
    for (int e = 0; e < static_cast<int>(elements.size()); ++e)
    {
        const Element& element = elements[static_cast<std::size_t>(e)];
        K.block<4, 4>(2 * e, 2 * e) += stiffness(element);
        M.block<4, 4>(2 * e, 2 * e) += mass(element);
        for (const RotorMass& lumped : masses)
            if (std::abs(lumped.at.value() - element.start) < 2 * same_place_mm) M(2 * e, 2 * e) += lumped.mass.value();
    }
    EXPECTS(M.diagonal().sum() > 0);
    std::vector<int> kept;
    for (int i = 1; i < n; ++i)
        if (i != n - 2) kept.push_back(i);
    // M may be singular, K is not: the largest eigenvalue of L^-1 M L^-T is 1/w^2.
    const Eigen::MatrixXd L = without(K, kept).llt().matrixL();
    const Eigen::MatrixXd half = L.triangularView<Eigen::Lower>().solve(without(M, kept));
    const Eigen::MatrixXd reduced = L.triangularView<Eigen::Lower>().solve(half.transpose());
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> modes(reduced, Eigen::EigenvaluesOnly);
    return {RadianPerSecond{1 / std::sqrt(modes.eigenvalues().maxCoeff())},
            "Timoshenko, Vibration Problems in Engineering, 3rd ed. 1955 [Timoshenko1955]", Provenance::derived};
}

RadianPerSecond combined_critical_speed(const std::vector<RadianPerSecond>& parts)
{
    double sum = 0;
    for (const RadianPerSecond& part : parts)
    {
        EXPECTS(part.value() > 0);
        sum += 1 / (part.value() * part.value());
    }
    EXPECTS(sum > 0);
    return RadianPerSecond{1 / std::sqrt(sum)};
}

}  // namespace splicewright
