// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/error_bars.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ctime>
#include <map>
#include <nlohmann/json.hpp>
#include <numbers>

#include "app/scenarios.h"
#include "app/worker_pool.h"
#include "cases/problem.h"
#include "cases/random_case.h"
#include "cases/read_case.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::json;

constexpr double pi = std::numbers::pi;
constexpr double finer = 20;  // of the reference's accuracy over the tested one

// Fine enough that few numbers are left out; coarser where round-off is too large on that mesh.
MeridianAnswer reference(const Case& asked, const std::vector<double>& accuracies_pct)
{
    EXPECTS(!accuracies_pct.empty());
    const ReferenceMesh usual{45, 5, 0.17, 3}, fine{81, 7.5, 0.12, 3};
    const double finest = *std::min_element(accuracies_pct.begin(), accuracies_pct.end());
    if (finest >= 1) return reference_answer(asked, sound_splice(), usual);
    try
    {
        return reference_answer(asked, sound_splice(), fine);
    }
    catch (const CannotCompute&)
    {
        return reference_answer(asked, sound_splice(), usual);
    }
}

Case valid_case(const std::string& name, const std::string& text)
{
    const Result<Case> asked = read_case(text, name);
    EXPECTS(asked.has_value());
    return asked.value();
}

// Against references that hold at every accuracy.
BarredCase against(const std::string& name, const Case& asked, const std::vector<double>& accuracies_pct,
                   const std::vector<BarredNumber>& references, double reference_error_pct)
{
    BarredCase result;
    result.name = name;
    for (const double accuracy_pct : accuracies_pct)
    {
        const MeridianAnswer answer = meridian_answer(asked, sound_splice(), {accuracy_pct});
        result.answers.push_back({accuracy_pct, answer.evidence.reached, reference_error_pct <= accuracy_pct / finer,
                                  bar_trials(name, barred_numbers(asked, answer), references)});
    }
    return result;
}

// Numbers of a plain bar, in the order of barred_numbers; those that vanish do not count.
// Source: [TimoshenkoGoodier1970] art. 101-104.
std::vector<BarredNumber> exact_numbers(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<BarredNumber> numbers = barred_numbers(asked, answer);
    const Bar& bar = *asked.bar[0];
    double length = 0;
    for (const auto& part : asked.bar)
        if (part)
            for (const Section& section : part->sections) length += section.length.value();
    const double outer = bar.sections.front().diameter.value(), inner = bar.bore.value();
    const double area = pi / 4 * (outer * outer - inner * inner);
    const double polar = pi / 32 * (std::pow(outer, 4) - std::pow(inner, 4)), axial = polar / 2;
    const double modulus = bar.material.elastic_modulus.value();
    const double shear_modulus = modulus / (2 * (1 + bar.material.poisson_ratio));
    const double shear = outer / 2 / polar, bending = outer / 2 / axial;
    const auto exact = [&](const std::string& name) -> double
    {
        if (name.ends_with("torsion von Mises")) return std::sqrt(3.0) * shear;
        if (name.ends_with("torsion principal") || name.ends_with("torsion shear")) return shear;
        if (name.ends_with("bending von Mises") || name.ends_with("bending principal")) return bending;
        if (name.ends_with("axial von Mises") || name.ends_with("axial principal")) return 1 / area;
        if (name == "twist") return length / (shear_modulus * polar);
        if (name == "end rotation") return length / (modulus * axial);
        if (name == "extension") return length / (modulus * area);
        return 0;
    };
    for (BarredNumber& number : numbers)
    {
        number.value = exact(number.name);
        number.error = 0;
    }
    return numbers;
}

Json as_json(const BarredCase& result)
{
    Json answers = Json::array();
    for (const BarredCase::Answer& answer : result.answers)
    {
        Json trials = Json::array();
        for (const BarTrial& t : answer.trials)
            trials.push_back({t.kind, t.name, t.bar_pct, t.off_pct, t.reference_bar_pct, static_cast<int>(t.verdict)});
        answers.push_back({{"accuracy", answer.accuracy_pct},
                           {"reached", answer.reached},
                           {"reference_reached", answer.reference_reached},
                           {"trials", trials}});
    }
    return {{"failure", result.failure}, {"seconds", result.seconds}, {"answers", answers}};
}

BarredCase from_json(const std::string& name, const TaskEnd& end)
{
    BarredCase result;
    result.name = name;
    result.failure = end.why_not;
    if (!result.failure.empty()) return result;
    const Json json = Json::parse(end.line);
    result.failure = json.at("failure").get<std::string>();
    result.seconds = json.at("seconds").get<double>();
    for (const Json& answer : json.at("answers"))
    {
        BarredCase::Answer& to = result.answers.emplace_back();
        to.accuracy_pct = answer.at("accuracy").get<double>();
        to.reached = answer.at("reached").get<bool>();
        to.reference_reached = answer.at("reference_reached").get<bool>();
        for (const Json& t : answer.at("trials"))
            to.trials.push_back({t[0].get<std::string>(), t[1].get<std::string>(), name, t[2].get<double>(),
                                 t[3].get<double>(), t[4].get<double>(), static_cast<BarVerdict>(t[5].get<int>())});
    }
    return result;
}

void add_case(const BarredCase& from, std::vector<BarTrial> BarStudy::*trials, std::vector<BarStudy>& studies)
{
    if (!from.failure.empty())
        for (BarStudy& study : studies) study.failures.push_back(from.name + ": " + from.failure);
    for (const BarredCase::Answer& answer : from.answers)
    {
        const auto found =
            std::find_if(studies.begin(), studies.end(),
                         [&](const BarStudy& study) { return study.accuracy_pct == answer.accuracy_pct; });
        EXPECTS(found != studies.end());
        std::vector<BarTrial>& to = (*found).*trials;
        to.insert(to.end(), answer.trials.begin(), answer.trials.end());
        if (trials != &BarStudy::trials) continue;
        ++found->n_cases;
        found->n_reached += answer.reached ? 1 : 0;
        found->n_references_reached += answer.reference_reached ? 1 : 0;
    }
}

// Those that the plan tests on its case number `i`.
std::vector<double> accuracies_of(const BarPlan& plan, std::uint64_t i)
{
    std::vector<double> accuracies;
    for (std::size_t a = 0; a < plan.accuracies_pct.size(); ++a)
        if (i < static_cast<std::uint64_t>(plan.n_cases[plan.n_cases.size() == 1 ? 0 : a]))
            accuracies.push_back(plan.accuracies_pct[a]);
    return accuracies;
}

}  // namespace

BarredCase barred_case(const std::string& name, const std::string& text, const std::vector<double>& accuracies_pct)
{
    const std::clock_t start = std::clock();
    BarredCase result;
    try
    {
        const Case asked = valid_case(name, text);
        const MeridianAnswer exact = reference(asked, accuracies_pct);
        result = against(name, asked, accuracies_pct, barred_numbers(asked, exact), exact.evidence.worst_error_pct);
    }
    catch (const std::exception& error)
    {
        result.failure = error.what();
    }
    result.name = name;
    result.seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    return result;
}

std::vector<BarredCase> exact_cases(const std::vector<double>& accuracies_pct)
{
    const std::string bar = "material = \"C45 +N\"\n", load = "[load]\npeak_torque = \"100 N*m\"\n";
    const auto section = [](const char* side)
    { return fmt::format("[[{}.section]]\nlength = \"150 mm\"\ndiameter = \"30 mm\"\n", side); };
    const std::string solid = "title = \"solid bar\"\n[left]\n" + bar + section("left") + load;
    const std::string hollow = "title = \"hollow bar\"\n[left]\n" + bar + "bore = \"20 mm\"\n" + section("left") + load;
    const std::string welded = "title = \"butt-welded bar\"\n[left]\n" + bar + section("left") + "[right]\n" + bar +
                               section("right") + "[joint]\npenetration = \"full\"\n" + load;
    std::vector<BarredCase> results;
    for (const auto& [name, text] :
         {std::pair{"solid bar", solid}, {"hollow bar", hollow}, {"butt-welded bar", welded}})
    {
        const Case asked = valid_case(name, text);
        const MeridianAnswer any = meridian_answer(asked, sound_splice(), {5});
        results.push_back(against(name, asked, accuracies_pct, exact_numbers(asked, any), 0));
    }
    return results;
}

std::vector<BarStudy> bar_studies(const BarPlan& plan, const std::function<void(const BarredCase&)>& watch)
{
    std::vector<BarStudy> studies;
    for (const double accuracy_pct : plan.accuracies_pct) studies.emplace_back().accuracy_pct = accuracy_pct;
    for (const BarredCase& exact : exact_cases(plan.accuracies_pct)) add_case(exact, &BarStudy::exact_trials, studies);
    EXPECTS(plan.n_cases.size() == 1 || plan.n_cases.size() == plan.accuracies_pct.size());
    const auto n_cases = static_cast<std::uint64_t>(*std::max_element(plan.n_cases.begin(), plan.n_cases.end()));
    const auto name_of_case = [&](std::uint64_t i) { return fmt::format("case {}", plan.first_seed + i); };
    std::uint64_t started = 0, told = 0;
    const auto next = [&](std::optional<std::uint64_t>)
    { return started < n_cases ? std::optional(started++) : std::nullopt; };
    const auto work = [&](std::uint64_t i) {
        return as_json(barred_case(name_of_case(i), random_case_text(plan.first_seed + i), accuracies_of(plan, i)))
            .dump();
    };
    std::map<std::uint64_t, BarredCase> waiting;  // done before their turn
    const auto tell = [&](const TaskEnd& end)
    {
        waiting[end.index] = from_json(name_of_case(end.index), end);
        for (auto first = waiting.find(told); first != waiting.end(); first = waiting.find(++told))
        {
            watch(first->second);
            add_case(first->second, &BarStudy::trials, studies);
            waiting.erase(first);
        }
    };
    done_by_workers({plan.n_processes, plan.seconds_allowed, 1}, next, work, tell);
    return studies;
}

}  // namespace splicewright
