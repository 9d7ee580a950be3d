// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <istream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cases/problem.h"

namespace splicewright
{

struct HistoryRow
{
    double time = 0;    // s
    double torque = 0;  // N*mm
};

// The rows of a torque history, one after the other; memory does not grow with the file.
//   # a comment
//   time [s], torque [N*m]
//   0.00, 12.5
// Cells are parted by comma, semicolon or tab; the columns may change places. Time goes up from row to row.
// A bad row is a problem and is passed over; after most_bad_rows of them nothing more is read.
class HistoryRows
{
public:
    HistoryRows(std::istream& stream, std::string file);

    std::optional<HistoryRow> next();  // empty at the end

    [[nodiscard]] const std::vector<Problem>& problems() const { return problems_; }
    [[nodiscard]] double n_rows() const { return n_rows_; }

    static constexpr std::size_t most_bad_rows = 20;
    static constexpr std::size_t longest_row = 400;  // bytes

private:
    struct Cell
    {
        std::string_view text;
        int column = 1;
    };

    std::optional<std::string_view> next_line();
    [[nodiscard]] std::vector<Cell> cells_of(std::string_view line) const;
    void read_header();
    double factor_of(const Cell& cell, std::string_view unit, const std::string& name);
    std::optional<HistoryRow> row_of(std::string_view line);
    std::optional<double> number_of(const Cell& cell, const std::string& name);
    void report(int column, const std::string& field, std::string_view value, std::string rule, std::string fix);

    std::istream* stream_;
    std::string file_;
    std::string buffer_;
    int line_ = 0;
    char separator_ = ',';
    std::size_t time_column_ = 0;
    double time_factor_ = 1, torque_factor_ = 1;
    std::optional<double> last_time_;
    double n_rows_ = 0;
    bool ended_ = false;
    std::vector<Problem> problems_;
};

}  // namespace splicewright
