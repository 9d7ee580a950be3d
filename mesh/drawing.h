// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "mesh/outline.h"

namespace splicewright
{

// Collects points (coincident ones once), curves and regions of an outline.
class Drawing
{
public:
    int point(OutlinePoint where);
    int line(int start, int end, std::string name);
    int arc(int start, OutlinePoint centre, int end, std::string name, double notch_radius);
    void unfuse(const std::vector<int>& curves);
    void region(std::string name, std::vector<int> curves);
    void absent(std::string text);
    void tip(OutlinePoint where, std::string name, OutlinePoint forward);
    [[nodiscard]] Outline take();

private:
    Outline out_;
};

// A chain of curves on one side of the joint, drawn from point to point.
// Distances are measured from the joint outward and are positive on both sides; radii in mm.
class Path
{
public:
    Path(Drawing& drawing, Side side, double distance, double radius);

    void line_to(double distance, double radius, const std::string& name);  // nothing when already there
    void arc_to(double centre_distance, double centre_radius, double distance, double radius, const std::string& name,
                double notch_radius);

    [[nodiscard]] const std::vector<int>& curves() const { return curves_; }
    [[nodiscard]] int at() const { return at_; }

private:
    [[nodiscard]] OutlinePoint place(double distance, double radius) const;

    Drawing* drawing_;
    double sign_;
    int at_;
    std::vector<int> curves_;
};

// The outside of a bar from where the path stands (on its first section) to its far end, with shoulders
// ("shoulder.S.N") and grooves ("groove.S.N"); plain surface is "bar.S".
void draw_bar_surface(Path& path, const Bar& bar, const std::string& side);

// The boundary of a region in walking order, curves as numbers from 1, negative when walked backward; several closed
// loops are possible.
std::vector<std::vector<int>> loops_of(const Outline& outline, const OutlineRegion& region);

// Concatenation of chains.
std::vector<int> joined(std::initializer_list<std::vector<int>> chains);

}  // namespace splicewright
