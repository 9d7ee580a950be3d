// SPDX-License-Identifier: GPL-2.0-or-later
#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

#include "cases/problem.h"
#include "post/vtk_pictures.h"
#include "read_back.h"
#include "sample_fields.h"

// Mesa's software renderer keeps a few hundred bytes for the life of the process and is unloaded before the leak
// sanitizer looks, so that no suppression by name can match: leaks are not sought in this program.
// NOLINTBEGIN(bugprone-reserved-identifier,readability-identifier-naming): the sanitizer looks for this name
extern "C" __attribute__((visibility("default"))) const char* __asan_default_options();
extern "C" const char* __asan_default_options() { return "detect_leaks=0"; }
// NOLINTEND(bugprone-reserved-identifier,readability-identifier-naming)

namespace splicewright
{
namespace
{

// Sets or (with null) unsets an environment variable while it lives.
class Environment
{
public:
    Environment(const char* name, const char* value) : name_(name), had_(std::getenv(name) != nullptr)
    {
        if (had_) before_ = std::getenv(name);
        if (value != nullptr) setenv(name, value, 1);
        else unsetenv(name);
    }
    ~Environment()
    {
        if (had_) setenv(name_, before_.c_str(), 1);
        else unsetenv(name_);
    }
    Environment(const Environment&) = delete;
    Environment& operator=(const Environment&) = delete;

private:
    const char* name_;
    bool had_;
    std::string before_;
};

struct Sample
{
    SolvedFields fields = sample::solved_fields({}, 1.5);
    Case asked = sample::splice_case({});
    std::filesystem::path folder;

    explicit Sample(const std::string& name)
        : folder(std::filesystem::path(testing::TempDir()) / (name + std::to_string(getpid())))
    {
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(folder);
    }
    [[nodiscard]] PictureRequest request(Display display) const
    {
        PictureRequest made{fields,
                            asked,
                            {1.15e6, 7e4, 0, 0},
                            "peak torque 1150 N·m",
                            {{"bar-toe.left", -48, 14, "912 MPa", Importance::governing}},
                            folder};
        made.display = display;
        return made;
    }
};

std::string bytes(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

TEST(Pictures, AreMadeWithoutADisplay)
{
    const Environment no_display("DISPLAY", nullptr);
    const Sample sample("pictures");
    const Pictures made = write_pictures(sample.request(Display::automatic));
    ASSERT_EQ(made.why_not, "");
    ASSERT_EQ(made.files, (std::vector<std::string>{"section.png", "cutaway.png", "governing-site.png"}));
    for (const std::string& file : made.files)
    {
        const sample::ReadPicture picture = sample::read_picture(sample.folder / file);
        EXPECT_EQ(picture.width, 1600);
        EXPECT_EQ(picture.height, 1000);
        EXPECT_GT(picture.n_colours, 256) << file;  // a smooth ramp and edges, not one flat colour
    }
}

TEST(Pictures, AreTheSameBytesEachTime)
{
    const Sample one("once"), other("twice");
    for (const Sample* sample : {&one, &other})
        ASSERT_EQ(write_pictures(sample->request(Display::automatic)).why_not, "");
    for (const char* file : {"section.png", "cutaway.png", "governing-site.png"})
        EXPECT_EQ(bytes(one.folder / file), bytes(other.folder / file)) << file;
}

TEST(Pictures, GrowWithTheScale)
{
    const Sample sample("scale");
    PictureRequest request = sample.request(Display::automatic);
    request.scale = 1.5;
    ASSERT_EQ(write_pictures(request).why_not, "");
    EXPECT_EQ(sample::read_picture(sample.folder / "section.png").width, 2400);
}

TEST(Pictures, MachineWithoutGraphicsGetsTheReasonAndNoFile)
{
    const Environment no_display("DISPLAY", nullptr), no_programs("PATH", "/nowhere");
    const Sample sample("reason");
    const Pictures made = write_pictures(sample.request(Display::virtual_only));
    EXPECT_TRUE(made.files.empty());
    EXPECT_NE(made.why_not.find("Xvfb"), std::string::npos) << made.why_not;
    EXPECT_TRUE(std::filesystem::is_empty(sample.folder));
    EXPECT_NE(write_pictures(sample.request(Display::none)).why_not, "");
}

TEST(Pictures, AFileThatCannotBeWrittenIsNamed)
{
    const Sample sample("full");
    std::filesystem::create_symlink("/dev/full", sample.folder / "section.png");
    try
    {
        write_pictures(sample.request(Display::automatic));
        ADD_FAILURE();
    }
    catch (const CannotCompute& failure)
    {
        EXPECT_EQ(failure.problem().file, (sample.folder / "section.png").string());
    }
}

TEST(Pictures, HostileTitleDoesNoHarm)
{
    Sample sample("title");
    sample.asked.title = std::string(400, 'W') + "$x^2$ |a| \xFF\xC3 \n %s";
    EXPECT_EQ(write_pictures(sample.request(Display::automatic)).why_not, "");
}

}  // namespace
}  // namespace splicewright
