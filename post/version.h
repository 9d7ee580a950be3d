// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace splicewright
{

const char* version();  // "0.1.0"

}  // namespace splicewright
