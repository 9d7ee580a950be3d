// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "post/page_terms.h"
#include "post/report_html.h"

namespace splicewright
{

// The sections of the page, in their order; each returns nothing where the case has nothing for it.
struct PageContent
{
    const Report& report;
    const PageExtras& extras;
    Terms& terms;  // those already explained
};

Markup asked_section(const PageContent& page);
Markup drawing_section(const PageContent& page);
Markup governing_section(const PageContent& page);
Markup what_if_section(const PageContent& page);
Markup checks_section(const PageContent& page);
Markup pictures_section(const PageContent& page);
Markup handbook_section(const PageContent& page);
Markup life_section(const PageContent& page);
Markup tolerances_section(const PageContent& page);
Markup making_section(const PageContent& page);
Markup assumptions_section(const PageContent& page);
Markup evidence_section(const PageContent& page);
Markup cautions_section(const PageContent& page);

// The place of the view in three dimensions among the pictures: the still picture, and beside it the data of the view.
// Its script takes the picture's place where the browser can draw; without script nothing is missing.
Markup view_in_three_dimensions(const PageContent& page);

// The picture of that name; nothing when it could not be drawn.
Markup page_picture(const PageContent& page, const char* file, const std::string& alt, const std::string& caption);

// What a page may run.
enum class PageScript
{
    none,
    view,  // the script of the view in three dimensions, known by its fingerprint
};

// The head of a page that loads nothing, and the whole document.
Markup page_head(const std::string& title, PageScript script, PagePaper paper = PagePaper::of_the_browser);
std::string html_document(const Markup& head, const Markup& body);

// A file kept in the page: a link that saves it, and its checksum. `role`: "The case".
Markup kept_file(const PageFile& file, const char* role);

// A check worked through: formula, numbers, result, then method, source and validity.
Markup worked_check(const CheckRow& row);

}  // namespace splicewright
