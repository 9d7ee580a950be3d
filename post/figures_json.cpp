// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/figures_json.h"

#include "post/json_number.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

template <class Mark>
Json marks(const std::vector<Mark>& list)
{
    Json json = Json::array();
    for (const Mark& mark : list)
        json.push_back({{"site", mark.site},
                        {"rule", mark.rule},
                        {"s_mm", finite(mark.s)},
                        {"shear_MPa", finite(mark.shear)},
                        {"normal_MPa", finite(mark.normal)}});
    return json;
}

}  // namespace

Json torque_flow_json(const std::vector<TorquePoint>& flow)
{
    Json json = Json::array();
    for (const TorquePoint& point : flow)
        json.push_back({{"z_mm", finite(point.z)},
                        {"sleeve", finite(point.sleeve)},
                        {"sleeve_by_stiffness", finite(point.by_stiffness)}});
    return json;
}

Json weld_surfaces_json(const std::vector<WeldSurface>& surfaces)
{
    Json json = Json::array();
    for (const WeldSurface& surface : surfaces)
    {
        Json points = Json::array();
        for (const SurfacePoint& point : surface.points)
            points.push_back({{"s_mm", finite(point.s)},
                              {"z_mm", finite(point.z)},
                              {"r_mm", finite(point.r)},
                              {"shear_MPa", finite(point.shear)},
                              {"normal_MPa", finite(point.normal)}});
        json.push_back({{"side", name_of(surface.side)},
                        {"points", std::move(points)},
                        {"readings", marks(surface.readings)},
                        {"extrapolated", marks(surface.extrapolated)}});
    }
    return json;
}

}  // namespace splicewright
