// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/history_rows.h"

#include <fmt/format.h>

#include <cmath>
#include <limits>

#include "cases/number_text.h"
#include "cases/plain_text.h"
#include "cases/torque_history.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

constexpr const char* right_header = "time [s], torque [N*m]";
constexpr const char* byte_order_mark = "\xEF\xBB\xBF";

std::optional<double> seconds_per(std::string_view unit)
{
    if (unit == "s") return 1.0;
    if (unit == "ms") return 1e-3;
    if (unit == "min") return 60.0;
    if (unit == "h") return 3600.0;
    return std::nullopt;
}

struct Heading
{
    std::string name;
    std::string_view unit;
};

// "torque [N*m]"
std::optional<Heading> heading_of(std::string_view cell)
{
    const std::size_t open = cell.find('[');
    if (open == std::string_view::npos || cell.empty() || cell.back() != ']') return std::nullopt;
    return Heading{lower_case(trimmed(cell.substr(0, open))), trimmed(cell.substr(open + 1, cell.size() - open - 2))};
}

}  // namespace

HistoryRows::HistoryRows(std::istream& stream, std::string file) : stream_(&stream), file_(std::move(file))
{
    buffer_.resize(longest_row + 1);
    read_header();
}

void HistoryRows::report(int column, const std::string& field, std::string_view value, std::string rule,
                         std::string fix)
{
    if (problems_.size() < most_bad_rows)
        problems_.push_back(
            {file_, line_, column, field, value.empty() ? "" : quoted(value), std::move(rule), std::move(fix)});
    else if (!ended_)
    {
        problems_.push_back({file_, line_, column, field, "", "is one fault too many: the rest was not read",
                             "mend the rows above first"});
        ended_ = true;
    }
}

// The next line that says something, without its end; at most longest_row bytes are ever held.
std::optional<std::string_view> HistoryRows::next_line()
{
    while (!ended_)
    {
        stream_->getline(buffer_.data(), static_cast<std::streamsize>(buffer_.size()));
        auto length = static_cast<std::size_t>(stream_->gcount());
        if (stream_->bad() || (stream_->eof() && length == 0)) break;
        ++line_;
        if (stream_->fail())
        {
            report(1, "torque_history", "", fmt::format("must have rows of at most {} bytes", longest_row),
                   "save the file as text with one pair of values in each row");
            stream_->clear();
            stream_->ignore(std::numeric_limits<std::streamsize>::max(), '\n');
            continue;
        }
        if (!stream_->eof()) --length;  // the end of the line
        std::string_view line(buffer_.data(), length);
        if (line_ == 1 && line.starts_with(byte_order_mark)) line.remove_prefix(3);
        if (const std::string_view said = trimmed(line); !said.empty() && said.front() != '#') return line;
    }
    if (stream_->bad())
        report(1, "torque_history", "", "cannot be read to its end", "check the disk or the connection");
    ended_ = true;
    return std::nullopt;
}

std::vector<HistoryRows::Cell> HistoryRows::cells_of(std::string_view line) const
{
    std::vector<Cell> cells;
    for (std::size_t start = 0; start <= line.size();)
    {
        const std::size_t end = std::min(line.find(separator_, start), line.size());
        const std::string_view raw = line.substr(start, end - start), text = trimmed(raw);
        const std::size_t lead = text.empty() ? 0 : static_cast<std::size_t>(text.data() - raw.data());
        cells.push_back({text, static_cast<int>(start + lead) + 1});
        start = end + 1;
    }
    return cells;
}

double HistoryRows::factor_of(const Cell& cell, std::string_view unit, const std::string& name)
{
    if (name == "time")
    {
        const auto factor = seconds_per(unit);
        if (!factor) report(cell.column, "time", cell.text, "must have a unit of time: s, ms, min, h", "time [s]");
        return factor.value_or(1);
    }
    const Result<Measurement> one = measurement(fmt::format("1 {}", unit), Dimension::moment);
    if (one.has_value()) return one.value().value;
    report(cell.column, "torque", cell.text,
           fmt::format("must have the unit of a moment: {}", accepted_units_of(Dimension::moment)), "torque [N*m]");
    return 1;
}

void HistoryRows::read_header()
{
    const auto line = next_line();
    if (!line)
    {
        line_ = 0;
        report(0, "torque_history", "", "is empty: a torque history has a header and at least two rows",
               fmt::format("begin with the line {}", right_header));
        return;
    }
    for (const char separator : {'\t', ';'})
        if (line->find(separator) != std::string_view::npos) separator_ = separator;
    const std::vector<Cell> cells = cells_of(*line);
    std::vector<Heading> headings;
    for (const Cell& cell : cells)
        if (const auto heading = heading_of(cell.text)) headings.push_back(*heading);
    const bool is_header = cells.size() == 2 && headings.size() == 2 &&
                           ((headings[0].name == "time" && headings[1].name == "torque") ||
                            (headings[0].name == "torque" && headings[1].name == "time"));
    if (!is_header)
    {
        report(1, "torque_history", *line, "must begin with a header that names time and torque with their units",
               fmt::format("{}; leave out other columns", right_header));
        ended_ = true;
        return;
    }
    time_column_ = headings[0].name == "time" ? 0 : 1;
    time_factor_ = factor_of(cells[time_column_], headings[time_column_].unit, "time");
    torque_factor_ = factor_of(cells[1 - time_column_], headings[1 - time_column_].unit, "torque");
    if (!problems_.empty()) ended_ = true;
}

std::optional<double> HistoryRows::number_of(const Cell& cell, const std::string& name)
{
    const LeadingNumber number = leading_number(cell.text);
    if (number.fault == NumberFault::none && number.rest.empty()) return number.value;
    const char* rule = "must be a number";
    if (cell.text.empty()) rule = "is missing: each row has a time and a torque";
    else if (number.fault == NumberFault::comma) rule = "must have a decimal point, not a comma";
    else if (number.fault == NumberFault::too_large) rule = "is beyond any number this program can hold";
    else if (number.fault == NumberFault::not_a_number) rule = "must be a finite number";
    else if (number.fault == NumberFault::none) rule = "must be a plain number: its unit stands in the header";
    report(cell.column, name, cell.text, rule, "correct this row or leave it out");
    return std::nullopt;
}

std::optional<HistoryRow> HistoryRows::row_of(std::string_view line)
{
    const std::vector<Cell> cells = cells_of(line);
    if (cells.size() != 2)
    {
        report(1, "torque_history", line, fmt::format("must have two values in each row, not {}", cells.size()),
               "a time and a torque, parted as in the header, with decimal points");
        return std::nullopt;
    }
    const Cell &at = cells[time_column_], &twist = cells[1 - time_column_];
    const auto time = number_of(at, "time"), torque = number_of(twist, "torque");
    if (!time || !torque) return std::nullopt;
    const HistoryRow row{*time * time_factor_, *torque * torque_factor_};
    if (last_time_ && row.time <= *last_time_)
        report(at.column, "time", at.text, "must be later than in the row before", "sort the rows by time");
    else if (!(std::abs(row.torque) <= greatest_history_torque))
        report(twist.column, "torque", twist.text,
               fmt::format("must be from -{0} to {0}", in_words(greatest_history_torque, Dimension::moment)),
               "correct the unit in the header, or leave out a spike of the logger");
    else
    {
        last_time_ = row.time;
        return row;
    }
    return std::nullopt;
}

std::optional<HistoryRow> HistoryRows::next()
{
    while (const auto line = next_line())
        if (const auto row = row_of(*line))
        {
            n_rows_ += 1;
            return row;
        }
    return std::nullopt;
}

}  // namespace splicewright
