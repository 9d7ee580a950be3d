// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/version.h"

namespace splicewright
{

const char* version() { return SPLICEWRIGHT_VERSION; }

}  // namespace splicewright
