// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/section_strength.h"

#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

using std::numbers::pi;

void expect_sound(const RoundSection& section)
{
    EXPECTS(section.bore.value() >= 0 && section.outer_diameter > section.bore);
}

double power_difference(const RoundSection& section, int power)
{
    expect_sound(section);
    return std::pow(section.outer_diameter.value(), power) - std::pow(section.bore.value(), power);
}

// Source: [Mises1913]: in pure shear the equivalent stress is sqrt(3) times the shear.
double shear_yield(Megapascal yield)
{
    EXPECTS(yield.value() > 0);
    return yield.value() / std::numbers::sqrt3;
}

double torsional_stiffness(const ParallelMember& member)
{
    return shear_modulus(member.elastic_modulus, member.poisson_ratio).value() * polar_moment_of_area(member.section);
}

}  // namespace

double section_area(const RoundSection& section) { return pi / 4 * power_difference(section, 2); }

double second_moment_of_area(const RoundSection& section) { return pi / 64 * power_difference(section, 4); }

double polar_moment_of_area(const RoundSection& section) { return pi / 32 * power_difference(section, 4); }

Megapascal shear_modulus(Megapascal elastic_modulus, double poisson_ratio)
{
    EXPECTS(elastic_modulus.value() > 0 && poisson_ratio > -1 && poisson_ratio < 0.5);
    return elastic_modulus / (2 * (1 + poisson_ratio));
}

Sourced<Megapascal> surface_shear(const RoundSection& section, NewtonMillimetre torque)
{
    const double shear = torque.value() * section.outer_diameter.value() / 2 / polar_moment_of_area(section);
    return {Megapascal{shear}, "T D/(2 J): Timoshenko & Goodier 1970, art. 101 [TimoshenkoGoodier1970]",
            Provenance::theory};
}

Sourced<Megapascal> surface_bending_stress(const RoundSection& section, NewtonMillimetre bending)
{
    const double stress = bending.value() * section.outer_diameter.value() / 2 / second_moment_of_area(section);
    return {Megapascal{stress}, "M D/(2 I): Timoshenko & Goodier 1970, art. 102 [TimoshenkoGoodier1970]",
            Provenance::theory};
}

Sourced<Megapascal> axial_stress(const RoundSection& section, Newton axial)
{
    return {Megapascal{axial.value() / section_area(section)},
            "N/A: Timoshenko & Goodier 1970, art. 103 [TimoshenkoGoodier1970]", Provenance::theory};
}

Sourced<Radian> twist(const std::vector<TwistedLength>& shaft, NewtonMillimetre torque)
{
    double sum = 0;
    for (const TwistedLength& part : shaft)
    {
        EXPECTS(part.length.value() >= 0 && part.shear_modulus.value() > 0);
        sum += part.length.value() / (part.shear_modulus.value() * polar_moment_of_area(part.section));
    }
    return {Radian{torque.value() * sum},
            "sum of T L/(G J), without the compliance of the steps: Shigley 9th ed. eq. 3-35 [Shigley2011]",
            Provenance::theory};
}

Sourced<NewtonMillimetre> first_yield_torque(const RoundSection& section, Megapascal yield)
{
    const double torque = shear_yield(yield) * polar_moment_of_area(section) / (section.outer_diameter.value() / 2);
    return {NewtonMillimetre{torque}, "(yield/sqrt 3) 2 J/D: von Mises 1913 [Mises1913] with elastic torsion",
            Provenance::theory};
}

Sourced<NewtonMillimetre> fully_plastic_torque(const RoundSection& section, Megapascal yield)
{
    return {NewtonMillimetre{pi / 12 * shear_yield(yield) * power_difference(section, 3)},
            "(2 pi/3)(yield/sqrt 3)(R^3 - r^3), no hardening: von Mises 1913 [Mises1913], integrated",
            Provenance::derived};
}

Sourced<NewtonMillimetre> first_yield_bending(const RoundSection& section, Megapascal yield)
{
    EXPECTS(yield.value() > 0);
    return {NewtonMillimetre{yield.value() * second_moment_of_area(section) / (section.outer_diameter.value() / 2)},
            "yield 2 I/D: [TimoshenkoGoodier1970] art. 102", Provenance::theory};
}

Sourced<NewtonMillimetre> fully_plastic_bending(const RoundSection& section, Megapascal yield)
{
    EXPECTS(yield.value() > 0);
    return {NewtonMillimetre{yield.value() * power_difference(section, 3) / 6},
            "yield (D^3 - d^3)/6, no hardening, integrated", Provenance::derived};
}

Sourced<double> plastic_utilisation(const RoundSection& section, Megapascal yield, const SectionLoad& load)
{
    const double torque = load.torque / fully_plastic_torque(section, yield).value;
    const double bending = load.bending / fully_plastic_bending(section, yield).value;
    const double axial = load.axial.value() / (yield.value() * section_area(section));
    return {std::hypot(std::abs(bending) + std::abs(axial), torque),
            "lower bound of the plastic limit load: von Mises 1913 [Mises1913], integrated", Provenance::derived};
}

Sourced<StiffnessShare> sleeve_share(const ParallelMember& sleeve, const ParallelMember& bar)
{
    const auto share = [](double of_sleeve, double of_bar) { return of_sleeve / (of_sleeve + of_bar); };
    const double modulus_sleeve = sleeve.elastic_modulus.value(), modulus_bar = bar.elastic_modulus.value();
    StiffnessShare shares;
    shares.torsion = share(torsional_stiffness(sleeve), torsional_stiffness(bar));
    shares.bending =
        share(modulus_sleeve * second_moment_of_area(sleeve.section), modulus_bar * second_moment_of_area(bar.section));
    shares.axial = share(modulus_sleeve * section_area(sleeve.section), modulus_bar * section_area(bar.section));
    return {shares, "GJ, EI and EA in parallel, far from the sleeve's ends", Provenance::derived};
}

Sourced<double> torsion_share_with_end_welds(const ParallelMember& sleeve, const ParallelMember& bar,
                                             Millimetre length_between_welds, double weld_stiffness)
{
    EXPECTS(length_between_welds.value() > 0 && weld_stiffness > 0);
    const double bar_compliance = length_between_welds.value() / torsional_stiffness(bar);
    const double sleeve_compliance = length_between_welds.value() / torsional_stiffness(sleeve);
    return {bar_compliance / (bar_compliance + sleeve_compliance + 2 / weld_stiffness),
            "GJ in parallel, the sleeve in series with its two end welds", Provenance::derived};
}

}  // namespace splicewright
