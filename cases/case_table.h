// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <toml++/toml.h>

#include <array>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "cases/companion_files.h"
#include "cases/places.h"
#include "cases/units.h"

namespace splicewright
{

// Stands for a value that could not be read and has been reported. No comparison with it holds,
// so the rules that are checked later stay silent about it; no accepted case contains one.
constexpr double unread = std::numeric_limits<double>::quiet_NaN();

// What a reading brings to light, gathered along the way.
struct Findings
{
    std::string file;
    std::vector<Problem> problems;
    Places places;
    std::vector<DefaultUsed> defaults;
    std::vector<Tolerance> tolerances;
    std::vector<std::string> cautions;
    CompanionFiles companions = no_companion;

    void report(const std::string& field, std::string rule, std::string fix);
};

// One table of the case file. Each reader returns nothing when the key is absent; when the key is there but
// wrong it reports that and returns `unread`, or nothing for a text.
class CaseTable
{
public:
    CaseTable(const toml::table& table, std::string path, Findings& findings);

    [[nodiscard]] bool has(const std::string& key) const;
    [[nodiscard]] std::string field(const std::string& key) const;  // the dotted path

    [[nodiscard]] std::optional<double> quantity(const std::string& key, Dimension dimension) const;
    [[nodiscard]] double required_quantity(const std::string& key, Dimension dimension) const;
    [[nodiscard]] std::optional<Millimetre> length(const std::string& key) const;
    [[nodiscard]] Millimetre required_length(const std::string& key) const;

    [[nodiscard]] std::optional<double> plain_number(const std::string& key) const;
    [[nodiscard]] std::optional<std::string> text(const std::string& key) const;
    [[nodiscard]] std::optional<std::string> word(const std::string& key) const;  // the text if it is one, no report
    [[nodiscard]] std::optional<std::string> required_text(const std::string& key) const;
    [[nodiscard]] std::optional<std::array<double, 2>> quantity_pair(const std::string& key, Dimension dimension) const;

    [[nodiscard]] std::optional<CaseTable> table(const std::string& key) const;
    [[nodiscard]] std::vector<CaseTable> tables(const std::string& key) const;  // [[...]], empty when absent

    void report(const std::string& key, std::string rule, std::string fix) const;
    void note_default(const std::string& key, std::string value, std::string reason) const;
    // Rules about `name` point at the key that gave its value.
    void stands_for(const std::string& name, const std::string& key) const;
    void report_unknown_keys() const;
    [[nodiscard]] Findings& findings() const { return *findings_; }
    [[nodiscard]] const toml::table& as_written() const { return *table_; }

private:
    [[nodiscard]] const toml::node* node(const std::string& key) const;
    [[nodiscard]] double quantity_of(const toml::node& node, const std::string& key, const std::string& fix_start,
                                     Dimension dimension) const;
    void report_wrong_type(const toml::node& node, const std::string& key, const std::string& expected,
                           const std::string& fix) const;

    const toml::table* table_;
    std::string path_;
    Findings* findings_;
};

}  // namespace splicewright
