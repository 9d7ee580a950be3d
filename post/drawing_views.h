// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "cases/case.h"
#include "post/draft.h"

namespace splicewright
{

// Views of the shop drawing, generated from the case: origin on the axis, at the joint or at the near end of a plain
// shaft.
struct DrawingScale
{
    double paper_per_metal = 1;  // 1:1
    double text = 2.5;           // height of the type, mm of paper
};

// The splice, upper half cut, lower half from outside. Expects a joint.
Draft splice_view(const Case& asked, const DrawingScale& scale);

// The whole shaft from outside.
Draft shaft_view(const Case& asked, const DrawingScale& scale);

// Both ends of the sleeve from the right: where its welds begin and end, and where plug welds lie around. Expects them.
Draft end_view(const Case& asked, const DrawingScale& scale);
bool has_end_view(const Case& asked);  // false where all welds go all round and nothing else holds the sleeve

// The ends of both bars as they are tacked, before they are welded: half section. Expects a joint and how it is made.
Draft preparation_view(const Case& asked, const DrawingScale& scale);

// The largest scale at which a view fits into a room of so many mm; the type keeps its height. Where the labels alone
// are wider, the smallest scale there is.
using View2d = Draft (*)(const Case& asked, const DrawingScale& scale);
struct DrawingRoom
{
    double width = 0, height = 0;
};
DrawingScale scale_that_fits(View2d view, const Case& asked, const DrawingRoom& room, double text);

// The largest scale of the series that fits; without one, scale_that_fits. Source: [ISO5455] table 1, from memory:
// verify.
struct NamedScale
{
    DrawingScale scale;
    std::string name;  // "1:2"; "not to scale"
};
NamedScale standard_scale(View2d view, const Case& asked, const DrawingRoom& room, double text);

}  // namespace splicewright
