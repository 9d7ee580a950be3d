// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/hardness.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "cases/heated_yield.h"
#include "cases/materials.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

std::string with_steel(const std::string& lines)
{
    return splice_with("\"C45 +QT\"", "\"my steel\"") + "[[material]]\nname = \"my steel\"\n" + lines;
}

// Source: [ISO18265] table A.1 and [ASTM-A370], the printed rows.
TEST(Hardness, IsConvertedAsTheTablesPrint)
{
    EXPECT_NEAR(vickers_hardness("35.5 HRC").value(), 350, 1e-9);
    EXPECT_NEAR(vickers_hardness("285 HB").value(), 300, 1e-9);
    EXPECT_NEAR(vickers_hardness("58 HRC").value(), 653, 1e-9);
    EXPECT_NEAR(vickers_hardness("143 HBW").value(), 150, 1e-9);
    EXPECT_NEAR(vickers_hardness("270 HV10").value(), 270, 1e-9);
    EXPECT_NEAR(vickers_hardness(" 270hv ").value(), 270, 1e-9);
    EXPECT_NEAR(strength_of_hardness(350).tensile.value(), 1125, 1e-9);
    EXPECT_NEAR(strength_of_hardness(544).tensile.value(), 1880, 1e-9);
}

TEST(Hardness, LiesBetweenTheRowsOnAStraightLine)
{
    // 28 HRC between 25.6 (270 HV) and 29.8 (300 HV): 270 + 30 x 2.4 / 4.2.
    EXPECT_NEAR(vickers_hardness("28 HRC").value(), 287.142857, 1e-6);
    // 287.142857 HV between 865 and 965 MPa: 865 + 100 x 17.142857 / 30.
    EXPECT_NEAR(strength_of_hardness(287.142857).tensile.value(), 922.142857, 1e-5);
}

TEST(Hardness, GivesTheLowerEndOfItsScatterBesideTheMiddle)
{
    const StrengthEstimate estimate = strength_of_hardness(300);
    EXPECT_NEAR(estimate.tensile_low.value(), 868.5, 1e-9);  // 965 less 10 %
    EXPECT_NEAR(estimate.yield.value(), 772.1, 1e-9);        // -90.7 + 2.876 x 300
    EXPECT_NEAR(estimate.yield_low.value(), 568.1, 1e-9);    // less 2 x 102
}

TEST(Hardness, GrowsAndKeepsTheYieldBelowTheTensileStrength)
{
    StrengthEstimate before = strength_of_hardness(150);
    for (double vickers = 151; vickers <= 653; ++vickers)
    {
        const StrengthEstimate now = strength_of_hardness(vickers);
        EXPECT_GT(now.tensile, before.tensile);
        EXPECT_GT(now.yield_low, before.yield_low);
        EXPECT_LT(now.yield_low, now.tensile_low);
        EXPECT_GT(now.yield_low, Megapascal(50));
        before = now;
    }
}

// The other library steels whose hardness the same book prints: the estimate must stay below what it prints.
// Source: [Shigley2011] table A-20, lowest yield, tensile strength and Brinell hardness of bars.
TEST(Hardness, EstimateIsBelowThePrintedStrengthOfCommonBars)
{
    struct Bar
    {
        double HB, yield, tensile;
    };
    for (const Bar& bar : {Bar{149, 290, 520}, Bar{170, 490, 590}, Bar{163, 310, 570}, Bar{179, 530, 630},
                           Bar{179, 340, 620}, Bar{197, 580, 690}})
    {
        const StrengthEstimate estimate =
            strength_of_hardness(vickers_hardness(std::to_string(bar.HB) + " HB").value());
        EXPECT_LT(estimate.yield_low.value(), bar.yield) << bar.HB;
        EXPECT_LT(estimate.tensile_low.value(), bar.tensile) << bar.HB;
    }
}

TEST(Hardness, IsRefusedOutsideTheTablesAndInOtherScales)
{
    for (const char* hardness : {"19 HRC", "59 HRC", "140 HB", "620 HB", "149 HV", "700 HV10"})
        expect_only_problem(with_steel(std::string("hardness = \"") + hardness + "\"\n"), "material[1].hardness",
                            "must be from", "measure again");
    for (const char* hardness : {"28", "28 HRB", "HRC 28", "hard", "28 HRC +- 2 HRC", "28..32 HRC", "nan HRC"})
        expect_only_problem(with_steel(std::string("hardness = \"") + hardness + "\"\n"), "material[1].hardness",
                            "one number with its scale", " HRC\"");
    expect_only_problem(with_steel("hardness = 28\n"), "material[1].hardness", "must be a text", "hardness = \"...\"");
}

TEST(StatedMaterial, IsEstimatedFromItsHardnessAlone)
{
    const Case asked = accepted(with_steel("hardness = \"300 HV\"\n"));
    const Material& material = asked.bar[0]->material;
    EXPECT_NEAR(material.yield.value(), 568.1, 1e-9);
    EXPECT_NEAR(material.tensile.value(), 868.5, 1e-9);
    EXPECT_EQ(material.provenance, Provenance::judgement);
    EXPECT_EQ(material.source.find("ESTIMATE from 300 HV"), 0U) << material.source;
    EXPECT_EQ(default_of(asked, "material[1].yield").find("568 MPa (ESTIMATE from 300 HV"), 0U);
    EXPECT_EQ(default_of(asked, "material[1].tensile").find("868 MPa (ESTIMATE from 300 HV"), 0U)
        << default_of(asked, "material[1].tensile");
    EXPECT_TRUE(has_caution(asked, "\"my steel\" is an estimate from its hardness"));
    EXPECT_DOUBLE_EQ(material.heated_yield_factor, 0.75);
    EXPECT_DOUBLE_EQ(accepted(with_steel("hardness = \"180 HB\"\n")).bar[0]->material.heated_yield_factor, 0.58);
}

TEST(StatedMaterial, KeepsWhatIsStatedBesideItsHardness)
{
    const Case half = accepted(with_steel("hardness = \"300 HV\"\nyield = \"700 MPa\"\n"));
    EXPECT_EQ(half.bar[0]->material.yield, Megapascal(700));
    EXPECT_NEAR(half.bar[0]->material.tensile.value(), 868.5, 1e-9);
    const std::string both = "yield = \"700 MPa\"\ntensile = \"900 MPa\"\nhardness = ";
    const Case fits = accepted(with_steel(both + "\"300 HV\"\n"));
    EXPECT_EQ(fits.bar[0]->material.provenance, Provenance::stated);
    EXPECT_FALSE(has_caution(fits, "speaks for"));
    EXPECT_TRUE(has_caution(accepted(with_steel(both + "\"200 HV\"\n")), "speaks for 640 MPa"));
    expect_only_problem(with_steel("hardness = \"200 HV\"\nyield = \"700 MPa\"\n"), "material[1].tensile",
                        "at least the yield", "certificate");
}

TEST(HeatState, GivesTheYieldBesideAWeld)
{
    const std::string strength = "yield = \"400 MPa\"\ntensile = \"600 MPa\"\n";
    const std::pair<const char*, double> states[] = {{"normalised", 1.0},      {"Hot-rolled", 1.0},
                                                     {"cold-drawn", 0.58},     {"quenched and tempered", 0.75},
                                                     {"stress-relieved", 0.5}, {"surface-hardened", 0.75}};
    EXPECT_EQ(std::size(states), heated_yields().size());
    for (const auto& [state, factor] : states)
    {
        const Case asked = accepted(with_steel(strength + "heat_state = \"" + state + "\"\n"));
        EXPECT_DOUBLE_EQ(asked.bar[0]->material.heated_yield_factor, factor) << state;
        EXPECT_NE(default_of(asked, "material[1].heated_yield_factor").find("(judgement)"), std::string::npos);
        EXPECT_FALSE(asked.bar[0]->material.heated_yield_reason.empty());
    }
    expect_only_problem(with_steel(strength + "heat_state = \"soft\"\n"), "material[1].heat_state", "must be one of",
                        "one of these");
    expect_only_problem(with_steel(strength + "heat_state = \"normalised\"\nheated_yield_factor = 0.9\n"),
                        "material[1].heat_state", "must not stand beside", "keep either");
}

TEST(UnknownSteel, IsTakenAsTheWeakestOfTheLibraryAndSaidLoudly)
{
    const Case asked = accepted(splice_with("\"C45 +QT\"", "\"unknown\""));
    const Material& material = asked.bar[0]->material;
    EXPECT_EQ(material.name, unknown_steel);
    EXPECT_EQ(material.provenance, Provenance::judgement);
    EXPECT_NE(default_of(asked, "left.material").find("unknown steel (steel not known"), std::string::npos);
    EXPECT_TRUE(has_caution(asked, "UNKNOWN STEEL in the left bar: taken as soft mild steel, yield 210 MPa"));
    for (const LibraryMaterial& entry : material_library())
        if (entry.material.form != "filler")
        {
            EXPECT_GE(entry.material.yield, material.yield) << entry.material.name;
            EXPECT_GE(entry.material.tensile, material.tensile) << entry.material.name;
            // The factors are printed with two digits.
            EXPECT_GE(entry.material.heated_yield_factor * entry.material.yield.value(), 0.99 * material.yield.value())
                << entry.material.name;
        }
    EXPECT_FALSE(has_caution(accepted(sound_splice_text()), "UNKNOWN STEEL"));
}

TEST(HeatedYield, OfALibraryConditionIsNeverBelowWhatACaseMayNameForIt)
{
    for (const LibraryMaterial& entry : material_library())
    {
        for (const HeatedYield& known : heated_yields())
        {
            const bool is_in_it = entry.material.condition.starts_with(known.state);
            EXPECT_TRUE(!is_in_it || entry.material.heated_yield_factor >= known.factor) << entry.material.name;
        }
    }
}

}  // namespace
}  // namespace splicewright
