// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "cases/variation.h"

namespace splicewright
{

// A key and its value as it would stand in the case file.
using KeyValue = std::pair<std::string, std::string>;

// The case file with these keys replaced, in one canonical form: without comments, without `title` and `compare`,
// which change no number, keys in order. A key that stands for the same thing as another takes its place (wall and
// outer_diameter, leg and its two halves, clearance and bore, joint_angle and bending, driven_wheels and shaft_share);
// one half of a pair leaves the other half as the whole had it.
// Expects a text and keys without problems.
std::string option_text(const std::string& case_text, const std::vector<KeyValue>& replaced);

// The same for people: titled as the case with this name behind it.
std::string named_option_text(const std::string& case_text, const std::vector<KeyValue>& replaced,
                              const std::string& name);

// The option of a study.
std::vector<KeyValue> key_values(const std::vector<Variation>& variations, std::uint64_t index);

// Keys that cannot stand beside this one: "sleeve.outer_diameter" for "sleeve.wall".
std::vector<std::string> keys_replaced_by(const std::string& key);

}  // namespace splicewright
