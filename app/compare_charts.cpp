// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/compare_charts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <string>
#include <utility>

#include "app/compare.h"
#include "cases/key_kinds.h"
#include "post/number_words.h"

namespace splicewright
{
namespace
{

// More would not be seen on a sheet of that size.
constexpr std::size_t most_places = 1500;  // of the raster of mass and merit
constexpr std::size_t most_points = 300, most_lines = 8, most_columns = 60, most_rows = 40;
// Of the raster: relative steps, a tenth of a disc at the scale of a study.
constexpr double step_of_mass = 2e-3, step_of_logarithm = 0.02, step_of_use = 5e-3;

// A value of a key that is drawn.
struct Value
{
    std::size_t index = 0;  // in the variation
    std::string words;
    std::optional<double> number;  // house units
};

std::optional<double> number_in(const std::string& key, const std::string& words)
{
    const auto kind = kind_of_key(key);
    if (!kind || kind->form == KeyForm::text || kind->form == KeyForm::group) return std::nullopt;
    if (kind->form == KeyForm::number || kind->form == KeyForm::whole_number)
        return std::strtod(words.c_str(), nullptr);
    const Result<Measurement> read = measurement(words, kind->dimension);
    return read.has_value() ? std::optional(read.value().value) : std::nullopt;
}

bool has_numbers(const std::vector<Value>& values)
{
    return std::all_of(values.begin(), values.end(), [](const Value& value) { return value.number.has_value(); });
}

// By increasing value where all are numbers; evenly spread when there are more than can be drawn.
std::vector<Value> drawn_values(const Variation& variation, std::size_t most)
{
    std::vector<Value> all;
    for (std::size_t i = 0; i < variation.values.size(); ++i)
    {
        const std::string words = plain_value(variation.values[i]);
        all.push_back({i, short_value(words), number_in(variation.key, words)});
    }
    if (has_numbers(all))
        std::stable_sort(all.begin(), all.end(), [](const Value& a, const Value& b) { return *a.number < *b.number; });
    if (all.size() <= most) return all;
    std::vector<Value> some;
    for (std::size_t i = 0; i < most; ++i) some.push_back(all[i * (all.size() - 1) / (most - 1)]);
    return some;
}

class Sheets
{
public:
    Sheets(const Study& study, double reserve, std::uint64_t anchor, const OutcomeOf& outcome_of)
        : study_(&study), reserve_(reserve), anchor_(anchor), outcome_of_(&outcome_of)
    {
        for (std::size_t key = 0; key < study.variations.size(); ++key)
            if (study.variations[key].values.size() > 1) moving_.push_back(key);
    }

    // Which keys a chart has and how many values of each are not in it.
    [[nodiscard]] ChartOrigin origin(const std::vector<std::pair<std::size_t, std::size_t>>& shown) const
    {
        const StudyOrigin study = origin_of(*study_, reserve_);
        ChartOrigin origin{study.case_file, reserve_, study.accuracy_pct, "", ""};
        const auto choice = choice_at(study_->variations, anchor_);
        for (const std::size_t key : moving_)
        {
            if (std::any_of(shown.begin(), shown.end(), [&](const auto& pair) { return pair.first == key; })) continue;
            const Variation& variation = study_->variations[key];
            origin.held += fmt::format("{}{} = {}", origin.held.empty() ? "" : ", ", variation.key,
                                       short_value(plain_value(variation.values[choice[key]])));
        }
        for (const auto& [key, n_shown] : shown)
            if (const auto& variation = study_->variations[key]; n_shown < variation.values.size())
                origin.note += fmt::format("{}{} of {} values of {} are drawn.", origin.note.empty() ? "" : " ",
                                           n_shown, variation.values.size(), variation.key);
        return origin;
    }

    [[nodiscard]] std::optional<UtilisationChart> utilisation() const
    {
        for (const std::size_t key : moving_)
        {
            const std::vector<Value> values = drawn_values(study_->variations[key], most_points);
            if (has_numbers(values)) return utilisation_along(key, values);
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<HeatMap> heat_map() const
    {
        if (moving_.size() < 2) return std::nullopt;
        const std::size_t x = moving_[0], y = moving_[1];
        const std::vector<Value> columns = drawn_values(study_->variations[x], most_columns),
                                 rows = drawn_values(study_->variations[y], most_rows);
        HeatMap map;
        map.origin = origin({{x, columns.size()}, {y, rows.size()}});
        map.x_key = study_->variations[x].key;
        map.y_key = study_->variations[y].key;
        for (const Value& column : columns) map.x_words.push_back(column.words);
        for (const Value& row : rows)
        {
            map.y_words.push_back(row.words);
            for (const Value& column : columns) map.cells.push_back(at({{x, column.index}, {y, row.index}}));
        }
        return map;
    }

private:
    // The outcome of the anchor with these keys changed.
    [[nodiscard]] OptionOutcome at(const std::vector<std::pair<std::size_t, std::size_t>>& changed) const
    {
        auto choice = choice_at(study_->variations, anchor_);
        for (const auto& [key, value] : changed) choice[key] = value;
        return (*outcome_of_)(index_of(study_->variations, choice));
    }

    [[nodiscard]] std::optional<UtilisationChart> utilisation_along(std::size_t key,
                                                                    const std::vector<Value>& values) const
    {
        const auto other = std::find_if(moving_.begin(), moving_.end(), [&](std::size_t k) { return k != key; });
        UtilisationChart chart;
        chart.key = study_->variations[key].key;
        std::vector<std::pair<std::size_t, std::size_t>> shown{{key, values.size()}};
        std::vector<Value> lines(1);
        if (other != moving_.end())
        {
            lines = drawn_values(study_->variations[*other], most_lines);
            chart.line_key = study_->variations[*other].key;
            shown.emplace_back(*other, lines.size());
        }
        chart.origin = origin(shown);
        for (const Value& line : lines)
        {
            UtilisationChart::Line drawn{line.words, {}};
            for (const Value& value : values)
            {
                std::vector<std::pair<std::size_t, std::size_t>> changed{{key, value.index}};
                if (other != moving_.end()) changed.emplace_back(*other, line.index);
                drawn.points.push_back({*value.number, value.words, at(changed)});
            }
            const auto judged = std::count_if(drawn.points.begin(), drawn.points.end(),
                                              [](const auto& point) { return point.outcome.end == OptionEnd::judged; });
            if (judged > 0) chart.lines.push_back(std::move(drawn));
        }
        return chart.lines.empty() ? std::nullopt : std::optional(std::move(chart));
    }

    const Study* study_;
    double reserve_;
    std::uint64_t anchor_;
    const OutcomeOf* outcome_of_;
    std::vector<std::size_t> moving_;  // keys with more than one value
};

}  // namespace

void Cloud::add(const OptionOutcome& outcome, double reserve)
{
    if (outcome.end != OptionEnd::judged) return;
    constexpr double shortest = 1e-6;  // a life; what is less is drawn there
    const double merit = merit_ == Merit::life
                             ? std::log10(std::max(counted_life(outcome), shortest)) / step_of_logarithm
                             : outcome.utilisation / step_of_use;
    cells_.emplace(std::lround(std::log(outcome.mass_kg) / step_of_mass), std::lround(merit),
                   passes_with(outcome, reserve));
}

std::vector<TradeOffChart::Place> Cloud::places() const
{
    std::set<std::tuple<long, long, bool>> cells = cells_;
    long coarser = 1;
    while (cells.size() > most_places)
    {
        coarser *= 2;
        cells.clear();
        for (const auto& [mass, merit, passes] : cells_)
            cells.emplace(std::lround(static_cast<double>(mass) / static_cast<double>(coarser)),
                          std::lround(static_cast<double>(merit) / static_cast<double>(coarser)), passes);
    }
    std::vector<TradeOffChart::Place> places;
    for (const auto& [mass, merit, passes] : cells)
        places.push_back({std::exp(static_cast<double>(mass * coarser) * step_of_mass),
                          merit_ == Merit::life ? std::pow(10, static_cast<double>(merit * coarser) * step_of_logarithm)
                                                : static_cast<double>(merit * coarser) * step_of_use,
                          passes});
    return places;
}

std::vector<NamedSheet> study_sheets(const Study& study, double reserve, std::uint64_t anchor,
                                     const TradeOff& trade_off, const Cloud& cloud, const OutcomeOf& outcome_of,
                                     const TextWidth& width)
{
    const Sheets sheets(study, reserve, anchor, outcome_of);
    std::vector<NamedSheet> drawn;
    if (const auto chart = sheets.utilisation()) drawn.push_back({"utilisation", utilisation_sheet(*chart, width)});
    TradeOffChart weighed{sheets.origin({}), trade_off.merit(), {}, cloud.places(), trade_off.options()};
    for (const Variation& variation : study.variations) weighed.keys.push_back(variation.key);
    if (study.size() > 1 && !(weighed.others.empty() && weighed.best.empty()))
        drawn.push_back({"trade-off", trade_off_sheet(weighed, width)});
    if (const auto map = sheets.heat_map()) drawn.push_back({"heat-map", heat_map_sheet(*map, width)});
    return drawn;
}

}  // namespace splicewright
