// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/line_contact.h"

#include <cmath>
#include <numbers>

#include "cases/problem.h"

// Legend: q load N/mm.

namespace splicewright
{

Sourced<LineContactStress> line_contact_stress(const LineContact& contact)
{
    EXPECTS(contact.radius.value() > 0 && contact.load_per_mm > 0);
    double compliance = 0;
    for (std::size_t i = 0; i < 2; ++i)
    {
        EXPECTS(contact.modulus[i].value() > 0);
        compliance += (1 - contact.poisson[i] * contact.poisson[i]) / contact.modulus[i].value();
    }
    const double pi = std::numbers::pi, q = contact.load_per_mm;
    const double half_width = std::sqrt(4 * q * contact.radius.value() * compliance / pi);
    const double pressure = 2 * q / (pi * half_width);
    return {{Millimetre{half_width}, Megapascal{pressure}, Megapascal{0.30028 * pressure},
             Millimetre{0.78615 * half_width}},
            "Johnson, Contact Mechanics, 1985, ch. 4 [Johnson1985]",
            Provenance::from_memory};
}

}  // namespace splicewright
