// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/house/rules.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <initializer_list>
#include <string>
#include <utility>

namespace splicewright::house
{

namespace
{

// A small project on disk, so that reading the folder is tested along with the rules. What would break the
// rules of this project when it stood here in one piece is written in two.
class Project
{
public:
    Project(std::initializer_list<std::pair<std::string, std::string>> files)
        : root_(std::filesystem::temp_directory_path() / fmt::format("splicewright-rules-{}", getpid()))
    {
        std::filesystem::remove_all(root_);
        for (const auto& [path, text] : files)
        {
            std::filesystem::create_directories((root_ / path).parent_path());
            std::ofstream(root_ / path) << text;
        }
    }
    Project(const Project&) = delete;
    Project& operator=(const Project&) = delete;
    ~Project() { std::filesystem::remove_all(root_); }

    [[nodiscard]] Files text() const { return project_text(root_); }
    [[nodiscard]] std::vector<std::string> paths() const { return project_paths(root_); }

private:
    std::filesystem::path root_;
};

const std::string include = "#include ";

}  // namespace

TEST(LayeringRule, AcceptsIncludesToTheLeftAndTestsOfAllFloors)
{
    const Project project{{"mesh/a.cpp", include + "\"mesh/a.h\"\n" + include + "\"cases/case.h\"\n#include <map>\n"},
                          {"tests/unit/b.cpp", include + "\"app/check.h\"\n"}};
    EXPECT_EQ(floor_complaints(project.text()), Complaints{});
}

TEST(LayeringRule, RefusesAnIncludeToTheRight)
{
    const Project project{{"mesh/a.h", "\n" + include + "\"solver/solve.h\"\n"}};
    EXPECT_EQ(floor_complaints(project.text()), Complaints{"mesh/a.h:2: solver/solve.h stands to the right of mesh"});
}

TEST(LayeringRule, RefusesAnIncludeToTheRightInAngleBrackets)
{
    const Project project{{"cases/a.cpp", "#  include <post/report.h>\n"}};
    EXPECT_EQ(floor_complaints(project.text()),
              Complaints{"cases/a.cpp:1: post/report.h stands to the right of cases"});
}

TEST(LayeringRule, RefusesAnIncludeThatIsNotWrittenFromTheRoot)
{
    const Project project{{"mesh/a.cpp", include + "\"a.h\"\n"}, {"mesh/b.cpp", include + "\"../app/b.h\"\n"}};
    EXPECT_EQ(floor_complaints(project.text()).size(), 2U);
}

TEST(AdapterRule, AcceptsTwoGmshAndTwoVtkSources)
{
    const Project project{{"mesh/a.cpp", include + "<gmsh.h>\n"},
                          {"mesh/e.cpp", include + "<gmsh.h>\n"},
                          {"post/b.cpp", include + "<vtkActor.h>\n" + include + "<vtkCellArray.h>\n"},
                          {"post/c.cpp", include + "<vtkActor.h>\n"},
                          {"tests/d.cpp", include + "<vtkActor.h>\n"}};
    EXPECT_EQ(adapter_complaints(project.text()), Complaints{});
}

TEST(AdapterRule, RefusesAThirdGmshSource)
{
    const Project project{{"mesh/a.cpp", include + "<gmsh.h>\n"},
                          {"mesh/c.cpp", include + "<gmsh.h>\n"},
                          {"solver/b.cpp", include + "<gmsh.h>\n"}};
    EXPECT_EQ(adapter_complaints(project.text()).size(), 1U);
}

TEST(AdapterRule, RefusesAThirdVtkSource)
{
    const Project project{{"post/a.cpp", include + "<vtkActor.h>\n"},
                          {"post/b.cpp", include + "<vtkActor.h>\n"},
                          {"app/c.cpp", include + "<vtkActor.h>\n"}};
    EXPECT_EQ(adapter_complaints(project.text()).size(), 1U);
}

TEST(AdapterRule, RefusesEitherLibraryInAHeader)
{
    const Project project{{"mesh/a.h", include + "<gmsh.h>\n"}, {"post/b.h", include + "<vtkActor.h>\n"}};
    EXPECT_EQ(adapter_complaints(project.text()),
              (Complaints{"mesh/a.h:1: Gmsh in a header", "post/b.h:1: VTK in a header"}));
}

TEST(CitationRule, AcceptsKeysThatStandInTheReferences)
{
    const Project project{
        {"docs/references.bib", "@book{Known2001,\n}\n@misc{EN1-2,\n}\n"},
        {"post/a.cpp", "// Source: [Known2001] eq. 3, in MPa; [EN1-2] table 4.\nint shape;  // [3, 4]\n"}};
    EXPECT_EQ(unknown_citation_complaints(project.text()), Complaints{});
    EXPECT_EQ(unused_reference_complaints(project.text()), Complaints{});
}

TEST(CitationRule, RefusesAKeyWithoutAReference)
{
    const Project project{{"docs/references.bib", "@book{Known2001,\n}\n"},
                          {"post/a.cpp",
                           "\n// Source: [Nob"
                           "ody] p. 3\n"}};
    EXPECT_EQ(unknown_citation_complaints(project.text()).size(), 1U);
}

TEST(CitationRule, ReadsTheWholeCommentAndEveryKeyInABracket)
{
    const Project project{{"docs/references.bib", "@book{Known2001,\n}\n"},
                          {"post/a.cpp", "// Source: [Known2001; EN7-1] and\n// also [EN7-2] in MPa [MPa].\n"}};
    EXPECT_EQ(unknown_citation_complaints(project.text()).size(), 2U);
}

TEST(CitationRule, ReadsSourceValuesInCodeAndData)
{
    const Project project{{"cases/steels.toml", "source = \"[EN7-3] table 1\"\n"},
                          {"post/a.cpp", "row.source = \"[EN7-4] 4.5\";\n"}};
    EXPECT_EQ(unknown_citation_complaints(project.text()).size(), 2U);
}

TEST(CitationRule, RefusesASourceWithoutAKeyUnlessItAdmitsThereIsNone)
{
    const Project empty{{"post/a.cpp", "// Source: a book\n"}};
    EXPECT_EQ(unknown_citation_complaints(empty.text()).size(), 1U);
    const Project admitted{{"post/a.cpp", "// Source: judgement, no document\n"}};
    EXPECT_EQ(unknown_citation_complaints(admitted.text()), Complaints{});
}

TEST(CitationRule, RefusesDoubledAndUncitedReferences)
{
    const Project project{{"docs/references.bib", "@book{Known2001,\n}\n@book{ Known2001,\n}\n"}};
    EXPECT_EQ(unknown_citation_complaints(project.text()).size(), 1U);
    EXPECT_EQ(unused_reference_complaints(project.text()).size(), 1U);
}

TEST(LayoutRule, NamesWhatIsMissingAndWhatIsTooMuch)
{
    const Project project{{"CMakeLists.txt", ""},
                          {"CMakePresets.json", ""},
                          {"README.md", ""},
                          {"LICENSE", ""},
                          {"run", ""},
                          {"cases/a", ""},
                          {"mesh/a", ""},
                          {"solver/a", ""},
                          {"post/a", ""},
                          {"app/a", ""},
                          {"tests/a", ""},
                          {"docs/a", ""},
                          {".hidden/a", ""},
                          {"tools/a", ""}};
    EXPECT_EQ(top_level_complaints(project.paths()),
              (Complaints{"tools: does not belong at the top level", "DEVELOPERS.md: missing at the top level"}));
}

TEST(LayoutRule, RefusesWordsThatOnlyMakeSenseElsewhere)
{
    const Project project{{"a.md",
                           "See /wo"
                           "rk/main.\nThe Trans"
                           "cript.\nThe work of the weld, a public transcription.\n"}};
    EXPECT_EQ(foreign_word_complaints(project.text()).size(), 2U);
}

TEST(SourceTextRule, DemandsTheLicenceTagOnTheFirstLineOrUnderTheShebang)
{
    const std::string tag = "SPDX-License-Identifier: GPL-2.0-or-later\n";
    const Project good{{"a.h", "// " + tag}, {"CMakeLists.txt", "# " + tag}, {"run", "#!/bin/sh\n# " + tag}};
    EXPECT_EQ(licence_tag_complaints(good.text()), Complaints{});
    const Project bad{{"a.h", "\n// " + tag}, {"b.cpp", ""}, {"CMakeLists.txt", "// " + tag}, {"run", "#!/bin/sh\n"}};
    EXPECT_EQ(licence_tag_complaints(bad.text()).size(), 4U);
}

TEST(SourceTextRule, CountsLinesOnTheFloorsOnly)
{
    const std::string allowed(400, '\n');
    const Project project{{"post/a.cpp", allowed}, {"post/b.cpp", allowed + "\n"}, {"tests/c.cpp", allowed + "\n"}};
    EXPECT_EQ(length_complaints(project.text()), Complaints{"post/b.cpp: 401 lines, at most 400"});
}

TEST(SourceTextRule, FindsWhatIsLeftOpen)
{
    const Project project{{"a.cpp",
                           "// TO"
                           "DO later\nTEST(A, DISA"
                           "BLED_B)\nint todos;\nGTEST_SK"
                           "IP() << reason;\nGTEST_SK"
                           "IP();\n"}};
    EXPECT_EQ(left_open_complaints(project.text()),
              (Complaints{"a.cpp:1: left open", "a.cpp:2: left open", "a.cpp:5: left open"}));
}

TEST(SourceTextRule, FindsPrintingBelowTheProgram)
{
    const std::string printing = "std::cout << 1;\nstd::printf(\"\");\nfmt::print(\"\");\nstd::snprintf(a, 1, b);\n";
    const Project project{{"post/a.cpp", printing}, {"app/a.cpp", printing}, {"tests/a.cpp", printing}};
    EXPECT_EQ(printing_complaints(project.text()).size(), 3U);
}

TEST(SourceTextRule, FindsANamespaceOpenedInAHeader)
{
    const Project project{{"post/a.h", "using namespace std;\n"}, {"post/a.cpp", "using namespace std;\n"}};
    EXPECT_EQ(using_namespace_complaints(project.text()).size(), 1U);
}

TEST(SourceTextRule, FindsTestNamesThatAreNotClaims)
{
    const std::string open = "TEST";
    const Project project{{"tests/a.cpp", open + "(Good, IsAClaim)\n" + open + "(Bad, has_words)\n" + open +
                                              "(Bad_suite, IsAClaim)\n" + open + "(Bad, startsSmall)\n"}};
    EXPECT_EQ(test_name_complaints(project.text()).size(), 3U);
}

TEST(SentenceRule, AcceptsOneSentencePerLine)
{
    const Project project{
        {"a.md",
         "# One. Two\n\nOne sentence, e.g. this.\nSee eq. 3 of R. Mises, vol. B.\n- an item\n- another\n"
         "| One. Two. | x |\n```\nOne. Two.\nno stop\nno stop\n```\nIt says:\nsplicewright.\n"}};
    EXPECT_EQ(sentence_complaints(project.text()), Complaints{});
}

TEST(SentenceRule, RefusesTwoSentencesOnALineAndOneOverTwo)
{
    const Project project{{"a.md", "This is one. This is two.\n\nRun `it`. Then look.\n\nThis goes\non here.\n"}};
    EXPECT_EQ(sentence_complaints(project.text()),
              (Complaints{"a.md:1: two sentences on one line", "a.md:3: two sentences on one line",
                          "a.md:6: a sentence broken over two lines"}));
}

}  // namespace splicewright::house
