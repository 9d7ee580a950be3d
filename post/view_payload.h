// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <string>

#include "post/report.h"

namespace splicewright
{

// All that the view in three dimensions shows, for post/view3d/source/payload.js: a header in JSON, its length before
// it as four bytes, then the arrays of each scenario, little-endian.
//
// Arrays of a scenario whose meridian section is swept, in this order:
//   z, r                      float, mm                                 [n_points] each
//   stress and displacement   signed 16 bits, times the channel's step  [n_points] for each channel of each load:
//                             torsion  rt tz; t        bending  rr tt zz rt tz rz; r t z
//                             axial and press fit  rr tt zz rz; r z     MPa and mm, under the load as asked
//   spread of the stress      8 bits, see `spread_step`                 [n_points] for each load
//   part                      8 bits, region of a triangle              [n_triangles]
//   triangle, skin, outline, unfused   16 bits, points                  [3 or 2, n]
// Of one that the solid model alone answered, whose header says `solid`; see view_solid.h:
//   place                     signed 16 bits, times the step of places  [3] for each of n_points, mm
//   for each load of the view  signed 16 bits, times its steps: von Mises, largest principal and shear stress, the
//   worst
//                             over a turn of the bending                [n_points] each, MPa
//                             movement, bending towards +x              [3] for each of n_points, mm
//   middle, element, edge     16 bits, points                           [2, 4 or 2, n]
//   sides                     8 bits                                    [n_elements]
struct ViewPayload
{
    std::string bytes;            // empty where the mesh is so fine that no thinning makes it fit
    std::size_t n_scenarios = 0;  // from the sound splice on, in the order of the report
};
ViewPayload view_payload(const Report& report);

// True where the view shows the solid model of a scenario.
bool shows_solid(const Judgement& judgement);

// The most bytes that it may have; the section is thinned until it fits.
constexpr std::size_t most_payload_bytes = 1250000;
// The same where the solid model answered the sound splice, whose page has more pictures.
constexpr std::size_t most_solid_payload_bytes = 800000;

// A spread is peak * 2^(-k / spread_step) for k of 0 .. 254, rounded up, and nothing for 255.
constexpr double spread_step = 8;

}  // namespace splicewright
