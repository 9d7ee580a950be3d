// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/study.h"

#include <fmt/format.h>

#include <algorithm>
#include <istream>
#include <iterator>
#include <utility>

#include "app/content_hash.h"
#include "app/scenarios.h"
#include "app/source_hash.h"
#include "cases/companion_files.h"
#include "cases/compare_table.h"
#include "cases/option_text.h"
#include "cases/read_case.h"
#include "post/result_json.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

constexpr const char* history_key = "load.torque_history";

CompanionFiles companions_of(const Study& study) { return companions_beside(study.case_file.parent_path().string()); }

// Of a file that cannot be read too: whether it is there is part of what an option depends on.
std::string hash_of(const Companion& companion)
{
    if (companion.stream == nullptr) return content_hash("unreadable");
    const std::string bytes{std::istreambuf_iterator<char>(*companion.stream), {}};
    return content_hash(bytes);
}

void hash_companions(Study& study)
{
    std::vector<std::string> names;
    if (!study.history.empty()) names.push_back(study.history);
    for (const Variation& variation : study.variations)
        if (variation.key == history_key)
            for (const std::string& value : variation.values) names.push_back(plain_value(value));
    for (const std::string& name : names) study.companion_hash[name] = hash_of(companions_of(study)(name));
}

Result<std::vector<Variation>> variations_from(const std::vector<std::string>& vary, const std::string& case_text)
{
    std::vector<Variation> variations = vary.empty() ? stated_variations(case_text) : std::vector<Variation>();
    std::vector<Problem> problems;
    for (const std::string& words : vary)
    {
        const Result<Variation> read = variation_from_words(words);
        if (read.has_value()) variations.push_back(read.value());
        else problems.insert(problems.end(), read.problems().begin(), read.problems().end());
    }
    for (Problem& problem : misfit_problems(variations, case_text)) problems.push_back(std::move(problem));
    for (Problem& problem : problems) problem.field = problem.field.empty() ? "--vary" : "--vary " + problem.field;
    if (problems.empty() && variations.empty())
        problems.push_back({"", 0, 0, "--vary", "", "is missing: nothing to compare",
                            "--vary sleeve.length=60mm..120mm:7, or a [compare] table in the case"});
    if (!problems.empty()) return problems;
    return variations;
}

}  // namespace

std::uint64_t Study::size() const
{
    return together && !variations.empty() ? variations.front().values.size() : n_options(variations);
}

std::vector<KeyValue> Study::values_at(std::uint64_t index) const
{
    EXPECTS(index < size());
    if (!together) return key_values(variations, index);
    std::vector<KeyValue> values;
    for (const Variation& variation : variations)
        values.emplace_back(variation.key, variation.values.at(static_cast<std::size_t>(index)));
    return values;
}

Result<Study> study_of(const std::filesystem::path& case_file, const std::vector<std::string>& vary,
                       const Accuracy& accuracy)
{
    const Result<Case> base = read_case_file(case_file);
    if (!base.has_value()) return base.problems();
    const Result<std::vector<Variation>> variations = variations_from(vary, base.value().text);
    if (!variations.has_value()) return variations.problems();
    return study_from(base.value(), case_file, variations.value(), accuracy);
}

Study study_from(const Case& base, const std::filesystem::path& case_file, const std::vector<Variation>& variations,
                 const Accuracy& accuracy)
{
    Study study{case_file, base.text, variations, accuracy, {}, {}, {}, false};
    study.models.budget.n_threads = 1;  // options are what runs side by side
    if (base.load.history) study.history = base.load.history->file;
    hash_companions(study);
    return study;
}

StudyOrigin origin_of(const Study& study, double reserve)
{
    return {study.case_file.filename().string(), in_hexadecimal(content_hash(study.case_text)),
            study.accuracy.target_pct, reserve, study.variations};
}

ProgramVersion this_program()
{
    return {version(), result_schema_version * 1000 + option_outcome_version, source_hash()};
}

std::string option_key(const Study& study, std::uint64_t index, const ProgramVersion& program)
{
    const std::vector<KeyValue> values = study.values_at(index);
    std::string history = study.history;
    for (const auto& [key, value] : values)
        if (key == history_key) history = plain_value(value);
    const auto companion = study.companion_hash.find(history);
    return joint_hash({option_text(study.case_text, values),
                       companion == study.companion_hash.end() ? std::string() : companion->second,
                       fmt::format("{} {} {} {}", study.accuracy.target_pct, study.accuracy.most_nodes,
                                   static_cast<int>(study.models.choice), study.models.budget.dofs),
                       program.program, fmt::format("{}", program.result), program.sources});
}

OptionOutcome judged_option(const Study& study, std::uint64_t index, LastSolution& last)
{
    const std::string text = option_text(study.case_text, study.values_at(index));
    const Result<Case> asked = read_case(text, study.case_file.string(), companions_of(study));
    if (!asked.has_value()) return invalid_outcome(asked.problems());
    try
    {
        return outcome_of(asked.value(), judged(asked.value(), sound_splice(), study.accuracy, study.models, last));
    }
    catch (const CannotCompute& error)
    {
        return failed_outcome(error.what());
    }
    catch (const BrokenPromise& error)
    {
        return failed_outcome(fmt::format("our fault, please report it: {}", error.what()));
    }
}

Result<Case> option_case(const Study& study, std::uint64_t index)
{
    const std::string text =
        named_option_text(study.case_text, study.values_at(index), fmt::format("option {}", index + 1));
    const std::string name = fmt::format("{}-option-{}.toml", study.case_file.stem().string(), index + 1);
    return read_case(text, (study.case_file.parent_path() / name).string(), companions_of(study));
}

StudyOption option_at(const Study& study, std::uint64_t index, OptionOutcome outcome)
{
    StudyOption option;
    option.index = index;
    for (const auto& [key, value] : study.values_at(index)) option.values.push_back(plain_value(value));
    option.outcome = std::move(outcome);
    return option;
}

}  // namespace splicewright
