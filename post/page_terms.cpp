// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/page_terms.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

// `sign`: how a text shows that it uses the term; empty where it is the name itself.
struct Term
{
    const char* name;
    const char* sign;
    const char* meaning;
};

// The last block are words of the trades, explained from general knowledge.
constexpr std::array terms{
    Term{"used", "",
         "the share of what is allowed that is used up; at 100 % nothing is left, and above it the check fails"},
    Term{"strength", "", "holds once, under the largest load: does the metal yield?"},
    Term{"fatigue", "", "lasts the life asked for: does a crack start and grow through under the many smaller loads?"},
    Term{"site", "", "a place where the splice can fail; .left and .right tell the side of the joint"},
    Term{"bar-toe", "", "where the sleeve's weld runs out on the bar"},
    Term{"sleeve-toe", "", "where the weld runs out on the sleeve"},
    Term{"root", "root.", "the inner corner of the sleeve's weld, at the end of the gap between bar and sleeve"},
    Term{"throat", "", "the thinnest way through a fillet weld"},
    Term{"butt", "", "the weld between the two bar ends, hidden under the sleeve"},
    Term{"butt-surface", "", "the outside of the butt weld, under the sleeve"},
    Term{"land-edge", "", "where the fusion of the butt weld ends inside the bar; beyond it the faces only touch"},
    Term{"sleeve-mid", "", "the sleeve away from its welds"},
    Term{"shoulder", "", "a change of diameter; .1 is the first one from the joint outward"},
    Term{"weld-end", "",
         "an end of a sleeve weld that does not go all round: .1 and .2 where the left weld starts and ends, .3 and .4 "
         "where the right one does; its check says the angle"},
    Term{"plug-edge", "", "the edge of a plug weld on the bar; numbered ring by ring, its check says where"},
    Term{"lap-corner", "", "the inner corner of an open half lap; .left and .right tell in which bar"},
    Term{"cover's end", "", "a class for the toe of a sleeve weld: a plate welded on a bar, judged where it ends"},
    Term{"tube in a socket", "", "a class for the root of a sleeve weld: a tube that ends inside another one"},
    Term{"penetration", "", "how deep the butt weld is fused"},
    Term{"half lap", "", "both bar ends cut to half their section, so that they interlock before they are welded"},
    Term{"leg", "", "the side of a fillet weld, along the bar or up the sleeve; z on the drawing"},
    Term{"von Mises stress", "von Mises",
         "one number for a mixed stress, to be held against the strength of a tensile test"},
    Term{"finite elements", "finite element",
         "the part cut into thousands of small pieces whose balance the computer solves"},
    Term{"error", "error",
         "how wrong the computed stress can be because the mesh is not endlessly fine; the share used stands at "
         "the upper end of it"},
    Term{"life", "", "how often the whole life asked for can be run through before this place fails"},
    Term{"relied on", "",
         "from memory: recalled, to be verified against the document; judgement: ours, no document; derived: "
         "follows from named sources"},
    Term{"does not govern", "", "the method is outside its own limits here: its line is shown and does not count"},
    Term{"hot-spot stress", "hot-spot",
         "the stress beside a weld, read at fixed distances on the surface and continued to the toe"},
    Term{"GJ", "", "the stiffness in torsion: shear modulus times polar second moment of the section"},
    Term{"handbook", "", "closed formulas of textbooks; the band says within what the formula itself can be trusted"},
    Term{"residual", "",
         "what is left over when the solution is put back into the equations; it should be almost nothing"},
    Term{"carbon equivalent", "CET",
         "one number for how readily a steel hardens and cracks beside a weld; higher is worse. "
         "CE, CET and Pcm are three such formulas"},
    Term{"preheat", "", "heat put in before and held while welding, so that the steel cools slowly and does not crack"},
    Term{"default", "", "a value that the case does not state and the program took; read them"},
    Term{"checksum", "SHA-256", "a fingerprint of the case file: it changes when a single letter changes"},

    Term{"yield", "", "the stress at which steel begins to stretch for good"},
    Term{"shear", "", "stress that slides layers past each other, as torque does"},
    Term{"normal stress", "", "stress that pulls or presses straight across a section, as bending does"},
    Term{"principal stress", "principal", "the strongest pull or push at a point, in whatever direction it acts"},
    Term{"notch stress", "effective notch",
         "the stress at a toe or root computed as if it were rounded to a fixed radius"},
    Term{"FAT", "", "the range of stress in MPa that this kind of weld bears 2 000 000 times, from tests"},
    Term{"IIW, EN 1993", "IIW",
         "the classes of the International Institute of Welding, and the European rules for steel structures"},
    Term{"knee", "", "the number of cycles from which the curve of stress against life runs flatter"},
    Term{"damage, Miner sum", "Miner",
         "each load uses up its share of the life; the shares are added and held against what is allowed"},
    Term{"partial factor", "", "what a published strength is divided by, for what is not known"},
    Term{"utilisation", "", "the same as used, as a number: 1 is all that is allowed"},
    Term{"Marin, Goodman", "Marin",
         "what surface, size and a steady stress take off the strength of a polished test bar"},
    Term{"crack growth", "", "how long a crack takes from its first size until the largest load breaks the rest"},
    Term{"concentration factor", "", "how many times the plain stress the stress at a notch is"},
    Term{"critical speed", "", "the speed at which a shaft would begin to whip"},
    Term{"G 16", "", "a grade of balance: how far the mass lies off the axis, times the speed, in mm/s"},
    Term{"H7, IT7", "IT", "the fits of ISO 286: the number tells how close the limits are"},
    Term{"HV", "", "Vickers hardness"},
    Term{"run-out", "", "how far a surface wobbles when the shaft is turned"},
    Term{"undercut", "", "a groove melted into the bar beside the weld"},
    Term{"unknowns", "", "the numbers that the computer solves for"},
    Term{"Jacobian ratio", "Jacobian", "the shape of an element: 1 is perfect, near 0 is crooked"},
};

const Term* term_named(std::string_view name)
{
    const auto found = std::find_if(terms.begin(), terms.end(), [&](const Term& term) { return name == term.name; });
    return found == terms.end() ? nullptr : &*found;
}

// With the stop that it lacks.
std::string sentence(const std::string& text) { return text.ends_with('?') ? text : text + "."; }

Markup line_of(const Term& term)
{
    return element("p", {{"class", "plain"}},
                   element("dfn", term.name) + words(std::string(": ") + sentence(term.meaning)));
}

Markup set_apart(const Markup& lines) { return lines.empty() ? lines : element("div", {{"class", "plains"}}, lines); }

// What a reader sees: neither tags nor data that no browser shows.
std::string shown_text(const std::string& markup)
{
    std::string text;
    for (std::size_t at = 0; at < markup.size();)
    {
        const std::size_t tag = std::min(markup.find('<', at), markup.size());
        text.append(markup, at, tag - at).append(" ");
        const bool is_script = markup.compare(tag, 7, "<script") == 0;
        const std::size_t end = markup.find(is_script ? "</script>" : ">", tag);
        at = end == std::string::npos ? markup.size() : end + (is_script ? 9 : 1);
    }
    return text;
}

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// As a word, alone or in the plural, with a small or a capital letter first; behind an abbreviation there may be
// digits.
bool stands_in(std::string_view text, std::string_view sign)
{
    for (std::size_t at = text.find(sign.substr(1)); at != std::string_view::npos;
         at = text.find(sign.substr(1), at + 1))
    {
        if (at == 0 || lower(text[at - 1]) != lower(sign.front())) continue;
        if (at >= 2 && (is_letter(text[at - 2]) || text[at - 2] == '-' || text[at - 2] == '_')) continue;
        std::size_t end = at + sign.size() - 1;
        if (!is_letter(sign.back())) return true;
        if (end < text.size() && text[end] == 's') ++end;
        if (end >= text.size() || (!is_letter(text[end]) && text[end] != '_' && text[end] != '=')) return true;
    }
    return false;
}

}  // namespace

Markup Terms::explain(std::initializer_list<const char*> names)
{
    Markup all;
    for (const char* name : names)
    {
        const Term* term = term_named(name);
        EXPECTS(term != nullptr);
        if (!explained_.insert(name).second) continue;
        all += line_of(*term);
    }
    return set_apart(all);
}

Markup Terms::explain_those_in(const Markup& inside)
{
    const std::string text = shown_text(inside.text());
    Markup all;
    for (const Term& term : terms)
    {
        const std::string_view sign = *term.sign == '\0' ? term.name : term.sign;
        if (explained_.contains(term.name) || !stands_in(text, sign)) continue;
        explained_.insert(term.name);
        all += line_of(term);
    }
    return set_apart(all);
}

Markup section(Terms& terms, const char* id, const char* heading, const Markup& inside)
{
    return section(id, heading, terms.explain_those_in(inside) + inside);
}

}  // namespace splicewright
