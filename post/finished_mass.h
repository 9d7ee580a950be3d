// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "cases/case.h"
#include "mesh/mesh.h"

namespace splicewright
{

// Mass of all that is meshed, from end to end as drawn: bars with their fillets and grooves, fused butt, sleeve, weld
// metal of the sleeve welds; each with the density of its own steel. A butt weld counts as bar.
//   sum of density times the integral of 2 pi r over the section
// Exact to round-off between straight edges, by quadrature to degree five on bent ones.
Tonne finished_mass(const Case& asked, const Mesh& mesh);

}  // namespace splicewright
