// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/report.h"

namespace splicewright
{

// Of a shipped case, judged once for the whole program at a coarse accuracy: the page is the same at any.
const Report& report_of(const std::string& name);

}  // namespace splicewright
