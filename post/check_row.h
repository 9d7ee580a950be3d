// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "post/worked.h"

namespace splicewright
{

enum class CheckKind
{
    strength,  // once, at the peak load
    fatigue,   // over the life asked for
};

// One line of the verdict.
struct CheckRow
{
    std::string id;    // "fatigue/bar-toe.left", unique within a scenario
    std::string site;  // "bar-toe.left"
    CheckKind kind = CheckKind::strength;
    std::string check;    // what is compared, in words
    double demand = 0;    // in `unit`
    double capacity = 0;  // in `unit`
    std::string unit;
    std::string brief;  // demand in a few characters where demand of capacity says nothing: "normal 0.3, shear 0.5"
    double utilisation = 0;  // demand over capacity as the method counts it; at the upper end of the error bar
    double error_pct = 0;    // discretisation error of the stress behind it
    std::string method;      // formula in words
    std::string source;      // document, edition, clause
    Provenance provenance = Provenance::from_memory;  // weakest of what went in
    std::string note;                                 // limits of validity, what was assumed; may be empty
    std::string not_valid_because;   // empty: the method holds here; otherwise the row is shown and never governs
    std::optional<double> life;      // fatigue: failure after this many times the life asked for; infinite: never
    std::vector<WorkedStep> worked;  // how it was computed, line by line; the last gives the utilisation
    [[nodiscard]] bool valid() const { return not_valid_because.empty(); }
    [[nodiscard]] bool passes() const { return !valid() || utilisation <= 1; }
};

// The weaker of two provenances, so that a row never claims more than its weakest number.
Provenance weaker(Provenance a, Provenance b);

// Sites that rows were made for in strength or in fatigue, none of which holds there: nothing is known of them.
std::vector<std::string> sites_without_valid_row(const std::vector<CheckRow>& rows);

// Valid row with the largest utilisation, of a kind, or at a site; nullptr when there is none.
const CheckRow* governing(const std::vector<CheckRow>& rows, CheckKind kind);
const CheckRow* governing(const std::vector<CheckRow>& rows);
const CheckRow* governing(const std::vector<CheckRow>& rows, CheckKind kind, const std::string& site);

}  // namespace splicewright
