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

}  // namespace splicewright
