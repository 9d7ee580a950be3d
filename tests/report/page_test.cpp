// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <string>
#include <vector>

#include "example_report.h"
#include "post/report_html.h"
#include "post/result_json.h"

namespace splicewright
{
namespace
{

std::string page_of(const Report& report)
{
    PageExtras extras;
    extras.why_no_pictures = "not in this test";
    extras.case_file = {"case.toml", report.asked.text, "0123abcd"};
    return report_html(report, extras);
}

std::size_t count(const std::string& text, const std::string& part)
{
    std::size_t n = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++n;
    return n;
}

// The text of the element that begins behind `mark`, without tags.
std::string row_text(const std::string& html, const std::string& mark)
{
    const std::size_t start = html.find(mark);
    if (start == std::string::npos) return {};
    const std::string row = html.substr(start, html.find("</tr>", start) - start);
    return std::regex_replace(row.substr(row.find('>') + 1), std::regex("<[^>]*>"), "|");
}

}  // namespace

TEST(Page, SectionsStandInTheOrderOfTheReport)
{
    const std::vector<std::string> order{"asked",    "drawing", "governs", "what-if",     "checks",   "pictures",
                                         "handbook", "life",    "making",  "assumptions", "evidence", "cautions"};
    const std::string html = page_of(report_of("hill-climb-rear-left"));
    std::size_t before = 0;
    for (const std::string& id : order)
    {
        const std::size_t at = html.find(fmt::format("<section id=\"{}\"", id));
        ASSERT_NE(at, std::string::npos) << id;
        EXPECT_GT(at, before) << id;
        EXPECT_NE(html.find(fmt::format("<a href=\"#{}\">", id)), std::string::npos) << id;
        before = at;
    }
}

TEST(Page, ShowsEveryPictureOfTheSolidModelWithWordsForThoseWhoCannotSeeIt)
{
    Report report = report_of("hill-climb-rear-left");
    report.sound.judged_by_solid = true;
    PageExtras extras;
    for (const char* file : {"section.png", "cutaway.png", "governing-site.png", "scenarios.png", "solid-outside.png",
                             "solid-deformed.png", "solid-contact.png"})
        extras.pictures.push_back({file, std::string("picture ") + file});
    extras.case_file = {"case.toml", report.asked.text, "0123abcd"};
    const std::string page = report_html(report, extras);
    for (const PagePicture& picture : extras.pictures) EXPECT_EQ(count(page, base64(picture.png)), 1U) << picture.file;
    for (const char* words : {"The solid model of the joint with a quarter cut away", "The solid model from outside",
                              "The solid model deformed", "The faces of the bars that touch"})
        EXPECT_NE(page.find(std::string("alt=\"") + words), std::string::npos) << words;
    EXPECT_EQ(count(page, "alt=\"\""), 0U);
}

TEST(Page, OfAPlainShaftLeavesOutWhatItHasNot)
{
    const std::string html = page_of(report_of("plain-stepped-shaft"));
    for (const char* id : {"what-if", "making", "tolerances"})
        EXPECT_EQ(html.find(fmt::format("<section id=\"{}\"", id)), std::string::npos) << id;
    EXPECT_EQ(html.find("torque-flow"), std::string::npos);
}

TEST(Page, ShowsTheNumbersOfResultJson)
{
    for (const char* name : {"hill-climb-rear-left", "plain-stepped-shaft"})
    {
        const Report& report = report_of(name);
        const std::string html = page_of(report);
        const nlohmann::json result = nlohmann::json::parse(result_json(report));
        for (const nlohmann::json& check : result["checks"])
        {
            const std::string id = check["id"];
            const std::string row = row_text(html, fmt::format("data-id=\"{}\"", id));
            ASSERT_FALSE(row.empty()) << id;
            const double used = 100 * check["utilisation"].get<double>();
            EXPECT_NE(row.find(fmt::format("|{:.0f} %", used)), std::string::npos) << id << row;
            if (check["kind"] == "strength")
            {
                EXPECT_NE(row.find(fmt::format("{:.0f} of {:.0f} MPa", check["demand"].get<double>(),
                                               check["capacity"].get<double>())),
                          std::string::npos)
                    << id << row;
            }
            EXPECT_NE(html.find(fmt::format("<summary>Worked: {}</summary>", id)), std::string::npos) << id;
        }
        for (const nlohmann::json& row : result["handbook"])
            EXPECT_NE(html.find(fmt::format("{:.4g}", row["fe"].get<double>())), std::string::npos) << row["what"];
        const double governing = 100 * result["verdict"]["utilisation"].get<double>();
        EXPECT_NE(html.find(fmt::format(": {:.0f} % of what is allowed is used, at {}", governing,
                                        result["verdict"]["governing_site"].get<std::string>())),
                  std::string::npos);
        EXPECT_NE(html.find(fmt::format("{} elements", result["evidence"]["elements"].get<int>())), std::string::npos);
    }
}

TEST(Page, OfASpliceShowsTheShopSheetOfResultJson)
{
    const Report& report = report_of("hill-climb-rear-left");
    const std::string html = page_of(report);
    const nlohmann::json making = nlohmann::json::parse(result_json(report))["making"];
    EXPECT_NE(html.find(fmt::format("{:.1f} ± 0.5 mm", making["cut"]["left_mm"].get<double>())), std::string::npos);
    for (const nlohmann::json& bore : making["bores"])
        EXPECT_NE(html.find(fmt::format("{:.3f} mm", bore["least_mm"].get<double>())), std::string::npos);
    EXPECT_NE(html.find(fmt::format("Preheat to {:.0f} °C", making["heat"]["preheat_C"].get<double>())),
              std::string::npos);
    EXPECT_GE(count(html, "class=\"sign\""), 2 * making["inspection"].size());
}

TEST(Page, AsksForNothingOutsideItself)
{
    const std::string html = page_of(report_of("hill-climb-rear-left"));
    EXPECT_NE(html.find("default-src &#39;none&#39;"), std::string::npos);
    // The data of the view in three dimensions, which no browser runs, and its script.
    EXPECT_EQ(count(html, "<script"), 2U);
    EXPECT_EQ(count(html, "<script type=\"text/plain\" id=\"view-3d-data\">"), 1U);
    EXPECT_EQ(html.find("<link"), std::string::npos);
    EXPECT_EQ(html.find("@import"), std::string::npos);
    EXPECT_EQ(html.find("url("), std::string::npos);
    const std::regex loaded("(src|href|srcset|action)=\"([^\"]*)\"");
    for (std::sregex_iterator match(html.begin(), html.end(), loaded), end; match != end; ++match)
    {
        const std::string target = (*match)[2].str().substr(0, 5);
        EXPECT_TRUE(target.starts_with('#') || target == "data:") << target;
    }
}

TEST(Page, HostileTextOfTheCaseAppearsAsText)
{
    Report report = report_of("hill-climb-rear-left");
    const std::string script = "<script>alert('x')</script><img src=x onerror=alert(1)>";
    report.asked.title = script + "\" onload=\"";
    report.asked.text = "title = '" + script + "'\n</pre></details>\n";
    report.asked.load.blocks.front().name = script;
    report.asked.bar[0]->material.name = script;
    report.asked.sleeve->material.source = script;
    report.asked.defaults.push_back({"a", script, script});
    report.cautions.push_back(script);
    report.making->heat.words.push_back(script);
    const std::string html = page_of(report);
    EXPECT_EQ(count(html, "<script"), 2U);
    EXPECT_EQ(html.find("<img"), std::string::npos);
    EXPECT_EQ(html.find("\" onload"), std::string::npos);
    EXPECT_GE(count(html, "&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;"), 6U);
    EXPECT_EQ(count(html, "</pre>"), 1U);
}

TEST(Page, EveryTagThatOpensCloses)
{
    std::string html = page_of(report_of("hill-climb-rear-left"));
    html.erase(html.find("<script>"));
    for (const char* tag : {"section", "table", "tbody", "tr", "td", "th", "details", "figure", "svg",  "g",
                            "text",    "ol",    "ul",    "li", "dl", "p",  "div",     "span",   "code", "bdi"})
    {
        const std::regex open(fmt::format("<{}[ >]", tag));
        const auto opened = std::distance(std::sregex_iterator(html.begin(), html.end(), open), std::sregex_iterator());
        EXPECT_EQ(static_cast<std::size_t>(opened), count(html, fmt::format("</{}>", tag))) << tag;
    }
}

TEST(Page, IdentifiersAreUnique)
{
    const std::string html = page_of(report_of("hill-climb-rear-left"));
    std::map<std::string, int> seen;
    const std::regex identifier(" id=\"([^\"]*)\"");
    for (std::sregex_iterator match(html.begin(), html.end(), identifier), end; match != end; ++match)
        EXPECT_EQ(++seen[(*match)[1]], 1) << (*match)[1];
}

// By hand: words that a machinist may not know, and the term that explains each.
TEST(Page, EachTermIsExplainedWhereItIsUsedFirst)
{
    const std::map<std::string, std::string> explained_by{{"FAT 9", "FAT"},
                                                          {"Miner", "damage, Miner sum"},
                                                          {"hot-spot", "hot-spot stress"},
                                                          {"von Mises", "von Mises stress"},
                                                          {"throat", "throat"},
                                                          {"partial factor", "partial factor"},
                                                          {"IIW", "IIW, EN 1993"},
                                                          {"Residual", "residual"},
                                                          {"SHA-256", "checksum"},
                                                          {" HV", "HV"},
                                                          {"Preheat", "preheat"},
                                                          {"run-out", "run-out"},
                                                          {"undercut", "undercut"},
                                                          {"unknowns", "unknowns"},
                                                          {"critical speed", "critical speed"},
                                                          {"by GJ", "GJ"},
                                                          {"half lap", "half lap"},
                                                          {"error bar", "error"}};
    const std::string html = page_of(report_of("hill-climb-rear-left"));
    const auto section_of = [&](const std::string& words)
    { return html.rfind("<section ", html.find(words, html.find("<main>"))); };
    for (const auto& [used, term] : explained_by)
    {
        ASSERT_NE(html.find(used), std::string::npos) << used;
        const std::string explanation = "<dfn>" + term + "</dfn>";
        EXPECT_EQ(count(html, explanation), 1U) << term;
        EXPECT_LE(section_of(explanation), section_of(used)) << used;
    }
}

// At the joint the share is the one that the forces of the finite elements give, another way to reckon it.
TEST(TorqueFlow, MeetsTheSleevesShareAtTheJoint)
{
    const Report& report = report_of("hill-climb-rear-left");
    double nearest = 1e9, share = 0;
    for (const TorquePoint& point : report.torque_flow)
        if (std::abs(point.z) < nearest) nearest = std::abs(point.z), share = point.sleeve;
    EXPECT_NEAR(share, report.sound.answer.share.torsion.value, 0.01);
    EXPECT_NEAR(report.torque_flow.front().sleeve, 0, 1e-9);
    EXPECT_NEAR(report.torque_flow.back().sleeve, 0, 1e-9);
}

// Far from the weld the bar is plain; the familiar form for a solid bar, 16 T/(pi d^3).
TEST(WeldSurface, ShearBesideTheWeldIsThatOfThePlainBar)
{
    const Report& report = report_of("hill-climb-rear-left");
    ASSERT_EQ(report.weld_surfaces.size(), 2U);
    for (const WeldSurface& surface : report.weld_surfaces)
    {
        const double d = report.asked.bar[index(surface.side)]->sections.front().diameter.value();
        const double plain = 16 * report.asked.load.peak_torque.value() / (3.14159265358979 * d * d * d);
        EXPECT_NEAR(surface.points.front().shear, plain, 0.01 * plain);
    }
}

// A bore opens a second way along the outside, around the far end and back through the bar.
TEST(WeldSurface, EndsOnTheSleeveOfABoredBar)
{
    const Report& report = report_of("press-fit");
    ASSERT_GT(report.asked.bar[0]->bore.value(), 0);
    for (const WeldSurface& surface : report.weld_surfaces)
    {
        const double radius = report.asked.bar[index(surface.side)]->sections.front().diameter.value() / 2;
        EXPECT_LT(std::abs(surface.points.back().s), report.asked.sleeve->length.value());
        for (std::size_t i = 0; i < surface.points.size(); ++i)
        {
            EXPECT_GE(surface.points[i].r, radius - 0.01);
            EXPECT_LE(surface.points[i].s, surface.points[i > 0 ? i - 1 : 0].s);
        }
    }
}

// The readings on the drawn curve give what the checks judge, up to the change from nodes to surface strains.
TEST(WeldSurface, ReadingsContinueToTheJudgedStress)
{
    const Report& report = report_of("hill-climb-rear-left");
    for (const WeldSurface& surface : report.weld_surfaces)
        for (const SurfaceExtrapolation& value : surface.extrapolated)
        {
            if (value.rule != "linear") continue;
            std::vector<double> read;
            for (const SurfaceReading& reading : surface.readings)
                if (reading.rule == value.rule && reading.site == value.site) read.push_back(reading.shear);
            ASSERT_EQ(read.size(), 2U);
            EXPECT_NEAR(1.67 * read[0] - 0.67 * read[1], value.shear, 0.02 * value.shear) << value.site;
        }
}

}  // namespace splicewright
