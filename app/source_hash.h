// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace splicewright
{

// SHA-256 over all sources that a number can depend on, hexadecimal. Two builds of the same sources have the same.
const char* source_hash();

}  // namespace splicewright
