// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <CLI/CLI.hpp>

namespace splicewright
{

// Check of an option that takes a number from `least` to `greatest`; names a decimal comma.
CLI::Validator number_between(double least, double greatest);

}  // namespace splicewright
