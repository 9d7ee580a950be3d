// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "cases/materials.h"
#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

Case plain_bar(const std::string& material, const std::string& diameter, const std::string& more = "")
{
    return accepted(
        fmt::format("[left]\nmaterial = \"{}\"\n{}[[left.section]]\nlength = \"900 mm\"\ndiameter = "
                    "\"{}\"\n[load]\npeak_torque = \"500 N*m\"\n",
                    material, more, diameter));
}

void expect_strength(const std::string& material, const std::string& diameter, double yield, double tensile)
{
    const Material found = plain_bar(material, diameter).bar[0]->material;
    EXPECT_EQ(found.yield, Megapascal(yield)) << material << " " << diameter;
    EXPECT_EQ(found.tensile, Megapascal(tensile)) << material << " " << diameter;
}

// Least values of EN 10083-2 and -3 by diameter, read on makers' sheets.
TEST(SizeBands, GiveTheStrengthOfTheDiameter)
{
    expect_strength("C45 +QT", "40 mm", 430, 650);
    expect_strength("C45 +QT", "40.1 mm", 370, 630);
    expect_strength("C45 +N", "100 mm", 305, 580);
    expect_strength("C45 +N", "120 mm", 275, 560);
    expect_strength("42CrMo4 +QT 16-40", "45 mm", 650, 900);
    expect_strength("42CrMo4 +QT 16-40", "130 mm", 550, 800);
    expect_strength("42CrMo4 +QT 40-100", "200 mm", 500, 750);
    expect_strength("34CrMo4 +QT", "60 mm", 550, 800);
    expect_strength("1045 CD", "1.26 in", 530, 630);  // 32.004 mm is 32 mm
}

TEST(SizeBands, AreToldWithBothNumbers)
{
    const Case thick = plain_bar("C45 +QT", "45 mm");
    EXPECT_TRUE(has_caution(thick, "The left bar is 45 mm thick"));
    EXPECT_TRUE(has_caution(thick, "hold for 16 to 40 mm"));
    EXPECT_TRUE(has_caution(thick, "taken is that of 40 to 100 mm"));
    EXPECT_NE(thick.bar[0]->material.source.find("40 to 100 mm"), std::string::npos);
    for (const char* diameter : {"12 mm", "40 mm"})
        EXPECT_FALSE(has_caution(plain_bar("C45 +QT", diameter), "thick, and")) << diameter;
}

TEST(SizeBands, BeyondTheLastKeepTheLowestAndSayThatNothingIsGuaranteed)
{
    const Case thick = plain_bar("C45 +QT", "110 mm");
    EXPECT_EQ(thick.bar[0]->material.yield, Megapascal(370));
    EXPECT_TRUE(has_caution(thick, "no strength is guaranteed at this size"));
    const Case handbook = plain_bar("1045 HR", "38 mm");
    EXPECT_EQ(handbook.bar[0]->material.yield, Megapascal(310));
    EXPECT_TRUE(has_caution(handbook, "18 to 32 mm: no strength is guaranteed"));
}

TEST(SizeBands, CountTheThickestSectionAndTheSleeve)
{
    const Case stepped =
        accepted(splice_with("diameter = \"24 mm\"\nfillet = \"2 mm\"", "diameter = \"42 mm\"\nfillet = \"2 mm\""));
    EXPECT_EQ(stepped.bar[0]->material.yield, Megapascal(370));
    const Case sleeve = accepted(splice_with("\"E355 tube +N\"", "\"C45 +QT\""));  // 42 mm over all
    EXPECT_EQ(sleeve.sleeve->material.yield, Megapascal(370));
    EXPECT_TRUE(has_caution(sleeve, "The sleeve is 42 mm thick"));
    EXPECT_EQ(sleeve.bar[0]->material.yield, Megapascal(430));
}

TEST(SizeBands, OfTheLibraryAreInOrderAndFall)
{
    int n_banded = 0;
    for (const LibraryMaterial& entry : material_library())
    {
        const auto& sizes = entry.material.sizes;
        if (sizes.empty()) continue;
        ++n_banded;
        EXPECT_EQ(sizes.front().yield, entry.material.yield) << entry.material.name;
        for (std::size_t at = 0; at < sizes.size(); ++at)
        {
            EXPECT_LT(sizes[at].above, sizes[at].up_to) << entry.material.name;
            EXPECT_LT(sizes[at].yield, sizes[at].tensile) << entry.material.name;
            if (at == 0) continue;
            EXPECT_EQ(sizes[at].above, sizes[at - 1].up_to) << entry.material.name;
            EXPECT_LT(sizes[at].yield, sizes[at - 1].yield) << entry.material.name;
        }
    }
    EXPECT_GE(n_banded, 10);
}

TEST(StrengthKinds, AreToldAsCautions)
{
    EXPECT_TRUE(has_caution(plain_bar("4140 QT 1300F", "28 mm"), "the left bar (4140 QT 1300F) is typical"));
    EXPECT_TRUE(has_caution(plain_bar("1045 HR", "28 mm"), "the left bar (1045 HR) is a handbook's estimate"));
    EXPECT_FALSE(has_caution(plain_bar("C45 +QT", "28 mm"), "certificate"));
}

TEST(Surface, IsThatOfTheConditionOnASinglePlainSection)
{
    const auto surface = [](const std::string& material) { return plain_bar(material, "28 mm").bar[0]->surface; };
    EXPECT_EQ(surface("C45 +N"), BarSurface::hot_rolled);
    EXPECT_EQ(surface("C45 +QT"), BarSurface::hot_rolled);
    EXPECT_EQ(surface("1045 HR"), BarSurface::hot_rolled);
    EXPECT_EQ(surface("1045 CD"), BarSurface::machined);
    EXPECT_NE(
        default_of(plain_bar("C45 +N", "28 mm"), "left.surface").find("hot-rolled (one plain section, normalised"),
        std::string::npos);
}

TEST(Surface, OfATurnedBarIsMachined)
{
    const Case asked = accepted(sound_splice_text());  // a step on the left, a groove on the right
    for (const Side side : both_sides)
    {
        EXPECT_EQ(asked.bar[index(side)]->surface, BarSurface::machined);
        EXPECT_NE(default_of(asked, fmt::format("{}.surface", name_of(side))).find("turned"), std::string::npos);
    }
}

TEST(Surface, IsTakenAsStated)
{
    const auto surface = [](const std::string& word)
    { return plain_bar("C45 +N", "28 mm", fmt::format("surface = \"{}\"\n", word)).bar[0]->surface; };
    EXPECT_EQ(surface("ground"), BarSurface::ground);
    EXPECT_EQ(surface("Machined"), BarSurface::machined);
    EXPECT_EQ(surface("hot-rolled"), BarSurface::hot_rolled);
    EXPECT_EQ(surface("as-forged"), BarSurface::forged);
    expect_only_problem(splice_with("[[right.section]]", "surface = \"hot rolled\"\n[[right.section]]"),
                        "right.surface", "must be one of", "surface = \"hot-rolled\"");
    expect_only_problem(splice_with("[[right.section]]", "surface = 3\n[[right.section]]"), "right.surface", "must be",
                        "surface = \"...\"");
}

TEST(Toughness, IsReadInItsUnits)
{
    const auto text = [](const std::string& toughness)
    {
        return splice_with("[sleeve.weld]\n", "[sleeve.weld]\nfiller = \"tested\"\n") +
               fmt::format(
                   "[[material]]\nname = \"tested\"\nyield = \"400 MPa\"\ntensile = \"500 MPa\"\ntoughness = "
                   "\"{}\"\n",
                   toughness);
    };
    // 1 MPa sqrt(m) is sqrt(1000) MPa sqrt(mm); a stated [[material]] may be a filler.
    for (const char* written : {"80 MPa*m^0.5", "80 MPa*m^1/2", "80 MPa sqrt(m)", "80 MPa√m", "2529.822128 N/mm^1.5"})
        EXPECT_NEAR(*accepted(text(written)).sleeve->weld.filler.toughness, 2529.822128, 1e-5) << written;
    // 1 ksi sqrt(in) is 1.098843 MPa sqrt(m).
    EXPECT_NEAR(*accepted(text("80 ksi*in^0.5")).sleeve->weld.filler.toughness, 80 * 1.098843 * 31.6227766, 0.01);
    EXPECT_EQ(problem_of(text("5 MPa*m^0.5"), "material[1].toughness").rule, "must be between 10 and 500 MPa*m^0.5");
}

// Least Charpy value of the class of the filler: 12 sqrt(27) MPa sqrt(m) at 25 mm.
TEST(Toughness, OfALibraryFillerComesFromItsClass)
{
    EXPECT_NEAR(*library_material("ER70S-6")->material.toughness, 62.354 * 31.6228, 0.1);
    EXPECT_FALSE(library_material("ER312")->material.toughness.has_value());
}

}  // namespace
}  // namespace splicewright
