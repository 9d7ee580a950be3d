// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <cctype>
#include <functional>
#include <string>
#include <vector>

#include "cases/chance.h"
#include "cases/random_case.h"

namespace splicewright
{
namespace
{

using Mutation = std::function<std::string(const std::string&, Chance&)>;

std::vector<std::string> lines_of(const std::string& text)
{
    std::vector<std::string> lines(1);
    for (const char letter : text)
        if (letter == '\n') lines.emplace_back();
        else lines.back() += letter;
    return lines;
}

std::string joined(const std::vector<std::string>& lines)
{
    std::string text;
    for (std::size_t i = 0; i < lines.size(); ++i)
    {
        if (i > 0) text += '\n';
        text += lines[i];
    }
    return text;
}

// Half-open range of bytes.
struct Span
{
    std::size_t begin = 0, end = 0;
};

std::string replaced_span(const std::string& text, const Span& span, const std::string& with)
{
    return text.substr(0, span.begin) + with + text.substr(span.end);
}

bool is_word(char letter) { return std::isalpha(static_cast<unsigned char>(letter)) != 0 || letter == '_'; }

bool is_number(char letter) { return std::isdigit(static_cast<unsigned char>(letter)) != 0 || letter == '.'; }

std::vector<Span> spans(const std::string& text, bool (*belongs)(char))
{
    std::vector<Span> found;
    for (std::size_t i = 0; i < text.size(); ++i)
    {
        if (!belongs(text[i])) continue;
        if (!found.empty() && found.back().end == i) found.back().end = i + 1;
        else found.push_back({i, i + 1});
    }
    return found;
}

// Any of the spans gives way to any of the texts.
std::string with_one_replaced(const std::string& text, const std::vector<Span>& found,
                              const std::vector<std::string>& texts, Chance& chance)
{
    if (found.empty()) return text;
    const Span span = chance.pick(found);
    return replaced_span(text, span, chance.pick(texts));
}

std::string flipped_byte(const std::string& text, Chance& chance)
{
    std::string flipped = text;
    const std::size_t n_flips = 1 + chance.below(3);
    for (std::size_t i = 0; i < n_flips && !flipped.empty(); ++i)
    {
        char& byte = flipped[chance.below(flipped.size())];
        byte = static_cast<char>(static_cast<unsigned char>(byte) ^ (1U << chance.below(8)));
    }
    return flipped;
}

std::string lost_line(const std::string& text, Chance& chance)
{
    std::vector<std::string> lines = lines_of(text);
    lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(chance.below(lines.size())));
    return joined(lines);
}

std::string doubled_line(const std::string& text, Chance& chance)
{
    std::vector<std::string> lines = lines_of(text);
    const std::string line = chance.pick(lines);
    lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(chance.below(lines.size())), line);
    return joined(lines);
}

std::string swapped_lines(const std::string& text, Chance& chance)
{
    std::vector<std::string> lines = lines_of(text);
    std::swap(lines[chance.below(lines.size())], lines[chance.below(lines.size())]);
    return joined(lines);
}

std::string senseless_number(const std::string& text, Chance& chance)
{
    static const std::vector<std::string> numbers{"0",
                                                  "-1",
                                                  "-0",
                                                  "1e308",
                                                  "1e999",
                                                  "nan",
                                                  "inf",
                                                  "-inf",
                                                  "",
                                                  "1e-300",
                                                  "1e-12",
                                                  "0.0000001",
                                                  "1/0",
                                                  "1/3",
                                                  "0x1C",
                                                  "1_000",
                                                  "28,4",
                                                  "1 000",
                                                  "+-",
                                                  "1e",
                                                  ".",
                                                  "--1",
                                                  std::string(400, '9'),
                                                  "0." + std::string(300, '0') + "1",
                                                  "6 +- 1"};
    const std::vector<Span> found = spans(text, is_number);
    return with_one_replaced(text, found, numbers, chance);
}

// Close to a limit or across it.
std::string scaled_number(const std::string& text, Chance& chance)
{
    static const std::vector<std::string> numbers{"0.5",  "1",     "2",   "2.5",  "3",         "0.1",
                                                  "6",    "30",    "400", "50",   "0.2",       "0.005",
                                                  "0.02", "0.001", "10",  "5000", "24.999999", "3.0000001"};
    const std::vector<Span> found = spans(text, is_number);
    return with_one_replaced(text, found, numbers, chance);
}

std::string swapped_unit(const std::string& text, Chance& chance)
{
    static const std::vector<std::string> units{" mm\"",  " in\"",  " N*m\"",       " lbf*ft\"", " MPa\"",    " N\"",
                                                " deg\"", " rpm\"", "\"",           " m\"",      " parsec\"", " mM\"",
                                                " kg\"",  " psi\"", " \xC2\xB5m\"", " \"\""};
    std::vector<Span> found;
    for (std::size_t quote = text.find('"'); quote != std::string::npos; quote = text.find('"', quote + 1))
    {
        const std::size_t space = text.rfind(' ', quote);
        if (space != std::string::npos && quote - space < 8 && space > 0 && is_number(text[space - 1]))
            found.push_back({space, quote + 1});
    }
    return with_one_replaced(text, found, units, chance);
}

std::string misspelt_word(const std::string& text, Chance& chance)
{
    const std::vector<Span> found = spans(text, is_word);
    if (found.empty()) return text;
    const Span word = chance.pick(found);
    const std::size_t at = word.begin + chance.below(word.end - word.begin);
    static const std::vector<std::string> letters{"", "x", "ee", "E", "\xC3\xA4", ".", "\"", "[", " ", "_"};
    return replaced_span(text, {at, at + 1}, chance.pick(letters));
}

std::string doubled_table(const std::string& text, Chance& chance)
{
    const std::vector<std::string> lines = lines_of(text);
    std::vector<std::string> heads;
    for (const std::string& line : lines)
        if (!line.empty() && line.front() == '[') heads.push_back(line);
    if (heads.empty()) return text;
    const std::string head = chance.pick(heads);
    const std::size_t from = text.find(head), to = text.find("\n[", from);
    return text + "\n" + text.substr(from, to == std::string::npos ? to : to - from) + "\n";
}

std::string nested(const std::string& text, Chance& chance)
{
    const std::size_t depth = chance.happens(0.5) ? 50 : 100000;
    if (chance.happens(0.5)) return text + "\na = " + std::string(depth, '[') + std::string(depth, ']') + "\n";
    std::string keys = "a";
    for (std::size_t i = 0; i < depth / 2; ++i) keys += ".a";
    return text + "\n[" + keys + "]\n";
}

std::string strange_bytes(const std::string& text, Chance& chance)
{
    static const std::vector<std::string> bytes{std::string(1, '\0'),
                                                "\xFF",
                                                "\xEF\xBB\xBF",
                                                "\xC0\xAF",
                                                "\xE2\x80\x8B",
                                                "\xE2\x88\x92",
                                                "\xE2\x80\x9C",
                                                "\xF0\x9F\x98\x80",
                                                "\r",
                                                "\x1B[31m",
                                                "\t",
                                                "\\u0000",
                                                "\\",
                                                "\x7F",
                                                "{",
                                                "'''",
                                                "\"\"\""};
    const std::size_t at = chance.below(text.size() + 1);
    return replaced_span(text, {at, at}, chance.pick(bytes));
}

std::string cut_off(const std::string& text, Chance& chance) { return text.substr(0, chance.below(text.size() + 1)); }

std::string swollen(const std::string& text, Chance& chance)
{
    const std::vector<std::string> lines = lines_of(text);
    const std::string line = chance.pick(lines);
    std::string longer = text;
    for (int i = 0; i < 2000; ++i) longer += "\n" + line;
    return longer;
}

}  // namespace

std::string mutated_case_text(const std::string& text, std::uint64_t seed)
{
    // The gentle ones more often: they leave more for the rules behind the parser.
    static const std::vector<Mutation> mutations{
        flipped_byte,  lost_line,     lost_line,     doubled_line,  swapped_lines,    swapped_lines, senseless_number,
        scaled_number, scaled_number, scaled_number, scaled_number, senseless_number, swapped_unit,  misspelt_word,
        doubled_table, nested,        strange_bytes, cut_off,       swollen};
    Chance chance(seed);
    std::string mutated = text;
    const std::size_t n_mutations = chance.happens(0.6) ? 1 : 2 + chance.below(3);
    for (std::size_t i = 0; i < n_mutations; ++i)
        if (!mutated.empty()) mutated = chance.pick(mutations)(mutated, chance);
    return mutated;
}

}  // namespace splicewright
