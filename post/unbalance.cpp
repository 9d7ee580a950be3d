// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/unbalance.h"

#include "cases/problem.h"

namespace splicewright
{
namespace
{

constexpr const char* source = "ISO 21940-11:2016 [ISO21940-11]";

}  // namespace

Sourced<Millimetre> permissible_eccentricity(double grade_mm_per_s, RadianPerSecond speed)
{
    EXPECTS(grade_mm_per_s > 0 && speed.value() > 0);
    return {Millimetre{grade_mm_per_s / speed.value()}, source, Provenance::from_memory};
}

Sourced<double> permissible_unbalance(double grade_mm_per_s, RadianPerSecond speed, Tonne mass)
{
    EXPECTS(mass.value() > 0);
    return {permissible_eccentricity(grade_mm_per_s, speed).value.value() * mass.value(), source,
            Provenance::from_memory};
}

double balance_grade(Millimetre eccentricity, RadianPerSecond speed)
{
    EXPECTS(eccentricity.value() >= 0 && speed.value() >= 0);
    return eccentricity.value() * speed.value();
}

}  // namespace splicewright
