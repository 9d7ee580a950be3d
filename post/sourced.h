// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "cases/case.h"

namespace splicewright
{

// A value together with where it comes from, so that whoever prints the value can print both.
template <class Value>
struct Sourced
{
    Value value{};
    std::string source;  // document, edition, clause, with its key in docs/references.bib
    Provenance provenance = Provenance::from_memory;
};

}  // namespace splicewright
