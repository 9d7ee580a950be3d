// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "app/content_hash.h"
#include "cases/read_case.h"
#include "example_report.h"
#include "post/drawn_section.h"
#include "post/page_parts.h"
#include "post/report_html.h"
#include "post/site_loads.h"
#include "post/thinned_section.h"
#include "post/view_fields.h"
#include "post/view_payload.h"
#include "post/view_script.h"
#include "post/view_sites.h"
#include "solver/meridian.h"
#include "tests/report/payload_reader.h"

namespace splicewright
{
namespace
{

double peak_of(const SolvedFields& fields, const CombinedLoad& load)
{
    double highest = 0;
    for (const DrawnVertex& vertex : drawn_section(fields, load).vertex) highest = std::max(highest, vertex.worst);
    return highest;
}

double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) { return a(0) * b(1) - a(1) * b(0); }

// Weights of a point in a triangle; none negative where it lies inside.
Eigen::Vector3d weights(const std::array<Eigen::Vector2d, 3>& corner, const Eigen::Vector2d& p)
{
    const double whole = cross(corner[1] - corner[0], corner[2] - corner[0]);
    return Eigen::Vector3d(cross(corner[1] - p, corner[2] - p), cross(corner[2] - p, corner[0] - p),
                           cross(corner[0] - p, corner[1] - p)) /
           whole;
}

}  // namespace

TEST(ViewPayload, HoldsTheFieldsToTheStepOfItsChannels)
{
    const Report& report = report_of("press-fit");
    PayloadReader read(view_payload(report).bytes);
    std::vector<const Judgement*> judgements{&report.sound};
    for (const Judgement& judgement : report.what_if) judgements.push_back(&judgement);
    ASSERT_EQ(read.header["scenarios"].size(), judgements.size());
    for (std::size_t s = 0; s < judgements.size(); ++s)
    {
        const nlohmann::json& told = read.header["scenarios"][s];
        const SolvedFields& fields = judgements[s]->answer.fields;
        const std::size_t n = told["points"];
        const auto z = read.next<float>(n), r = read.next<float>(n);
        // The region nodes at that place: one, or one for each face or metal that meets there.
        std::vector<std::vector<Eigen::Index>> at(n);
        for (std::size_t p = 0; p < n; ++p)
            for (std::size_t i = 0; i < fields.region_nodes.node.size(); ++i)
                if ((fields.mesh.node.col(fields.region_nodes.node[i]) - Eigen::Vector2d(z[p], r[p])).norm() < 1e-4)
                    at[p].push_back(Eigen::Index(i));
        const std::vector<ViewField> expected = view_fields(report.asked, fields);
        ASSERT_EQ(told["fields"].size(), expected.size());
        for (std::size_t f = 0; f < expected.size(); ++f)
            for (std::size_t c = 0; c < expected[f].channel.size(); ++c)
            {
                const double step = told["fields"][f]["steps"][c];
                const std::vector<double> whole = read.next<std::int16_t>(n);
                for (std::size_t p = 0; p < n; ++p)
                {
                    double nearest = INFINITY;
                    for (const Eigen::Index i : at[p])
                        nearest = std::min(nearest, std::abs(step * whole[p] - expected[f].channel[c](i)));
                    ASSERT_LE(nearest, 0.5001 * step) << expected[f].load << expected[f].names[c];
                }
            }
        read.next<std::uint8_t>(n * expected.size() + std::size_t(told["triangles"]));
        read.next<std::uint16_t>(
            3 * std::size_t(told["triangles"]) +
            2 * (std::size_t(told["skin"]) + std::size_t(told["outline"]) + std::size_t(told["unfused"])));
    }
    EXPECT_TRUE(read.is_read());
}

TEST(ViewPayload, StaysWithinItsBytes)
{
    for (const char* name : {"press-fit", "buggy-inch"})
    {
        const std::size_t size = view_payload(report_of(name)).bytes.size();
        EXPECT_GT(size, 100000U) << name;
        EXPECT_LE(size, most_payload_bytes) << name;
    }
}

// Two triangles at each edge inside, one at the skin and the axis: no hole and nothing twice.
TEST(ThinnedSection, HasNoGap)
{
    const Report& report = report_of("hill-climb-rear-left");
    const SolvedFields& fields = report.sound.answer.fields;
    const CombinedLoad load = peak_load(report.asked);
    for (const double share : {0.0, 0.0025, 0.05})
    {
        const ThinnedSection section = thinned(fields, load, {share, peak_of(fields, load)});
        const auto mesh_node = [&](int i)
        { return fields.region_nodes.node[std::size_t(section.node[std::size_t(i)])]; };
        std::map<std::pair<int, int>, int> walked;  // by mesh node
        double area = 0;
        for (const std::array<int, 3>& triangle : section.triangle)
        {
            const auto place = [&](std::size_t k)
            { return Eigen::Vector2d(fields.mesh.node.col(mesh_node(triangle[k]))); };
            area += cross(place(1) - place(0), place(2) - place(0)) / 2;
            for (std::size_t k = 0; k < 3; ++k) ++walked[{mesh_node(triangle[k]), mesh_node(triangle[(k + 1) % 3])}];
        }
        std::set<std::pair<int, int>> skin;
        for (const auto& [a, b] : section.skin) skin.insert({mesh_node(a), mesh_node(b)});
        for (const auto& [edge, count] : walked)
        {
            EXPECT_EQ(count, 1);
            const bool on_axis = fields.mesh.node(1, edge.first) < 1e-9 && fields.mesh.node(1, edge.second) < 1e-9;
            EXPECT_NE(walked.contains({edge.second, edge.first}), skin.contains(edge) || on_axis);
        }
        double drawn_area = 0;
        const DrawnSection all = drawn_section(fields, load);
        for (const auto& [a, b, c] : all.triangle)
            drawn_area += cross(all.vertex[std::size_t(b)].place - all.vertex[std::size_t(a)].place,
                                all.vertex[std::size_t(c)].place - all.vertex[std::size_t(a)].place) /
                          2;
        EXPECT_NEAR(area, drawn_area, 1e-4 * drawn_area);
    }
}

// At every node that was left out, the straight triangle around it gives the field to what was allowed.
TEST(ThinnedSection, MissesNoMoreThanAllowed)
{
    const Report& report = report_of("hill-climb-rear-left");
    const SolvedFields& fields = report.sound.answer.fields;
    const CombinedLoad load = peak_load(report.asked);
    const double peak = peak_of(fields, load), share = 0.01;
    const ThinnedSection section = thinned(fields, load, {share, peak});
    EXPECT_LT(section.node.size(), fields.region_nodes.node.size() / 2);
    const Eigen::Matrix<double, 6, Eigen::Dynamic> stress = combined_stress(fields, load, 0.7);
    const auto place = [&](int region_node)
    { return Eigen::Vector2d(fields.mesh.node.col(fields.region_nodes.node[std::size_t(region_node)])); };
    double worst = 0;
    for (int i = 0; i < int(fields.region_nodes.node.size()); ++i)
    {
        double least = INFINITY;
        for (std::size_t t = 0; t < section.triangle.size(); ++t)
        {
            if (section.region[t] != fields.region_nodes.region[std::size_t(i)]) continue;
            std::array<Eigen::Vector2d, 3> corner;
            Eigen::Matrix<double, 6, 3> at_corner;
            for (std::size_t k = 0; k < 3; ++k)
            {
                const int node = section.node[std::size_t(section.triangle[t][k])];
                corner[k] = place(node);
                at_corner.col(Eigen::Index(k)) = stress.col(node);
            }
            const Eigen::Vector3d weight = weights(corner, place(i));
            // A little outside still counts: a bent edge runs beside its chord.
            if (weight.minCoeff() < -0.05) continue;
            least = std::min(least, von_mises(at_corner * weight - stress.col(i))(0));
        }
        ASSERT_TRUE(std::isfinite(least));
        worst = std::max(worst, least);
    }
    EXPECT_LE(worst, 1.5 * share * peak);
    EXPECT_GT(worst, 0.1 * share * peak);
}

// The twist of the solver from end to end, another way to reckon it; the joint itself stands still.
TEST(ViewFields, MovementIsSeenFromTheJoint)
{
    const Report& report = report_of("hill-climb-rear-left");
    const MeridianAnswer& answer = report.sound.answer;
    const ViewField torsion = view_fields(report.asked, answer.fields).front();
    ASSERT_EQ(torsion.load, "torsion");
    const Eigen::VectorXd& movement = torsion.channel.back();
    const RegionNodes& nodes = answer.fields.region_nodes;
    const Eigen::Matrix2Xd& place = answer.fields.mesh.node;
    double left = 0, right = 0, joint = 0;
    int n_joint = 0;
    for (std::size_t i = 0; i < nodes.node.size(); ++i)
    {
        const double z = place(0, nodes.node[i]), r = place(1, nodes.node[i]);
        if (r < 1) continue;
        const double turn = movement(Eigen::Index(i)) / r;
        if (z < place.row(0).minCoeff() + 1e-6) left = turn;
        if (z > place.row(0).maxCoeff() - 1e-6) right = turn;
        if (std::abs(z) < 1) joint += turn, ++n_joint;
    }
    const double twist = answer.twist.value * report.asked.load.peak_torque.value();
    EXPECT_NEAR(std::abs(right - left), twist, 1e-3 * twist);
    ASSERT_GT(n_joint, 3);
    EXPECT_NEAR(joint / n_joint, 0, 0.01 * twist);
}

TEST(ViewSites, TellWhatTheChecksRead)
{
    const Report& report = report_of("hill-climb-rear-left");
    const CombinedLoad load = peak_load(report.asked);
    for (const SiteAnswer& site : report.sound.answer.sites)
    {
        const SiteDemand demand = site_demand(site, load);
        const ViewSite told = view_site(site, load);
        EXPECT_DOUBLE_EQ(told.von_mises.value, demand.von_mises) << site.id;
        EXPECT_NEAR(told.von_mises.error, demand.von_mises * demand.error_pct / 100, 1e-9) << site.id;
        const CheckRow* row = row_of_site(report, site.id);
        EXPECT_TRUE(row == nullptr || row->site == site.id) << site.id;
    }
}

// Constant shear is exact: no triangle disagrees with its neighbours. In a plain bar under torsion far from notches.
TEST(ViewSites, KeepTheirNumberFromLeftToRightInEveryScenario)
{
    const Report& report = report_of("press-fit");
    const std::map<std::string, int> number = site_numbers(report);
    PayloadReader read(view_payload(report).bytes);
    const CombinedLoad load = peak_load(report.asked);
    double before = -INFINITY;
    for (int k = 1; k <= static_cast<int>(report.sound.answer.sites.size()); ++k)
    {
        const auto& sites = report.sound.answer.sites;
        const auto site = std::ranges::find_if(sites, [&](const SiteAnswer& one) { return number.at(one.id) == k; });
        ASSERT_NE(site, sites.end()) << k;
        EXPECT_GE(site_demand(*site, load).z, before) << site->id;
        before = site_demand(*site, load).z;
    }
    for (const nlohmann::json& scenario : read.header["scenarios"])
        for (const nlohmann::json& site : scenario["sites"])
            EXPECT_EQ(site["number"], number.at(site["id"].get<std::string>())) << scenario["name"] << site["id"];
}

TEST(StressSpread, IsSmallInThePlainBarAndGrowsAtTheNotch)
{
    const Report& report = report_of("hill-climb-rear-left");
    const SolvedFields& fields = report.sound.answer.fields;
    const ViewField torsion = view_fields(report.asked, fields).front();
    const double peak = peak_of(fields, {report.asked.load.peak_torque.value(), 0, 0, 0});
    double plain = 0, notch = 0;
    for (std::size_t i = 0; i < fields.region_nodes.node.size(); ++i)
    {
        const double z = fields.mesh.node(0, fields.region_nodes.node[i]);
        const double spread = torsion.spread(Eigen::Index(i));
        if (z > 120 && z < 180) plain = std::max(plain, spread);
        if (z > 41 && z < 50) notch = std::max(notch, spread);
    }
    EXPECT_LT(plain, 1e-3 * peak);
    EXPECT_GT(notch, 1e-3 * peak);
}

// The bar that the view shows beside a value, against a mesh that is fine everywhere: it holds at most places.
TEST(StressSpread, WithWhatIsLeftOutHoldsNearlyEverywhereAgainstAFinerMesh)
{
    const Case asked = read_case_file(SPLICEWRIGHT_SOURCE_DIR "/cases/examples/hill-climb-rear-left.toml").value();
    const SolvedFields shown = meridian_answer(asked, {}, {1}).fields, fine = reference_answer(asked, {}, {}).fields;
    const CombinedLoad load = peak_load(asked);
    const double left_out = 0.0025 * peak_of(shown, load), theta = 0.7;
    Eigen::VectorXd spread = Eigen::VectorXd::Zero(Eigen::Index(shown.region_nodes.node.size()));
    for (const ViewField& field : view_fields(asked, shown)) spread += field.spread;
    const Eigen::VectorXd value = von_mises(combined_stress(shown, load, theta)),
                          truth = von_mises(combined_stress(fine, load, theta));
    const DrawnSection section = drawn_section(fine, load);
    int n = 0, n_held = 0;
    for (std::size_t i = 0; i < shown.region_nodes.node.size(); i += 7)
    {
        const std::string& region = shown.mesh.region[std::size_t(shown.region_nodes.region[i])];
        const Eigen::Vector2d place = shown.mesh.node.col(shown.region_nodes.node[i]);
        for (const std::array<int, 3>& triangle : section.triangle)
        {
            const auto corner = [&](std::size_t k) { return section.vertex[std::size_t(triangle[k])].place; };
            const auto own = std::size_t(fine.region_nodes.region[std::size_t(triangle[0])]);
            if (fine.mesh.region[own] != region) continue;
            const Eigen::Vector3d weight = weights({corner(0), corner(1), corner(2)}, place);
            if (weight.minCoeff() < -1e-6) continue;
            const double expected =
                weight.dot(Eigen::Vector3d(truth(triangle[0]), truth(triangle[1]), truth(triangle[2])));
            const auto k = Eigen::Index(i);
            n_held += std::abs(value(k) - expected) <= std::sqrt(1.5) * spread(k) + left_out ? 1 : 0;
            ++n;
            break;
        }
    }
    ASSERT_GT(n, 1000);
    EXPECT_GE(n_held, 0.98 * n);
}

// What the policy of the page lets run is the script that stands in it, by SHA-256, and nothing else.
TEST(ViewScript, IsTheOnlyOneThatThePageLetsRun)
{
    const Report& report = report_of("hill-climb-rear-left");
    PageExtras extras;
    extras.case_file = {"case.toml", report.asked.text, "0123abcd"};
    const std::string html = report_html(report, extras);
    EXPECT_NE(html.find(fmt::format("script-src &#39;sha256-{}&#39;", base64(content_hash(view_script)))),
              std::string::npos);
    EXPECT_EQ(html.find("unsafe-eval"), std::string::npos);
    EXPECT_NE(html.find(fmt::format("<script>{}</script>", view_script)), std::string::npos);
}

TEST(ViewScript, LoadsNothingAndBuildsNoCode)
{
    const std::string script = view_script;
    for (const char* way : {"eval(", "new Function", "XMLHttpRequest", "fetch(", "import(", "WebSocket", "Worker(",
                            "innerHTML", "document.write", "sendBeacon", "@import", "url("})
        EXPECT_EQ(script.find(way), std::string::npos) << way;
    EXPECT_NE(script.find("BSD-3-Clause"), std::string::npos);
}

}  // namespace splicewright
