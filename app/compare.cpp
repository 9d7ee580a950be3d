// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/compare.h"

#include <fmt/format.h>

#include <algorithm>
#include <deque>
#include <fstream>
#include <set>
#include <utility>

#include "app/compare_charts.h"
#include "app/computing_order.h"
#include "app/recommended.h"
#include "app/result_folder.h"
#include "app/write_charts.h"
#include "cases/key_kinds.h"
#include "post/compare_html.h"

namespace splicewright
{
namespace
{

// Goes through a shard once, run by run, leaving out what the store has; then once through what must be tried again.
// A worker stays with its run while there is something left of it.
class Queue
{
public:
    Queue(const Study& study, const Shard& shard, OptionStore& store, const CompareWatch& watch, Computed& computed)
        : study_(&study), shard_(shard), store_(&store), watch_(&watch), computed_(&computed), order_(study)
    {
    }

    std::optional<std::uint64_t> next(std::optional<std::uint64_t> last)
    {
        if (last)
            if (const auto task = next_of(order_.run_of(*last))) return task;
        for (; opened_ < order_.n_runs(); ++opened_)
        {
            begun_.emplace(opened_, 0);
            if (const auto task = next_of(opened_))
            {
                ++opened_;
                return task;
            }
        }
        while (!begun_.empty())
            if (const auto task = next_of(begun_.begin()->first)) return task;
        if (again_.empty()) return std::nullopt;
        const std::uint64_t task = again_.front();
        again_.pop_front();
        return task;
    }

    void end(const TaskEnd& task)
    {
        const auto outcome = outcome_from_line(task.line);
        if (outcome)
        {
            store_->put(key_.at(task.index), task.line);
            ++computed_->computed;
        }
        else if (!task.is_late && tried_again_.insert(task.index).second)
        {
            again_.push_back(task.index);
            return;
        }
        else computed_->lost[task.index] = task.why_not;
        key_.erase(task.index);
        tried_again_.erase(task.index);
        watch_->computed();
    }

private:
    std::optional<std::uint64_t> next_of(std::uint64_t run)
    {
        const auto found = begun_.find(run);
        if (found == begun_.end()) return std::nullopt;
        while (found->second < order_.run_length())
        {
            const std::uint64_t task = order_.index_at(run, found->second++);
            if (task % shard_.of != shard_.number - 1) continue;
            const std::string key = option_key(*study_, task, this_program());
            if (const auto line = store_->value(key); line && outcome_from_line(*line))
            {
                ++computed_->known;
                watch_->known();
                continue;
            }
            key_[task] = key;
            return task;
        }
        begun_.erase(found);
        return std::nullopt;
    }

    const Study* study_;
    Shard shard_;
    OptionStore* store_;
    const CompareWatch* watch_;
    Computed* computed_;
    ComputingOrder order_;
    std::uint64_t opened_ = 0;                      // runs
    std::map<std::uint64_t, std::uint64_t> begun_;  // by run: places that are done with
    std::deque<std::uint64_t> again_;
    std::set<std::uint64_t> tried_again_;
    std::map<std::uint64_t, std::string> key_;  // of the tasks under way
};

// Through the option, for each key of the sleeve that has a unit.
std::vector<KeyLine> lines_through(std::uint64_t index, const Study& study, const Computed& computed,
                                   OptionStore& store)
{
    std::vector<KeyLine> lines;
    const std::vector<std::size_t> here = choice_at(study.variations, index);
    for (std::size_t key = 0; key < study.variations.size(); ++key)
    {
        const Variation& variation = study.variations[key];
        const auto kind = kind_of_key(variation.key);
        if (!variation.key.starts_with("sleeve.") || !kind || kind->form != KeyForm::quantity) continue;
        KeyLine line{variation.key, {}};
        for (std::size_t value = 0; value < variation.values.size(); ++value)
        {
            std::vector<std::size_t> choice = here;
            choice[key] = value;
            const std::string words = plain_value(variation.values[value]);
            line.points.push_back({value_of(words, kind->dimension), words,
                                   outcome_in(store, study, index_of(study.variations, choice), computed)});
        }
        sort_by_value(line.points);
        lines.push_back(std::move(line));
    }
    return lines;
}

std::ofstream opened(const std::filesystem::path& file)
{
    std::ofstream stream(file, std::ios::binary);
    stream.exceptions(std::ios::badbit | std::ios::failbit);
    return stream;
}

TradeOff trade_off_of(const Study& study, const Computed& computed, OptionStore& store, double reserve)
{
    TradeOff trade_off(reserve);
    for (std::uint64_t index = 0; index < study.size(); ++index)
        trade_off.add(option_at(study, index, outcome_in(store, study, index, computed)));
    return trade_off;
}

Compared filled(const Study& study, const Computed& computed, OptionStore& store, double reserve,
                const std::filesystem::path& folder, const std::string& search_words)
{
    const StudyOrigin origin = origin_of(study, reserve);
    const TradeOff trade_off = trade_off_of(study, computed, store, reserve);
    Cloud cloud(trade_off.merit());
    Compared compared{Ranking(reserve), {}, {}, false, {}};
    std::ofstream csv = opened(folder / "options.csv"), json = opened(folder / "options.json");
    csv << csv_head(origin);
    json << json_head(origin);
    for (std::uint64_t index = 0; index < study.size(); ++index)
    {
        StudyOption option = option_at(study, index, outcome_in(store, study, index, computed));
        option.non_dominated = trade_off.holds(option.outcome);
        csv << csv_line(option, reserve);
        json << json_option(option, origin);
        if (!option.non_dominated) cloud.add(option.outcome, reserve);
        compared.ranking.add(std::move(option));
    }
    json << json_tail(compared.ranking, trade_off.merit());
    for (std::ofstream* stream : {&csv, &json}) stream->close();
    const auto& best = compared.ranking.best();
    std::vector<KeyLine> lines;
    if (!best.empty()) lines = lines_through(best.front().index, study, computed, store);
    compared.text = compare_text(origin, compared.ranking, trade_off.merit(), lines);
    if (!search_words.empty()) compared.text += "\n" + search_words;
    write_result_file(folder / "ranking.txt", compared.text);
    write_result_file(folder / "case.toml", study.case_text);
    std::vector<NamedSheet> sheets;
    if (!best.empty())
        sheets = study_sheets(
            study, reserve, best.front().index, trade_off, cloud,
            [&](std::uint64_t index) { return outcome_in(store, study, index, computed); }, chart_text_width());
    compared.why_no_pictures = write_charts(sheets, folder);
    if (!best.empty() && passes_with(best.front().outcome, reserve))
    {
        compared.why_no_report =
            write_recommended(study, best.front().index, options_table(origin, compared.ranking), folder);
        compared.has_report = compared.why_no_report.empty();
    }
    const std::string full_report = compared.has_report ? fmt::format("{}/report.html", recommended_folder) : "";
    const PageFile asked{origin.case_file, study.case_text, origin.case_sha256};
    write_result_file(folder / "report.html", compare_html({origin, compared.ranking, lines, search_words, asked,
                                                            sheets, full_report, compared.why_no_report}));
    return compared;
}

}  // namespace

Computed compute(const Study& study, const Shard& shard, const PoolPlan& pool, OptionStore& store,
                 const CompareWatch& watch)
{
    EXPECTS(shard.number >= 1 && shard.number <= shard.of);
    Computed computed;
    Queue queue(study, shard, store, watch, computed);
    LastSolution last;  // each worker process has its own
    done_by_workers(
        pool, [&](std::optional<std::uint64_t> before) { return queue.next(before); },
        [&](std::uint64_t index) { return outcome_line(judged_option(study, index, last)); },
        [&](const TaskEnd& task) { queue.end(task); });
    return computed;
}

double value_of(const std::string& words, Dimension dimension)
{
    const Result<Measurement> read = measurement(words, dimension);
    EXPECTS(read.has_value());
    return read.value().value;
}

void sort_by_value(std::vector<KeyLine::Point>& points)
{
    std::sort(points.begin(), points.end(),
              [](const KeyLine::Point& a, const KeyLine::Point& b) { return a.value < b.value; });
}

OptionOutcome outcome_in(OptionStore& store, const Study& study, std::uint64_t index, const Computed& computed)
{
    if (const auto lost = computed.lost.find(index); lost != computed.lost.end()) return failed_outcome(lost->second);
    const auto line = store.value(option_key(study, index, this_program()));
    const auto outcome = line ? outcome_from_line(*line) : std::nullopt;
    return outcome ? *outcome : failed_outcome("its row in the store is damaged: start again");
}

Compared write_comparison(const Study& study, const Computed& computed, OptionStore& store, double reserve,
                          const std::filesystem::path& folder, const std::string& search_words)
{
    std::optional<Compared> compared;
    write_result_folder(folder,
                        [&](const std::filesystem::path& partial)
                        {
                            try
                            {
                                compared = filled(study, computed, store, reserve, partial, search_words);
                            }
                            catch (const std::ios_base::failure&)
                            {
                                throw CannotCompute({"", 0, 0, "result folder", fmt::format("\"{}\"", folder.string()),
                                                     "could not be written: the disk refuses; the store keeps all "
                                                     "that was computed",
                                                     "make room, or name a folder on another disk: --out FOLDER"});
                            }
                        });
    return *compared;
}

}  // namespace splicewright
