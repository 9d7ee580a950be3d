// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/view_solid.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>
#include <nlohmann/json.hpp>
#include <set>

#include "post/report.h"
#include "post/site_loads.h"
#include "post/solid_edges.h"
#include "post/solid_torque.h"
#include "post/view_payload.h"
#include "post/view_sites.h"
#include "post/weld_round.h"
#include "solver/solid_answer.h"
#include "solver/solid_face.h"
#include "tests/mesh/sample_cases.h"
#include "tests/report/payload_reader.h"

namespace splicewright
{
namespace
{

// A splice that is a body of revolution, answered by the solid model; solved once for all tests.
const Report& solid_report()
{
    static const Report made = []
    {
        Report report;
        report.asked = sample::tapered_splice();
        report.asked.title = "A splice";
        report.asked.load.peak_torque = NewtonMillimetre(4.5e5);
        report.asked.load.peak_bending = NewtonMillimetre(3.5e4);
        SolidBudget budget;
        budget.dofs = 90000;
        SolidShowing showing{SolidDetail::whole, peak_load(report.asked), {}};
        for (const ViewLoad& one : view_loads(report.asked)) showing.each.push_back(one.load);
        SolidModelAnswer solid = solid_model_answer(report.asked, {}, budget, 40, showing);
        report.sound.answer = std::move(solid.answer);
        report.sound.solid = std::move(solid.fields);
        report.sound.judged_by_solid = true;
        return report;
    }();
    return made;
}

const SolidFields& whole_fields() { return *solid_report().sound.solid; }
const SolidFields& thin_fields()
{
    static const SolidFields made = thinned(whole_fields());
    return made;
}

Eigen::Vector3d column(const std::vector<double>& list, std::size_t i)
{
    return {list[3 * i], list[3 * i + 1], list[3 * i + 2]};
}

}  // namespace

TEST(SolidView, PayloadHoldsTheFieldsOfEveryLoadToTheirStep)
{
    const std::string bytes = view_payload(solid_report()).bytes;
    EXPECT_GT(bytes.size(), 50000U);
    EXPECT_LE(bytes.size(), most_solid_payload_bytes);
    PayloadReader read(bytes);
    const nlohmann::json& told = read.header["scenarios"][0];
    ASSERT_TRUE(told["solid"]);
    ASSERT_EQ(told["steps"].size(), view_loads(solid_report().asked).size());
    const ViewSolid view = view_solid(thin_fields(), told["share"]);
    const std::size_t n = told["points"];
    ASSERT_EQ(view.point.size(), n);
    const double place_step = told["place_step"];
    const std::vector<double> place = read.next<std::int16_t>(3 * n, place_step);
    for (std::size_t i = 0; i < n; ++i)
        ASSERT_LE((column(place, i) - thin_fields().place.col(view.point[i])).cwiseAbs().maxCoeff(),
                  0.501 * place_step);
    for (std::size_t k = 0; k < told["steps"].size(); ++k)
    {
        const SolidLoadFields& load = thin_fields().each[k];
        for (const auto& [name, values] : {std::pair{"von_mises", &load.von_mises},
                                           std::pair{"principal", &load.principal}, std::pair{"shear", &load.shear}})
        {
            const double step = told["steps"][k][name];
            const std::vector<double> sent = read.next<std::int16_t>(n, step);
            for (std::size_t i = 0; i < n; ++i)
                ASSERT_NEAR(sent[i], double((*values)(view.point[i])), 0.51 * step) << name;
        }
        read.next<std::int16_t>(3 * n);
    }
    const std::vector<double> middle = read.next<std::uint16_t>(2 * (n - std::size_t(told["corners"])));
    const std::vector<double> element = read.next<std::uint16_t>(4 * std::size_t(told["elements"]));
    const std::vector<double> edge = read.next<std::uint16_t>(2 * std::size_t(told["edges"]));
    for (const auto* list : {&middle, &element, &edge})
        for (const double i : *list) ASSERT_LT(i, double(told["corners"]));
    const std::vector<double> sides = read.next<std::uint8_t>(told["elements"]);
    EXPECT_TRUE(read.is_read());

    // Faces with nothing or with an unfused face behind them close the body: their areas cancel.
    Eigen::Vector3d sum(0, 0, 0);
    double area = 0;
    for (std::size_t e = 0; e < sides.size(); ++e)
        for (std::size_t f = 0; f < 4; ++f)
        {
            const int kind = (int(sides[e]) >> (2 * f)) & 3;
            if (kind != 1 && kind != 2) continue;
            std::array<Eigen::Vector3d, 3> corner;
            for (std::size_t k = 0; k < 3; ++k)
                corner[k] = column(place, std::size_t(element[4 * e + element_faces[f][k]]));
            const Eigen::Vector3d one = (corner[1] - corner[0]).cross(corner[2] - corner[0]) / 2;
            sum += one;
            area += one.norm();
        }
    EXPECT_LT(sum.norm(), 1e-6 * area);
    // The outside of the sleeve of 100 x 46 mm alone is 14000 mm^2.
    EXPECT_GT(area, 14000);
}

// The script holds one label for each name; weld metal is read at several places of one site.
TEST(SolidView, NamesEverySiteOnceAndThoseWithoutStressOfTheirOwn)
{
    Report report = solid_report();
    report.sound.solid = thin_fields();
    for (const double z : {-50.0, -49.0}) report.sound.solid->weld_metal.push_back({"weld-end.1", {15, 0, z}});
    CheckRow row;
    row.id = "strength/weld-end.1/force", row.site = "weld-end.1";
    report.sound.checks.push_back(row);
    PayloadReader read(view_payload(report).bytes);
    std::set<std::string> names;
    for (const nlohmann::json& site : read.header["scenarios"][0]["sites"])
        EXPECT_TRUE(names.insert(site["id"]).second) << site["id"];
    ASSERT_TRUE(names.contains("weld-end.1"));
    const nlohmann::json& last = read.header["scenarios"][0]["sites"].back();
    EXPECT_EQ(last["id"], "weld-end.1");
    EXPECT_FALSE(last["goes_round"]);
    EXPECT_TRUE(last["loads"][0]["von_mises"].is_null());
    EXPECT_DOUBLE_EQ(last["loads"][0]["z"], -50);
}

// The main load is also one of those that the view offers.
TEST(SolidView, AllTogetherIsThePeakLoad)
{
    const SolidFields& fields = whole_fields();
    ASSERT_EQ(fields.each.size(), 3U);
    EXPECT_LT((fields.each[0].von_mises - fields.von_mises).cwiseAbs().maxCoeff(), 1e-3);
    EXPECT_LT((fields.each[0].displacement - fields.displacement).cwiseAbs().maxCoeff(), 1e-6);
    // Torque and bending add up to what both move.
    EXPECT_LT((fields.each[1].displacement + fields.each[2].displacement - fields.displacement).cwiseAbs().maxCoeff(),
              1e-5);
}

// Far from the splice the bar is plain: shear 16 T/(pi d^3) at its surface, bending 32 M/(pi d^3).
TEST(SolidView, LoadsAloneGiveTheStressOfThePlainBar)
{
    const SolidFields& fields = whole_fields();
    const Report& report = solid_report();
    const double d = report.asked.bar[1]->sections.front().diameter.value(), cube = M_PI * d * d * d;
    const double shear = 16 * report.asked.load.peak_torque.value() / cube,
                 bent = 32 * report.asked.load.peak_bending.value() / cube;
    int n = 0;
    for (Eigen::Index i = 0; i < fields.place.cols(); ++i)
    {
        const Eigen::Vector3d at = fields.place.col(i);
        if (std::hypot(at.x(), at.y()) < d / 2 - 0.01 || at.z() < 100 || at.z() > 115) continue;
        EXPECT_NEAR(double(fields.each[1].shear(i)), shear, 0.03 * shear);
        EXPECT_NEAR(double(fields.each[2].principal(i)), bent, 0.05 * bent);
        EXPECT_NEAR(double(fields.each[2].shear(i)), 0, 0.03 * bent);
        ++n;
    }
    EXPECT_GT(n, 10);
}

TEST(SolidView, WhatIsLeftOutIsMissedByNoMoreThanAllowed)
{
    const SolidFields& fields = thin_fields();
    const double share = 0.01, peak = double(fields.von_mises.maxCoeff());
    const ViewSolid view = view_solid(fields, share), fine = view_solid(fields, 0);
    EXPECT_LT(view.point.size(), fine.point.size());
    EXPECT_EQ(fine.point.size(), fields.size());
    std::set<int> kept(view.point.begin(), view.point.end());
    constexpr std::array<std::array<std::size_t, 3>, 6> edges{
        {{0, 1, 4}, {1, 2, 5}, {0, 2, 6}, {0, 3, 7}, {1, 3, 8}, {2, 3, 9}}};
    for (const auto& element : fields.element)
        for (const auto& [a, b, middle] : edges)
        {
            if (kept.contains(element[middle])) continue;
            const double mean = double(fields.von_mises(element[a]) + fields.von_mises(element[b])) / 2;
            EXPECT_LE(std::abs(double(fields.von_mises(element[middle])) - mean), share * peak * 1.0001);
        }
}

TEST(SolidView, AMovementAsARigidBodyIsTakenOff)
{
    const SolidFields& fields = thin_fields();
    Eigen::Matrix3Xf moved(3, fields.place.cols());
    const Eigen::Vector3d turn(0.01, -0.02, 0.03), shift(1, 2, 3);
    for (Eigen::Index i = 0; i < moved.cols(); ++i)
        moved.col(i) = (shift + turn.cross(Eigen::Vector3d(fields.place.col(i)))).cast<float>();
    EXPECT_LT(seen_from_the_joint(fields, moved).cwiseAbs().maxCoeff(), 1e-4);
}

// A site is marked where the mesh has it, at the angle of its place and not of the bending.
TEST(SolidView, SitesLieOnTheBody)
{
    const CombinedLoad load = peak_load(solid_report().asked);
    const SolidFields& fields = whole_fields();
    for (const SiteAnswer& site : solid_report().sound.answer.sites)
    {
        const ViewSite told = view_site(site, load);
        const Eigen::Vector3d place(told.r * std::cos(told.theta), told.r * std::sin(told.theta), told.z);
        EXPECT_LT((fields.place.colwise() - place).colwise().norm().minCoeff(), 0.01) << site.id;
    }
}

// Weld toes are circles of edges around the shaft: at the weld, where its steel meets that of bar and sleeve.
TEST(SolidEdges, ShowWeldsAndSharpCornersAndNothingElse)
{
    const SolidFields& fields = whole_fields();
    const std::vector<SolidEdge> edges = outside_edges(fields, solid_skin(fields));
    const Case& asked = solid_report().asked;
    const double reach = asked.sleeve->length.value() / 2, leg = asked.sleeve->weld.leg_on_bar.value();
    double around_weld = 0, plain = 0;
    for (const SolidEdge& edge : edges)
    {
        const Eigen::Vector3d a = fields.place.col(edge.point[0]), b = fields.place.col(edge.point[1]);
        const double z = std::abs((a.z() + b.z()) / 2);
        if (z > reach - 1 && z < reach + leg + 1.5) around_weld += (a - b).norm();
        if (z > reach + leg + 2 && z < 90) plain += (a - b).norm();
    }
    EXPECT_GT(around_weld, 4 * M_PI * asked.bar[0]->sections.front().diameter.value());
    EXPECT_EQ(plain, 0);
}

// At the joint the share is the one that the forces of the finite elements give, another way to reckon it; the torque
// of a section is met to what stresses averaged at nodes of a mesh of two millimetres keep.
TEST(SolidTorqueFlow, MeetsTheSleevesShareAndTheTorque)
{
    const SolidTorqueFlow flow = solid_torque_flow(solid_report().asked, whole_fields());
    ASSERT_GT(flow.points.size(), 100U);
    double nearest = 1e9, share = 0;
    for (const TorquePoint& point : flow.points)
        if (std::abs(point.z) < nearest) nearest = std::abs(point.z), share = point.sleeve;
    EXPECT_NEAR(share, solid_report().sound.answer.share.torsion.value, 0.02);
    EXPECT_NEAR(flow.points.front().sleeve, 0, 1e-9);
    EXPECT_NEAR(flow.points.back().sleeve, 0, 1e-9);
    EXPECT_LT(flow.imbalance, 0.03);
}

TEST(StressRoundTheWeld, IsHighestWhereTheSiteIsJudgedAndGoesAllRound)
{
    const CombinedLoad load = peak_load(solid_report().asked);
    for (const Side side : both_sides)
    {
        const std::vector<RoundCurve> curves = stress_round_the_weld(solid_report().sound.answer, load, side);
        ASSERT_GE(curves.size(), 2U);
        for (const RoundCurve& curve : curves)
            for (const SiteAnswer& site : solid_report().sound.answer.sites)
            {
                if (site.id != curve.site) continue;
                double highest = 0;
                for (const auto& [degrees, stress] : curve.points) highest = std::max(highest, stress);
                EXPECT_NEAR(highest, site_demand(site, load).von_mises, 1e-9 * highest) << site.id;
                EXPECT_GT(curve.points.size(), 60U);
            }
    }
}

}  // namespace splicewright
