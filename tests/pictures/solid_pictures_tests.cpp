// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>
#include <unistd.h>

#include <Eigen/LU>
#include <algorithm>
#include <cmath>

#include "post/site_loads.h"
#include "post/vtk_files.h"
#include "post/vtk_pictures.h"
#include "read_back.h"
#include "solver/solid_answer.h"
#include "tests/mesh/sample_cases.h"
#include "tests/mesh/solid_measure.h"

// As in vtk_pictures_tests.cpp.
// NOLINTBEGIN(bugprone-reserved-identifier,readability-identifier-naming): the sanitizer looks for this name
extern "C" __attribute__((visibility("default"))) const char* __asan_default_options();
extern "C" const char* __asan_default_options() { return "detect_leaks=0"; }
// NOLINTEND(bugprone-reserved-identifier,readability-identifier-naming)

namespace splicewright
{
namespace
{

constexpr int vtk_quadratic_triangle = 22, vtk_quadratic_tetra = 24;  // VTK's file format
constexpr const char* load_text = "peak torque 450 N·m with 35 N·m of bending";

struct Shown
{
    Case asked;
    SolidModelAnswer solid;
    CombinedLoad load;
};

Shown shown(Case asked)
{
    asked.title = "A splice";
    asked.load.peak_torque = NewtonMillimetre(4.5e5);
    asked.load.peak_bending = NewtonMillimetre(3.5e4);
    SolidBudget budget;
    budget.dofs = 90000;  // a quarter of what its narrow faces ask for is refused
    const CombinedLoad load = peak_load(asked);
    return {asked, solid_model_answer(asked, {}, budget, 40, {SolidDetail::whole, load}), load};
}

// Sleeve welds that end, plug welds, and a half lap whose faces touch; solved once for all tests.
const Shown& partly_welded()
{
    static const Shown made = []
    {
        Case asked = sample::with_slit(sample::partly_welded_splice(), SlitState::open, SlitState::open);
        asked.sleeve->plugs = sample::plugged_splice().sleeve->plugs;
        return shown(asked);
    }();
    return made;
}

std::filesystem::path empty_folder(const std::string& name)
{
    const auto folder = std::filesystem::path(testing::TempDir()) / (name + std::to_string(getpid()));
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    return folder;
}

SolidFileRequest file_request(const Shown& of, const std::filesystem::path& folder)
{
    return {*of.solid.fields, load_text, "A splice", "0.1.0", "sound", folder};
}

double largest(const Eigen::MatrixXd& values) { return values.maxCoeff(); }

TEST(SolidFile, VtkReadsBackElementsRegionsUnitsAndTheLoad)
{
    const SolidFields& fields = *partly_welded().solid.fields;
    const auto folder = empty_folder("solid");
    write_solid_file(file_request(partly_welded(), folder));
    const sample::ReadGrid grid = sample::read_grid(folder / "solid.vtu");
    EXPECT_EQ(grid.n_cells, static_cast<int>(partly_welded().solid.evidence.elements));
    EXPECT_EQ(grid.cell_type, vtk_quadratic_tetra);
    EXPECT_EQ(grid.point.cols(), static_cast<Eigen::Index>(fields.size()));
    EXPECT_EQ(grid.field.at("region_names"), fields.region);
    EXPECT_EQ(grid.field.at("load").front(), load_text);
    EXPECT_EQ(grid.component.at("stress_MPa"), (std::vector<std::string>{"xx", "yy", "zz", "xy", "yz", "xz"}));
    for (const char* name : {"von_mises_MPa", "principal_MPa", "worst_of_turn_von_mises_MPa",
                             "worst_of_turn_principal_MPa", "displacement_mm"})
        EXPECT_EQ(grid.point_array.count(name), 1U) << name;
}

// Every ten-node tetrahedron in VTK's order has its middle nodes beside the middles of its edges: within a third of
// their length on these curves.
TEST(SolidFile, MiddleNodesStandOnTheEdgesThatVtkExpects)
{
    const SolidFields& fields = *partly_welded().solid.fields;
    constexpr int edges[6][2] = {{0, 1}, {1, 2}, {0, 2}, {0, 3}, {1, 3}, {2, 3}};  // of VTK_QUADRATIC_TETRA
    for (const auto& element : fields.element)
        for (std::size_t e = 0; e < 6; ++e)
        {
            const Eigen::Vector3d a = fields.place.col(element[static_cast<std::size_t>(edges[e][0])]),
                                  b = fields.place.col(element[static_cast<std::size_t>(edges[e][1])]);
            ASSERT_LT((fields.place.col(element[4 + e]) - (a + b) / 2).norm(), (b - a).norm() / 3);
        }
}

// The checks read sites at the nodes of their faces, over 120 directions of bending; the field holds the same values in
// single precision. Sites of the outside are peaks of the field near them: nothing near is larger.
TEST(SolidFile, LargestValueAtASiteIsThatOfTheAnswer)
{
    const Shown& of = partly_welded();
    const auto folder = empty_folder("largest");
    write_solid_file(file_request(of, folder));
    const sample::ReadGrid grid = sample::read_grid(folder / "solid.vtu");
    const Eigen::MatrixXd& worst = grid.point_array.at("worst_of_turn_von_mises_MPa");
    int n_compared = 0;
    for (const SiteAnswer& site : of.solid.answer.sites)
    {
        if (!site.id.starts_with("bar-toe") && !site.id.starts_with("sleeve-toe")) continue;
        const SiteDemand demand = site_demand(site, of.load);
        const Eigen::Vector3d place(demand.r * std::cos(demand.around), demand.r * std::sin(demand.around), demand.z);
        double there = 0;
        for (Eigen::Index i = 0; i < grid.point.cols(); ++i)
            if ((grid.point.col(i) - place).norm() < 1e-6) there = std::max(there, worst(0, i));
        EXPECT_NEAR(there / demand.von_mises, 1, 1e-6) << site.id;
        ++n_compared;
    }
    EXPECT_EQ(n_compared, 4);
    // The stress towards one direction is never above that of the worst one.
    EXPECT_LE(largest(grid.point_array.at("von_mises_MPa") - worst), 1e-3);
}

TEST(SolidFile, AnEighthOfTheElementsKeepsTheValuesOfItsNodes)
{
    const SolidFields& fine = *partly_welded().solid.fields;
    const SolidFields thin = thinned(fine);
    EXPECT_EQ(8 * thin.element.size(), fine.element.size());
    double volume = 0, fine_volume = 0;
    const auto six_volumes = [](const SolidFields& fields, const std::array<std::int32_t, 10>& element)
    {
        const Eigen::Vector3d a = fields.place.col(element[0]);
        Eigen::Matrix3d edges;
        for (int k = 0; k < 3; ++k)
            edges.col(k) = Eigen::Vector3d(fields.place.col(element[static_cast<std::size_t>(k + 1)])) - a;
        return edges.determinant();
    };
    for (const auto& element : thin.element) volume += six_volumes(thin, element);
    for (const auto& element : fine.element) fine_volume += six_volumes(fine, element);
    // Flat elements cut off a little more of the round faces.
    EXPECT_NEAR(volume / fine_volume, 1, 0.02);
    // Faces that are one surface in both.
    const auto outside = [](const SolidFields& fields)
    {
        const auto skin = solid_skin(fields);
        return std::count_if(skin.begin(), skin.end(),
                             [](const auto& face) { return face.kind == SolidFace::unfused; });
    };
    EXPECT_EQ(4 * outside(thin), outside(fine));
}

TEST(SolidLapFile, HoldsThePressureAndTheGapOfTheAnswer)
{
    const Shown& of = partly_welded();
    ASSERT_TRUE(of.solid.contact);
    const auto folder = empty_folder("lap");
    write_solid_lap_file(file_request(of, folder));
    const sample::ReadGrid grid = sample::read_grid(folder / "solid-lap.vtu");
    EXPECT_EQ(grid.cell_type, vtk_quadratic_triangle);
    std::size_t n_faces = 0;
    for (const ContactSurface& surface : of.solid.contact->surfaces) n_faces += surface.faces.size();
    EXPECT_EQ(grid.n_cells, static_cast<int>(n_faces));
    EXPECT_NEAR(largest(grid.point_array.at("pressure_MPa")) / of.solid.contact->peak_pressure, 1, 1e-6);
    EXPECT_EQ(grid.point_array.at("gap_mm").cols(), grid.point.cols());
}

PictureRequest picture_request(const Shown& of, const SolvedFields& none, const std::filesystem::path& folder)
{
    PictureRequest request{none, of.asked, of.load, load_text, {}, folder};
    for (const SiteAnswer& site : of.solid.answer.sites)
    {
        const SiteDemand demand = site_demand(site, of.load);
        request.sites.push_back({site.id, demand.z, demand.r, std::to_string(std::lround(demand.von_mises)) + " MPa",
                                 site.id == "bar-toe.left" ? Importance::governing : Importance::ordinary,
                                 demand.around});
    }
    request.solid = &*of.solid.fields;
    request.solid_part = SolidPart::answered;
    return request;
}

void expect_pictures(const Pictures& pictures, const std::filesystem::path& folder,
                     const std::vector<std::string>& files)
{
    ASSERT_EQ(pictures.why_not, "");
    EXPECT_EQ(pictures.files, files);
    for (const std::string& file : pictures.files)
    {
        const sample::ReadPicture picture = sample::read_picture(folder / file);
        EXPECT_EQ(picture.width, 1600);
        // A page of text alone has fewer than two hundred greys.
        EXPECT_GT(picture.n_colours, 600) << file;
    }
}

TEST(SolidPictures, ShowTheSolidModelInThePlaceOfABodyOfRevolution)
{
    const auto folder = empty_folder("solid-pictures");
    const SolvedFields none;
    PictureRequest request = picture_request(partly_welded(), none, folder);
    request.contact = &partly_welded().solid.fields->contact;
    request.contact_scenario = "sound";
    expect_pictures(write_pictures(request), folder,
                    {"section.png", "cutaway.png", "governing-site.png", "solid-outside.png", "solid-deformed.png",
                     "solid-contact.png"});
}

TEST(SolidPictures, NoTwoTextsTouch)
{
    const SolvedFields none;
    PictureRequest request = picture_request(partly_welded(), none, {});
    request.contact = &partly_welded().solid.fields->contact;
    request.contact_scenario = "sound";
    const TextWidth width = measured_text_width();
    const PictureContent content = picture_content(request, width);
    for (const Page& page : {section_page(content), close_up_page(content), solid_cutaway_page(content),
                             solid_outside_page(content), solid_deformed_page(content), solid_contact_page(content)})
    {
        const std::vector<Text>& texts = page.sheet.text;
        for (std::size_t i = 0; i < texts.size(); ++i)
            for (std::size_t k = 0; k < i; ++k)
                EXPECT_FALSE(overlap(box_of(texts[i], width), box_of(texts[k], width)))
                    << page.file << ": " << texts[i].words << " | " << texts[k].words;
    }
}

}  // namespace
}  // namespace splicewright
