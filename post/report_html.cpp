// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/report_html.h"

#include "post/page_sections.h"
#include "post/page_style.h"
#include "post/version.h"
#include "post/view_script.h"

namespace splicewright
{
namespace
{

struct PagePart
{
    const char* id;
    const char* name;  // in the list of contents
    Markup (*made)(const PageContent& page);
};

constexpr PagePart parts[] = {
    {"asked", "Asked and answered", asked_section},
    {"drawing", "Drawing", drawing_section},
    {"governs", "What governs", governing_section},
    {"what-if", "What if", what_if_section},
    {"checks", "Checks", checks_section},
    {"pictures", "Pictures", pictures_section},
    {"handbook", "Handbook", handbook_section},
    {"life", "Life", life_section},
    {"tolerances", "Tolerances and options", tolerances_section},
    {"making", "How to make it", making_section},
    {"assumptions", "Assumptions", assumptions_section},
    {"evidence", "Evidence", evidence_section},
    {"cautions", "Cautions", cautions_section},
};

Markup contents(const std::vector<const PagePart*>& there)
{
    Markup list;
    for (const PagePart* part : there)
        list += element("li", element("a", {{"href", std::string("#") + part->id}}, words(part->name)));
    return element("nav", {{"aria-label", "Contents"}}, element("ol", list));
}

std::string from_hexadecimal(std::string_view text)
{
    std::string bytes;
    for (std::size_t i = 0; i + 1 < text.size(); i += 2)
        bytes += static_cast<char>(std::stoi(std::string(text.substr(i, 2)), nullptr, 16));
    return bytes;
}

}  // namespace

Markup page_head(const std::string& title, PageScript script, PagePaper paper)
{
    const Markup sized = paper == PagePaper::a4 ? style_sheet("@page{size:A4}") : Markup();
    // The page may load nothing at all: what it shows stands inside it.
    std::string policy = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";
    if (script == PageScript::view)
        policy += "; script-src 'sha256-" + base64(from_hexadecimal(view_script_sha256)) + "'";
    return element("head",
                   element("meta", {{"charset", "utf-8"}}, {}) +
                       element("meta", {{"http-equiv", "Content-Security-Policy"}, {"content", policy}}, {}) +
                       element("meta", {{"name", "viewport"}, {"content", "width=device-width, initial-scale=1"}}, {}) +
                       element("meta", {{"name", "color-scheme"}, {"content", "light dark"}}, {}) +
                       element("title", title) + style_sheet(page_style) + sized);
}

std::string html_document(const Markup& head, const Markup& body)
{
    return "<!DOCTYPE html>\n" + element("html", {{"lang", "en"}}, head + element("body", body)).text() + "\n";
}

std::string report_html(const Report& report, const PageExtras& extras, PagePaper paper)
{
    Terms terms;
    const PageContent page{report, extras, terms};
    Markup sections;
    std::vector<const PagePart*> there;
    for (const PagePart& part : parts)
    {
        const Markup made = part.made(page);
        if (made.empty()) continue;
        there.push_back(&part);
        sections += made;
    }
    const Markup header = element("header", element("p", {{"class", "kind"}}, words("Report on a welded half shaft")) +
                                                element("h1", user_words(report.asked.title)) +
                                                element("p", {{"class", "kind"}},
                                                        words("Case file ") + user_words(extras.case_file.name) +
                                                            words(std::string(", splicewright ") + version())));
    return html_document(page_head(report.asked.title, PageScript::view, paper),
                         header + contents(there) + element("main", sections) + script(view_script));
}

}  // namespace splicewright
