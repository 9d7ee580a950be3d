// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>

#include "tests/docs/documents.h"

namespace splicewright
{
namespace
{

// What the first group of the pattern catches, from the start of the text on.
std::vector<std::string> caught(const std::string& text, const std::regex& pattern)
{
    std::vector<std::string> found;
    for (std::sregex_iterator match(text.begin(), text.end(), pattern), end; match != end; ++match)
        found.push_back((*match)[1]);
    return found;
}

TEST(Documents, EveryLinkLeadsToAFile)
{
    const std::regex link(R"(\]\(([^)#]+)[^)]*\))");
    for (const std::string path : {"README.md", "DEVELOPERS.md", "docs/case-format.md", "docs/comparing.md",
                                   "docs/methods.md", "docs/changes.md"})
    {
        const std::filesystem::path folder = (std::filesystem::path(SPLICEWRIGHT_SOURCE_DIR) / path).parent_path();
        for (const std::string& target : caught(document(path), link))
            EXPECT_TRUE(target.starts_with("http") || std::filesystem::exists(folder / target))
                << path << ": " << target;
    }
}

TEST(Developers, NameOnlyFilesThatThereAre)
{
    const std::vector<std::string> paths =
        caught(document("DEVELOPERS.md"), std::regex(R"(`([a-z]+/[A-Za-z0-9_./-]+\.[a-z]+)`)"));
    EXPECT_GT(paths.size(), 10U);
    for (const std::string& path : paths)
        EXPECT_TRUE(std::filesystem::exists(fmt::format("{}/{}", SPLICEWRIGHT_SOURCE_DIR, path))) << path;
}

TEST(Developers, DrawTheChainWithNamesThatAHeaderDeclares)
{
    const std::vector<std::string> names = caught(block(document("DEVELOPERS.md"), "chain"),
                                                  std::regex(R"(\b([a-z]+_[a-z_]+|[A-Z][a-z]+[A-Z][A-Za-z]+)\b)"));
    EXPECT_GT(names.size(), 20U);
    const std::string declared = headers();
    for (const std::string& name : names) EXPECT_NE(declared.find(name), std::string::npos) << name;
}

}  // namespace
}  // namespace splicewright
