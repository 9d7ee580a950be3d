// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "app/model_use.h"
#include "post/report.h"

namespace splicewright
{

// A scenario that the solid model alone answers. Throws CannotCompute when it cannot be meshed or solved.
Judgement judged_by_solid(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, const ModelUse& use);

// The solid model beside a judged meridian model. asked: with the slit as that model found it. Throws as above.
void add_solid(Judgement& result, const Case& asked, const ModelUse& use);

}  // namespace splicewright
