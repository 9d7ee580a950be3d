// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

const std::string plain_shaft =
    "[left]\nmaterial = \"C45 +N\"\n[[left.section]]\nlength = \"200 mm\"\ndiameter = \"28 mm\"\n"
    "[load]\npeak_torque = \"500 N*m\"\n";

TEST(Defaults, OfAPlainShaftAreAllRecorded)
{
    const Case asked = accepted(plain_shaft);
    EXPECT_EQ(asked.title, "t");
    EXPECT_EQ(default_of(asked, "title"), "t (name of the file)");
    EXPECT_EQ(default_of(asked, "left.bore"), "0 mm (solid bar)");
    EXPECT_EQ(default_of(asked, "load.running_torque"), "500 N*m (the peak torque, which is on the safe side)");
    EXPECT_EQ(asked.load.running_torque, NewtonMillimetre(500e3));
    EXPECT_EQ(default_of(asked, "load.bending"), "0 N*m (neither bending nor joint_angle given)");
    EXPECT_EQ(default_of(asked, "load.axial"), "0 N (not given)");
    EXPECT_NE(default_of(asked, "load.speed"), "");
    EXPECT_EQ(default_of(asked, "load.revolutions"),
              "1e8 (about 190 thousand km on a tyre of 0.30 m radius (judgement))");
    EXPECT_DOUBLE_EQ(asked.load.revolutions, 1e8);
    EXPECT_EQ(default_of(asked, "load.tyre_radius"), "0.30 m (for kilometres only (judgement))");
    EXPECT_EQ(asked.load.tyre_radius, Millimetre(300));
    EXPECT_NE(default_of(asked, "left.surface"), "");
    EXPECT_EQ(asked.defaults.size(), 9U);
}

TEST(Defaults, OfTheTyreDistanceAreAsTheReasonSays)
{
    // 1e8 revolutions of a circle of 0.30 m radius in km; "about 190 000" is two digits.
    EXPECT_NEAR(1e8 * 2 * std::acos(-1.0) * 0.30e-3, 190e3, 5e3);
}

TEST(Defaults, OfTheJointAreRecorded)
{
    std::string text = splice_with("half_lap = \"14 mm\"\n", "");
    text = with(text, "blend = \"3 mm\"\n", "");
    const Case asked = accepted(text);
    EXPECT_EQ(asked.joint->half_lap, Millimetre(0));
    EXPECT_EQ(default_of(asked, "joint.half_lap"), "0 mm (square cut)");
    // Diameters 28 and 27: twice the difference is 2 mm, the least is 3 mm.
    EXPECT_EQ(asked.joint->blend, Millimetre(3));
    EXPECT_NE(default_of(asked, "joint.blend").find("3 mm"), std::string::npos);
    EXPECT_EQ(asked.joint->filler.name, "ER70S-6");
}

TEST(Defaults, BlendIsTwiceTheDifferenceOfDiametersThatDifferMuch)
{
    std::string text = splice_with("blend = \"3 mm\"\n", "");
    text = with(text, "diameter = \"27 mm\"", "diameter = \"25.5 mm\"");
    EXPECT_EQ(accepted(text).joint->blend, Millimetre(5));
}

TEST(Defaults, BlendBetweenEqualDiametersIsNoneAndNoDefault)
{
    std::string text = splice_with("blend = \"3 mm\"\n", "");
    text = with(text, "diameter = \"27 mm\"", "diameter = \"27.99 mm\"");
    const Case asked = accepted(text);
    EXPECT_EQ(asked.joint->blend, Millimetre(0));
    EXPECT_EQ(default_of(asked, "joint.blend"), "");
}

TEST(Defaults, OneFillerStandsInForTheOther)
{
    const Case both = accepted(splice_with("leg = \"6 mm\"", "leg = \"6 mm\"\nfiller = \"ER312\""));
    EXPECT_EQ(both.sleeve->weld.filler.name, "ER312");
    EXPECT_EQ(both.joint->filler.name, "ER312");
    EXPECT_EQ(default_of(both, "joint.filler"), "ER312 (as the sleeve welds)");
    EXPECT_EQ(default_of(both, "sleeve.weld.filler"), "");
    const Case joint = accepted(splice_with("half_lap", "filler = \"ER80S-D2\"\nhalf_lap"));
    EXPECT_EQ(joint.joint->filler.name, "ER80S-D2");
    EXPECT_EQ(joint.sleeve->weld.filler.name, "ER80S-D2");
}

TEST(Defaults, OfTheSleeveWeldAreRecorded)
{
    const Case asked = accepted(splice_with("toe_radius = \"1.5 mm\"\n", ""));
    EXPECT_EQ(asked.sleeve->weld.toe_radius, Millimetre(1));
    EXPECT_FALSE(asked.sleeve->weld.toe_radius_stated);
    EXPECT_EQ(default_of(asked, "sleeve.weld.toe_radius"), "1 mm (reference radius of the notch stress method)");
    EXPECT_EQ(default_of(asked, "sleeve.weld.coverage"), "360 deg (welded all round)");
    EXPECT_EQ(default_of(asked, "sleeve.weld.passes"), "1 (one pass for each weld)");
    EXPECT_EQ(default_of(asked, "sleeve.offset"), "0 mm (centred on the joint)");
    EXPECT_EQ(asked.sleeve->weld.passes, 1);
}

TEST(Cautions, HalfLapWithFullPenetration)
{
    const std::string part = "rarely be proven";
    EXPECT_TRUE(has_caution(accepted(splice_with("penetration = \"9 mm\"", "penetration = \"full\"")), part));
    EXPECT_FALSE(has_caution(accepted(sound_splice_text()), part));
}

TEST(Cautions, NoFatigueLoads)
{
    EXPECT_TRUE(has_caution(accepted(plain_shaft), "No load that repeats"));
    EXPECT_FALSE(has_caution(accepted(plain_shaft + "bending = \"20 N*m\"\n"), "No load that repeats"));
    EXPECT_FALSE(has_caution(accepted(sound_splice_text()), "No load that repeats"));
}

TEST(Cautions, ThinThroatAndThinWall)
{
    std::string thin = with(splice_with("leg = \"6 mm\"", "leg = \"4 mm\""), "toe_radius = \"1.5 mm\"\n", "");
    EXPECT_TRUE(has_caution(accepted(thin), "throat of the sleeve welds is 2.83 mm"));
    EXPECT_TRUE(has_caution(accepted(sound_splice_text()), "A wall or throat of 4.24 mm is thinner than the 5 mm"));
    std::string thick = with(splice_with("leg = \"6 mm\"", "leg = \"7.5 mm\""), "outer_diameter = \"42 mm\"",
                             "outer_diameter = \"46 mm\"");
    EXPECT_FALSE(has_caution(accepted(thick), "thinner than the 5 mm"));
    EXPECT_FALSE(has_caution(accepted(sound_splice_text()), "throat of the sleeve welds is"));
}

TEST(Cautions, SteelThatShouldNotBeWelded)
{
    EXPECT_TRUE(has_caution(accepted(splice_with("\"C45 +QT\"", "\"300M\"")), "The left bar is 300M"));
    EXPECT_FALSE(has_caution(accepted(with(plain_shaft, "C45 +N", "300M")), "should not be welded"));
}

TEST(Cautions, LooseSleeve)
{
    EXPECT_TRUE(has_caution(accepted(splice_with("clearance = \"0.02 mm\"", "clearance = \"0.2 mm\"")),
                            "is loose on the left"));
    EXPECT_FALSE(has_caution(accepted(sound_splice_text()), "is loose"));
}

TEST(Cautions, MaterialThatIsNotUsed)
{
    const std::string text =
        plain_shaft + "[[material]]\nname = \"spare\"\nyield = \"300 MPa\"\ntensile = \"500 MPa\"\n";
    EXPECT_TRUE(has_caution(accepted(text), "\"spare\" is defined and used nowhere"));
}

}  // namespace
}  // namespace splicewright
