// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/markup.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "cases/problem.h"
#include "post/sheet.h"

namespace splicewright
{
namespace
{

constexpr std::array<std::string_view, 4> void_elements{"meta", "img", "br", "input"};
constexpr std::array<std::string_view, 5> empty_elements{"path", "line", "circle", "rect", "polygon"};

template <std::size_t n>
bool is_one_of(const std::array<std::string_view, n>& names, std::string_view name)
{
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::string escaped(const std::string& line)
{
    std::string safe;
    for (const char character : clean_text(line)) switch (character)
        {
            case '&': safe += "&amp;"; break;
            case '<': safe += "&lt;"; break;
            case '>': safe += "&gt;"; break;
            case '"': safe += "&quot;"; break;
            case '\'': safe += "&#39;"; break;
            default: safe += character;
        }
    return safe;
}

}  // namespace

Markup words(const std::string& text)
{
    std::string safe;
    for (std::size_t start = 0; start <= text.size();)
    {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        if (start > 0) safe += '\n';
        safe += escaped(text.substr(start, end - start));
        start = end + 1;
    }
    return Markup(safe);
}

Markup user_words(const std::string& text) { return element("bdi", {{"dir", "auto"}}, words(text)); }

Markup element(const char* name, const Attributes& attributes, const Markup& inside)
{
    std::string text = fmt::format("<{}", name);
    for (const auto& [key, value] : attributes) text += fmt::format(" {}=\"{}\"", key, words(value).text());
    if (is_one_of(void_elements, name)) return Markup(text + ">");
    if (is_one_of(empty_elements, name) && inside.empty()) return Markup(text + "/>");
    return Markup(fmt::format("{}>{}</{}>", text, inside.text(), name));
}

Markup element(const char* name, const Markup& inside) { return element(name, Attributes{}, inside); }

Markup element(const char* name, const std::string& text) { return element(name, Attributes{}, words(text)); }

Markup style_sheet(const char* css)
{
    EXPECTS(std::string_view(css).find('<') == std::string_view::npos);
    return Markup(fmt::format("<style>\n{}</style>", css));
}

Markup script(const char* source)
{
    // What could end the element or start a comment inside it.
    for (const char* end : {"</script", "<!--"}) EXPECTS(std::string_view(source).find(end) == std::string_view::npos);
    return Markup(fmt::format("<script>{}</script>", source));
}

std::string coordinate(double value)
{
    EXPECTS(std::isfinite(value));
    std::string text = fmt::format("{:.3f}", value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text == "-0" ? "0" : text;
}

}  // namespace splicewright
