// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "cases/case_table.h"

namespace splicewright
{

constexpr const char* how_to_name_a_steel =
    "material = \"...\" with the name of its steel (docs/case-format.md lists them), or material = \"unknown\"";

// The parts of read_case, one for each table of the case file. They report what they find to the table's findings.

// What a material is wanted for.
enum class MaterialUse
{
    part,    // a bar or the sleeve
    filler,  // weld metal
};

// The [[material]] tables of the case.
std::vector<Material> stated_materials(const CaseTable& top);

// The material that a key names: one stated in the case, else one of the library. Empty when reported or absent.
std::optional<Material> material_at(const CaseTable& table, const std::string& key, MaterialUse use,
                                    const std::vector<Material>& stated);

Bar bar_at(const CaseTable& table, const std::vector<Material>& stated);

// The fillers that [joint] and [sleeve.weld] name; each stands in for the other.
struct Fillers
{
    Material joint, sleeve_weld;
};
Fillers fillers_of(const std::optional<CaseTable>& joint, const std::optional<CaseTable>& sleeve_weld,
                   const std::vector<Material>& stated);

// `diameters`: of the bars at the joint, [left, right] mm, `unread` where unknown.
Joint joint_at(const CaseTable& table, const std::array<double, 2>& diameters, const Material& filler);

// The largest radius that the inner corners of a half lap have room for, mm.
double greatest_lap_corner_radius(const Joint& joint, const std::array<double, 2>& diameters);

std::vector<PlugRing> plugs_at(const CaseTable& sleeve);

Sleeve sleeve_at(const CaseTable& table, const std::optional<CaseTable>& weld, const std::array<double, 2>& diameters,
                 const std::vector<Material>& stated, const Material& filler);

SleeveWeld sleeve_weld_at(const CaseTable& table, const Material& filler);

Load load_at(const CaseTable& table);

// [judgement]; all defaults where it is absent.
Rating rating_at(const CaseTable& top);

// Of a case whose bars and joint have been read; with a joint always, with all defaults where [making] is absent.
std::optional<Making> making_at(const CaseTable& top, const Case& asked);

// With the largest torque on one shaft seen from both ends.
Vehicle vehicle_at(const CaseTable& table);

}  // namespace splicewright
