// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/picture_pages.h"

namespace splicewright
{

// What of a scene is nearest to the eye at each unit of the sheet.
class DepthMap
{
public:
    explicit DepthMap(const Scene& scene);
    // Whether the point lies on what is seen there, within so many mm before or behind it.
    [[nodiscard]] bool shows(const Eigen::Vector3d& point, double within_mm) const;

private:
    void add(const std::array<Eigen::Vector3d, 3>& corner);  // sheet x and y, and the distance towards the eye

    View view_;
    Eigen::Vector3d toward_;
    std::vector<float> nearest_;  // [sheet height, sheet width], row after row
};

}  // namespace splicewright
