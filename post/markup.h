// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

namespace splicewright
{

// Finished HTML or SVG. A text gets in through words() and attributes only, which escape it, so that nothing that a
// user wrote can become markup; what stands in the program's own source gets in through literal().
class Markup
{
public:
    Markup() = default;
    Markup& operator+=(const Markup& more)
    {
        text_ += more.text_;
        return *this;
    }
    friend Markup operator+(Markup first, const Markup& second) { return first += second; }
    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] bool empty() const { return text_.empty(); }

    template <std::size_t length>
    static Markup literal(const char (&source)[length])
    {
        return Markup(std::string(source, length - 1));
    }

private:
    explicit Markup(std::string text) : text_(std::move(text)) {}
    std::string text_;

    friend Markup words(const std::string& text);
    friend Markup element(const char* name, const std::vector<std::pair<const char*, std::string>>& attributes,
                          const Markup& inside);
    friend Markup style_sheet(const char* css);
    friend Markup script(const char* source);
};

using Attributes = std::vector<std::pair<const char*, std::string>>;

// Text as text: & < > " ' escaped, control characters but line ends made spaces, broken UTF-8 made "?".
Markup words(const std::string& text);

// Text that a user wrote: set apart from the direction of writing around it.
Markup user_words(const std::string& text);

// <name attribute="value">inside</name>; values are escaped. HTML's void elements have no end tag, and empty SVG
// elements close themselves.
Markup element(const char* name, const Attributes& attributes, const Markup& inside);
Markup element(const char* name, const Markup& inside);
Markup element(const char* name, const std::string& text);

// A style element of a style sheet that is built into the program.
Markup style_sheet(const char* css);

// A script that is built into the program.
Markup script(const char* source);

// A number in an attribute or a path: at most three decimals, no exponent.
std::string coordinate(double value);

}  // namespace splicewright
