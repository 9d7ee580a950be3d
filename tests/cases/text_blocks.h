// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "cases/read_case.h"

namespace splicewright
{

// A valid case with a sleeve, in one text; each line holds one key, so that tests change it line by line.
const std::string& sound_splice_text();

// The text with its one occurrence of `line` replaced; throws when it does not occur exactly once.
std::string with(const std::string& text, const std::string& line, const std::string& replacement);

// The sound splice with one line changed.
std::string splice_with(const std::string& line, const std::string& replacement);

std::string file_text(const std::string& path_in_project);

std::vector<std::string> messages(const std::string& text);

// The problem of a field; an empty problem when there is none.
Problem problem_of(const std::string& text, const std::string& field);

// Expects that the text has exactly this one problem, its rule and its fix holding the given parts, and that it is
// told with file, line and column.
void expect_only_problem(const std::string& text, const std::string& field, const std::string& rule_part,
                         const std::string& fix_part);

// "value (reason)" of a recorded default; empty when none is recorded.
std::string default_of(const Case& asked, const std::string& field);

// Whether one of the cautions holds these words.
bool has_caution(const Case& asked, const std::string& part);

// Fails when the text is not a case; the messages are in the failure.
Case accepted(const std::string& text);

}  // namespace splicewright
