// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "app/model_use.h"
#include "cases/case.h"
#include "post/report.h"
#include "solver/meridian.h"

namespace splicewright
{

// The whole tool on one page: from what was asked to a judged answer.
// Reads nothing, prints nothing, remembers nothing: same case, same report.
// Throws CannotCompute when a scenario cannot be meshed or solved.
Report check_splice(const Case& asked, const Accuracy& accuracy, const ModelUse& models = {});

}  // namespace splicewright
