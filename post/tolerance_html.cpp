// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/tolerance_html.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/page_sections.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

Markup asked_part(const ToleranceAnswer& answer, Terms& terms)
{
    const OptionOutcome& corner = answer.corner.outcome;
    const bool passes = corner.end == OptionEnd::judged && corner.passes && answer.nominal.passes;
    Markup inside = element("p", {{"class", "verdict"}}, pass_mark(passes) + user_words(" " + corner_text(answer)));
    inside += element("p", user_words(as_drawn_text(answer)));
    inside += element("p", user_words(watch_text(answer)));
    return section("asked", "What the tolerances do", inside + terms.explain_those_in(inside));
}

// A bar as long as the change is beside the largest one; its length says nothing that the number does not.
PageCell change_cell(std::optional<double> change, double largest)
{
    if (!change) return words_cell("-");
    const double share = largest > 0 ? 100 * std::min(1.0, std::abs(*change) / largest) : 0;
    return {words(fmt::format("{:+.2g} %", 100 * *change)) +
                element("span", {{"class", "bar"}, {"aria-hidden", "true"}},
                        element("span", {{"style", fmt::format("width:{:.0f}%", share)}}, {})),
            true};
}

Markup ends_part(const ToleranceAnswer& answer)
{
    const std::vector<const ToleranceEffect*> ordered = by_change(answer);
    double largest = 0;
    for (const ToleranceEffect* effect : ordered)
        largest = std::max(largest, std::abs(worst_change(*effect, answer.nominal).value_or(0)));
    PageTable shown{"Each tolerance alone, all others as drawn; those that move it most first",
                    {"Key", "The worse end changes it by", "Used at the lower end", "Used at the upper end"},
                    {}};
    for (const ToleranceEffect* effect : ordered)
    {
        PageRow row{{user_cell(effect->key), change_cell(worst_change(*effect, answer.nominal), largest),
                     user_cell(tolerance_end_text(effect->low_words, effect->low)),
                     user_cell(tolerance_end_text(effect->high_words, effect->high))},
                    {},
                    false};
        for (const OptionOutcome* end : {&effect->low, &effect->high})
            if (end->end != OptionEnd::judged) row.below += element("p", user_words(end->reason));
        shown.rows.push_back(std::move(row));
    }
    std::vector<std::string> left_out;
    for (const std::string& key : answer.left_out) left_out.push_back(left_out_text(key));
    return section("ends", "Each value at its ends", table(shown) + list_of(left_out));
}

Markup corners_part(const ToleranceAnswer& answer)
{
    Markup inside = paragraph(corners_tried_text(answer));
    if (!answer.not_judged.empty()) inside += subsection("Not judged", list_of(answer.not_judged));
    return section("corners", "All at their ends together", inside);
}

Markup sampled_part(const ToleranceAnswer& answer)
{
    return section("sampled", "As built", element("p", user_words(sampled_text(answer.sampled))));
}

Markup evidence_part(const TolerancePage& page, Terms& terms)
{
    const Facts list{{"Accuracy asked", words(fmt::format("{:g} %", page.accuracy_pct))},
                     {"Program", words(fmt::format("splicewright {}", version()))}};
    Markup inside = facts("How it was computed", list) + kept_file(page.case_file, "The case");
    inside += paragraph(
        "Judged is the sound splice: its report by check has the cautions, the weak welds and the shop sheet.");
    inside += folded("The case file", element("pre", {{"tabindex", "0"}, {"dir", "auto"}}, words(page.case_file.bytes)),
                     true);
    return section(terms, "evidence", "Evidence", inside);
}

}  // namespace

std::string tolerance_html(const TolerancePage& page)
{
    Terms terms;
    Markup sections = asked_part(page.answer, terms);
    sections += ends_part(page.answer);
    sections += corners_part(page.answer);
    sections += sampled_part(page.answer);
    sections += evidence_part(page, terms);
    const std::string title = "Tolerances of " + page.case_file.name;
    const Markup header = element(
        "header", element("p", {{"class", "kind"}}, words("What tolerances do")) + element("h1", user_words(title)) +
                      element("p", {{"class", "kind"}}, words(std::string("splicewright ") + version())));
    return html_document(page_head(title, PageScript::none), header + element("main", sections));
}

}  // namespace splicewright
