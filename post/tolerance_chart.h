// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/sheet.h"
#include "post/tolerance_text.h"

namespace splicewright
{

// What each tolerance alone does to the governing utilisation: a bar from one of its ends to the other, those that move
// it most on top. case_file: its name without folders. Expects a nominal that was judged and one effect at least.
Sheet tolerance_sheet(const ToleranceAnswer& answer, const std::string& case_file, double accuracy_pct,
                      const TextWidth& width);

}  // namespace splicewright
