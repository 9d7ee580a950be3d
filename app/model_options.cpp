// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/model_options.h"

#include <fmt/format.h>

#include <map>
#include <string>
#include <vector>

#include "cases/nearest.h"
#include "cases/plain_text.h"

namespace splicewright
{

namespace
{

ModelChoice model_named(const std::string& name)
{
    static const std::map<std::string, ModelChoice> choices{
        {"meridian", ModelChoice::meridian}, {"solid", ModelChoice::solid}, {"both", ModelChoice::both}};
    const auto found = choices.find(lower_case(name));
    if (found != choices.end()) return found->second;
    const std::vector<std::string> near = nearest(name, {"meridian", "solid", "both"}, 1);
    throw CLI::ValidationError("--model",
                               fmt::format("{} is none of meridian, solid, both{}", splicewright::quoted(name),
                                           near.empty() ? "" : fmt::format("; did you mean {}?", near.front())));
}

}  // namespace

void add_model_options(CLI::App& words, ModelUse& use)
{
    words
        .add_option_function<std::string>(
            "--model", [&use](const std::string& name) { use.choice = model_named(name); },
            "meridian: body of revolution; solid: tetrahedra; both: side by side (default: the solid model "
            "takes part where the case is no body of revolution)")
        ->type_name("meridian, solid or both");
    words
        .add_option("--solid-dofs", use.budget.dofs, "Unknowns of a solid model; a shape with narrow faces takes more")
        ->check(CLI::Range(std::size_t{30000}, std::size_t{20000000}))
        ->capture_default_str();
}

}  // namespace splicewright
