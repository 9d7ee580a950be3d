// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/page_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

#include "cases/problem.h"
#include "post/view_sites.h"

namespace splicewright
{
namespace
{

struct Term
{
    const char* name;
    const char* meaning;
};

constexpr std::array terms{
    Term{"used",
         "the share of what is allowed that is used up; at 100 % nothing is left, and above it the check fails"},
    Term{"strength", "holds once, under the largest load: does the metal yield?"},
    Term{"fatigue", "lasts the life asked for: does a crack start and grow through under the many smaller loads?"},
    Term{"site", "a place where the splice can fail; .left and .right tell the side of the joint"},
    Term{"bar-toe", "where the sleeve's weld runs out on the bar"},
    Term{"sleeve-toe", "where the weld runs out on the sleeve"},
    Term{"root", "the inner corner of the sleeve's weld, at the end of the gap between bar and sleeve"},
    Term{"butt", "the weld between the two bar ends, hidden under the sleeve"},
    Term{"penetration", "how deep the butt weld is fused"},
    Term{"half lap", "both bar ends cut to half their section, so that they interlock before they are welded"},
    Term{"leg", "the side of a fillet weld, along the bar or up the sleeve; z on the drawing"},
    Term{"von Mises stress", "one number for a mixed stress, to be held against the strength of a tensile test"},
    Term{"finite elements", "the part cut into thousands of small pieces whose balance the computer solves"},
    Term{"error",
         "how wrong the computed stress can be because the mesh is not endlessly fine; the share used stands at "
         "the upper end of it"},
    Term{"life", "how often the whole life asked for can be run through before this place fails"},
    Term{"relied on",
         "from memory: recalled, to be verified against the document; judgement: ours, no document; derived: "
         "follows from named sources"},
    Term{"does not govern", "the method is outside its own limits here: its line is shown and does not count"},
    Term{"hot-spot stress",
         "the stress beside a weld, read at fixed distances on the surface and continued to the toe"},
    Term{"GJ", "the stiffness in torsion: shear modulus times polar second moment of the section"},
    Term{"handbook", "closed formulas of textbooks; the band says within what the formula itself can be trusted"},
    Term{"residual", "what is left over when the solution is put back into the equations; it should be almost nothing"},
    Term{"carbon equivalent", "one number for how readily a steel hardens and cracks beside a weld; higher is worse"},
    Term{"preheat", "heat put in before and held while welding, so that the steel cools slowly and does not crack"},
    Term{"default", "a value that the case does not state and the program took; read them"},
    Term{"checksum", "a fingerprint of the case file: it changes when a single letter changes"},
};

const Term* term_named(std::string_view name)
{
    const auto found = std::find_if(terms.begin(), terms.end(), [&](const Term& term) { return name == term.name; });
    return found == terms.end() ? nullptr : &*found;
}

// With the stop that it lacks.
std::string sentence(const std::string& text) { return text.ends_with('?') ? text : text + "."; }

Markup cells_of(const PageTable& shown, const PageRow& row)
{
    EXPECTS(row.cells.size() == shown.heads.size());
    Markup all;
    for (std::size_t i = 0; i < row.cells.size(); ++i)
    {
        Attributes attributes{{"role", i == 0 ? "rowheader" : "cell"}, {"data-head", shown.heads[i]}};
        if (row.cells[i].number) attributes.push_back({"class", "n"});
        if (i == 0) attributes.push_back({"scope", "row"});
        all += element(i == 0 ? "th" : "td", attributes, row.cells[i].inside);
    }
    return all;
}

}  // namespace

Markup paragraph(const std::string& text) { return element("p", text); }

Markup list_of(const std::vector<std::string>& items)
{
    Markup all;
    for (const std::string& item : items) all += element("li", user_words(item));
    return items.empty() ? Markup() : element("ul", all);
}

PageCell words_cell(const std::string& text) { return {words(text)}; }
PageCell user_cell(const std::string& text) { return {user_words(text)}; }
PageCell number_cell(const std::string& text) { return {words(text), true}; }

Markup table(const PageTable& shown)
{
    Markup heads, body;
    for (const std::string& head : shown.heads)
        heads += element("th", {{"scope", "col"}, {"role", "columnheader"}}, words(head));
    for (const PageRow& row : shown.rows)
    {
        Attributes attributes{{"role", "row"}, {"class", row.faint ? "row faint" : "row"}};
        if (!row.id.empty())
        {
            attributes.push_back({"data-id", row.id});
            attributes.push_back({"id", row_mark(row.id)});
        }
        body += element("tr", attributes, cells_of(shown, row));
        if (row.below.empty()) continue;
        body += element("tr", {{"role", "row"}, {"class", "below"}},
                        element("td", {{"role", "cell"}, {"colspan", std::to_string(shown.heads.size())}}, row.below));
    }
    return element("table", {{"role", "table"}},
                   element("caption", shown.caption) +
                       element("thead", {{"role", "rowgroup"}}, element("tr", {{"role", "row"}}, heads)) +
                       element("tbody", {{"role", "rowgroup"}}, body));
}

Markup facts(const std::string& caption, const Facts& list)
{
    PageTable shown{caption, {"What", "Value"}, {}};
    for (const auto& [name, value] : list) shown.rows.push_back({{words_cell(name), {value}}, {}, false});
    return table(shown);
}

Markup figure(const Markup& drawing, const std::string& caption)
{
    return element(
        "figure",
        element("div", {{"class", "drawn"}, {"tabindex", "0"}, {"role", "group"}, {"aria-label", caption}}, drawing) +
            element("figcaption", caption));
}

namespace
{

Markup image_figure(const char* type, std::string_view bytes, const std::string& alt, const std::string& caption)
{
    const Markup image = element("img",
                                 {{"src", fmt::format("data:{};base64,{}", type, base64(bytes))},
                                  {"alt", alt},
                                  {"width", "1600"},
                                  {"height", "1000"}},
                                 {});
    return figure(image, caption);
}

}  // namespace

Markup png_figure(const PagePicture& picture, const std::string& alt, const std::string& caption)
{
    return image_figure("image/png", picture.png, alt, caption);
}

Markup svg_figure(const std::string& svg, const std::string& alt, const std::string& caption)
{
    return image_figure("image/svg+xml", svg, alt, caption);
}

std::string base64(std::string_view bytes)
{
    // Source: [RFC4648] section 4.
    constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string text;
    text.reserve((bytes.size() + 2) / 3 * 4);
    const auto byte = [&](std::size_t i) { return i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0U; };
    for (std::size_t i = 0; i < bytes.size(); i += 3)
    {
        const unsigned group = byte(i) << 16U | byte(i + 1) << 8U | byte(i + 2);
        for (unsigned k = 0; k < 4; ++k) text += i + k <= bytes.size() ? letters[group >> (18U - 6U * k) & 63U] : '=';
    }
    return text;
}

Markup section(const char* id, const char* heading, const Markup& inside)
{
    const std::string name = std::string(id) + "-heading";
    return element("section", {{"id", id}, {"aria-labelledby", name}},
                   element("h2", {{"id", name}}, words(heading)) + inside);
}

Markup subsection(const char* heading, const Markup& inside) { return element("h3", heading) + inside; }

Markup folded(const std::string& summary, const Markup& inside, bool open)
{
    Attributes attributes;
    if (open) attributes.push_back({"open", ""});
    return element("details", attributes, element("summary", summary) + inside);
}

Markup pass_mark(bool passes)
{
    return element("strong", {{"class", passes ? "mark yes" : "mark no"}}, words(passes ? "passes" : "DOES NOT PASS"));
}

Markup Terms::explain(std::initializer_list<const char*> names)
{
    Markup all;
    for (const char* name : names)
    {
        const Term* term = term_named(name);
        EXPECTS(term != nullptr);
        if (!explained_.insert(name).second) continue;
        all += element("p", {{"class", "plain"}},
                       element("dfn", name) + words(std::string(": ") + sentence(term->meaning)));
    }
    return all.empty() ? all : element("div", {{"class", "plains"}}, all);
}

}  // namespace splicewright
