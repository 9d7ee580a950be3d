// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <string>

#include "cases/case.h"
#include "post/tolerance_text.h"

namespace splicewright
{

// The result folder of compare --tolerances: report.html, tolerances.txt, case.toml and the bars as tolerances.svg and,
// where this machine can draw, tolerances.png. Returns why there is no PNG file, or nothing.
// Throws CannotCompute when the disk refuses.
std::string write_tolerances(const ToleranceAnswer& answer, const Case& asked, double accuracy_pct,
                             const std::filesystem::path& folder);

}  // namespace splicewright
