// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>

#include "cases/quantity.h"

namespace splicewright
{

// Of the welds. Source: [ISO5817].
enum class QualityLevel
{
    B,
    C,
};
const char* name_of(QualityLevel level);  // "B", "C"

// Whose first section makes up for a wanted overall length that the drawn sections do not add up to.
enum class AdjustedBar
{
    both,  // half of it each
    left,
    right,
};

// How the splice is to be made, `[making]`; changes no stress.
//
//        groove angle
//         \      |
//      ____\ ____|___/____   root face: the part of the depth that is not bevelled
//      bar  |___| |___|  bar
//           root gap
struct Making
{
    std::optional<Millimetre> overall_length;  // finished shaft, end to end; absent: the sections as drawn
    AdjustedBar adjusted = AdjustedBar::both;
    Millimetre root_gap;                         // between the ends when tacked
    Millimetre root_face;                        // radial
    Radian groove_angle;                         // between the bevels of both ends
    Millimetre weld_shrink;                      // by which the butt weld draws the bars together
    std::optional<Millimetre> plunge_available;  // axial travel that the joints at both ends have from the fitted place
    Millimetre plunge_used;                      // of it, by the suspension
    Newton heat_input;                           // energy per length of a pass: 1 kJ/mm = 1e6 N
    double hydrogen = 5;                         // diffusible, in the weld metal, ml per 100 g
    QualityLevel quality = QualityLevel::B;
    int bore_grade = 7;  // standard tolerance grade: IT6, IT7 or IT8
};

}  // namespace splicewright
