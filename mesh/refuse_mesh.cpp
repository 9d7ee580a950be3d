// SPDX-License-Identifier: GPL-2.0-or-later
#include "mesh/refuse_mesh.h"

#include <fmt/format.h>

#include "cases/problem.h"

namespace splicewright
{

void refuse_mesh(const char* part, const std::string& why)
{
    throw CannotCompute({"", 0, 0, "mesh", "", fmt::format("the {} could not be meshed: {}", part, why),
                         "please report this case file; a valid case should always mesh"});
}

}  // namespace splicewright
