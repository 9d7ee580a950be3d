// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// Bounds against slips of the unit, wide around any metal. Common practice, no source.
constexpr double least_modulus = 50e3, greatest_modulus = 400e3;  // MPa
constexpr double least_poisson_ratio = 0, greatest_poisson_ratio = 0.49;

constexpr const char* unknown_steel = "unknown steel";  // the library's answer to a steel that nobody knows

// A material as the library gives it.
struct LibraryMaterial
{
    Material material;
    std::vector<std::string> other_names;  // "E355 +N" for "E355 tube +N"
    std::vector<std::string> loose_names;  // "E355 tube": accepted though it leaves the condition open
    std::string loose_name_means;          // how a loose name is taken
};

// Read once from materials.toml, which is built into the program.
const std::vector<LibraryMaterial>& material_library();

constexpr double sqrt_mm_per_sqrt_m = 31.6227766;  // 1 MPa sqrt(m) in MPa sqrt(mm)

// (12 sqrt(Cv) - 20)(25/B)^0.25 + 20 in MPa sqrt(m) at B = 25 mm, given in MPa sqrt(mm); Cv in J.
// Source: [BS7910] annex J, from memory.
double toughness_of_charpy(double joule);

// By any of its names, letter case and repeated spaces ignored; empty when the library has none.
std::optional<LibraryMaterial> library_material(const std::string& name);

// All names, in the order of the library.
std::vector<std::string> library_material_names();

bool is_loose_name(const LibraryMaterial& entry, const std::string& name);

// "C45  +qt" and "C45 +QT" give the same.
std::string comparable_name(const std::string& name);

}  // namespace splicewright
