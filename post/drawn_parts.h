// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/case.h"
#include "post/sheet.h"

namespace splicewright
{

// The shaft as a drawing shows it, from the outline of the sound splice without the notches of the method: z and r, mm.
struct DrawnPart
{
    std::string name;                // region: "bar.left", "sleeve.right", "fillet.left"
    std::vector<SheetPoint> corner;  // in order around it, r >= 0
};

struct DrawnShaft
{
    std::vector<DrawnPart> parts;
    std::vector<std::vector<SheetPoint>> edges;  // visible in the cut half; without joint plane and axis
    std::vector<SheetPoint> skin;                // outside from the left end to the right end
    std::vector<double> skin_edges;              // z where the outside has a sharp edge, seen as a line across
};

DrawnShaft drawn_shaft(const Case& asked);

// The part of a shape between two places of z.
std::vector<SheetPoint> between(const std::vector<SheetPoint>& corner, double left, double right);
// The pieces of a line between two places of z.
std::vector<std::vector<SheetPoint>> pieces_between(const std::vector<SheetPoint>& line, double left, double right);

// Largest r of a line from left to right at z.
double height_at(const std::vector<SheetPoint>& skin, double z);

}  // namespace splicewright
