// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/cases/text_blocks.h"

namespace splicewright
{
namespace
{

const std::string vehicle =
    "[load.vehicle]\nengine_torque = \"200 N*m\"\ngear_ratio = 3\nfinal_drive = 4\nconverter_ratio = 1.25\n"
    "efficiency = 0.8\ndriven_wheels = 2\nshock_factor = 1.5\naxle_mass = \"600 kg\"\nload_transfer = 1.2\n"
    "grip = 0.9\ntyre_radius = \"300 mm\"\n";

// 200 x 1.25 x 3 x 4 x 0.8 / 2 x 1.5, worked out by hand.
constexpr double engine_side = 1800e3;  // N*mm
// 0.9 x 1.2 x 600 kg x 9.80665 m/s^2 / 2 x 0.3 m = 953.20638 N*m, worked out by hand.
constexpr double grip_side = 953206.38;

const std::string without_peak = splice_with("peak_torque = \"1000 N*m\"\nrunning_torque = \"200 N*m\"\n", "");
const std::string without_blocks = without_peak.substr(0, without_peak.find("[[load.block]]"));
const std::string driven = without_blocks + vehicle;

std::string driven_with(const std::string& line, const std::string& replacement)
{
    return with(driven, line, replacement);
}

TEST(Vehicle, RunningAtItsPeakIsCautioned)
{
    const std::string loud = "RUNNING AT THE PEAK: no running_torque is given, so every one of 2e+07 revolutions";
    const Case asked = accepted(driven);
    EXPECT_TRUE(has_caution(asked, loud));
    EXPECT_EQ(asked.cautions.front().find(loud), 0U) << asked.cautions.front();
    const std::string angle = "joint_angle = \"6 deg\"";
    EXPECT_FALSE(has_caution(accepted(driven_with(angle, angle + "\nrunning_torque = \"90 N*m\"")), loud));
    EXPECT_FALSE(has_caution(accepted(driven_with(angle + "\n", "")), loud)) << "without bending nothing turns over";
    EXPECT_FALSE(has_caution(accepted(sound_splice_text()), loud));
}

TEST(Vehicle, GivesThePeakTorqueFromItsSmallerSide)
{
    const Case asked = accepted(driven);
    ASSERT_TRUE(asked.load.vehicle.has_value());
    EXPECT_NEAR(asked.load.vehicle->engine_side.value(), engine_side, 1e-9 * engine_side);  // round-off of products
    EXPECT_NEAR(asked.load.vehicle->grip_side.value(), grip_side, 1e-9 * grip_side);
    EXPECT_EQ(asked.load.vehicle->governs, TorqueLimit::grip);
    EXPECT_EQ(asked.load.peak_torque, asked.load.vehicle->grip_side);
    EXPECT_EQ(asked.load.tyre_radius, Millimetre(300));
    EXPECT_EQ(asked.load.running_torque, asked.load.peak_torque);
    EXPECT_EQ(default_of(asked, "load.peak_torque"), "953.206 N*m (from load.vehicle, the grip of the tyre governs)");
    EXPECT_TRUE(has_caution(asked, "A shock can exceed both"));
}

TEST(Vehicle, IsHeldByItsEngineWhereTheTyreGrips)
{
    const Case asked = accepted(driven_with("grip = 0.9", "grip = 1.8"));
    EXPECT_EQ(asked.load.vehicle->governs, TorqueLimit::engine);
    EXPECT_NEAR(asked.load.peak_torque.value(), engine_side, 1e-9 * engine_side);
    EXPECT_NEAR(asked.load.vehicle->grip_side.value(), 2 * grip_side, 1e-9 * grip_side);
}

TEST(Vehicle, StandsBesideAStatedPeakTorque)
{
    const Case below = accepted(sound_splice_text() + vehicle);
    EXPECT_EQ(below.load.peak_torque, NewtonMillimetre(1000e3));
    EXPECT_TRUE(has_caution(below, "A shock can exceed both"));
    EXPECT_FALSE(has_caution(below, "the vehicle can put"));
    const Case above = accepted(with(sound_splice_text() + vehicle, "grip = 0.9", "grip = 1.8"));
    EXPECT_EQ(above.load.peak_torque, NewtonMillimetre(1000e3));
    EXPECT_TRUE(has_caution(above, "stated as 1000 N*m, and the vehicle can put 1800 N*m into this shaft"));
}

TEST(Vehicle, RecordsItsDefaults)
{
    std::string text = driven;
    for (const char* line : {"converter_ratio = 1.25\n", "efficiency = 0.8\n", "driven_wheels = 2\n",
                             "shock_factor = 1.5\n", "load_transfer = 1.2\n", "grip = 0.9\n"})
        text = with(text, line, "");
    const Case asked = accepted(text);
    // 200 x 3 x 4 x 0.9 x 0.5 x 1.5 N*m and 1 x 1.3 x 600 x 9.80665 / 2 x 0.3 N*m.
    EXPECT_NEAR(asked.load.vehicle->engine_side.value(), 1620e3, 1e-3);
    EXPECT_NEAR(asked.load.vehicle->grip_side.value(), 1147378.05, 1e-3);
    for (const char* key : {"converter_ratio", "efficiency", "shaft_share", "shock_factor", "load_transfer", "grip"})
        EXPECT_NE(default_of(asked, std::string("load.vehicle.") + key), "") << key;
    for (const char* key : {"shock_factor", "grip"})
        EXPECT_NE(default_of(asked, std::string("load.vehicle.") + key).find("from memory: verify"), std::string::npos);
}

TEST(Vehicle, SharesByWheelsOrAsStated)
{
    EXPECT_NEAR(accepted(driven_with("driven_wheels = 2", "driven_wheels = 4")).load.vehicle->engine_side.value(),
                engine_side / 2, 1e-3);
    EXPECT_NEAR(accepted(driven_with("driven_wheels = 2", "shaft_share = 1")).load.vehicle->engine_side.value(),
                engine_side * 2, 1e-3);
    expect_only_problem(driven_with("driven_wheels = 2", "driven_wheels = 2\nshaft_share = 0.5"),
                        "load.vehicle.shaft_share", "must not stand beside driven_wheels", "keep either");
    for (const char* wheels : {"0", "2.5", "13", "-2"})
        expect_only_problem(driven_with("driven_wheels = 2", std::string("driven_wheels = ") + wheels),
                            "load.vehicle.driven_wheels", "whole number from 1 to 12", "driven_wheels = ...");
}

TEST(Vehicle, AsksForWhatHasNoDefault)
{
    for (const char* line : {"engine_torque = \"200 N*m\"", "gear_ratio = 3", "final_drive = 4",
                             "axle_mass = \"600 kg\"", "tyre_radius = \"300 mm\""})
    {
        const std::string text(line), key = text.substr(0, text.find(' '));
        expect_only_problem(driven_with(text + "\n", ""), "load.vehicle." + key, "is missing", key + " = ");
    }
}

TEST(Vehicle, RefusesWhatNoVehicleHas)
{
    const std::pair<const char*, const char*> lines[] = {
        {"engine_torque = \"200 N*m\"", "engine_torque = \"0.5 N*m\""},
        {"engine_torque = \"200 N*m\"", "engine_torque = \"200 kN*m\""},
        {"gear_ratio = 3", "gear_ratio = 0"},
        {"final_drive = 4", "final_drive = 51"},
        {"converter_ratio = 1.25", "converter_ratio = 0.9"},
        {"efficiency = 0.8", "efficiency = 1.1"},
        {"shock_factor = 1.5", "shock_factor = 0.5"},
        {"axle_mass = \"600 kg\"", "axle_mass = \"600 g\""},
        {"load_transfer = 1.2", "load_transfer = 2.1"},
        {"grip = 0.9", "grip = 9"},
        {"tyre_radius = \"300 mm\"", "tyre_radius = \"300 m\""},
    };
    for (const auto& [line, wrong] : lines)
    {
        const std::string text(line), key = text.substr(0, text.find(' '));
        expect_only_problem(driven_with(line, wrong), "load.vehicle." + key, "must be from ", key + " = ");
    }
    expect_only_problem(driven_with("grip = 0.9", "grip = \"much\""), "load.vehicle.grip", "a plain number",
                        "grip = ...");
    expect_only_problem(driven_with("grip = 0.9", "gripp = 0.9"), "load.vehicle.gripp", "unknown key",
                        "load.vehicle.grip");
    expect_only_problem(driven_with("[load.vehicle]", "[[load.vehicle]]"), "load.vehicle", "must stand once",
                        "[load.vehicle]");
}

TEST(Vehicle, BoundsTheBlocks)
{
    // The blocks of the sound splice reach 1000 N*m.
    expect_only_problem(without_peak + vehicle, "load.block[1].torque", "within the peak torque of 953.206 N*m",
                        "peak_torque = \"1000 N*m\"");
}

}  // namespace
}  // namespace splicewright
