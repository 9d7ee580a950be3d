// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/model_options.h"

#include <map>
#include <string>

namespace splicewright
{

void add_model_options(CLI::App& words, ModelUse& use)
{
    static const std::map<std::string, ModelChoice> choices{
        {"meridian", ModelChoice::meridian}, {"solid", ModelChoice::solid}, {"both", ModelChoice::both}};
    words
        .add_option("--model", use.choice,
                    "meridian: body of revolution; solid: tetrahedra; both: side by side (default: the solid model "
                    "takes part where the case is no body of revolution)")
        ->transform(CLI::CheckedTransformer(choices, CLI::ignore_case).description("meridian, solid or both"));
    words.add_option("--solid-dofs", use.budget.dofs, "Unknowns of a solid model, within a fifth")
        ->check(CLI::Range(std::size_t{30000}, std::size_t{20000000}))
        ->capture_default_str();
}

}  // namespace splicewright
