// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "post/drawn_section.h"
#include "post/revolve.h"
#include "post/sheet.h"
#include "post/solid_scene.h"
#include "solver/stress_field.h"

namespace splicewright
{

// A site to mark. `value` is shown as it is: "512 MPa", "0.83 of the limit".
struct SiteMark
{
    std::string id;
    double z = 0, r = 0;  // mm
    std::string value;
    Importance importance = Importance::ordinary;
    double around = 0;  // of the solid model, rad from the cut plane of the half lap
    int number = 0;     // by which it is called
};

enum class Display
{
    automatic,     // a graphics library without a display, else a virtual display of our own
    virtual_only,  // only the virtual display
    none,          // no picture can be made
};

// A scenario beside others.
struct ScenarioView
{
    std::string name, used,
        place;  // "hidden weld lost: passes", "strength 67 %, fatigue 95 %", "first at bar-toe.right"
    const SolvedFields* fields = nullptr;
    CombinedLoad load;
    const SolidFields* solid = nullptr;  // shown in the place of `fields` where it is there
};

enum class SolidPart
{
    beside,    // the meridian model answered: section, cut-away and close-up are its own
    answered,  // they show the solid model
};

struct PictureRequest
{
    const SolvedFields& fields;
    const Case& asked;
    CombinedLoad load;
    std::string load_text;                        // "peak torque 1150 N·m with 70 N·m bending"
    std::vector<SiteMark> sites;                  // at most one governing
    std::filesystem::path folder;                 // exists
    double scale = 1;                             // 1: 1600 x 1000 pixels
    std::optional<double> close_up_half_width{};  // mm; absent: eight reference notch radii
    Display display = Display::automatic;
    std::vector<ScenarioView> scenarios{};  // two or more: shown one under the other
    // Of the solid model; shown in the place of `fields` where that is so. Further pictures of it are made in any case.
    const SolidFields* solid = nullptr;
    SolidPart solid_part = SolidPart::beside;
    // Of the scenario whose faces of the lap touch.
    const std::vector<SolidContactFields>* contact = nullptr;
    std::string contact_scenario{};
};

// Colours run from 0 to `top`; when `peak` is above, what lies above has a colour of its own.
struct StressRange
{
    double top = 1;          // MPa
    double peak = 0;         // MPa, of the whole section
    bool tells_peak = true;  // false of the solid model, whose sharp ends of welds have no stress of their own
    [[nodiscard]] bool is_cut() const { return peak > top; }
};

// 0 to a round number above the peak; to a lower round number when less than 1/500 of the section lies above it and it
// is below four tenths of the peak, so that a tiny spot does not bleach the rest.
StressRange stress_range(const DrawnSection& section);
// The section of a scenario with its lines; of the solid model at that angle.
SolidSection scenario_section(const ScenarioView& scenario, double around);

// Looks along right x up, without perspective.
struct View
{
    Eigen::Vector3d right{1, 0, 0}, up{0, 1, 0};
    Eigen::Vector3d centre{0, 0, 0};  // mm, drawn at `at`
    SheetPoint at{0, 0};
    double mm_per_unit = 1;  // of the sheet
    [[nodiscard]] SheetPoint on_sheet(const Eigen::Vector3d& point) const;
};

enum class Lighting
{
    flat,  // colours as in the colour bar
    lit,   // shaded
};

struct SceneSurface
{
    ShadedSurface shape;
    Lighting lighting = Lighting::flat;
};

struct Scene
{
    std::vector<SceneSurface> surface;
    View view;
    StressRange range;
};

// Height of the line above the strip of colour bar and scale.
constexpr double strip_top = 162;

struct Page
{
    std::string file;
    Scene scene;
    Sheet sheet;
};

// What all pages share, made once.
struct PictureContent
{
    const PictureRequest& request;
    TextWidth width;
    DrawnSection section;
    StressRange range;
    FieldPeak peak;
    Window whole;   // of the shaft
    Window splice;  // the sleeve with about a diameter at each side; the whole shaft when there is no sleeve
    std::vector<Segment> outlines, unfused, elements;
    std::vector<SolidSkinFace> skin{};  // of the solid model
    double around = 0;                  // of its half section, rad
    [[nodiscard]] bool is_solid() const { return request.solid && request.solid_part == SolidPart::answered; }
};

PictureContent picture_content(const PictureRequest& request, const TextWidth& width);
// "each point at its worst angle around the shaft", and of the solid model where the section is cut.
std::string worst_words(const PictureContent& content);
Page section_page(const PictureContent& content);
Page cutaway_page(const PictureContent& content);
Page close_up_page(const PictureContent& content);
Page scenarios_page(const PictureContent& content);  // expects scenarios
// Of the solid model, which they expect; the last one also faces that touch.
Page solid_cutaway_page(const PictureContent& content);  // "cutaway.png", or "solid-cutaway.png" beside the other
Page solid_outside_page(const PictureContent& content);
Page solid_deformed_page(const PictureContent& content);
Page solid_contact_page(const PictureContent& content);

// Parts of pages.
void add_heading(Sheet& sheet, const PictureContent& content, const std::string& what);
// The same with other words in its second line.
void add_heading(Sheet& sheet, const PictureContent& content, const std::string& second, const std::string& what);
// A horizontal bar with ticks, units and a mark at the peak; when the range is cut, beside it the colour beyond.
void add_colour_bar(Sheet& sheet, const StressRange& range, const SheetPoint& lower_left, double length,
                    const std::string& quantity = "von Mises stress, MPa");
void add_scale_bar(Sheet& sheet, double mm_per_unit, const SheetPoint& left_end, double longest);
// The whole shaft, small, with the window marked.
void add_locator(Sheet& sheet, const PictureContent& content, const Window& window, const Box& box);
// A line over the part that shows two faces which are not joined.
void add_unfused(Sheet& sheet, const std::vector<SheetPoint>& points);
// What that line means; nothing where all faces are joined.
// The rounds at the ends of unfused faces, which the notch stress method puts there: no holes of the part.
bool has_round_notch(const PictureContent& content);
void add_notch_key(Sheet& sheet, const SheetPoint& left);
// What the pictures of the solid model leave untold.
void add_sharp_key(Sheet& sheet, const PictureContent& content, const SheetPoint& left);
// Where something may stand beside a colour bar of 520 from 60 on.
double beside_bar(const StressRange& range);
void add_unfused_key(Sheet& sheet, const PictureContent& content, const SheetPoint& left);
// Chains of segments that share end points, on the sheet.
std::vector<std::vector<SheetPoint>> chains(const std::vector<Segment>& segments, const View& view);
std::string place_text(double z, double r);
// " (bar-toe.left)" when a site lies within 2 mm, else nothing.
std::string nearest_site(const PictureContent& content, const Eigen::Vector2d& place);
// Whether the site lies in the stretch of the shaft that the section and the cut-away show.
bool is_in_view(const PictureContent& content, const SiteMark& site);
// Seen from the front, a little from above and from the right.
View oblique_view();
// Sets scale and place so that all points lie in the box.
void fit(View& view, const std::vector<Eigen::Vector3d>& points, const Box& box);
// Which end this is, beneath the left one and above the right one: the shaft slopes down to the right.
void add_end(Sheet& sheet, const PictureContent& content, const Scene& scene, Side side);
void add_governing(Sheet& sheet, const PictureContent& content, const View& view, double label_y);
// Lies along the shaft in the picture, so that it measures lengths along the axis.
void add_axial_scale(Sheet& sheet, const View& view, const SheetPoint& middle);
// The governing site; without one, the peak of the field.
SiteMark governing_site(const PictureContent& content);

}  // namespace splicewright
