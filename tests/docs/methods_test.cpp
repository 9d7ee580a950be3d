// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/docs/documents.h"

namespace splicewright
{
namespace
{

using Row = std::vector<std::string>;

// Rows of docs/methods.md: checks begin with an id and have five cells, comparisons have four.
std::vector<Row> documented(std::size_t n_cells)
{
    std::vector<Row> kept;
    for (const Row& row : table_rows(document("docs/methods.md")))
        if (row.size() == n_cells && row.front().starts_with('`') == (n_cells == 5)) kept.push_back(row);
    return kept;
}

// Whether each part of the documented source, "a; b", stands in the row's.
bool names_source(const std::string& source, const std::string& parts)
{
    for (std::size_t start = 0; start < parts.size();)
    {
        const std::size_t end = std::min(parts.find("; ", start), parts.size());
        if (source.find(parts.substr(start, end - start)) == std::string::npos) return false;
        start = end + 2;
    }
    return true;
}

bool documents_check(const Row& row, const CheckRow& check)
{
    return row[0] == fmt::format("`{}`", without_side_and_number(check.id)) && row[1] == check.check &&
           row[2] == check.method && names_source(check.source, row[3]);
}

bool documents_comparison(const Row& row, const HandbookRow& value)
{
    if (row[0] != without_side_and_number(value.what) || row[1] != value.source) return false;
    if (row[3] != name_of(value.provenance)) return false;
    return row[2].starts_with("varies") ||
           row[2] == fmt::format("{:g} to {:g} %", value.band_low_pct, value.band_high_pct);
}

std::vector<CheckRow> all_checks(const Report& report)
{
    std::vector<CheckRow> checks = report.sound.checks;
    for (const Judgement& scenario : report.what_if)
        checks.insert(checks.end(), scenario.checks.begin(), scenario.checks.end());
    return checks;
}

template <class Value, class Matches>
void expect_documented(const std::vector<Row>& rows, const Value& value, const Matches& matches,
                       const std::string& name, std::set<std::size_t>& seen)
{
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const Row& each) { return matches(each, value); });
    EXPECT_NE(row, rows.end()) << name;
    if (row != rows.end()) seen.insert(static_cast<std::size_t>(row - rows.begin()));
}

void expect_all_seen(const std::vector<Row>& rows, const std::set<std::size_t>& seen)
{
    for (std::size_t at = 0; at < rows.size(); ++at)
        EXPECT_TRUE(seen.contains(at)) << "no example shows: " << rows[at][0] << " | " << rows[at][1];
}

TEST(Methods, TablesHoldWhatTheResultsOfTheExamplesHoldAndNoMore)
{
    const std::vector<Row> checks = documented(5), comparisons = documented(4);
    std::set<std::size_t> checks_seen, comparisons_seen;
    for (const std::string& path : example_paths())
    {
        const Report report = coarse_report(path);
        for (const CheckRow& check : all_checks(report))
            expect_documented(checks, check, documents_check,
                              fmt::format("{} | {} | {} | {}", check.id, check.check, check.method, check.source),
                              checks_seen);
        for (const HandbookRow& value : report.handbook)
            expect_documented(comparisons, value, documents_comparison,
                              fmt::format("{} | {}", value.what, value.source), comparisons_seen);
    }
    expect_all_seen(checks, checks_seen);
    expect_all_seen(comparisons, comparisons_seen);
}

}  // namespace
}  // namespace splicewright
