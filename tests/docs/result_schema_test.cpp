// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include "post/result_json.h"
#include "tests/docs/documents.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::json;
using valijson::adapters::NlohmannJsonAdapter;

constexpr const char* quick_example = "cases/examples/plain-stepped-shaft.toml";

Json schema_text() { return Json::parse(document("docs/result.schema.json")); }

// Complaints of the schema about a result, one a line; empty when it is as described.
std::string complaints(const Json& result)
{
    const Json text = schema_text();
    valijson::Schema schema;
    valijson::SchemaParser(valijson::SchemaParser::kDraft7).populateSchema(NlohmannJsonAdapter(text), schema);
    valijson::ValidationResults found;
    valijson::Validator validator;
    validator.validate(schema, NlohmannJsonAdapter(result), &found);
    std::string lines;
    for (valijson::ValidationResults::Error error; found.popError(error);)
    {
        for (const std::string& step : error.context) lines += step;
        lines += fmt::format(": {}\n", error.description);
    }
    return lines;
}

// Calls `visit` for a value and everything in it; `place` names it as in "/checks/0/id".
template <class Visit>
void for_each_value(const Json& value, const Json::json_pointer& place, const Visit& visit)
{
    visit(value, place);
    if (value.is_object())
        for (const auto& [key, inner] : value.items()) for_each_value(inner, place / key, visit);
    if (value.is_array())
        for (std::size_t at = 0; at < value.size(); ++at) for_each_value(value[at], place / at, visit);
}

TEST(ResultSchema, DescribesTheResultOfEveryExample)
{
    for (const std::string& path : example_paths())
        EXPECT_EQ(complaints(Json::parse(result_json(coarse_report(path)))), "") << path;
}

TEST(ResultSchema, RefusesAKeyThatItDoesNotKnowAnywhere)
{
    const Json result = Json::parse(result_json(coarse_report(quick_example)));
    ASSERT_EQ(complaints(result), "");
    int n_objects = 0;
    for_each_value(result, Json::json_pointer(),
                   [&](const Json& value, const Json::json_pointer& place)
                   {
                       if (!value.is_object()) return;
                       ++n_objects;
                       Json changed = result;
                       changed[place]["surplus"] = 1;
                       EXPECT_NE(complaints(changed), "") << place.to_string();
                   });
    EXPECT_GT(n_objects, 20);
}

TEST(ResultSchema, RefusesAResultWithAKeyMissing)
{
    const Json result = Json::parse(result_json(coarse_report(quick_example)));
    for (const auto& [key, value] : result.items())
    {
        Json changed = result;
        changed.erase(key);
        EXPECT_NE(complaints(changed), "") << key;
    }
    Json changed = result;
    changed["checks"][0].erase("source");
    EXPECT_NE(complaints(changed), "");
}

TEST(ResultSchema, RefusesANumberThatIsNone)
{
    Json changed = Json::parse(result_json(coarse_report(quick_example)));
    changed["checks"][0]["demand"] = nullptr;
    EXPECT_NE(complaints(changed), "");
}

TEST(ResultSchema, HoldsForBothModelsSideBySide)
{
    Report report = coarse_report(quick_example);
    EXPECT_TRUE(Json::parse(result_json(report))["models"].is_null());
    report.sound.models.push_back({"toe.left", "torsion", {120, 2}, {130, 5}, false});
    Json result = Json::parse(result_json(report));
    EXPECT_EQ(complaints(result), "");
    EXPECT_EQ(result["models"]["rows"][0]["solid_MPa"]["value"], 130);
    EXPECT_EQ(result["models"]["rows"][0]["agrees"], false);
    result["models"]["rows"][0].erase("agrees");
    EXPECT_NE(complaints(result), "");
}

TEST(ResultSchema, HasTheVersionOfTheResult)
{
    EXPECT_EQ(schema_text()["properties"]["schema"]["const"], result_schema_version);
}

TEST(ResultSchema, ExplainsEveryKeyAndTheUnitOfEveryNumber)
{
    const std::regex unit(
        R"(\b(MPa|mm|km|deg|percent|seconds|rpm|HV|grams|dimensionless|share of|unit of this row)\b|N\*m)");
    for_each_value(schema_text(), Json::json_pointer(),
                   [&](const Json& value, const Json::json_pointer& place)
                   {
                       if (place.empty() || place.parent_pointer().empty()) return;
                       if (place.parent_pointer().back() != "properties" || !value.is_object()) return;
                       const std::string words = value.value("description", "");
                       EXPECT_NE(words, "") << place.to_string();
                       const std::string type = value.value("type", "");
                       if (type != "number" && type != "integer") return;
                       EXPECT_TRUE(std::regex_search(words, unit)) << place.to_string() << ": " << words;
                   });
}

}  // namespace
}  // namespace splicewright
