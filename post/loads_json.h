// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <nlohmann/json.hpp>

#include "cases/case.h"

namespace splicewright
{

// The loads of result.json: peak torque, where it comes from, the summary of a torque history; described by
// docs/result.schema.json.
nlohmann::ordered_json loads_json(const Load& load);

}  // namespace splicewright
