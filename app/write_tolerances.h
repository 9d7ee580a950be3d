// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>

#include "cases/case.h"
#include "post/tolerance_text.h"

namespace splicewright
{

// The result folder of compare --tolerances: report.html, tolerances.txt and case.toml.
// Throws CannotCompute when the disk refuses.
void write_tolerances(const ToleranceAnswer& answer, const Case& asked, double accuracy_pct,
                      const std::filesystem::path& folder);

}  // namespace splicewright
