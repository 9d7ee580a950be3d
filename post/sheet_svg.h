// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/sheet.h"

namespace splicewright
{

// The sheet as an SVG 1.1 file: the same shapes and texts as in the picture of points, sharp at every size.
// Source: [W3C-SVG11]. Texts name DejaVu Sans, in whose widths they were laid out, and any sans-serif after it.
std::string sheet_svg(const Sheet& sheet);

}  // namespace splicewright
