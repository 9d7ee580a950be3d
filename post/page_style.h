// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace splicewright
{

extern const char* const page_style;  // post/page_style.css

}  // namespace splicewright
