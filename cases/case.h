// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <numbers>
#include <optional>
#include <string>
#include <vector>

#include "cases/making.h"
#include "cases/quantity.h"
#include "cases/rating.h"

namespace splicewright
{

// What was asked, in house units, complete and checked: every optional value of the case file that has a default
// is filled in and listed in Case::defaults.

enum class Side
{
    left,   // z < 0
    right,  // z > 0
};
constexpr std::array<Side, 2> both_sides{Side::left, Side::right};
const char* name_of(Side side);  // "left", "right"

// Where a number comes from; shown wherever the number is shown.
enum class Provenance
{
    theory,           // exact within stated assumptions
    published,        // read in the named document
    secondary,        // read in a secondary source that names the document
    derived,          // computed here from named sources
    from_memory,      // recalled, not seen: verify against the document
    common_practice,  // no source
    judgement,        // ours, no source
    stated,           // given by the user in the case file
};
const char* name_of(Provenance provenance);  // "theory", ..., "from memory: verify", "common practice, no source", ...

// Mass percent; 0 where the source gives none.
struct Composition
{
    double C = 0, Si = 0, Mn = 0, Cr = 0, Mo = 0, Ni = 0, V = 0, Cu = 0;
    bool operator==(const Composition&) const = default;
};

// What a strength of the library is worth.
enum class StrengthKind
{
    minimum,            // lowest value that the document allows
    estimated_minimum,  // a handbook's estimate of it
    typical,            // what such a steel mostly has
};

// Of a bar as it lies in the shaft; the surface factor of plain metal goes by it.
enum class BarSurface
{
    ground,
    machined,  // or cold-drawn
    hot_rolled,
    forged,
};
const char* name_of(BarSurface surface);  // "ground", "machined", "hot-rolled", "as-forged"

// Diameters for which a strength holds, over `above` up to `up_to`.
struct SizeBand
{
    Millimetre above, up_to;
    Megapascal yield, tensile;
    bool operator==(const SizeBand&) const = default;
};

struct Material
{
    std::string name;       // "C45 +QT"
    std::string form;       // "bar", "tube", "filler"
    std::string condition;  // "quenched and tempered, 16 to 40 mm"
    Megapascal yield;
    Megapascal tensile;
    Megapascal elastic_modulus;
    double poisson_ratio = 0.3;
    double density = 7.85e-9;        // tonne/mm^3
    double heated_yield_factor = 1;  // yield beside a weld over yield of the bar, judgement
    std::string heated_yield_reason;
    Composition composition;
    StrengthKind strength_kind = StrengthKind::minimum;
    std::vector<SizeBand> sizes;                  // by diameter, the first one with the strength above; empty: any size
    BarSurface surface = BarSurface::hot_rolled;  // of a bar that is not turned
    std::optional<double> toughness;              // MPa sqrt(mm)
    std::string toughness_reason;
    Provenance toughness_provenance = Provenance::from_memory;
    std::string source;
    Provenance provenance = Provenance::from_memory;
    bool operator==(const Material&) const = default;
};

struct Section
{
    Millimetre length;
    Millimetre diameter;
    Millimetre fillet;  // radius at the change from the section before; 0 where the diameter does not change
    bool operator==(const Section&) const = default;
};

// A ring groove: a slot of width 2 radius with a round bottom, or a circular segment when depth < radius.
struct Groove
{
    Millimetre at;  // centre, from the joint outward
    Millimetre depth;
    Millimetre radius;
    bool operator==(const Groove&) const = default;
};

struct Bar
{
    Material material;
    std::vector<Section> sections;  // from the joint outward, at least one
    Millimetre bore;                // diameter, 0 when solid
    std::vector<Groove> grooves;    // by increasing distance
    BarSurface surface = BarSurface::machined;
    bool operator==(const Bar&) const = default;
};

struct Joint
{
    std::optional<Millimetre> penetration;  // depth of the fused ring; absent: full
    Millimetre half_lap;                    // axial length, 0: square cut
    Millimetre blend;                       // axial length of the blend between the diameters, 0 when they are equal
    Material filler;
    Millimetre offset;                  // as built, between the axes of the bars at the joint; counts for balance only
    Radian tilt;                        // as built, between the axes; counts for balance only
    Millimetre lap_corner_radius = {};  // of the inner corners of the half lap, 0 without one
    Radian offset_angle = {};           // direction of offset and tilt of the right bar, from the cut plane of the lap
    bool operator==(const Joint&) const = default;
};

enum class SlitState
{
    open,    // free faces
    snug,    // touching, frictionless; bracketed by free and held in the normal direction
    press,   // held in the normal direction with the interference of the fit, frictionless
    bonded,  // joined
};
const char* name_of(SlitState state);

struct SleeveWeld
{
    Millimetre leg_on_bar;
    Millimetre leg_on_sleeve;
    Millimetre toe_radius;
    bool toe_radius_stated = false;  // false: the reference radius of the notch method
    int passes = 1;
    Material filler;
    Radian coverage{2 * std::numbers::pi};  // of each weld, from its start angle on
    std::array<Radian, 2> start = {};       // [left, right], from the cut plane of the lap
    [[nodiscard]] bool goes_all_round() const { return coverage.value() > 2 * std::numbers::pi - 1e-9; }
    bool operator==(const SleeveWeld&) const = default;
};

// Plug welds around the sleeve: holes filled with weld metal that is fused to bar and sleeve.
struct PlugRing
{
    int count = 1;
    Millimetre diameter;
    Millimetre at;                    // of the holes' axes from the joint, positive to the right
    std::optional<Millimetre> depth;  // of weld metal, from the bar outward; absent: flush with the sleeve
    Radian start;                     // angle of the first hole, from the cut plane of the lap
    bool operator==(const PlugRing&) const = default;
};

struct Sleeve
{
    Material material;
    Millimetre length;
    Millimetre offset;  // centre of the sleeve from the joint, positive to the right
    Millimetre outer_diameter;
    Millimetre end_diameter;              // outer diameter at the sleeve's ends; equals outer_diameter without a taper
    Millimetre taper_length;              // axial length of the turned taper, 0 without
    std::array<Millimetre, 2> clearance;  // diametral, [left, right], negative presses
    std::array<SlitState, 2> slit;        // [left, right]
    SleeveWeld weld;
    std::vector<PlugRing> plugs = {};
    bool operator==(const Sleeve&) const = default;
};

enum class BlockOrigin
{
    stated,   // [[load.block]]
    history,  // counted from the torque history, `count` over all repeats and not always whole
};

struct TorqueBlock
{
    std::string name;
    NewtonMillimetre low, high;
    double count = 0;
    BlockOrigin origin = BlockOrigin::stated;
};

enum class TorqueLimit
{
    engine,
    grip,
};
const char* name_of(TorqueLimit limit);  // "the engine side", "the grip of the tyre"

// The vehicle that drives the shaft, and the largest torque that it puts into one shaft, seen from both ends.
struct Vehicle
{
    NewtonMillimetre engine_torque;
    double gear_ratio = 1, final_drive = 1, converter_ratio = 1;
    double efficiency = 1;
    double shaft_share = 1;  // of the torque behind the final drive
    double shock_factor = 1;
    Tonne axle_mass;
    double load_transfer = 1;  // load of the wheel over half of the axle's
    double grip = 1;
    Millimetre tyre_radius;
    NewtonMillimetre engine_side, grip_side;  // derived
    TorqueLimit governs = TorqueLimit::engine;
    [[nodiscard]] NewtonMillimetre peak_torque() const
    {
        return governs == TorqueLimit::engine ? engine_side : grip_side;
    }
};

// A torque history, counted; its cycles stand among Load::blocks.
struct TorqueHistory
{
    std::string file;  // as the case names it
    double rows = 0;
    double duration = 0;  // s
    NewtonMillimetre lowest, highest;
    double repeats = 1;
    double cycles = 0;           // over all repeats
    std::size_t n_blocks = 0;    // that they make
    NewtonMillimetre bin_width;  // to which torques were rounded outward, 0: kept as they are
};

struct Load
{
    NewtonMillimetre peak_torque;      // largest in either direction
    NewtonMillimetre running_torque;   // torque while the joint angle bends the shaft once per revolution
    Radian joint_angle;                // 0 when bending is given
    NewtonMillimetre peak_bending;     // couple at peak torque
    NewtonMillimetre running_bending;  // couple at running torque, one fully reversed cycle per revolution
    Newton axial;                      // tension positive
    RadianPerSecond speed;             // 0 when not stated
    double revolutions = 0;            // revolutions under running torque in the life asked for
    Millimetre tyre_radius;            // turns revolutions into kilometres, nothing else
    std::vector<TorqueBlock> blocks;   // the stated ones first
    std::optional<Vehicle> vehicle;
    std::optional<TorqueHistory> history;
};

// A default that the reader filled in; printed with every result.
struct DefaultUsed
{
    std::string field;
    std::string value;
    std::string reason;
};

// A value written "6 mm +- 1 mm", in house units.
struct Tolerance
{
    std::string field;
    double nominal = 0, plus_minus = 0;
};

struct Case
{
    std::string title;
    std::string file;                       // as the user named it
    std::string text;                       // the case file, byte for byte
    std::array<std::optional<Bar>, 2> bar;  // [left, right]; with a joint both, without exactly one
    std::optional<Joint> joint;
    std::optional<Sleeve> sleeve;  // only with a joint
    std::optional<Making> making;  // exactly with a joint
    Load load;
    Rating rating;
    std::vector<DefaultUsed> defaults;
    std::vector<Tolerance> tolerances;
    std::vector<std::string> cautions;  // what the reader noticed that is allowed but deserves a thought
};

constexpr std::size_t index(Side side) { return side == Side::left ? 0 : 1; }

}  // namespace splicewright
