// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/settled_case.h"

#include <fmt/format.h>

#include "cases/shape_limits.h"

namespace splicewright
{

std::string closed_note(const ClosedSlits& closed)
{
    return fmt::format(
        "the slit closes under the peak load (bar and sleeve move {:.3f} mm towards each other, the gap is "
        "{:.3f} mm): solved with the faces free and with them touching, the worse counts",
        closed.closes, closed.gap);
}

bool toes_are_reference(const Case& asked)
{
    return !asked.sleeve || asked.sleeve->weld.toe_radius == reference_notch_radius;
}

}  // namespace splicewright
