// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "cases/shape_limits.h"

namespace splicewright
{

// The meridian section of the shaft, before meshing. z along the axis (left is negative), r the radius, mm.
//
//     r
//     ^            sleeve.left          sleeve.right
//     |        ____________________ ____________________
//     |       |      (outer.left)  |   (outer.right)    |
//     |  toe /|                    |                    |\ toe      fillet.left, fillet.right: the weld metal
//   __|_____/_o====slit.left=======|======slit.right====o_\____     o: root notch, = : unfused, zero width
//     |  bar.left                  |butt                bar.right
//     |                            |                            |
//     |                            o land notch                 |
//     |                            ‖ land (unfused)             |
//   - +----------------------------+----------------------------+---> z   (axis, or the bore)
//    end.left                      0                         end.right
//
// Curves carry the names that the rest of the program speaks of; a name may cover several curves.

struct OutlinePoint
{
    double z = 0, r = 0;
};

struct OutlineCurve
{
    int start = 0, end = 0;              // point indices
    std::optional<OutlinePoint> centre;  // arc of less than 180 degrees; absent: a straight line
    std::string name;                    // "bar-toe.left", "slit.right", "land", "axis", "end.left", ...
    bool unfused = false;                // interior curve whose two faces are separate bodies
    double notch_radius = 0;             // mm, of the notch this arc belongs to; 0 elsewhere
};

struct OutlineRegion
{
    std::string name;         // "bar.left", "bar.right", "sleeve.left", "sleeve.right", "fillet.left", "fillet.right"
    std::vector<int> curves;  // boundary, each curve once, in any order and direction
};

// Sharp end of an unfused face: a crack front, meshed for its singular stress.
struct OutlineTip
{
    int point = 0;         // index into Outline::points
    std::string name;      // "land-edge", "root.left", "root.right"
    OutlinePoint forward;  // unit, the direction in which the crack would grow
};

struct Outline
{
    std::vector<OutlinePoint> points;
    std::vector<OutlineCurve> curves;
    std::vector<OutlineRegion> regions;
    std::vector<std::string> absent_sites;  // "sleeve-toe.left: the weld leg reaches the sleeve's outer corner"
    std::vector<OutlineTip> tips = {};      // only with RootShape::sharp
};

// How the ends of the slit and of the land are drawn.
enum class RootShape
{
    keyhole,  // with the circle of the notch stress method
    sharp,    // as they are: crack fronts
};

// What is taken as sound, and how sharp the notches are.
struct Scenario
{
    std::string name = "sound";  // as it is shown
    bool butt_fused = true;
    bool sleeve_weld_fused[2] = {true, true};  // [left, right]
    std::optional<Millimetre> toe_radius;      // absent: as the case states
    RootShape root_shape = RootShape::keyhole;
    std::optional<Millimetre> root_radius = {};  // of the circles at root and land; absent: the reference radius
    [[nodiscard]] bool all_welds_hold() const { return butt_fused && sleeve_weld_fused[0] && sleeve_weld_fused[1]; }
    bool operator==(const Scenario&) const = default;
};

// What a region is made of: "bar.S", "sleeve.S", else weld metal.
const Material& material_of_region(const Case& asked, const std::string& region);

// Pure function of the case; no valid case fails. See the drawing above.
// Notches: fillets of the toe radius at the toes; circles of the reference radius centred on the root
// (the end of the slit) and on the land edge, which takes more of the throat than a circle that only touches it.
Outline outline(const Case& asked, const Scenario& scenario);

}  // namespace splicewright
