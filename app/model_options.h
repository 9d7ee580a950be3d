// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <CLI/CLI.hpp>

#include "app/model_use.h"

namespace splicewright
{

// --model and --solid-dofs, into `use`, which must live as long as the words.
void add_model_options(CLI::App& words, ModelUse& use);

}  // namespace splicewright
