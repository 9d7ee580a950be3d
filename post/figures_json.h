// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <nlohmann/json.hpp>

#include "post/torque_flow.h"
#include "post/weld_surface.h"

namespace splicewright
{

// Parts of result.json that the figures of the report are drawn from, described by docs/result.schema.json.
nlohmann::ordered_json torque_flow_json(const std::vector<TorquePoint>& flow);
nlohmann::ordered_json weld_surfaces_json(const std::vector<WeldSurface>& surfaces);

}  // namespace splicewright
