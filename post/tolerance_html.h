// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/report_html.h"
#include "post/tolerance_text.h"

namespace splicewright
{

// What the ends of the tolerances do, as one HTML file that asks for nothing outside itself, in the manner of
// report_html.
struct TolerancePage
{
    const ToleranceAnswer& answer;
    PageFile case_file;
    double accuracy_pct = 1;
};
std::string tolerance_html(const TolerancePage& page);

}  // namespace splicewright
