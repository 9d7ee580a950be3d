// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/variation.h"
#include "post/compare_ranking.h"
#include "post/trade_off.h"

namespace splicewright
{

// What a study was computed from; no times and no places, so that the same study gives the same files anywhere.
struct StudyOrigin
{
    std::string case_file;    // its name without folders
    std::string case_sha256;  // of its bytes
    double accuracy_pct = 1;
    double reserve = 1;
    std::vector<Variation> variations;
};

constexpr int options_schema_version = 2;

// options.csv: RFC 4180, one line for each option.
std::string csv_head(const StudyOrigin& origin);
std::string csv_line(const StudyOption& option, double reserve);

// options.json in pieces, so that no study must be held in memory: head, options, tail.
std::string json_head(const StudyOrigin& origin);
std::string json_option(const StudyOption& option, const StudyOrigin& origin);  // with a comma before all but the first
std::string json_tail(const Ranking& ranking, Merit merit);

}  // namespace splicewright
