// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "post/section_strength.h"
#include "post/weld_line.h"
#include "post/weld_rating.h"
#include "solver/meridian.h"

namespace splicewright
{

// Sections and nominal stresses of a splice, by unit load on the shaft.

RoundSection bar_section(const Case& asked, Side side);         // the bar beside the sleeve
RoundSection sleeve_end_section(const Case& asked, Side side);  // the sleeve where its weld meets it
RoundSection sleeve_joint_section(const Case& asked);           // at the joint, over the larger bar
RoundSection butt_section(const Case& asked);                   // what is fused: a disc, or a ring outside the land

// What stands against the growth of a crack, mm: the wall of a hollow bar or half the diameter of a solid one, the
// sleeve's wall at its end, the depth of the fused ring. `site` as in SiteAnswer.
double wall_at(const Case& asked, const std::string& site);

// Thickness for the size effect, mm: as wall_at, but the whole diameter of a solid bar, because in bending and in
// torsion its stress falls from the surface inward as in a plate as thick as that. Derived; no document for round bars.
double size_at(const Case& asked, const std::string& site);

// "size 28 mm, the whole diameter of a solid bar (safe side: ...)", for the note of a row.
std::string size_words(const Case& asked, const std::string& site);

FilletWeld fillet_weld(const Case& asked, Side side);

// Largest shear of torsion and largest principal stress of bending at a site by finite elements.
WeldUnitStress site_unit_stress(const SiteAnswer& site);

// Whether torque makes normal stress at a site, which it does where the shaft is no body of revolution: its largest
// principal stress is more than its shear by over 15 %, the share below which one kind may be left out beside the other
// [Hobbacher2016] 4.2, from memory.
bool torque_pulls(const SiteAnswer& site);
// The largest principal stress by torque in the place of its shear, and that of bending, for rows of the first
// principal stress.
WeldUnitStress site_principal_stress(const SiteAnswer& site);

// 16T/(pi d^3), 32M/(pi d^3) of the bar beside the weld; all of the load passes there.
WeldUnitStress bar_unit_stress(const Case& asked, Side side);

// What the weld passes to the sleeve by finite elements, over the sleeve's section at its end.
WeldUnitStress sleeve_end_unit_stress(const Case& asked, const WeldForce& weld, Side side);

// The same over the throat: normal = sqrt(across^2 + normal^2) and shear along the weld.
// Source: [Eurocode3Fatigue2005] sec. 5(6), from memory.
WeldUnitStress throat_unit_stress(const Case& asked, const WeldForce& weld, Side side);

// What the butt carries past the joint by finite elements, over the fused section.
WeldUnitStress butt_unit_stress(const Case& asked, const MeridianAnswer& answer);
double butt_torque_share(const Case& asked, const MeridianAnswer& answer);
double butt_bending_share(const Case& asked, const MeridianAnswer& answer);

}  // namespace splicewright
