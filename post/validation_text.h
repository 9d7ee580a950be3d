// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/published_check.h"

namespace splicewright
{

// "+0.12 %", or the plain difference where zero is expected.
std::string difference_text(const ProvenCheck& row);
// "±0.3 %", "-2 to +10 %", "±0.005".
std::string allowed_text(const PublishedCheck& check);
// "exact theory", "published chart; from memory: verify".
std::string provenance_text(const PublishedCheck& check);

// One line of the terminal's table, with its newline; misses are marked, with the reason of their allowance.
std::string terminal_header();
std::string terminal_row(const ProvenCheck& row);

// "213 of 213 checks agree, from 24 sources."
std::string summary(const std::vector<ProvenCheck>& rows);

// What --list prints: name and claim.
std::string listing(const std::vector<CheckGroup>& groups);

// The whole of docs/validation.md. Depends on the rows and the version alone.
std::string validation_document(const std::vector<ProvenCheck>& rows, const std::string& version);

}  // namespace splicewright
