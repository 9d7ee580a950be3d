// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <compare>

namespace splicewright
{

// A value in one house unit. Strong at the door, plain doubles inside the kernels.
// The house system is mm, N, MPa (N/mm^2), N*mm, tonne, s, rad: coherent, so formulas carry no powers of ten.
template <class Unit>
class Quantity
{
public:
    constexpr Quantity() = default;
    explicit constexpr Quantity(double value) : value_(value) {}
    [[nodiscard]] constexpr double value() const { return value_; }

    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value_ + b.value_); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value_ - b.value_); }
    friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.value_); }
    friend constexpr Quantity operator*(double factor, Quantity a) { return Quantity(factor * a.value_); }
    friend constexpr Quantity operator/(Quantity a, double divisor) { return Quantity(a.value_ / divisor); }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }
    friend constexpr auto operator<=>(Quantity a, Quantity b) = default;

private:
    double value_ = 0.0;
};

using Millimetre = Quantity<struct MillimetreUnit>;
using Newton = Quantity<struct NewtonUnit>;
using NewtonMillimetre = Quantity<struct NewtonMillimetreUnit>;
using Megapascal = Quantity<struct MegapascalUnit>;
using Radian = Quantity<struct RadianUnit>;
using RadianPerSecond = Quantity<struct RadianPerSecondUnit>;
using Tonne = Quantity<struct TonneUnit>;

constexpr double newton_millimetre_per_newton_metre = 1000;  // for texts that people read

}  // namespace splicewright
