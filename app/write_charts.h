// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "post/sheet.h"

namespace splicewright
{

// Widths of texts for laying a chart out: measured where this program draws, estimated where it was built without.
TextWidth chart_text_width();

// Writes each chart as <name>.svg and, where this machine can draw, as <name>.png. Returns why there are no PNG files,
// or nothing. Throws CannotCompute when a file cannot be written.
std::string write_charts(const std::vector<NamedSheet>& charts, const std::filesystem::path& folder);

}  // namespace splicewright
