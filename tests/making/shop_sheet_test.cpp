// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

#include "cases/random_case.h"
#include "post/making_text.h"
#include "tests/making/shop_cases.h"

namespace splicewright
{
namespace
{

bool says(const std::vector<std::string>& words, const std::string& part)
{
    return std::any_of(words.begin(), words.end(),
                       [&](const std::string& each) { return each.find(part) != std::string::npos; });
}

std::string accepted_at(const ShopSheet& sheet, const std::string& what, const std::string& method)
{
    for (const InspectionStep& step : sheet.inspection)
        if (step.what == what && step.method == method) return step.accept;
    ADD_FAILURE() << what << " " << method;
    return {};
}

std::ptrdiff_t place_of(const ShopSheet& sheet, const std::string& what, const std::string& method)
{
    const auto step = std::find_if(sheet.inspection.begin(), sheet.inspection.end(),
                                   [&](const InspectionStep& each)
                                   { return each.what == what && each.method.find(method) != std::string::npos; });
    EXPECT_NE(step, sheet.inspection.end()) << what << " " << method;
    return step - sheet.inspection.begin();
}

std::string when_of(const ShopSheet& sheet, const std::string& what, const std::string& method)
{
    return sheet.inspection[static_cast<std::size_t>(place_of(sheet, what, method))].when;
}

// A structural steel of known chemistry, within every range of method B, takes the place of both bars.
Case mild_splice(const std::string& chemistry)
{
    std::string text = with(splice_with("\"C45 +QT\"", "\"mild\""), "\"C45 +N\"", "\"mild\"");
    return accepted(fmt::format("{}[[material]]\nname = \"mild\"\nyield = \"355 MPa\"\ntensile = \"510 MPa\"\n{}", text,
                                chemistry));
}
constexpr const char* mild_chemistry = "chemistry = { C = 0.18, Si = 0.3, Mn = 1.2 }\n";

TEST(HeatPlan, IsNotCalledStandardOutsideItsRange)
{
    const HeatPlan heat = shop_sheet(made_splice("", ""))->heat;
    EXPECT_FALSE(heat.is_standard);
    EXPECT_TRUE(says(heat.words, "left bar and right bar lie outside method B"));
    EXPECT_TRUE(says(heat.words, "must not be called one"));
    EXPECT_NE(shop_text(*shop_sheet(made_splice("", ""))).find("NOT a"), std::string::npos);
}

TEST(HeatPlan, IsCalledStandardWithin)
{
    const HeatPlan heat = shop_sheet(mild_splice(mild_chemistry))->heat;
    EXPECT_TRUE(heat.is_standard);
    EXPECT_FALSE(says(heat.words, "outside"));
}

TEST(HeatPlan, SaysWhatToDoWithoutChemistry)
{
    const ShopSheet sheet = *shop_sheet(mild_splice(""));
    EXPECT_FALSE(sheet.steels[0].known.has_value());
    EXPECT_FALSE(sheet.heat.is_standard);
    EXPECT_TRUE(says(sheet.heat.words, "The chemistry of the left bar and right bar (mild) is not known"));
    EXPECT_TRUE(says(sheet.heat.words, "do not weld it"));
}

TEST(HeatPlan, TakesTheHigherOfBothOpinionsOfTheWorstPart)
{
    const ShopSheet sheet = *shop_sheet(made_splice("", ""));
    double highest = 0;
    for (const SteelAdvice& steel : sheet.steels)
        highest = std::max({highest, steel.known->preheat_b.value, steel.known->preheat_seferian});
    EXPECT_GE(sheet.heat.preheat_c, highest);
    EXPECT_LT(sheet.heat.preheat_c, highest + 10);
    EXPECT_EQ(sheet.heat.governing, "left bar");
}

TEST(Inspection, WaitsLongerOutsideTheRange)
{
    EXPECT_NE(when_of(*shop_sheet(mild_splice(mild_chemistry)), "butt weld", "magnetic").find("16 h"),
              std::string::npos);
    EXPECT_NE(when_of(*shop_sheet(made_splice("", "")), "butt weld", "magnetic").find("48 h"), std::string::npos);
}

// Source: [EN1090-2] table 23; never under the 16 h of [EN1011-2]. Butt fused 9 mm deep, throat of the sleeve 4.2 mm.
TEST(Inspection, WaitGoesByTheSizeOfTheWeldTheHeatAndTheGrade)
{
    const auto waits = [](const std::string& yield, const std::string& heat, const std::string& depth)
    {
        std::string text = with(splice_with("\"C45 +QT\"", "\"mild\""), "\"C45 +N\"", "\"mild\"");
        text = with(text, "penetration = \"9 mm\"", fmt::format("penetration = \"{}\"", depth));
        text = fmt::format(
            "{}[making]\nheat_input = \"{}\"\n[[material]]\nname = \"mild\"\nyield = \"{}\"\ntensile = "
            "\"560 MPa\"\n{}",
            text, heat, yield, mild_chemistry);
        const ShopSheet sheet = *shop_sheet(accepted(text));
        EXPECT_TRUE(sheet.heat.is_standard);
        return when_of(sheet, "butt weld", "magnetic").substr(0, 4) +
               when_of(sheet, "sleeve welds", "magnetic").substr(0, 4);
    };
    EXPECT_EQ(waits("355 MPa", "1 kJ/mm", "9 mm"), "16 h16 h");
    EXPECT_EQ(waits("460 MPa", "1 kJ/mm", "9 mm"), "24 h24 h");
    EXPECT_EQ(waits("460 MPa", "3.5 kJ/mm", "9 mm"), "40 h24 h");
    EXPECT_EQ(waits("355 MPa", "3.5 kJ/mm", "full"), "40 h16 h");
    EXPECT_EQ(waits("460 MPa", "3.5 kJ/mm", "full"), "48 h24 h");
    EXPECT_EQ(waits("460 MPa", "1 kJ/mm", "full"), "40 h24 h");
}

TEST(Inspection, LooksAtTheButtBeforeTheSleeveHidesIt)
{
    const ShopSheet sheet = *shop_sheet(made_splice("", ""));
    EXPECT_LT(place_of(sheet, "fit-up", ""), place_of(sheet, "tacks", ""));
    EXPECT_LT(place_of(sheet, "tacks", ""), place_of(sheet, "butt weld", "eye"));
    EXPECT_LT(place_of(sheet, "butt weld", "eye"), place_of(sheet, "butt weld", "magnetic"));
    EXPECT_LT(place_of(sheet, "butt weld", "ultrasonic"), place_of(sheet, "sleeve fit", ""));
    EXPECT_EQ(sheet.inspection.back().what, "shaft");
}

// Throat 4.243 mm, width 8.485 mm: legs 1.5 + 0.15 a and 2 + 0.15 a apart; convexity 1 + 0.1 b and 1 + 0.15 b.
TEST(Inspection, LimitsAreThoseOfTheQualityLevel)
{
    const std::string b = accepted_at(*shop_sheet(made_splice("", "")), "sleeve welds", "eye, fillet gauge");
    EXPECT_NE(b.find("legs within 2.1 mm"), std::string::npos) << b;
    EXPECT_NE(b.find("convexity at most 1.8 mm"), std::string::npos) << b;
    EXPECT_NE(b.find("toe angle at least 110 deg"), std::string::npos) << b;
    const std::string c =
        accepted_at(*shop_sheet(made_splice("", "quality = \"C\"\n")), "sleeve welds", "eye, fillet gauge");
    EXPECT_NE(c.find("legs within 2.6 mm"), std::string::npos) << c;
    EXPECT_NE(c.find("convexity at most 2.3 mm"), std::string::npos) << c;
    EXPECT_NE(c.find("toe angle at least 100 deg"), std::string::npos) << c;
}

TEST(Inspection, UsesPenetrantOnWeldMetalThatIsNotMagnetic)
{
    const Case asked = accepted(splice_with("leg = \"6 mm\"", "leg = \"6 mm\"\nfiller = \"ER312\""));
    EXPECT_GE(place_of(*shop_sheet(asked), "sleeve welds", "penetrant"), 0);
}

// A page has 66 lines; the order of the work is a part of its own.
TEST(ShopText, FitsOnAPageInItsColumnsBesideTheOrderOfTheWork)
{
    const std::string text = shop_text(*shop_sheet(made_splice("", "plunge_available = \"20 mm\"\n")));
    const auto order = text.begin() + static_cast<std::ptrdiff_t>(text.find("Order of the work"));
    const auto after = text.begin() + static_cast<std::ptrdiff_t>(text.find("Look at, in this order"));
    ASSERT_LT(order, after);
    const auto n_lines = std::count(text.begin(), text.end(), '\n'), n_order = std::count(order, after, '\n');
    EXPECT_LE(n_lines - n_order, 66);
    EXPECT_LE(n_order, 20);
    EXPECT_NE(text.find("Plunge"), std::string::npos);
    std::size_t columns = 0;  // characters, not bytes
    for (const char letter : text)
    {
        if (letter == '\n') columns = 0;
        else if ((static_cast<unsigned char>(letter) & 0xC0U) != 0x80U) ++columns;
        ASSERT_LE(columns, 104U) << text;
    }
}

TEST(ShopText, TellsTheOrderOfWorkWithItsCoolingBeforeTheSleeveGoesOn)
{
    const ShopSheet sheet = *shop_sheet(accepted(sound_splice_text()));
    const std::string text = shop_text(sheet);
    const std::size_t cool = text.find("Cool slowly, wrapped"), sleeve = text.find("Slide the sleeve to its marks");
    ASSERT_NE(cool, std::string::npos) << text;
    ASSERT_NE(sleeve, std::string::npos) << text;
    EXPECT_LT(cool, sleeve);
    EXPECT_TRUE(says(sheet.heat.words, "to the last pass of that weld"));
}

TEST(ShopText, SpeaksOfATemperAndOfALapOnlyWhereThereIsOne)
{
    const std::string tempered = "quenched and tempered bar", lap = "a half lap can hide its faces";
    const std::string lapped_text = shop_text(*shop_sheet(accepted(sound_splice_text())));
    EXPECT_NE(lapped_text.find("a half lap can"), std::string::npos) << lapped_text;
    Case asked = accepted(splice_with("material = \"C45 +QT\"", "material = \"C45 +N\""));
    asked.joint->half_lap = Millimetre{0};
    const ShopSheet plain = *shop_sheet(asked);
    for (const std::string& words : plain.heat.words) EXPECT_EQ(words.find("temper of"), std::string::npos) << words;
    EXPECT_FALSE(says(plain.heat.words, tempered));
    EXPECT_TRUE(says(shop_sheet(accepted(sound_splice_text()))->heat.words, tempered));
    for (const InspectionStep& step : plain.inspection)
        EXPECT_EQ(step.accept.find(lap), std::string::npos) << step.accept;
}

bool holds_no_number(const std::string& text)
{
    return text.find("nan") != std::string::npos || text.find("inf ") != std::string::npos ||
           text.find("-inf") != std::string::npos;
}

TEST(ShopSheet, OfAnyCaseHoldsNumbersOnly)
{
    for (std::uint64_t seed = 1; seed <= 300; ++seed)
    {
        const Case asked = accepted(random_case_text(seed));
        const RunningTrue running = running_true(asked);
        EXPECT_GT(running.critical_speed, 0) << seed;
        EXPECT_FALSE(holds_no_number(running_lines(asked, running))) << seed;
        EXPECT_EQ(shop_sheet(asked).has_value(), asked.joint.has_value()) << seed;
        if (!asked.joint) continue;
        const ShopSheet sheet = *shop_sheet(asked);
        EXPECT_FALSE(holds_no_number(shop_text(sheet))) << seed;
        for (const WeldDeposit& weld : sheet.welds) EXPECT_GT(weld.volume, 0) << seed;
        for (const BoreBand& bore : sheet.bores) EXPECT_GT(bore.greatest, bore.least) << seed;
        for (const double cut : sheet.cut.cut) EXPECT_GT(cut, 0) << seed;
    }
}

TEST(ShopSheet, OfASteelThatNobodyWeldsSaysSo)
{
    const ShopSheet sheet = *shop_sheet(mild_splice("chemistry = { C = 3.4, Si = 2, Mn = 20, Cr = 30 }\n"));
    EXPECT_TRUE(says(sheet.heat.words, "do not weld this steel"));
    EXPECT_FALSE(sheet.steels[0].known->expected_hardness.has_value());
    EXPECT_FALSE(holds_no_number(shop_text(sheet)));
}

TEST(ShopSheet, IsNotThereForAPlainShaft)
{
    EXPECT_FALSE(shop_sheet(accepted("[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"200 mm\"\ndiameter = "
                                     "\"28 mm\"\n[load]\npeak_torque = \"500 N*m\"\n"))
                     .has_value());
}

// The amounts and the drawing are those of welds that go all round: a sheet that kept silent would be built so.
TEST(ShopSheet, TellsPartialAndPlugWeldsThatItDoesNotCount)
{
    Case asked = made_splice("", "");
    EXPECT_TRUE(shop_sheet(asked)->partial_welds.empty());
    asked.sleeve->weld.coverage = Radian{1.5 * std::numbers::pi};
    asked.sleeve->weld.start[1] = Radian{std::numbers::pi / 2};
    asked.sleeve->plugs.push_back({3, Millimetre{8}, Millimetre{-22}, Millimetre{5}, Radian{0}});
    const ShopSheet sheet = *shop_sheet(asked);
    EXPECT_TRUE(
        says(sheet.partial_welds, "covers 270° of the circumference: the left one from 0°, the right one from 90°"));
    EXPECT_TRUE(says(sheet.partial_welds, "3 plug welds of Ø8 mm at z = -22 mm, the first at 0°, filled 5 mm deep"));
    EXPECT_NE(shop_text(sheet).find("Not in sheet and drawing: 3 plug welds"), std::string::npos);
}

}  // namespace
}  // namespace splicewright
