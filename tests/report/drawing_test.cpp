// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "cases/random_case.h"
#include "cases/read_case.h"
#include "post/dimensions.h"
#include "post/drawing_sheet.h"
#include "post/drawing_views.h"
#include "post/drawn_parts.h"
#include "post/making.h"

namespace splicewright
{
namespace
{

constexpr DrawingScale one_to_one{1, 2.5};

Case example(const std::string& name)
{
    const Result<Case> read = read_case_file(SPLICEWRIGHT_SOURCE_DIR "/cases/examples/" + name + ".toml");
    EXPECT_TRUE(read.has_value()) << name;
    return read.value();
}

Case random_one(std::uint64_t seed)
{
    const Result<Case> read = read_case(random_case_text(seed), "random.toml");
    EXPECT_TRUE(read.has_value()) << seed;
    return read.value();
}

std::vector<View2d> views_of(const Case& asked)
{
    if (!asked.joint) return {shaft_view};
    if (has_end_view(asked)) return {shaft_view, splice_view, preparation_view, end_view};
    return {shaft_view, splice_view, preparation_view};
}

// Sleeve welds over 270 degrees, and two rings of plug welds.
Case partly_welded()
{
    Case asked = example("hill-climb-rear-left");
    constexpr double degree = std::numbers::pi / 180;
    asked.sleeve->weld.coverage = Radian(270 * degree);
    asked.sleeve->weld.start = {Radian(30 * degree), Radian(100 * degree)};
    PlugRing left, right;
    left.count = 3, left.diameter = Millimetre(8), left.at = Millimetre(-24);
    right.count = 2, right.diameter = Millimetre(8), right.at = Millimetre(24), right.start = Radian(60 * degree);
    right.depth = Millimetre(4);
    asked.sleeve->plugs = {left, right};
    return asked;
}

bool shows(const Draft& draft, const std::string& text)
{
    return std::any_of(draft.text.begin(), draft.text.end(), [&](const DraftText& one) { return one.words == text; });
}

void expect_texts_apart(const Draft& draft, const std::string& where)
{
    for (std::size_t i = 0; i < draft.text.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
        {
            Box one = box_of(draft.text[i]);
            // Boxes are a tenth higher than the type: lines may come that near.
            one.bottom += 0.05 * draft.text[i].size;
            one.top -= 0.05 * draft.text[i].size;
            EXPECT_FALSE(overlap(one, box_of(draft.text[k])))
                << where << ": " << draft.text[i].words << " | " << draft.text[k].words;
        }
}

// Whether a straight piece runs through the inner part of a box.
bool runs_through(const SheetPoint& from, const SheetPoint& to, const Box& box)
{
    constexpr int n = 200;
    for (int i = 0; i <= n; ++i)
    {
        const SheetPoint at = from + i * (to - from) / n;
        if (at.x() > box.left && at.x() < box.right && at.y() > box.bottom && at.y() < box.top) return true;
    }
    return false;
}

void expect_lines_beside_texts(const Draft& draft, const std::string& where)
{
    for (const DraftText& text : draft.text)
    {
        Box box = box_of(text);
        const double rim = 0.25 * text.size;
        box = {box.left + rim, box.bottom + rim, box.right - rim, box.top - rim};
        for (const DraftLine& line : draft.line)
        {
            if (line.pen == Pen::reference || line.pen == Pen::centre) continue;
            for (std::size_t i = 0; i + 1 < line.points.size(); ++i)
                EXPECT_FALSE(text.weight == Weight::regular && runs_through(line.points[i], line.points[i + 1], box))
                    << where << ": a line runs through " << text.words;
        }
    }
}

}  // namespace

// Expected: the values of the case file, inches by 25.4.
TEST(Drawing, ShowsTheDimensionsOfTheCaseInMillimetresAndInches)
{
    const Case asked = example("hill-climb-rear-left");
    const Draft shaft = shaft_view(asked, one_to_one), splice = splice_view(asked, one_to_one);
    for (const char* text : {"Ø28.4", "[1.118]", "Ø24", "[0.945]", "Ø27.5", "[1.083]", "190", "[7.480]", "45",
                             "[1.772]", "235", "205", "440", "[17.323]", "R2", "Ø41", "[1.614]"})
        EXPECT_TRUE(shows(shaft, text)) << text;
    for (const char* text : {"Ø28.4", "Ø27.5", "sleeve 84", "[3.307]", "42", "[1.654]", "half lap 14", "[0.551]",
                             "blend 3", "z6", "[0.236]", "bore Ø28.42", "[1.1189]", "bore Ø27.52", "[1.0835]"})
        EXPECT_TRUE(shows(splice, text)) << text;
}

// Expected: the fractions of an inch that the case file writes.
TEST(Drawing, OfACaseInInchesShowsItsInches)
{
    const Case asked = example("buggy-inch");
    const Draft shaft = shaft_view(asked, one_to_one), splice = splice_view(asked, one_to_one);
    for (const char* text : {"[9.500]", "[1.125]", "[2.000]", "[1.000]", "[11.000]", "[1.100]", "[9.000]", "[0.125]",
                             "[0.0400] deep, R[0.0300]", "[22.500]"})
        EXPECT_TRUE(shows(shaft, text)) << text;
    for (const char* text : {"[4.000]", "[1.750]", "s9.525", "[0.375]", "[0.312]×[0.250]", "[1.1260]", "[1.1010]"})
        EXPECT_TRUE(shows(splice, text)) << text;
}

TEST(Drawing, SymbolOfAFullyFusedButtHasNoSize)
{
    const Draft full = splice_view(example("hill-climb-rear-left"), one_to_one);
    EXPECT_FALSE(std::any_of(full.text.begin(), full.text.end(),
                             [](const DraftText& text)
                             { return text.words.size() > 1 && text.words[0] == 's' && std::isdigit(text.words[1]); }));
    EXPECT_TRUE(shows(splice_view(example("partial-penetration"), one_to_one), "s8"));
}

// Expected: 270 degrees of the bars' radii of 14.2 and 13.75 mm are 66.9 and 64.8 mm; angles add up.
TEST(Drawing, ShowsPlugWeldsAndWhereWeldsBeginAndEnd)
{
    const Draft splice = splice_view(partly_welded(), one_to_one), ends = end_view(partly_welded(), one_to_one);
    for (const char* text : {"66.9", "64.8", "3× Ø8", "2× Ø8", "plug", "4 deep"})
        EXPECT_TRUE(shows(splice, text)) << text;
    for (const char* text : {"30°", "300°", "100°", "10°", "weld over 270°, 30° to 300°", "weld over 270°, 100° to 10°",
                             "3× Ø8 at z -24: 0°, then each 120°", "2× Ø8 at z 24: 60°, then each 180°"})
        EXPECT_TRUE(shows(ends, text)) << text;
    EXPECT_FALSE(has_end_view(example("hill-climb-rear-left")));
}

TEST(Drawing, TextsOverlapNeitherEachOtherNorLinesWithPartialWeldsAndPlugs)
{
    const Case asked = partly_welded();
    for (const View2d view : views_of(asked))
        for (const double width : {120.0, 176.0, 380.0})
        {
            const Draft draft = view(asked, scale_that_fits(view, asked, {width, 1e3}, 2.5));
            expect_texts_apart(draft, "partly welded");
            expect_lines_beside_texts(draft, "partly welded");
        }
}

TEST(Drawing, TextsOverlapNeitherEachOtherNorLinesInTheExamples)
{
    for (const char* name : {"autotest-from-vehicle", "buggy-inch", "hill-climb-rear-left", "partial-penetration",
                             "plain-stepped-shaft", "press-fit", "undersized-sleeve"})
    {
        const Case asked = example(name);
        for (const View2d view : views_of(asked))
            for (const double width : {120.0, 176.0, 380.0})
            {
                const Draft draft = view(asked, scale_that_fits(view, asked, {width, 1e3}, 2.5));
                expect_texts_apart(draft, name);
                expect_lines_beside_texts(draft, name);
            }
    }
}

TEST(Drawing, TextsOverlapNeitherEachOtherNorLinesInRandomCases)
{
    for (std::uint64_t seed = 1; seed <= 120; ++seed)
    {
        const Case asked = random_one(seed);
        for (const View2d view : views_of(asked))
        {
            const Draft draft = view(asked, scale_that_fits(view, asked, {380, 1e3}, 2.5));
            expect_texts_apart(draft, std::to_string(seed));
            expect_lines_beside_texts(draft, std::to_string(seed));
        }
    }
}

TEST(Drawing, EveryHatchLineLiesInsideThePart)
{
    for (std::uint64_t seed = 1; seed <= 60; ++seed)
    {
        const Case asked = random_one(seed);
        if (!asked.joint) continue;
        const std::vector<SheetPoint> skin = drawn_shaft(asked).skin;
        const Draft draft = splice_view(asked, one_to_one);
        ASSERT_FALSE(draft.hatch.empty()) << seed;
        const double bore = asked.bar[0]->bore.value() / 2;
        for (const DraftLine& line : draft.hatch)
            for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0})
            {
                const SheetPoint at = line.points[0] + share * (line.points[1] - line.points[0]);
                // Arcs are drawn as chords, which leave them by less than this.
                EXPECT_LE(at.y(), height_at(skin, at.x()) + 0.05) << seed << " at " << at.x();
                EXPECT_GE(at.y(), bore - 0.05) << seed << " at " << at.x();
            }
    }
}

TEST(Drawing, HatchOfAShapeWithANotchStaysOutOfTheNotch)
{
    Draft draft;
    add_hatch(draft, {{0, 0}, {10, 0}, {10, 10}, {6, 10}, {6, 4}, {4, 4}, {4, 10}, {0, 10}}, 0.7, 0.5);
    ASSERT_FALSE(draft.hatch.empty());
    for (const DraftLine& line : draft.hatch)
    {
        const SheetPoint middle = (line.points[0] + line.points[1]) / 2;
        EXPECT_FALSE(middle.x() > 4.001 && middle.x() < 5.999 && middle.y() > 4.001) << middle;
    }
}

TEST(Drawing, PartsThatTouchHaveDifferentHatches)
{
    const Draft draft = splice_view(example("autotest-from-vehicle"), one_to_one);
    const auto slope_at = [&](double z, double low, double high)
    {
        for (const DraftLine& line : draft.hatch)
        {
            const SheetPoint middle = (line.points[0] + line.points[1]) / 2, along = line.points[1] - line.points[0];
            if (std::abs(middle.x() - z) < 6 && middle.y() > low && middle.y() < high)
                return std::atan2(along.y(), along.x());
        }
        return 9.0;
    };
    const double left = slope_at(-30, 1, 14), right = slope_at(30, 1, 14), sleeve = slope_at(-30, 15.5, 23);
    EXPECT_GT(std::abs(left - right), 0.1);
    EXPECT_GT(std::abs(left - sleeve), 0.1);
    EXPECT_GT(std::abs(right - sleeve), 0.1);
}

TEST(DrawingSheet, HoldsItsViewsInsideItsFrame)
{
    for (std::uint64_t seed = 1; seed <= 40; ++seed)
    {
        const Case asked = random_one(seed);
        for (const View2d view : views_of(asked))
        {
            const DrawingRoom room{170, 90};
            const NamedScale named = standard_scale(view, asked, room, 2.5);
            const Box box = extent(view(asked, named.scale));
            EXPECT_LE(box.width(), room.width) << seed << " " << named.name;
            EXPECT_LE(box.height(), room.height) << seed << " " << named.name;
        }
    }
}

TEST(DrawingSheet, PrintsTrueToScaleAndHoldsBlanksToFillIn)
{
    const Case asked = example("hill-climb-rear-left");
    const std::string svg = drawing_sheet(asked, shop_sheet(asked), "abc123").text();
    for (const char* text :
         {"width=\"420mm\" height=\"297mm\"", "viewBox=\"0 0 420 297\"", ">Drawing number<", ">Drawn: name, date<",
          ">Signature<", ">abc123<", "Splice, cut half above, 1:1", "241.4 ±0.5"})
        EXPECT_NE(svg.find(text), std::string::npos) << text;
}

}  // namespace splicewright
