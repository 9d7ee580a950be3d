// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/materials.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

const std::string own =
    "[[material]]\nname = \"my steel\"\nyield = \"400 MPa\"\ntensile = \"600 MPa\"\nelastic_modulus = \"205 GPa\"\n"
    "poisson_ratio = 0.28\ndensity = \"7.8 g/cm3\"\nchemistry = { C = 0.4, Mn = 0.8 }\nsource = \"certificate\"\n";

std::string with_own(const std::string& line, const std::string& replacement)
{
    return with(splice_with("\"C45 +QT\"", "\"my steel\"") + own, line, replacement);
}

TEST(MaterialLibrary, HasTwentyGradesAndMoreWithSaneNumbers)
{
    EXPECT_GE(material_library().size(), 20U);
    std::set<std::string> names;
    for (const std::string& name : library_material_names())
        EXPECT_TRUE(names.insert(comparable_name(name)).second) << name;
    for (const LibraryMaterial& entry : material_library())
    {
        const Material& material = entry.material;
        SCOPED_TRACE(material.name);
        EXPECT_GT(material.yield, Megapascal(200));
        EXPECT_GE(material.tensile, material.yield);
        EXPECT_LT(material.tensile, Megapascal(2500));
        EXPECT_GE(material.elastic_modulus, Megapascal(190e3));
        EXPECT_LE(material.elastic_modulus, Megapascal(215e3));
        EXPECT_DOUBLE_EQ(material.poisson_ratio, 0.3);
        EXPECT_GT(material.density, 7.7e-9);
        EXPECT_LT(material.density, 8.1e-9);
        EXPECT_GE(material.heated_yield_factor, 0.5);
        EXPECT_LE(material.heated_yield_factor, 1.0);
        EXPECT_GT(material.composition.C, 0.0);
        EXPECT_LT(material.composition.C, 0.6);
        EXPECT_GT(material.composition.Mn, 0.0);
        EXPECT_TRUE(material.form == "bar" || material.form == "tube" || material.form == "filler");
        EXPECT_FALSE(material.condition.empty());
        EXPECT_FALSE(material.source.empty());
        EXPECT_FALSE(material.heated_yield_reason.empty());
        EXPECT_EQ(entry.loose_names.empty(), entry.loose_name_means.empty());
        const bool marked = material.source.find("from memory") != std::string::npos;
        EXPECT_TRUE(material.provenance != Provenance::from_memory || marked);
    }
}

TEST(MaterialLibrary, KnowsTheNamesThatPeopleUse)
{
    for (const char* name :
         {"C45 +QT", "E355 tube", "ER70S-6", "42CrMo4 +QT", "4140", "c45  +qt", " ER312 ", "DOM 1026"})
        EXPECT_TRUE(library_material(name).has_value()) << name;
    EXPECT_EQ(library_material("E355 tube")->material.condition, "normalised");
    EXPECT_FALSE(library_material("unobtainium").has_value());
}

TEST(Materials, ALooseNameIsRecordedAsADefault)
{
    const Case asked = accepted(splice_with("\"E355 tube +N\"", "\"E355 tube\""));
    EXPECT_EQ(asked.sleeve->material.name, "E355 tube +N");
    bool recorded = false;
    for (const DefaultUsed& used : asked.defaults)
        recorded = recorded || (used.field == "sleeve.material" && used.value == "E355 tube +N");
    EXPECT_TRUE(recorded);
}

TEST(Materials, AnUnknownNameIsAnsweredWithNearOnesAndHowToDefineOne)
{
    expect_only_problem(splice_with("\"C45 +QT\"", "\"C45 QT\""), "left.material", "is not a known material",
                        "\"C45 +QT\"");
    expect_only_problem(splice_with("\"C45 +QT\"", "\"C45 QT\""), "left.material", "is not a known material",
                        "[[material]]");
    // A grade without its condition is no misspelling: the conditions are named.
    expect_only_problem(splice_with("\"C45 +QT\"", "\"chromoly\""), "left.material", "is not a known material",
                        "one of the built-in materials, which docs/case-format.md lists");
    expect_only_problem(splice_with("\"C45 +QT\"", "\"1050\""), "left.material", "is not a known material",
                        "\"1050 CD\"");
}

TEST(Materials, AreUsedForWhatTheyAre)
{
    expect_only_problem(splice_with("\"C45 +QT\"", "\"ER70S-6\""), "left.material", "not a filler metal",
                        "material = \"...\" with the name of its steel");
    expect_only_problem(splice_with("leg = \"6 mm\"", "leg = \"6 mm\"\nfiller = \"C45 +N\""), "sleeve.weld.filler",
                        "must be a filler metal", "filler = \"...\" with the name of the filler metal");
}

TEST(StatedMaterial, IsTakenAsWritten)
{
    const Case asked = accepted(with_own("my steel\"\nyield", "my steel\"\nheated_yield_factor = 0.8\nyield"));
    const Material& material = asked.bar[0]->material;
    EXPECT_EQ(material.yield, Megapascal(400));
    EXPECT_EQ(material.tensile, Megapascal(600));
    EXPECT_EQ(material.elastic_modulus, Megapascal(205e3));
    EXPECT_DOUBLE_EQ(material.poisson_ratio, 0.28);
    EXPECT_NEAR(material.density, 7.8e-9, 1e-21);
    EXPECT_DOUBLE_EQ(material.composition.C, 0.4);
    EXPECT_DOUBLE_EQ(material.composition.Mn, 0.8);
    EXPECT_DOUBLE_EQ(material.composition.Cr, 0.0);
    EXPECT_EQ(material.provenance, Provenance::stated);
    EXPECT_EQ(material.source, "certificate");
    EXPECT_DOUBLE_EQ(material.heated_yield_factor, 0.8);
}

TEST(StatedMaterial, OverridesTheLibrary)
{
    std::string text = splice_with("\"C45 +N\"", "\"C45 +QT\"");
    text += "[[material]]\nname = \"C45 +QT\"\nyield = \"500 MPa\"\ntensile = \"700 MPa\"\n";
    const Case asked = accepted(text);
    EXPECT_EQ(asked.bar[1]->material.yield, Megapascal(500));
    EXPECT_EQ(asked.bar[1]->material.provenance, Provenance::stated);
    EXPECT_DOUBLE_EQ(asked.bar[1]->material.heated_yield_factor, 0.75);
}

TEST(StatedMaterial, RecordsItsDefaults)
{
    std::string text = splice_with("\"C45 +QT\"", "\"my steel\"");
    text += "[[material]]\nname = \"my steel\"\nyield = \"400 MPa\"\ntensile = \"600 MPa\"\n";
    std::set<std::string> fields;
    for (const DefaultUsed& used : accepted(text).defaults) fields.insert(used.field);
    for (const char* key : {"elastic_modulus", "poisson_ratio", "density", "heated_yield_factor", "chemistry"})
        EXPECT_TRUE(fields.count(std::string("material[1].") + key) == 1) << key;
}

// own: 205 GPa and a Poisson ratio of 0.28 beside the 210 GPa and 0.3 of the library.
TEST(WeldedMetals, MustBeOfOneStiffness)
{
    const std::string mixed = "must be as stiff as the left bar";
    EXPECT_NE(problem_of(with_own("\"205 GPa\"", "\"197 GPa\""), "sleeve.material").rule.find(mixed),
              std::string::npos);
    EXPECT_EQ(problem_of(with_own("\"205 GPa\"", "\"198 GPa\""), "sleeve.material").rule, "");
    EXPECT_NE(problem_of(with_own("\"205 GPa\"", "\"70 GPa\""), "right.material").rule.find(mixed), std::string::npos);
    const std::string ratio = "Poisson ratio of the left bar";
    EXPECT_NE(problem_of(with_own("ratio = 0.28", "ratio = 0.24"), "sleeve.material").rule.find(ratio),
              std::string::npos);
    EXPECT_EQ(problem_of(with_own("ratio = 0.28", "ratio = 0.34"), "sleeve.material").rule, "");
}

TEST(StatedMaterial, MustBeSane)
{
    expect_only_problem(with_own("yield = \"400 MPa\"", "yield = \"40 MPa\""), "material[1].yield", "above 50 MPa",
                        "yield");
    expect_only_problem(with_own("yield = \"400 MPa\"", "yield = \"400 GPa\""), "material[1].yield", "at most 4000",
                        "yield");
    expect_only_problem(with_own("tensile = \"600 MPa\"", "tensile = \"399 MPa\""), "material[1].tensile",
                        "at least the yield of 400 MPa", "tensile");
    expect_only_problem(with_own("tensile = \"600 MPa\"", "tensile = \"600 GPa\""), "material[1].tensile",
                        "at most 4000", "tensile");
    expect_only_problem(with_own("\"205 GPa\"", "\"205 MPa\""), "material[1].elastic_modulus", "50 and 400 GPa",
                        "210 GPa");
    expect_only_problem(with_own("\"205 GPa\"", "\"500 GPa\""), "material[1].elastic_modulus", "50 and 400 GPa",
                        "210 GPa");
    expect_only_problem(with_own("ratio = 0.28", "ratio = 0.5"), "material[1].poisson_ratio", "0 and 0.49", "0.3");
    expect_only_problem(with_own("ratio = 0.28", "ratio = -0.1"), "material[1].poisson_ratio", "0 and 0.49", "0.3");
    expect_only_problem(with_own("7.8 g/cm3", "78 g/cm3"), "material[1].density", "between 1000", "7850");
    expect_only_problem(with_own("C = 0.4", "C = 60"), "material[1].chemistry.C", "mass percent", "C = ");
    expect_only_problem(with_own("C = 0.4", "Xx = 0.4"), "material[1].chemistry.Xx", "unknown key", "");
    expect_only_problem(with_own("poisson_ratio", "heated_yield_factor = 2\npoisson_ratio"),
                        "material[1].heated_yield_factor", "between 0.2 and 1", "heated_yield_factor = ...");
    expect_only_problem(with_own("yield = \"400 MPa\"\n", ""), "material[1].yield", "is missing", "yield");
    expect_only_problem(splice_with("[left]", own + own + "[left]"), "material[2].name", "must be different",
                        "a name of its own");
}

TEST(StatedMaterial, AreNotMoreThanFifty)
{
    std::string text = sound_splice_text();
    for (int number = 0; number < 51; ++number)
        text +=
            "[[material]]\nname = \"m" + std::to_string(number) + "\"\nyield = \"400 MPa\"\ntensile = \"600 MPa\"\n";
    expect_only_problem(text, "material", "at most 50", "leave out");
}

}  // namespace
}  // namespace splicewright
