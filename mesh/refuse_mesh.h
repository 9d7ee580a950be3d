// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

namespace splicewright
{

// Throws CannotCompute: a valid case that does not mesh is to be reported. `part`: "section" or "solid".
[[noreturn]] void refuse_mesh(const char* part, const std::string& why);

}  // namespace splicewright
