// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "tests/house/tree.h"

namespace splicewright::house
{

// Each rule takes the project's text and returns what breaks it, "path:line: what"; empty when all is well.
using Complaints = std::vector<std::string>;
using Files = std::vector<TextFile>;

// cases <- mesh <- solver <- post <- app: a floor includes itself and what stands to its left, written from
// the root.
Complaints floor_complaints(const Files& files);
// <gmsh.h> in one source, VTK in two, neither in a header. Tests are exempt.
Complaints adapter_complaints(const Files& files);

// Keys cited in code and documents but missing from docs/references.bib, doubled entries,
// and comments that promise a source without naming one.
Complaints unknown_citation_complaints(const Files& files);
// Entries of docs/references.bib that nothing cites.
Complaints unused_reference_complaints(const Files& files);

Complaints top_level_complaints(const std::vector<std::string>& paths);
// Words that only make sense where the project was written.
Complaints foreign_word_complaints(const Files& files);

Complaints licence_tag_complaints(const Files& files);
Complaints length_complaints(const Files& files);
Complaints left_open_complaints(const Files& files);
Complaints printing_complaints(const Files& files);
Complaints using_namespace_complaints(const Files& files);
Complaints test_name_complaints(const Files& files);

Complaints sentence_complaints(const Files& files);

}  // namespace splicewright::house
