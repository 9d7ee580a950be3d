// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/making_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "post/wrapped_text.h"

namespace splicewright
{
namespace
{

constexpr double gram_per_tonne = 1e6;
constexpr double radian_per_second_per_rpm = std::numbers::pi / 30;

// "Cut       text", wrapped under the text.
std::string entry(const std::string& name, const std::string& text)
{
    constexpr std::size_t column = 12;
    return fmt::format("{:<{}}{}\n", name, column, wrapped(text, column));
}

std::string cut_lines(const CutPlan& cut)
{
    std::string text =
        entry("Cut",
              fmt::format("left bar {:.1f} mm, right bar {:.1f} mm, squared, ±{:.1f} mm: finished {:.1f} mm end to end "
                          "with {}, a root gap of {:g} mm and a weld shrink of {:.2f} mm",
                          cut.cut[0], cut.cut[1], cut_tolerance_mm, cut.overall, ends_words(cut), cut.root_gap,
                          cut.weld_shrink));
    if (std::abs(cut.overall - cut.drawn) > 0.05)
        text += entry("", fmt::format("the case draws {:.1f} mm; first sections {:.1f} mm (left) and {:.1f} mm (right) "
                                      "would give the wanted length",
                                      cut.drawn, cut.first_section[0], cut.first_section[1]));
    if (cut.plunge)
        text += entry("Plunge", fmt::format("{:.1f} mm left of {:.1f} mm against a length known to ±{:.1f} mm: {}",
                                            cut.plunge->left_over(), cut.plunge->available, cut.plunge->length_error,
                                            cut.plunge->suffices() ? "enough" : "NOT ENOUGH"));
    return text;
}

std::string bore_lines(const std::vector<BoreBand>& bores)
{
    std::string text;
    for (const BoreBand& bore : bores)
        text +=
            entry(text.empty() ? "Bore" : "",
                  fmt::format("{:<6}{:.3f} to {:.3f} mm (IT{}) over the bar of {:.3f} mm, clearance asked {:+.3f} mm; "
                              "nearest fit {}",
                              name_of(bore.side), bore.least, bore.greatest, bore.grade, bore.bar_diameter,
                              bore.clearance, bore.nearest_fit.value_or("none of H7 or H8 with h to s")));
    return text;
}

std::string weld_lines(const std::vector<WeldDeposit>& welds)
{
    std::string text;
    for (const WeldDeposit& weld : welds)
    {
        const std::string shape =
            weld.depth > 0
                ? fmt::format("ring groove {:.1f} mm deep, {:.1f} mm wide at the surface", weld.depth, weld.width)
                : fmt::format("legs {:g} mm on the bar and {:g} mm on the sleeve, throat {:.2f} mm", weld.leg_on_bar,
                              weld.leg_on_sleeve, weld.throat);
        std::string passes = fmt::format("at least {} pass{}", weld.passes_needed, weld.passes_needed == 1 ? "" : "es");
        if (weld.passes_stated > 0 && weld.passes_stated < weld.passes_needed)
            passes += fmt::format(" (the case states {})", weld.passes_stated);
        text += entry(text.empty() ? "Welds" : "", fmt::format("{}: {}; {}, {:.1f} cm³, {:.0f} g", weld.weld, shape,
                                                               passes, weld.volume / 1e3, weld.mass * gram_per_tonne));
    }
    return text;
}

// In brackets where the formula does not hold.
std::string ranged(const Ranged& value)
{
    return value.outside.empty() ? fmt::format("{:.2f}", value.value) : fmt::format("({:.2f})", value.value);
}

std::string preheat_words(const Ranged& value)
{
    const std::string text = value.value <= 20 ? "none" : fmt::format("{:.0f}", value.value);
    return value.outside.empty() ? text : fmt::format("({})", text);
}

std::string steel_lines(const std::vector<SteelAdvice>& steels)
{
    std::string text = fmt::format("{:<12}{:<20} {:>6} {:>6} {:>6} {:>9} {:>9} {:>5} {:>7}\n", "Steel", "", "CE", "CET",
                                   "Pcm", "method B", "Seferian", "Ms", "HV max");
    for (const SteelAdvice& steel : steels)
    {
        const std::string name = steel.material.substr(0, 20);
        if (!steel.known)
        {
            text += fmt::format("  {:<10}{:<20} chemistry not known\n", steel.part, name);
            continue;
        }
        const WeldableSteel& known = *steel.known;
        text +=
            fmt::format("  {:<10}{:<20} {:>6} {:>6} {:>6} {:>9} {:>9} {:>5.0f} {:>7}\n", steel.part, name,
                        ranged(known.iiw), ranged(known.cet), ranged(known.pcm), preheat_words(known.preheat_b),
                        known.preheat_seferian <= 20 ? "none" : fmt::format("{:.0f}", known.preheat_seferian),
                        known.martensite_start,
                        known.expected_hardness ? fmt::format("{:.0f}", *known.expected_hardness) : std::string("-"));
    }
    return text +
           "  equivalents in %, preheats and martensite start Ms in °C; (in brackets: outside the formula's "
           "range)\n";
}

std::string heat_lines(const HeatPlan& heat)
{
    std::string text = entry(
        "Preheat",
        fmt::format("{:.0f} °C{}, for {:.1f} mm, {:g} kJ/mm and {:g} ml/100 g of hydrogen; {}", heat.preheat_c,
                    heat.governing.empty() ? "" : fmt::format(" (the {})", heat.governing), heat.welding.thickness_mm,
                    heat.welding.heat_input_kj_per_mm, heat.welding.hydrogen_ml_per_100g,
                    heat.is_standard ? "within method B of EN 1011-2 (ranges from memory: verify)"
                                     : "NOT a preheat by EN 1011-2: an extrapolation"));
    for (const std::string& words : heat.words) text += entry("", words);
    return text;
}

std::string sequence_lines(const std::vector<std::string>& steps)
{
    std::string text = "Order of the work (common practice, no source)\n";
    int number = 0;
    for (const std::string& step : steps) text += fmt::format("{:>3} {}\n", ++number, wrapped(step, 4));
    return text;
}

std::string inspection_lines(const std::vector<InspectionStep>& steps)
{
    std::string text = "Look at, in this order\n";
    int number = 0;
    for (const InspectionStep& step : steps)
        text += fmt::format("{:>3} {}\n", ++number,
                            wrapped(fmt::format("{}, {}, {}: {}", step.what, step.method, step.when, step.accept), 4));
    return text;
}

}  // namespace

std::string shop_text(const ShopSheet& sheet)
{
    std::string partial;
    for (const std::string& sentence : sheet.partial_welds)
        partial += "  " + wrapped("Not in sheet and drawing: " + sentence, 4) + "\n";
    return fmt::format("Shop sheet, weld quality level {}\n{}{}{}{}{}{}{}{}", name_of(sheet.quality), partial,
                       cut_lines(sheet.cut), bore_lines(sheet.bores), weld_lines(sheet.welds),
                       steel_lines(sheet.steels), heat_lines(sheet.heat), sequence_lines(sheet.sequence),
                       inspection_lines(sheet.inspection)) +
           "  Sources and how far each can be trusted: result.json, docs/methods.md\n";
}

std::string ends_words(const CutPlan& cut)
{
    return cut.half_lap > 0 ? fmt::format("a half lap of {:g} mm", cut.half_lap) : std::string("square ends");
}

std::vector<std::string> running_words(const Case& asked, const RunningTrue& running)
{
    std::string text =
        fmt::format("first bending critical speed {:.0f} rpm", running.critical_speed / radian_per_second_per_rpm);
    const double rpm = asked.load.speed.value() / radian_per_second_per_rpm;
    if (running.margin)
        text += fmt::format(", {:.3g} times the {:.0f} rpm it runs at ({:g} asked, judgement)", *running.margin, rpm,
                            least_margin);
    if (!running.balance) return {text};
    const Balance& found = *running.balance;
    const bool is_measured = asked.joint->offset.value() > 0 || asked.joint->tilt.value() > 0;
    std::string balance =
        fmt::format("{}: the mass lies off the axis by {} at the worse end",
                    is_measured ? "as built" : "with bars in line (not measured)",
                    found.eccentricity < 0.0005 ? "less than 0.001 mm" : fmt::format("{:.3f} mm", found.eccentricity));
    if (found.grade)
        balance += fmt::format(", G {:.3g} at the running speed (G {:g} for drive shafts, from memory: verify)",
                               *found.grade, grade_asked);
    if (found.offset_allowed && found.tilt_allowed)
        balance += fmt::format("; {:.2g} mm of offset or {:.2g}° of tilt alone would use that up",
                               *found.offset_allowed, *found.tilt_allowed * 180 / std::numbers::pi);
    return {text, balance};
}

std::string running_lines(const Case& asked, const RunningTrue& running)
{
    const std::vector<std::string> words = running_words(asked, running);
    std::string text = wrapped("Running true: " + words[0], 2) + "\n";
    return words.size() > 1 ? text + wrapped("Balance " + words[1], 2) + "\n" : text;
}

}  // namespace splicewright
