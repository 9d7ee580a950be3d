// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cmath>

#include "post/dimensions.h"
#include "post/making_text.h"
#include "post/page_sections.h"

namespace splicewright
{
namespace
{

constexpr double gram_per_tonne = 1e6;

// An empty box to be signed on paper.
PageCell sign_cell() { return {element("span", {{"class", "sign"}}, words("☐"))}; }

std::string mm(double value, int digits) { return fmt::format("{:.{}f} mm", value, digits); }

Markup cut_table(const Case& asked, const CutPlan& cut)
{
    PageTable shown{"Cut list", {"Part", "Material", "Cut length", "In inches", "Done, initials"}, {}};
    for (const Side side : both_sides)
        shown.rows.push_back(
            {{words_cell(fmt::format("{} bar", name_of(side))), user_cell(asked.bar[index(side)]->material.name),
              number_cell(fmt::format("{:.1f} ± {:g} mm", cut.cut[index(side)], cut_tolerance_mm)),
              number_cell(inch_text(cut.cut[index(side)])), sign_cell()},
             {},
             false});
    if (asked.sleeve)
        shown.rows.push_back({{words_cell("sleeve"), user_cell(asked.sleeve->material.name),
                               number_cell(mm_text(asked.sleeve->length.value()) + " mm"),
                               number_cell(inch_text(asked.sleeve->length.value())), sign_cell()},
                              {},
                              false});
    std::string text =
        fmt::format("Finished {} end to end, with {}, a root gap of {:g} mm and a weld shrink of {:.2f} mm.",
                    mm(cut.overall, 1), ends_words(cut), cut.root_gap, cut.weld_shrink);
    if (std::abs(cut.overall - cut.drawn) > 0.05)
        text +=
            fmt::format(" The case draws {}; first sections of {} (left) and {} (right) would give the wanted length.",
                        mm(cut.drawn, 1), mm(cut.first_section[0], 1), mm(cut.first_section[1], 1));
    if (cut.plunge)
        text += fmt::format(" Plunge: {} left of {} against a length known to ±{}: {}.", mm(cut.plunge->left_over(), 1),
                            mm(cut.plunge->available, 1), mm(cut.plunge->length_error, 1),
                            cut.plunge->suffices() ? "enough" : "NOT ENOUGH");
    return table(shown) + paragraph(text);
}

Markup bore_table(const std::vector<BoreBand>& bores)
{
    if (bores.empty()) return {};
    PageTable shown{"Bores of the sleeve",
                    {"Over the bar", "Bar as measured", "Bore from", "Bore to", "Nearest fit", "Done, initials"},
                    {}};
    for (const BoreBand& bore : bores)
        shown.rows.push_back({{words_cell(name_of(bore.side)), number_cell(mm(bore.bar_diameter, 3)),
                               number_cell(fmt::format("{} {}", mm(bore.least, 3), fine_inch_text(bore.least))),
                               number_cell(fmt::format("{} {}", mm(bore.greatest, 3), fine_inch_text(bore.greatest))),
                               words_cell(fmt::format(
                                   "{} (IT{})", bore.nearest_fit.value_or("none of H7 or H8 with h to s"), bore.grade)),
                               sign_cell()},
                              {},
                              false});
    return table(shown);
}

Markup weld_table(const std::vector<WeldDeposit>& welds)
{
    PageTable shown{"Welds", {"Weld", "Size", "Passes", "Weld metal", "Done, initials"}, {}};
    for (const WeldDeposit& weld : welds)
    {
        const std::string size =
            weld.depth > 0
                ? fmt::format("ring groove {} deep, {} wide at the surface", mm(weld.depth, 1), mm(weld.width, 1))
                : fmt::format("legs {:g} mm on the bar and {:g} mm on the sleeve, throat {}", weld.leg_on_bar,
                              weld.leg_on_sleeve, mm(weld.throat, 2));
        std::string passes = fmt::format("at least {}", weld.passes_needed);
        if (weld.passes_stated > 0 && weld.passes_stated < weld.passes_needed)
            passes += fmt::format(" (the case states {})", weld.passes_stated);
        shown.rows.push_back(
            {{words_cell(weld.weld), words_cell(size), words_cell(passes),
              number_cell(fmt::format("{:.1f} cm³, {:.0f} g", weld.volume / 1e3, weld.mass * gram_per_tonne)),
              sign_cell()},
             {},
             false});
    }
    return table(shown);
}

// In brackets where the formula does not hold.
std::string ranged(const Ranged& value, int digits)
{
    const std::string text = digits == 0 && value.value <= 20 ? "none" : fmt::format("{:.{}f}", value.value, digits);
    return value.outside.empty() ? text : fmt::format("({})", text);
}

Markup steel_table(const std::vector<SteelAdvice>& steels)
{
    PageTable shown{
        "Steels and their preheat (in brackets: outside the range of the formula)",
        {"Part", "Material", "CE, %", "CET, %", "Pcm, %", "Method B, °C", "Séférian, °C", "Hardness expected, HV"},
        {}};
    for (const SteelAdvice& steel : steels)
    {
        PageRow row{{words_cell(steel.part), user_cell(steel.material)}, {}, false};
        if (steel.known)
        {
            const WeldableSteel& known = *steel.known;
            for (const std::string& text :
                 {ranged(known.iiw, 2), ranged(known.cet, 2), ranged(known.pcm, 2), ranged(known.preheat_b, 0),
                  known.preheat_seferian <= 20 ? std::string("none") : fmt::format("{:.0f}", known.preheat_seferian),
                  known.expected_hardness ? fmt::format("{:.0f}", *known.expected_hardness) : std::string("-")})
                row.cells.push_back(number_cell(text));
        }
        else
            while (row.cells.size() < shown.heads.size()) row.cells.push_back(words_cell("not known"));
        shown.rows.push_back(std::move(row));
    }
    return table(shown);
}

Markup heat_part(const HeatPlan& heat)
{
    Markup told = element(
        "p",
        fmt::format("Preheat to {:.0f} °C and hold it; between passes not above {:.0f} °C. Reckoned for {:.1f} mm, "
                    "{:g} kJ/mm and {:g} ml/100 g of hydrogen; {}.",
                    heat.preheat_c, heat.interpass_c, heat.welding.thickness_mm, heat.welding.heat_input_kj_per_mm,
                    heat.welding.hydrogen_ml_per_100g,
                    heat.is_standard ? "within method B of EN 1011-2 (ranges from memory: verify)"
                                     : "NOT a preheat by EN 1011-2: an extrapolation"));
    Markup list;
    for (const std::string& sentence : heat.words) list += element("li", user_words(sentence));
    return heat.words.empty() ? told : told + element("ul", list);
}

Markup sequence_table(const std::vector<std::string>& steps)
{
    PageTable shown{"Order of the work (common practice, no source)", {"No.", "What to do", "Done, initials"}, {}};
    for (const std::string& step : steps)
        shown.rows.push_back(
            {{words_cell(std::to_string(shown.rows.size() + 1)), words_cell(step), sign_cell()}, {}, false});
    return table(shown);
}

Markup inspection_table(const std::vector<InspectionStep>& steps)
{
    PageTable shown{
        "Look at, in this order", {"No.", "What", "With", "When", "Accept", "Found", "Date, signature"}, {}};
    for (const InspectionStep& step : steps)
        shown.rows.push_back(
            {{words_cell(std::to_string(shown.rows.size() + 1)),
              words_cell(step.what),
              words_cell(step.method),
              words_cell(step.when),
              {words(step.accept) + element("small", fmt::format(" {} ({})", step.source, name_of(step.provenance)))},
              sign_cell(),
              sign_cell()},
             {},
             false});
    return table(shown);
}

}  // namespace

Markup making_section(const PageContent& page)
{
    const Report& report = page.report;
    if (!report.making) return {};
    const ShopSheet& sheet = *report.making;
    Markup inside = paragraph("The shop sheet: print this section and take it to the bench with the drawing.");
    if (!sheet.partial_welds.empty())
        inside += subsection("Welds that sheet and drawing do not show", list_of(sheet.partial_welds));
    inside += subsection("Cut and bore", cut_table(report.asked, sheet.cut) + bore_table(sheet.bores));
    inside += subsection("Welds and heat", weld_table(sheet.welds) + steel_table(sheet.steels) + heat_part(sheet.heat));
    inside += subsection("Sequence", sequence_table(sheet.sequence));
    inside += subsection("Inspection",
                         element("p", fmt::format("Weld quality level {} of ISO 5817.", name_of(sheet.quality))) +
                             inspection_table(sheet.inspection));
    return section(page.terms, "making", "How to make it", inside);
}

}  // namespace splicewright
