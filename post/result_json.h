// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/report.h"

namespace splicewright
{

// The report as JSON, described by docs/result.schema.json. Every number in it is finite (a promise).
std::string result_json(const Report& report);

constexpr int result_schema_version = 4;

}  // namespace splicewright
