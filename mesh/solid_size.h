// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "mesh/size_field.h"
#include "mesh/solid_geometry.h"

namespace splicewright
{

// Edge length of tetrahedra at a point of the solid, mm: the field of the section swept around the axis, and what its
// lap, plugs and weld ends ask for. `scale` stretches all of it, but for what the shape itself needs: narrow rings must
// not be spanned by long chords.
class SolidSizeField
{
public:
    static constexpr double elements_per_quarter_turn = 4;  // of a notch arc, at scale 1

    explicit SolidSizeField(const SolidGeometry& geometry);
    [[nodiscard]] double at(SolidPoint where, double scale) const;

    // Tetrahedra that a mesh of this size would have, by the volume of an element. An estimate.
    [[nodiscard]] double expected_elements(double scale) const;

private:
    struct Narrow  // a short curve of the section
    {
        OutlinePoint start, end;
        double size = 0;
    };
    struct WeldEnd  // half plane at an angle, over the box of the weld
    {
        double angle = 0, z_low = 0, z_high = 0, r_low = 0, r_high = 0, size = 0;
    };
    struct Part  // of the volume
    {
        double volume = 0, asked = 0, needed = 0;  // mm^3, mm, mm
    };
    void divide_section();
    [[nodiscard]] double asked_at(SolidPoint where) const;
    [[nodiscard]] double lap_size(SolidPoint where) const;
    [[nodiscard]] double needed_at(OutlinePoint where) const;
    [[nodiscard]] double plug_needs(SolidPoint where) const;

    const SolidGeometry* geometry_;
    SizeField section_;
    std::vector<Narrow> narrow_;
    std::vector<WeldEnd> weld_ends_;
    std::vector<Part> parts_;
    double largest_ = 0;
};

}  // namespace splicewright
