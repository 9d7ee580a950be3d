// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/fracture/cracked_bar.h"

namespace splicewright::sample
{

CrackedSection cracked_bar(RingCrack crack, double a, double b, double half_length)
{
    const bool internal = crack == RingCrack::internal;
    const double L = half_length;
    Outline shape;
    shape.points = {{0, 0}, {0, a}, {0, b}, {L, b}, {L, 0}, {-L, b}, {-L, 0}};
    shape.curves = {{0, 1, {}, internal ? "land" : "butt", internal, 0},
                    {1, 2, {}, internal ? "butt" : "land", !internal, 0},
                    {2, 3, {}, "bar.right", false, 0},
                    {3, 4, {}, "end.right", false, 0},
                    {4, 0, {}, "axis", false, 0},
                    {2, 5, {}, "bar.left", false, 0},
                    {5, 6, {}, "end.left", false, 0},
                    {6, 0, {}, "axis", false, 0}};
    shape.regions = {{"bar.right", {0, 1, 2, 3, 4}}, {"bar.left", {0, 1, 5, 6, 7}}};
    shape.tips = {{1, "land-edge", {0, internal ? 1.0 : -1.0}}};
    return {shape, {crack_steel, crack_steel}, {Ties{}}};
}

CrackedSection slit_bar(double R, double D, double half_length)
{
    const double L = half_length;
    Outline shape;
    shape.points = {{-L, 0}, {-L, R}, {0, R}, {L, R}, {L, 0}, {-L, D}, {L, D}};
    shape.curves = {{0, 1, {}, "end.left", false, 0},   {1, 2, {}, "slit.right", true, 0},
                    {2, 3, {}, "fusion", false, 0},     {3, 4, {}, "end.right", false, 0},
                    {4, 0, {}, "axis", false, 0},       {1, 5, {}, "sleeve end", false, 0},
                    {5, 6, {}, "sleeve-mid", false, 0}, {6, 3, {}, "end.right", false, 0}};
    shape.regions = {{"bar.right", {0, 1, 2, 3, 4}}, {"sleeve.right", {1, 2, 7, 6, 5}}};
    shape.tips = {{2, "root.right", {1, 0}}};
    return {shape, {crack_steel, crack_steel}, {Ties{}}};
}

}  // namespace splicewright::sample
