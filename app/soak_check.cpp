// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <ctime>
#include <nlohmann/json.hpp>

#include "app/check_splice.h"
#include "app/soak.h"
#include "cases/read_case.h"
#include "post/result_json.h"
#include "post/verdict_text.h"
#include "solver/unit_solution.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::json;

constexpr double negligible_share = 0.05;  // of the plain bar's stress: below it a site is as good as unloaded

void add_problem_faults(const Problem& problem, std::vector<std::string>& faults)
{
    if (problem.rule.empty()) faults.push_back("a problem without a rule: " + to_string(problem));
    if (problem.fix.empty()) faults.push_back("a problem without a fix: " + to_string(problem));
}

// Where the document holds null, which is how a number that is not finite gets written.
std::vector<std::string> nulls(const Json& node, const std::string& path)
{
    static const std::vector<std::string> may_be_null{"/shares", "/against_plain_bar", "/making", "/models"};
    if (node.is_null() && std::find(may_be_null.begin(), may_be_null.end(), path) == may_be_null.end()) return {path};
    std::vector<std::string> found;
    if (!node.is_structured()) return found;
    for (const auto& item : node.items())
        for (std::string& deeper : nulls(item.value(), path + "/" + item.key())) found.push_back(std::move(deeper));
    return found;
}

// Where the word stands without other letters beside it; npos when nowhere.
std::size_t place_of_word(const std::string& text, const std::string& word)
{
    const auto is_letter = [&](std::size_t at)
    { return at < text.size() && std::isalpha(static_cast<unsigned char>(text[at])) != 0; };
    std::size_t at = text.find(word);
    while (at != std::string::npos && ((at > 0 && is_letter(at - 1)) || is_letter(at + word.size())))
        at = text.find(word, at + 1);
    return at;
}

std::vector<std::string> document_faults(const Report& report)
{
    std::vector<std::string> faults;
    const std::string text = result_json(report);
    const Json document = Json::parse(text, nullptr, false);
    if (document.is_discarded()) return {"result.json is no JSON"};
    for (const std::string& path : nulls(document, "")) faults.push_back("result.json holds null at " + path);
    Json words = document;
    for (const char* ours : {"case_text", "title"}) words.erase(ours);  // the user's own words
    const std::string dumped = words.dump();
    for (const std::string word : {"nan", "NaN", "inf", "Infinity"})
        if (const std::size_t at = place_of_word(dumped, word); at != std::string::npos)
            faults.push_back(
                fmt::format("result.json speaks of {}: {}", word, dumped.substr(at < 60 ? 0 : at - 60, 120)));
    return faults;
}

std::vector<std::string> evidence_faults(const Judgement& judged)
{
    std::vector<std::string> faults;
    const Evidence& e = judged.answer.evidence;
    const auto complain = [&](const std::string& what)
    { faults.push_back(fmt::format("{}: {}", judged.answer.scenario.name, what)); };
    if (!(e.residual <= residual_allowed)) complain(fmt::format("residual {:.2e}", e.residual));
    if (!(e.reaction_imbalance <= reaction_imbalance_allowed))
        complain(fmt::format("reaction imbalance {:.2e}", e.reaction_imbalance));
    if (!(e.section_imbalance <= section_imbalance_allowed))
        complain(fmt::format("section imbalance {:.2e}", e.section_imbalance));
    if (!(e.smallest_jacobian_ratio > 0)) complain(fmt::format("Jacobian ratio {:.2e}", e.smallest_jacobian_ratio));
    const bool is_within = e.worst_error_pct <= e.accuracy_pct * (1 + 1e-9);
    if (e.reached != is_within)
        complain(fmt::format("says that the accuracy of {:g} % is {} at an error of {:.3g} %", e.accuracy_pct,
                             e.reached ? "reached" : "missed", e.worst_error_pct));
    if (judged.answer.sites.empty()) complain("no site");
    if (judged.checks.empty()) complain("no check");
    for (const std::string& site : sites_without_valid_row(judged.checks))
        if (!judged.judged_by_solid) complain(fmt::format("no check of {} holds", site));
    return faults;
}

struct LoadError
{
    const char* load;
    double error_pct = 0;
};

// Each unit load against the plain bar's own stress under it.
std::vector<LoadError> load_errors(const SiteAnswer& site, const SiteAnswer& plain)
{
    const auto relative = [](const UnitPeak& peak, const UnitPeak& bar)
    { return 100 * peak.von_mises.error / std::max(peak.von_mises.value, negligible_share * bar.von_mises.value); };
    return {{"torsion", relative(site.torsion, plain.torsion)},
            {"bending", relative(site.bending, plain.bending)},
            {"axial", relative(site.axial, plain.axial)}};
}

std::vector<std::string> missed_sites(const Judgement& judged)
{
    std::vector<std::string> missed;
    const Evidence& e = judged.answer.evidence;
    const auto plain = std::find_if(judged.answer.sites.begin(), judged.answer.sites.end(),
                                    [](const SiteAnswer& site) { return site.id.starts_with("bar."); });
    if (e.reached || plain == judged.answer.sites.end()) return missed;
    for (const SiteAnswer& site : judged.answer.sites)
        for (const LoadError& error : load_errors(site, *plain))
            if (error.error_pct > e.accuracy_pct)
                missed.push_back(fmt::format("{} | {} | {} | {:.2g} %", judged.answer.scenario.name, site.id,
                                             error.load, error.error_pct));
    if (missed.empty())
        missed.push_back(fmt::format("{} | unknown | {:.2g} %", judged.answer.scenario.name, e.worst_error_pct));
    return missed;
}

void judge(const Report& report, double accuracy_pct, SoakResult& result)
{
    result.faults = document_faults(report);
    std::vector<const Judgement*> scenarios{&report.sound};
    for (const Judgement& scenario : report.what_if) scenarios.push_back(&scenario);
    for (const Judgement* scenario : scenarios)
    {
        for (std::string& fault : evidence_faults(*scenario)) result.faults.push_back(std::move(fault));
        for (std::string& site : missed_sites(*scenario)) result.missed.push_back(std::move(site));
    }
    if (report.sound.answer.evidence.accuracy_pct != accuracy_pct)
        result.faults.emplace_back("another accuracy than the one asked for");
    const std::string words = verdict_text(report, Emphasis::plain);
    if (!report.sound.answer.evidence.reached && words.find("accuracy was not reached") == std::string::npos)
        result.faults.emplace_back("the verdict keeps silent on the accuracy that was not reached");
    if (words.find('\x1B') != std::string::npos) result.faults.emplace_back("the verdict holds an escape code");
    result.outcome = result.faults.empty() ? SoakOutcome::ran : SoakOutcome::failed;
}

}  // namespace

SoakResult soaked(const std::string& name, const std::string& text, double accuracy_pct)
{
    SoakResult result;
    result.name = name;
    const std::clock_t start = std::clock();
    try
    {
        const Result<Case> asked = read_case(text, name);
        if (asked.has_value()) judge(check_splice(asked.value(), {accuracy_pct}), accuracy_pct, result);
        else
        {
            for (const Problem& problem : asked.problems()) add_problem_faults(problem, result.faults);
            if (asked.problems().empty()) result.faults.emplace_back("refused without a problem");
            result.outcome = result.faults.empty() ? SoakOutcome::refused : SoakOutcome::failed;
        }
    }
    catch (const std::exception& error)
    {
        result.faults.push_back(fmt::format("threw: {}", error.what()));
    }
    result.seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    return result;
}

}  // namespace splicewright
