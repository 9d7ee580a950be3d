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
};

// Colours run from 0 to `top`; when `peak` is above, what lies above has a colour of its own.
struct StressRange
{
    double top = 1;   // MPa
    double peak = 0;  // MPa, of the whole section
    [[nodiscard]] bool is_cut() const { return peak > top; }
};

// 0 to a round number above the peak; to a lower round number when less than 1/500 of the section lies above it and it
// is below four tenths of the peak, so that a tiny spot does not bleach the rest.
StressRange stress_range(const DrawnSection& section);

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
    std::vector<Segment> outlines, unfused;
};

PictureContent picture_content(const PictureRequest& request, const TextWidth& width);
Page section_page(const PictureContent& content);
Page cutaway_page(const PictureContent& content);
Page close_up_page(const PictureContent& content);
Page scenarios_page(const PictureContent& content);  // expects scenarios

// Parts of pages.
void add_heading(Sheet& sheet, const PictureContent& content, const std::string& what);
// A horizontal bar with ticks, units and a mark at the peak; when the range is cut, beside it the colour beyond.
void add_colour_bar(Sheet& sheet, const StressRange& range, const SheetPoint& lower_left, double length);
void add_scale_bar(Sheet& sheet, double mm_per_unit, const SheetPoint& left_end, double longest);
// The whole shaft, small, with the window marked.
void add_locator(Sheet& sheet, const PictureContent& content, const Window& window, const Box& box);
// A line over the part that shows two faces which are not joined.
void add_unfused(Sheet& sheet, const std::vector<SheetPoint>& points);
// What that line means; nothing where all faces are joined.
// The rounds at the ends of unfused faces, which the notch stress method puts there: no holes of the part.
bool has_round_notch(const PictureContent& content);
void add_notch_key(Sheet& sheet, const SheetPoint& left);
void add_unfused_key(Sheet& sheet, const PictureContent& content, const SheetPoint& left);
// Chains of segments that share end points, on the sheet.
std::vector<std::vector<SheetPoint>> chains(const std::vector<Segment>& segments, const View& view);
std::string place_text(double z, double r);
// " (bar-toe.left)" when a site lies within 2 mm, else nothing.
std::string nearest_site(const PictureContent& content, const Eigen::Vector2d& place);
// Whether the site lies in the stretch of the shaft that the section and the cut-away show.
bool is_in_view(const PictureContent& content, const SiteMark& site);
// The governing site; without one, the peak of the field.
SiteMark governing_site(const PictureContent& content);

}  // namespace splicewright
