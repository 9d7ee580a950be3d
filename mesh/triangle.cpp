// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/triangle.h"

#include <cmath>

namespace splicewright
{

ShapeValues shape_values(ReferencePoint at)
{
    const double x = at.x, y = at.y, w = 1 - x - y;
    ShapeValues N;
    N << w * (2 * w - 1), x * (2 * x - 1), y * (2 * y - 1), 4 * w * x, 4 * x * y, 4 * y * w;
    return N;
}

ShapeGradients shape_gradients(ReferencePoint at)
{
    const double x = at.x, y = at.y, w = 1 - x - y;
    ShapeGradients dN;
    dN << 1 - 4 * w, 1 - 4 * w,  //
        4 * x - 1, 0,            //
        0, 4 * y - 1,            //
        4 * (w - x), -4 * x,     //
        4 * y, 4 * x,            //
        -4 * y, 4 * (w - y);
    return dN;
}

const std::array<QuadraturePoint, 7>& quadrature()
{
    static const std::array<QuadraturePoint, 7> points = []
    {
        const double root = std::sqrt(15.0);
        const double a = (6 - root) / 21, b = (6 + root) / 21;
        const double wa = (155 - root) / 2400, wb = (155 + root) / 2400;
        return std::array<QuadraturePoint, 7>{{{{1.0 / 3, 1.0 / 3}, 9.0 / 80},
                                               {{a, a}, wa},
                                               {{1 - 2 * a, a}, wa},
                                               {{a, 1 - 2 * a}, wa},
                                               {{b, b}, wb},
                                               {{1 - 2 * b, b}, wb},
                                               {{b, 1 - 2 * b}, wb}}};
    }();
    return points;
}

}  // namespace splicewright
