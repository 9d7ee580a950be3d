// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include "post/picture_pages.h"
#include "sample_fields.h"

namespace splicewright
{
namespace
{

// Wider than DejaVu Sans for all but the widest words.
double rough_width(const std::string& words, double size, Weight weight)
{
    int n_characters = 0;
    for (const char c : words) n_characters += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    return n_characters * size * (weight == Weight::bold ? 0.68 : 0.60);
}

std::vector<SiteMark> crowded_sites(const sample::Shape& shape)
{
    std::vector<SiteMark> sites{{"land-edge", 0, shape.land, "88 MPa"}, {"butt-surface", 0, shape.bar, "77 MPa"}};
    for (const double side : {-1.0, 1.0})
    {
        const std::string name = side < 0 ? ".left" : ".right";
        const double end = shape.sleeve_half, toe = end + shape.leg;
        sites.push_back({"bar-toe" + name, side * toe, shape.bar, "512 MPa, 0.93",
                         side < 0 ? Importance::governing : Importance::ordinary});
        sites.push_back({"sleeve-toe" + name, side * end, shape.bar + shape.leg, "301 MPa, 0.55"});
        sites.push_back({"root" + name, side * end, shape.bar, "455 MPa, 0.81"});
        sites.push_back({"throat" + name, side * (end + 2), shape.bar + 2, "120 MPa, 0.40"});
        sites.push_back({"bar" + name, side * (toe + 3), shape.bar, "290 MPa, 0.50"});
        sites.push_back({"shoulder" + name + ".1", side * (toe + 5), shape.bar, "290 MPa, 0.50"});
    }
    return sites;
}

void expect_texts_apart(const Sheet& sheet, const std::string& page)
{
    std::vector<Box> boxes;
    for (const Text& text : sheet.text) boxes.push_back(box_of(text, rough_width));
    for (std::size_t i = 0; i < boxes.size(); ++i)
    {
        EXPECT_GE(sheet.text[i].size, 18) << page << sheet.text[i].words;
        EXPECT_GE(boxes[i].left, 0) << page << sheet.text[i].words;
        EXPECT_LE(boxes[i].right, sheet_width) << page << sheet.text[i].words;
        EXPECT_GE(boxes[i].bottom, 0) << page << sheet.text[i].words;
        EXPECT_LE(boxes[i].top, sheet_height) << page << sheet.text[i].words;
        for (std::size_t k = 0; k < i; ++k)
            EXPECT_FALSE(overlap(boxes[i], boxes[k])) << page << sheet.text[i].words << " | " << sheet.text[k].words;
    }
}

void expect_pages_in_order(const sample::Shape& shape, const std::vector<SiteMark>& sites)
{
    const SolvedFields fields = sample::solved_fields(shape, 2);
    const Case asked = sample::splice_case(shape);
    PictureRequest request{fields, asked, {1.15e6, 7e4, 0, 0}, "peak torque 1150 N·m with 70 N·m bending", sites, {}};
    for (const char* name : {"sound: passes", "left sleeve weld lost: DOES NOT PASS", "half penetration: passes"})
        request.scenarios.push_back(
            {name, "strength 123 %, fatigue 1234 %", "first at shoulder.right.2", &fields, request.load});
    const PictureContent content = picture_content(request, rough_width);
    for (const Page& page :
         {section_page(content), cutaway_page(content), close_up_page(content), scenarios_page(content)})
        expect_texts_apart(page.sheet, page.file + ": ");
}

TEST(PicturePages, TextsStayApartAndOnTheSheetForACrowdedSplice)
{
    const sample::Shape shape;
    expect_pages_in_order(shape, crowded_sites(shape));
}

// Nearer to the viewer's left than any part, whose leftmost point the camera gives.
TEST(PicturePages, ScenariosHaveOneScaleAndNoTextOverTheirParts)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 2);
    const Case asked = sample::splice_case(shape);
    PictureRequest request{fields, asked, {1.15e6, 7e4, 0, 0}, "peak torque", {}, {}};
    request.scenarios.assign(5, {"left sleeve weld lost: DOES NOT PASS", "strength 168 %, fatigue 1327 %",
                                 "first at bar-toe.right", &fields, request.load});
    const Page page = scenarios_page(picture_content(request, rough_width));
    ASSERT_EQ(page.scene.surface.size(), 5U);
    double part_left = sheet_width;
    for (const SceneSurface& surface : page.scene.surface)
        for (const Eigen::Vector3d& point : surface.shape.point)
            part_left = std::min(part_left, page.scene.view.on_sheet(point).x());
    std::size_t n_names = 0;
    for (const Text& text : page.sheet.text)
        if (text.words.find("sleeve weld lost") != std::string::npos || text.words.starts_with("strength"))
        {
            ++n_names;
            EXPECT_LT(box_of(text, rough_width).right, part_left) << text.words;
        }
    EXPECT_EQ(n_names, 10U);
}

TEST(PicturePages, TextsStayApartOnALongThinSplice)
{
    sample::Shape shape;
    shape.left = -330;
    shape.right = 330;
    shape.sleeve_half = 120;
    expect_pages_in_order(shape, crowded_sites(shape));
}

TEST(PicturePages, TextsStayApartOnAShortThickSplice)
{
    sample::Shape shape;
    shape.left = -60;
    shape.right = 60;
    shape.bar = 30;
    shape.sleeve = 42;
    shape.sleeve_half = 24;
    expect_pages_in_order(shape, crowded_sites(shape));
}

TEST(PicturePages, TextsStayApartOnAPlainShaftWithoutSites)
{
    sample::Shape shape;
    shape.sleeve = 0;
    expect_pages_in_order(shape, {});
}

TEST(PicturePages, GoverningSiteOutOfViewIsNamedOnBothPictures)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 1);
    const Case asked = sample::splice_case(shape);
    const PictureRequest request{
        fields, asked, {1e6, 7e4, 0, 0}, "torque", {{"bar.left", -150, shape.bar, "300 MPa", Importance::governing}},
        {}};
    const PictureContent content = picture_content(request, rough_width);
    for (const Page& page : {section_page(content), cutaway_page(content)})
    {
        expect_texts_apart(page.sheet, page.file + ": ");
        bool is_said = false;
        for (const Text& text : page.sheet.text)
            is_said = is_said || (text.words.find("bar.left") != std::string::npos &&
                                  text.words.find("not in view") != std::string::npos);
        EXPECT_TRUE(is_said) << page.file;
    }
}

TEST(PicturePages, SectionPageSaysHowManySitesItLeavesOut)
{
    const sample::Shape shape;
    const SolvedFields fields = sample::solved_fields(shape, 1);
    const Case asked = sample::splice_case(shape);
    std::vector<SiteMark> sites;
    for (int i = 0; i < 30; ++i) sites.push_back({"site", 2.0 * i - 30, shape.bar, "1 MPa"});
    const PictureRequest request{fields, asked, {1e6, 0, 0, 0}, "torque", sites, {}};
    bool is_said = false;
    for (const Text& text : section_page(picture_content(request, rough_width)).sheet.text)
        is_said = is_said || text.words.find("24 of 30 sites shown") != std::string::npos;
    EXPECT_TRUE(is_said);
}

}  // namespace
}  // namespace splicewright
