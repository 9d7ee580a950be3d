// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/report.h"

namespace splicewright
{

// A text of the project by its path from the top.
std::string document(const std::string& path);
void write_document(const std::string& path, const std::string& text);

// What stands between the fences that follow the line "<!-- block: NAME -->". Throws when there is no such block.
std::string block(const std::string& markdown, const std::string& name);
std::string with_block(const std::string& markdown, const std::string& name, const std::string& content);

// Every header of the five floors, one after the other.
std::string headers();

// Cells of every table row of a Markdown text, headings and rules left out. [row][cell]
std::vector<std::vector<std::string>> table_rows(const std::string& markdown);

// "cases/examples/NAME.toml", sorted.
std::vector<std::string> example_paths();

Case example_case(const std::string& path);

// Of an example, at the coarsest accuracy that the program takes: the rows are those of any accuracy.
Report coarse_report(const std::string& path);

// "bar-toe.left" as "bar-toe.S", "shoulder.right.2" as "shoulder.S.N"; works within longer texts.
std::string without_side_and_number(const std::string& text);

}  // namespace splicewright
