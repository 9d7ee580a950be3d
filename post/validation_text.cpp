// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/validation_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <string_view>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

struct Chapter
{
    std::string_view prefix, title;
};
constexpr std::array chapters{Chapter{"shaft.", "Plain, hollow and stepped shafts"},
                              Chapter{"press-fit.", "Press fits"},
                              Chapter{"sharing.", "Shafts in each other"},
                              Chapter{"shoulder.", "Shoulder fillets"},
                              Chapter{"groove.", "Ring grooves"},
                              Chapter{"neuber.", "Deep hyperbolic groove"},
                              Chapter{"sphere.", "Spherical cavity"},
                              Chapter{"spheroid.", "Spheroidal cavity"},
                              Chapter{"lap.", "Shear lag in a tubular lap"},
                              Chapter{"weld.", "Fillet welds"},
                              Chapter{"shigley.", "Machine-design examples"},
                              Chapter{"mean-stress.", "Mean stress"},
                              Chapter{"weld-curve.", "S-N curves of welds"},
                              Chapter{"miner.", "Damage sum"},
                              Chapter{"rainflow.", "Rainflow counting"},
                              Chapter{"whirl.", "Critical speed"},
                              Chapter{"balance.", "Balance"},
                              Chapter{"hertz.", "Contact"},
                              Chapter{"solid.", "The solid model"}};

constexpr const char* introduction =
    R"(# Published values, recomputed

Written by `splicewright prove --write docs/validation.md`, version {}; do not edit.
`splicewright prove` runs the same rows on your machine, `prove NAME` those whose name begins so, and the tests hold every one of them.

{}

`Computed` is what this program gives with its own code, by finite elements or by the closed form that its reports use.
`Published` is the number of the source, or the source's formula evaluated.
`Allowed` is how far the difference may go, and `why` says for what reason.

| provenance | means |
|---|---|
| exact theory | follows from the theory of elasticity or from statics without approximation |
| published table, published chart, worked example | what the document prints, or a fit to its curve |
| derived | computed for this project by another route |
| derived again here | the formula was not only recalled but found again from first principles |
| read in a secondary source | the document itself was not seen, another one that quotes it was |
| from memory: verify | recalled; look it up before you rely on it |

Charts are not exact.
Most of those for shafts rest on photoelastic tests of the 1930s to 1950s, many on flat bars, and on an interpolation between a shallow and a deep limit; the fits to them add an error of their own.
So a chart row gets a band, which comes from comparing the fit with converged elements at several geometries, and 0.5 % more for the elements of this run.
Where the band does not hold zero the chart is off to that side: shoulder charts are high in torsion and low in bending and tension.
Where two sources give the same number differently both have a row.
[error-bars.md](error-bars.md) tells how often the error bars of the elements hold.
)";

std::string cell(std::string text)
{
    std::replace(text.begin(), text.end(), '|', '/');
    return text;
}

bool is_relative(const PublishedCheck& check)
{
    const ToleranceKind kind = check.allowed.kind;
    return check.expected != 0 && kind != ToleranceKind::negligible_against && kind != ToleranceKind::digits_printed;
}

std::set<std::string> keys_of(const std::vector<ProvenCheck>& rows)
{
    std::set<std::string> keys;
    for (const ProvenCheck& row : rows)
        for (std::size_t open = row.check.source.find('['); open != std::string::npos;
             open = row.check.source.find('[', open + 1))
            keys.insert(row.check.source.substr(open + 1, row.check.source.find(']', open) - open - 1));
    return keys;
}

std::string document_row(const ProvenCheck& row)
{
    const PublishedCheck& check = row.check;
    return fmt::format("| `{}` | {} | {:.5g} | {:.6g} | {} | {}{} | {} | {} | {} | {} |\n", check.name,
                       cell(check.claim), row.computed, check.expected, check.unit, difference_text(row),
                       row.agrees() ? "" : " **missed**", allowed_text(check), cell(check.allowed.reason),
                       cell(check.source), provenance_text(check));
}

}  // namespace

std::string difference_text(const ProvenCheck& row)
{
    const double difference = row.computed - row.check.expected;
    if (!is_relative(row.check))
        return std::abs(difference) < 1e-12 * (1 + std::abs(row.check.expected)) ? "0"
                                                                                 : fmt::format("{:+.2g}", difference);
    const double pct = 100 * difference / std::abs(row.check.expected);
    if (std::abs(pct) < 5e-4) return "0.000 %";
    return std::abs(pct) < 0.1 ? fmt::format("{:+.3f} %", pct) : fmt::format("{:+.2f} %", pct);
}

std::string allowed_text(const PublishedCheck& check)
{
    const bool relative = is_relative(check);
    const double scale = relative ? 100 / std::abs(check.expected) : 1;
    const char* unit = relative ? " %" : "";
    const double low = scale * check.allowed.low, high = scale * check.allowed.high;
    if (std::abs(low + high) < 1e-9 * (high - low)) return fmt::format("±{:.2g}{}", high, unit);
    return fmt::format("{:+.3g} to {:+.3g}{}", low, high, unit);
}

std::string provenance_text(const PublishedCheck& check)
{
    const std::string kind = name_of(check.kind);
    switch (check.provenance)
    {
        case Provenance::theory: return kind;
        case Provenance::derived: return check.kind == SourceKind::derived ? kind : kind + "; derived again here";
        case Provenance::secondary: return kind + "; read in a secondary source";
        default: return fmt::format("{}; {}", kind, name_of(check.provenance));
    }
}

std::string terminal_header()
{
    return fmt::format("{:6}{:40}{:>12}{:>12} {:8}{:>11}  {:17}{}\n", "", "check", "computed", "published", "unit",
                       "difference", "allowed", "source");
}

std::string terminal_row(const ProvenCheck& row)
{
    const PublishedCheck& check = row.check;
    std::string line =
        fmt::format("{:6}{:40}{:>12.6g}{:>12.6g} {:8}{:>11}  {:17}{}\n", row.agrees() ? "" : "MISS", check.name,
                    row.computed, check.expected, check.unit, difference_text(row), allowed_text(check), check.source);
    if (!row.why_not_computed.empty()) line += fmt::format("      could not be computed: {}\n", row.why_not_computed);
    else if (!row.agrees()) line += fmt::format("      {}; allowed because: {}\n", check.claim, check.allowed.reason);
    return line;
}

std::string summary(const std::vector<ProvenCheck>& rows)
{
    const auto agree = std::count_if(rows.begin(), rows.end(), [](const ProvenCheck& row) { return row.agrees(); });
    return fmt::format("{} of {} checks agree, from {} documents.", agree, rows.size(), keys_of(rows).size());
}

std::string listing(const std::vector<CheckGroup>& groups)
{
    std::string text;
    for (const CheckGroup& group : groups)
        for (const PublishedCheck& check : group.checks) text += fmt::format("{:40}{}\n", check.name, check.claim);
    return text;
}

std::string validation_document(const std::vector<ProvenCheck>& rows, const std::string& version)
{
    std::string text = fmt::format(fmt::runtime(introduction), version, summary(rows));
    std::size_t written = 0;
    for (const Chapter& chapter : chapters)
    {
        std::string lines;
        for (const ProvenCheck& row : rows)
        {
            if (!row.check.name.starts_with(chapter.prefix)) continue;
            lines += document_row(row);
            ++written;
        }
        if (lines.empty()) continue;
        text += fmt::format(
            "\n## {}\n\n| check | claim | computed | published | unit | difference | allowed | why | "
            "source | provenance |\n|---|---|---|---|---|---|---|---|---|---|\n{}",
            chapter.title, lines);
    }
    EXPECTS(written == rows.size());
    return text;
}

}  // namespace splicewright
