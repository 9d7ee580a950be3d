// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "cases/cautions.h"
#include "post/asked_words.h"
#include "post/dimensions.h"
#include "post/number_words.h"
#include "post/page_sections.h"
#include "post/service.h"
#include "post/site_loads.h"

namespace splicewright
{
namespace
{

const char* subject(const Case& asked) { return asked.joint ? "The splice" : "The shaft"; }

// What could be added to all stresses, or must be taken off them.
std::string reserve_words(const CheckRow& row)
{
    if (row.utilisation <= 0) return "nothing loads it";
    const double factor = 1 / row.utilisation;
    return row.utilisation <= 1
               ? fmt::format("every stress could grow by {:.0f} % before the first limit is reached",
                             100 * (factor - 1))
               : fmt::format("every stress would have to fall to {:.0f} % of what it is", 100 * factor);
}

Markup verdict_sentence(const Report& report)
{
    if (const std::string wrong = contradiction(report.handbook); !wrong.empty())
        return element(
            "p", {{"class", "verdict"}},
            words(subject(report.asked)) + words(" could not be computed: ") +
                words("the finite elements contradict exact theory. " + wrong + " Rely on no number below."));
    const CheckRow* row = governing(report.sound.checks);
    Markup text = words(subject(report.asked)) + words(" ") + pass_mark(report.passes());
    if (row == nullptr) return element("p", {{"class", "verdict"}}, text + words(": nothing could be checked."));
    text += words(fmt::format(": {:.0f} % of what is allowed is used, at {} in {}; {}.", 100 * row->utilisation,
                              row->site, kind_name(row->kind), reserve_words(*row)));
    if (const std::string why = no_pass_because(report.sound); !why.empty())
        text += words(fmt::format(" No pass is given: {}.", why));
    return element("p", {{"class", "verdict"}}, text);
}

std::string mm_and_inch(Millimetre length)
{
    return fmt::format("{} mm {}", mm_text(length.value()), inch_text(length.value()));
}

Markup bar_facts(const Bar& bar)
{
    std::string text;
    for (const Section& section : bar.sections)
    {
        text += fmt::format("{}Ø{} × {} mm", text.empty() ? ": " : ", then ", mm_text(section.diameter.value()),
                            mm_text(section.length.value()));
        if (section.fillet.value() > 0) text += fmt::format(" (R{})", mm_text(section.fillet.value()));
    }
    if (bar.bore.value() > 0) text += fmt::format("; bore Ø{} mm", mm_text(bar.bore.value()));
    for (const Groove& groove : bar.grooves) text += fmt::format("; groove at {} mm", mm_text(groove.at.value()));
    return user_words(bar.material.name) + words(text);
}

void add_splice_facts(Facts& list, const Case& asked)
{
    const Joint& joint = *asked.joint;
    const std::string depth = joint.penetration ? fmt::format("fused {} deep", mm_and_inch(*joint.penetration))
                                                : std::string("fused through");
    list.emplace_back("Butt weld", words(fmt::format("{}, {}, filler ", depth,
                                                     joint.half_lap.value() > 0
                                                         ? fmt::format("half lap {}", mm_and_inch(joint.half_lap))
                                                         : std::string("square cut"))) +
                                       user_words(joint.filler.name));
    if (!asked.sleeve) return;
    const Sleeve& sleeve = *asked.sleeve;
    list.emplace_back(
        "Sleeve", user_words(sleeve.material.name) +
                      words(fmt::format(": {} long, Ø{}; clearance {} mm left, {} mm right", mm_and_inch(sleeve.length),
                                        mm_and_inch(sleeve.outer_diameter), mm_text(sleeve.clearance[0].value()),
                                        mm_text(sleeve.clearance[1].value()))));
    const SleeveWeld& weld = sleeve.weld;
    list.emplace_back("Sleeve welds",
                      words(fmt::format("leg {} on the bar, {} up the sleeve, filler ", mm_and_inch(weld.leg_on_bar),
                                        mm_and_inch(weld.leg_on_sleeve))) +
                          user_words(weld.filler.name));
    Markup partial;
    for (const std::string& sentence : partial_weld_words(asked)) partial += element("li", sentence);
    if (!partial.empty()) list.emplace_back("Not all round, plugs", element("ul", partial));
}

Markup asked_facts(const Case& asked)
{
    Facts list;
    for (const Side side : both_sides)
        if (const auto& bar = asked.bar[index(side)])
            list.emplace_back(side == Side::left ? "Left bar" : "Right bar", bar_facts(*bar));
    if (asked.joint) add_splice_facts(list, asked);
    Markup loads;
    for (const std::string& line : load_words(asked)) loads += element("li", user_words(line));
    list.emplace_back("Loads", element("ul", loads));
    return facts("What was asked", list);
}

void add_over_bar(Facts& list, const OverBar& over, Side side)
{
    std::string text = fmt::format("{:.0f} % of its strength", 100 * over.strength);
    if (over.fatigue) text += fmt::format(", {:.0f} % of its fatigue stress", 100 * *over.fatigue);
    if (over.life) text += fmt::format(", life {}", life_words(*over.life));
    list.emplace_back(fmt::format("Over the {} bar of {:.4g} mm", name_of(side), over.diameter.value()),
                      words(text + fmt::format(", {:.0f} % of its twist", 100 * over.twist)));
}

Markup against_bars(const Report& report)
{
    Facts list;
    if (report.against_plain_bar)
    {
        const AgainstPlainBar& a = *report.against_plain_bar;
        std::string text = fmt::format("{:.0f} % of their strength ({} against {})",
                                       100 * a.strength_splice / a.strength_bar, a.splice_site, a.bar_site);
        if (a.fatigue_splice && a.fatigue_bar)
            text += fmt::format(", {:.0f} % of their fatigue stress ({} against {})",
                                100 * *a.fatigue_splice / *a.fatigue_bar, a.fatigue_site, a.bar_fatigue_site);
        list.emplace_back("Against the bars alone", words(text));
    }
    for (const Side side : both_sides)
        if (report.over_bar[index(side)]) add_over_bar(list, *report.over_bar[index(side)], side);
    const MeridianAnswer& answer = report.sound.answer;
    list.emplace_back("Twist from end to end at the peak torque",
                      words(fmt::format("{:.2f}°", answer.twist.value * report.asked.load.peak_torque.value() * 180 /
                                                       std::numbers::pi)));
    return facts("The splice against plain bars", list);
}

}  // namespace

Markup page_picture(const PageContent& page, const char* file, const std::string& alt, const std::string& caption)
{
    for (const PagePicture& picture : page.extras.pictures)
        if (picture.file == file) return png_figure(picture, alt, caption);
    return {};
}

Markup asked_section(const PageContent& page)
{
    const Report& report = page.report;
    Markup inside = verdict_sentence(report);
    // The verdict stands first, its terms under it.
    inside += page.terms.explain_those_in(inside);
    if (const auto warning = unknown_steel_warning(report.asked))
        inside += element("p", {{"class", "warning"}}, user_words(*warning));
    inside += asked_facts(report.asked);
    inside += page.terms.explain_those_in(inside);
    return section("asked", "What was asked, and the answer", inside);
}

Markup governing_section(const PageContent& page)
{
    const Report& report = page.report;
    const CheckRow* row = governing(report.sound.checks);
    if (row == nullptr) return {};
    Markup inside = element("p", fmt::format("{} governs, in {}. It is held against {}: {}.", row->site,
                                             kind_name(row->kind), row->check, demand_words(*row)));
    // The pictures use words that no search of the text finds.
    inside += page.terms.explain({"site", "von Mises stress"});
    inside += page_picture(page, "governing-site.png",
                           fmt::format("Close-up of {} in the colours of its stress, with the mesh.", row->site),
                           "The place that governs, close up, under the peak load.");
    inside += page_picture(page, "section.png",
                           "Half section of the shaft in the colours of its stress; numbered balloons lead to the "
                           "sites, and a list gives the stress and place of each.",
                           "Where the sites are, and the stress at each under the peak load.");
    inside += folded(fmt::format("The governing check worked through: {}", row->id), worked_check(*row), true);
    if (report.asked.joint) inside += against_bars(report);
    return section(page.terms, "governs", "What governs, and where", inside);
}

}  // namespace splicewright
