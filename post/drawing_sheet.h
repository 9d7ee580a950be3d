// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>

#include "cases/case.h"
#include "post/making.h"
#include "post/markup.h"

namespace splicewright
{

// The shop drawing as a file of its own: an A3 sheet that prints true to the scale written beside each view, with
// notes, parts list and a title block with blanks to fill in. `checksum`: of the case, in hexadecimal.
Markup drawing_sheet(const Case& asked, const std::optional<ShopSheet>& making, const std::string& checksum);

}  // namespace splicewright
