// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/refusal.h"

#include <fmt/format.h>

#include "app/exit_status.h"

namespace splicewright
{

int refused(const std::vector<Problem>& problems, const std::string& in)
{
    for (const Problem& problem : problems) fmt::print(stderr, "{}\n", to_string(problem));
    fmt::print(stderr, "{} problem{}{}{}; nothing was computed.\n", problems.size(), problems.size() == 1 ? "" : "s",
               in.empty() ? "" : " in ", in);
    return exit_bad_input;
}

}  // namespace splicewright
