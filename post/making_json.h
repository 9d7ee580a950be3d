// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <nlohmann/json.hpp>

#include "post/making.h"
#include "post/running_true.h"

namespace splicewright
{

// Parts of result.json, described by docs/result.schema.json.
nlohmann::ordered_json making_json(const ShopSheet& sheet);
nlohmann::ordered_json running_json(const RunningTrue& running);

}  // namespace splicewright
