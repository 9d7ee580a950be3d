// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace splicewright
{

extern const char* const view_script;         // post/view3d/view3d.js
extern const char* const view_script_sha256;  // of its bytes, hexadecimal

}  // namespace splicewright
