// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/making.h"
#include "post/running_true.h"

namespace splicewright
{

// The shop sheet as plain aligned text, 100 columns, about a page.
std::string shop_text(const ShopSheet& sheet);

// "a half lap of 14 mm" or "square ends".
std::string ends_words(const CutPlan& cut);

// One sentence on the critical speed, and with a joint one on the balance; as lines with their names before them.
std::vector<std::string> running_words(const Case& asked, const RunningTrue& running);
std::string running_lines(const Case& asked, const RunningTrue& running);

}  // namespace splicewright
