// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "post/markup.h"

namespace splicewright
{

// Building blocks of the page.

Markup paragraph(const std::string& text);
Markup list_of(const std::vector<std::string>& items);

// A cell: a number stands to the right, words to the left.
struct PageCell
{
    Markup inside;
    bool number = false;
};
PageCell words_cell(const std::string& text);
PageCell user_cell(const std::string& text);  // a user's words
PageCell number_cell(const std::string& text);

struct PageRow
{
    std::vector<PageCell> cells;
    Markup below;         // of the whole width under the cells
    bool faint = false;   // does not govern
    std::string id = {};  // kept as data-id
};

// A table with a caption and headers; the first cell of a row heads it. On a narrow screen each row becomes a card.
struct PageTable
{
    std::string caption;
    std::vector<std::string> heads;
    std::vector<PageRow> rows;
};
Markup table(const PageTable& shown);

// Names and what they are, two columns.
using Facts = std::vector<std::pair<std::string, Markup>>;
Markup facts(const std::string& caption, const Facts& list);

// What is drawn, in a frame that scrolls sideways where the screen is narrow, with a caption under it.
Markup figure(const Markup& drawing, const std::string& caption);

// A PNG inside the page; `alt` says what is to be seen.
struct PagePicture
{
    std::string file, png;  // name in the folder, its bytes
};
Markup png_figure(const PagePicture& picture, const std::string& alt, const std::string& caption);
// An SVG file kept apart from the page, 1600 by 1000.
Markup svg_figure(const std::string& svg, const std::string& alt, const std::string& caption);

std::string base64(std::string_view bytes);

Markup section(const char* id, const char* heading, const Markup& inside);
Markup subsection(const char* heading, const Markup& inside);
Markup folded(const std::string& summary, const Markup& inside, bool open = false);

// "passes" or "DOES NOT PASS", with a frame that differs as well.
Markup pass_mark(bool passes);

}  // namespace splicewright
