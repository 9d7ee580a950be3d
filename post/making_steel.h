// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// Carbon equivalents, mass percent.

// C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15. Source: [EN1011-2] C.2, read in a secondary source.
double carbon_equivalent_iiw(const Composition& steel);
// C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40. Source: [EN1011-2] C.3, read in a secondary source.
double carbon_equivalent_cet(const Composition& steel);
// C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10; boron is not known here.
// Source: [ItoBessyo1968], read in a secondary source.
double carbon_equivalent_pcm(const Composition& steel);

// Why a steel lies outside the range that a formula is stated for; empty inside. All ranges from memory.
std::string outside_iiw(const Composition& steel);  // method A of [EN1011-2] C.2
std::string outside_cet(const Composition& steel);  // [EN1011-2] C.3
std::string outside_pcm(const Composition& steel);  // [ItoBessyo1968]

// What the preheat hangs on beside the steel.
struct Welding
{
    double thickness_mm = 0;          // largest single thickness in the joint; of a round bar its diameter
    double heat_input_kj_per_mm = 0;  // into the steel
    double hydrogen_ml_per_100g = 0;
};

// 697 CET + 160 tanh(d/35) + 62 HD^0.35 + (53 CET - 32) Q - 328, deg C; may be below room temperature.
// Source: [EN1011-2] C.3, method B, read in a secondary source.
double preheat_method_b(double cet, const Welding& welding);
// Why method B does not hold; empty where it does. Source: [EN1011-2] C.3, ranges from memory.
std::string outside_method_b(const Composition& steel, double cet, Megapascal yield, const Welding& welding);

// 350 sqrt([C] - 0.25), [C] = (1 + 0.005 d) (360 C + 40 (Mn + Cr) + 20 Ni + 28 Mo)/360, deg C; 0 below [C] = 0.25.
// A second opinion for carbon and alloy steels that method B leaves out. Source: [Seferian1962], from memory.
double preheat_seferian(const Composition& steel, double thickness_mm);

// 539 - 423 C - 30.4 Mn - 17.7 Ni - 12.1 Cr - 7.5 Mo, deg C. Source: [Andrews1965], from memory.
double martensite_start(const Composition& steel);

// 884 C (1 - 0.3 C^2) + 294, HV, of martensite; C up to 0.8 %. Source: [Yurioka1987], from memory.
double martensite_hardness(const Composition& steel);

// Hardest part of the heat-affected zone of one bead, HV, for a cooling time from 800 to 500 deg C in seconds.
// Between full martensite and bainite an arc tangent of the logarithm of the time; beyond both ends constant.
// Source: [Yurioka1987], from memory; C up to 0.8 %.
double heat_affected_hardness(const Composition& steel, double cooling_seconds);

// (6700 - 5 T0) Q (1/(500 - T0) - 1/(800 - T0)) F, seconds: heat flowing into a thick part; T0 below 500 deg C.
// Source: [EN1011-2] annex D, from memory.
double cooling_time(double preheat_c, double heat_input_kj_per_mm, double shape_factor);

// A value and why it is no more than an extrapolation; empty within the range of its formula.
struct Ranged
{
    double value = 0;
    std::string outside;
};

// Greatest hardness beside a weld as welded, HV10, by the group of the steel: 380 in groups 1 and 2 (carbon to 0.25 %),
// 450 in group 3 (quenched and tempered, yield above 360 MPa). Other steels with more carbon are group 11, which has no
// limit; 380 is taken (judgement). Source: [ISO15614-1], groups of ISO/TR 15608, from memory.
struct HardnessLimit
{
    double value = 380;
    const char* group = "";
    Provenance provenance = Provenance::from_memory;
};
HardnessLimit hardness_limit(const Material& material);

// What welding does to one part.
struct WeldableSteel
{
    Ranged iiw, cet, pcm;
    double cet_taken = 0;  // of the part, or of the weld metal plus 0.03 when that is higher
    Ranged preheat_b;      // deg C
    double preheat_seferian = 0, martensite_start = 0;  // deg C
    double martensite_hardness = 0;                     // HV
    std::optional<double> expected_hardness;  // HV at the preheat of the whole splice; nothing outside the formula
};
struct SteelAdvice
{
    std::string part, material;  // "left bar", "C45 +QT"
    Provenance chemistry = Provenance::from_memory;
    HardnessLimit allowed;
    bool may_be_tempered = true;
    std::optional<WeldableSteel> known;  // nothing without chemistry
};
// Left bar, right bar, sleeve. Expects a joint and how it is made.
std::vector<SteelAdvice> steel_advice(const Case& asked);

// Preheat, hold and cooling of the whole splice, which is heated as one.
struct HeatPlan
{
    Welding welding;
    double preheat_c = 20;  // larger of both opinions over all parts with a chemistry, to the next 10 above
    double interpass_c = 70;
    bool is_standard = false;        // every part known and within method B
    std::string governing;           // part
    std::vector<std::string> words;  // what to do and what is not known, in whole sentences
};
HeatPlan heat_plan(const Case& asked, const std::vector<SteelAdvice>& steels);

}  // namespace splicewright
