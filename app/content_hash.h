// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace splicewright
{

// SHA-256, 32 bytes. Source: [FIPS180-4], as Nettle computes it.
std::string content_hash(std::string_view bytes);

// Of several texts; where one ends and the next begins counts.
std::string joint_hash(const std::vector<std::string>& parts);

std::string in_hexadecimal(std::string_view bytes);

}  // namespace splicewright
