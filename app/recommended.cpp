// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/recommended.h"

#include <fmt/format.h>

#include <optional>

#include "app/check_splice.h"
#include "app/write_report.h"
#include "cases/problem.h"

namespace splicewright
{

std::string write_recommended(const Study& study, std::uint64_t index, const Markup& options,
                              const std::filesystem::path& folder)
{
    const Result<Case> asked = option_case(study, index);
    if (!asked.has_value()) return to_string(asked.problems().front());
    std::optional<Report> report;
    try
    {
        report = check_splice(asked.value(), study.accuracy, study.models);
    }
    catch (const CannotCompute& error)
    {
        return error.what();
    }
    catch (const BrokenPromise& error)
    {
        return fmt::format("our fault, please report it: {}", error.what());
    }
    const Markup told =
        element("p", words(fmt::format("This is option {} of a study: ", index + 1)) +
                         element("a", {{"href", "../report.html"}}, words("its page with charts")) + words("."));
    write_report(*report, folder / recommended_folder, {false, told + options});
    return {};
}

}  // namespace splicewright
