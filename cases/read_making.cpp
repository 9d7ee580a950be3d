// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cmath>

#include "cases/plain_text.h"
#include "cases/read_parts.h"

namespace splicewright
{

const char* name_of(QualityLevel level) { return level == QualityLevel::B ? "B" : "C"; }

namespace
{

// Common practice for gas-shielded and basic-electrode welds on bars, no source.
constexpr double default_root_gap = 2, default_root_face = 1;  // mm
constexpr double default_groove_angle = 60 * radian_per_degree;
constexpr double default_heat_input = 1e6;  // N, 1 kJ/mm
constexpr double default_hydrogen = 5;      // ml/100 g
constexpr int default_bore_grade = 7;

// Transverse shrinkage of a butt weld over its mean width. Source: [Blodgett1966], read in a secondary source.
constexpr double shrink_over_width = 0.10;

double fused_depth(const Case& asked)
{
    double radius = 0;
    for (const auto& bar : asked.bar)
        radius += bar && !bar->sections.empty() ? bar->sections[0].diameter.value() / 4 : 0;
    const double bore = asked.bar[0] ? asked.bar[0]->bore.value() / 2 : 0;
    return asked.joint->penetration ? asked.joint->penetration->value() : radius - bore;
}

double shrinkage(const Making& making, double depth)
{
    const double bevelled = depth - making.root_face.value();
    const double width =
        making.root_gap.value() + bevelled * bevelled * std::tan(making.groove_angle.value() / 2) / depth;
    return std::round(100 * shrink_over_width * width) / 100;
}

// Reads one value and notes its default.
class Defaulted
{
public:
    explicit Defaulted(const CaseTable* table) : table_(table) {}

    [[nodiscard]] double quantity(const char* key, Dimension dimension, double otherwise, const char* reason)
    {
        const auto stated = table_ != nullptr ? table_->quantity(key, dimension) : std::nullopt;
        return stated ? *stated : noted(key, otherwise, in_words(otherwise, dimension), reason);
    }

    // One of a few words.
    [[nodiscard]] std::string word(const char* key, const std::vector<std::string>& allowed, const char* reason)
    {
        const auto stated = table_ != nullptr ? table_->text(key) : std::nullopt;
        if (!stated)
        {
            if (table_ == nullptr || !table_->has(key)) noted(key, 0, allowed.front(), reason);
            return allowed.front();
        }
        for (const std::string& word : allowed)
            if (lower_case(trimmed(*stated)) == lower_case(word)) return word;
        std::string choice;
        for (const std::string& word : allowed) choice += fmt::format("{}\"{}\"", choice.empty() ? "" : ", ", word);
        table_->report(key, fmt::format("must be one of {}", choice), fmt::format("one of these, or remove {}", key));
        return allowed.front();
    }

    // All defaults in one line, where the table itself is absent.
    [[nodiscard]] const std::string& list() const { return list_; }

private:
    double noted(const char* key, double otherwise, const std::string& value, const char* reason)
    {
        if (table_ != nullptr) table_->note_default(key, value, reason);
        else list_ += fmt::format("{}{} {}", list_.empty() ? "" : ", ", key, value);
        return otherwise;
    }

    const CaseTable* table_;
    std::string list_;
};

void read_lengths(const CaseTable& table, Making& making)
{
    making.overall_length = table.length("overall_length");
    making.plunge_available = table.length("plunge_available");
    if (!making.plunge_available && table.has("plunge_used"))
        table.report("plunge_used", "needs plunge_available to be taken from",
                     "give plunge_available as well, or remove plunge_used");
}

}  // namespace

std::optional<Making> making_at(const CaseTable& top, const Case& asked)
{
    const auto table = top.table("making");
    if (table && !asked.joint)
    {
        if (!top.has("joint"))
            top.report("making", "needs a joint: it says how the splice is made", "add [joint], or remove [making]");
        return std::nullopt;
    }
    if (!asked.joint) return std::nullopt;
    Making making;
    if (table) read_lengths(*table, making);
    Defaulted read(table ? &*table : nullptr);
    constexpr const char* practice = "common practice, no source";
    if (making.overall_length)
    {
        const std::string bar = read.word("adjust", {"both", "left", "right"}, "half of the difference on each bar");
        making.adjusted = bar == "left" ? AdjustedBar::left : bar == "right" ? AdjustedBar::right : AdjustedBar::both;
    }
    else if (table && table->has("adjust"))
        table->report("adjust", "needs overall_length", "give overall_length as well, or remove adjust");
    making.root_gap = Millimetre(read.quantity("root_gap", Dimension::length, default_root_gap, practice));
    making.root_face = Millimetre(read.quantity("root_face", Dimension::length, default_root_face, practice));
    making.groove_angle = Radian(read.quantity("groove_angle", Dimension::angle, default_groove_angle, practice));
    making.weld_shrink = Millimetre(read.quantity(
        "weld_shrink", Dimension::length, shrinkage(making, fused_depth(asked)),
        "a tenth of the mean width of the groove, Blodgett 1966, read in a secondary source; weld a trial piece"));
    if (making.plunge_available)
        making.plunge_used = Millimetre(read.quantity("plunge_used", Dimension::length, 0, "none taken off"));
    making.heat_input = Newton(read.quantity("heat_input", Dimension::heat_input, default_heat_input, practice));
    making.hydrogen = read.quantity("hydrogen", Dimension::hydrogen, default_hydrogen, "low-hydrogen process");
    making.quality = read.word("quality", {"B", "C"}, "ISO 5817, for fatigue (judgement)") == "C" ? QualityLevel::C
                                                                                                  : QualityLevel::B;
    const std::string grade =
        read.word("bore_grade", {"IT7", "IT6", "IT8"}, "a reamed or honed bore (common practice)");
    making.bore_grade = grade == "IT6" ? 6 : grade == "IT8" ? 8 : default_bore_grade;
    if (table) table->report_unknown_keys();
    else top.note_default("making", read.list(), "used for the shop sheet only (common practice); see check --shop");
    return making;
}

}  // namespace splicewright
