// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/compare_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/number_words.h"
#include "post/wrapped_text.h"

namespace splicewright
{
namespace
{

using Row = TextRow;

constexpr int digits = 3;  // of a utilisation

Row head_row(const StudyOrigin& origin)
{
    Row row{"option"};
    for (const Variation& variation : origin.variations) row.push_back(variation.key);
    for (const char* name : {"used", "", "error", "governs", "life", "mass", "twist"}) row.emplace_back(name);
    return row;
}

Row option_row(const StudyOption& option, double reserve)
{
    const OptionOutcome& o = option.outcome;
    Row row{fmt::format("{}", option.index + 1)};
    for (const std::string& value : option.values) row.push_back(short_value(value));
    row.insert(row.end(), {percent(o.utilisation, digits),
                           !passes_with(o, reserve) ? "!"
                           : option.non_dominated   ? "*"
                                                    : "",
                           error_words(o.error_pct), fmt::format("{} {}", o.check.substr(0, o.check.find('/')), o.site),
                           o.fatigue ? life_words(o.life.value_or(INFINITY)) : "no cycles",
                           fmt::format("{:.4g} kg", o.mass_kg), fmt::format("{:.3g}°", o.twist_deg)});
    return row;
}

// Letters on the screen: continuation bytes of UTF-8 take no place.
std::size_t width_of(const std::string& text)
{
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char letter) { return (static_cast<unsigned char>(letter) & 0xC0) != 0x80; }));
}

std::string aligned(const std::vector<Row>& rows)
{
    std::vector<std::size_t> widths(rows.front().size());
    for (const Row& row : rows)
        for (std::size_t column = 0; column < row.size(); ++column)
            widths[column] = std::max(widths[column], width_of(row[column]));
    std::string text;
    for (const Row& row : rows)
    {
        std::string line;
        for (std::size_t column = 0; column < row.size(); ++column)
            line += row[column] + std::string(widths[column] - width_of(row[column]) + 2, ' ');
        text += line.substr(0, line.find_last_not_of(' ') + 1) + "\n";
    }
    return text;
}

std::string values_text(const StudyOrigin& origin, const StudyOption& option)
{
    std::vector<std::string> keys;
    for (const Variation& variation : origin.variations) keys.push_back(variation.key);
    std::vector<std::string> values;
    for (const std::string& value : option.values) values.push_back(short_value(value));
    return key_values_text(keys, values);
}

// Where all options are used alike: what does not help, and what the place that governs depends on.
std::string unmoved_text(const Ranking& ranking)
{
    const OptionOutcome& outcome = ranking.best().front().outcome;
    const std::string place = outcome.site.substr(0, outcome.site.find('.'));
    const bool is_plain = place == "bar" || place == "shoulder" || place == "groove";
    return wrapped(
               fmt::format("Every option is governed by {}: none of the varied keys moves it. {}", outcome.check,
                           is_plain ? "That is a place of the bar itself: its diameters and fillets, its steel and the "
                                      "load with its counts decide there, and no sleeve or weld."
                                    : "Vary other keys, or look at the load and its counts."),
               2) +
           "\n";
}

}  // namespace

std::string counts_text(const StudyOrigin& origin, const StudyCounts& counts)
{
    std::string text =
        fmt::format("{}: {} options, {} pass", origin.case_file, counted(static_cast<double>(counts.options)),
                    counted(static_cast<double>(counts.passing)));
    if (origin.reserve != 1) text += fmt::format(" with a reserve of {:g}", origin.reserve);
    const auto add = [&](std::uint64_t n, const char* what)
    {
        if (n > 0) text += fmt::format(", {} {}", counted(static_cast<double>(n)), what);
    };
    add(counts.not_passing, "do not");
    add(counts.invalid, "are no valid case");
    add(counts.failed, "could not be computed");
    return text + "\n";
}

namespace
{

std::string examples_text(const StudyOrigin& origin, const Ranking& ranking)
{
    const StudyCounts& counts = ranking.counts();
    std::string text;
    for (const StudyOption& option : ranking.examples()) text += wrapped(not_judged_text(origin, option), 2) + "\n";
    const std::uint64_t more = counts.invalid + counts.failed - ranking.examples().size();
    if (more > 0) text += fmt::format("{} more were not judged: options.csv lists them.\n", more);
    return text.empty() ? text : "\n" + text;
}

}  // namespace

std::string recommendation_text(const StudyOrigin& origin, const Ranking& ranking)
{
    if (ranking.best().empty()) return "No option could be judged.\n";
    const StudyOption& first = ranking.best().front();
    const OptionOutcome& o = first.outcome;
    const std::string governs =
        fmt::format("{} governs with {} of what is allowed", o.check, percent(o.utilisation, digits));
    const std::string reserve = origin.reserve == 1 ? "" : fmt::format(" with a reserve of {:g}", origin.reserve);
    if (passes_with(o, origin.reserve))
        return wrapped(fmt::format("Recommended: option {}, {}: the lightest that passes{}, {:.4g} kg; {}.",
                                   first.index + 1, values_text(origin, first), reserve, o.mass_kg, governs),
                       2) +
               "\n";
    return wrapped(fmt::format("No option passes{}. The nearest is option {}, {}: {}.", reserve, first.index + 1,
                               values_text(origin, first), governs),
                   2) +
           "\n";
}

std::string key_line_text(const KeyLine& line)
{
    std::vector<const KeyLine::Point*> judged;
    for (const KeyLine::Point& point : line.points)
        if (point.outcome.end == OptionEnd::judged) judged.push_back(&point);
    if (judged.size() < 2) return {};
    const auto used = [](const KeyLine::Point* point) { return point->outcome.utilisation; };
    const double least = used(*std::min_element(judged.begin(), judged.end(),
                                                [&](const auto* a, const auto* b) { return used(a) < used(b); }));
    const auto good = [&](const auto* point) { return used(point) <= least * (1 + no_more_help); };
    const auto first = std::find_if(judged.begin(), judged.end(), good);
    const auto last = std::find_if(judged.rbegin(), judged.rend(), good);
    const std::string at_first =
        fmt::format("{} used, {} governs", percent(used(*first), digits), (*first)->outcome.site);
    std::string text = fmt::format("{}: ", line.key);
    if (*first == judged.back())
        text += fmt::format("more helps up to the largest value tried, {} ({}); at {} it is {}",
                            short_value((*first)->words), at_first, short_value(judged.front()->words),
                            percent(used(judged.front()), digits));
    else if (*last == judged.back())
        text += fmt::format("more than {} gains less than {:g} % ({})", short_value((*first)->words),
                            100 * no_more_help, at_first);
    else
        text += fmt::format("{} is best ({}); more than {} makes it worse, {} at {}", short_value((*first)->words),
                            at_first, short_value((*last)->words), percent(used(judged.back()), digits),
                            short_value(judged.back()->words));
    return text;
}

std::vector<TextRow> option_rows(const StudyOrigin& origin, const Ranking& ranking)
{
    std::vector<Row> rows{head_row(origin)};
    for (const StudyOption& option : ranking.best()) rows.push_back(option_row(option, origin.reserve));
    return rows;
}

std::string not_judged_text(const StudyOrigin& origin, const StudyOption& option)
{
    return fmt::format("{} {} ({}): {}",
                       option.outcome.end == OptionEnd::invalid ? "Not valid:" : "Failed:", option.index + 1,
                       values_text(origin, option), option.outcome.reason);
}

std::string compare_text(const StudyOrigin& origin, const Ranking& ranking, Merit merit,
                         const std::vector<KeyLine>& lines)
{
    std::string text = counts_text(origin, ranking.counts());
    if (!ranking.best().empty())
    {
        text += "\n" + aligned(option_rows(origin, ranking));
        const std::uint64_t more = ranking.counts().judged() - ranking.best().size();
        if (more > 0) text += fmt::format("and {} more: options.csv lists all.\n", counted(static_cast<double>(more)));
        text +=
            wrapped(fmt::format("Passing options by mass, then the others by what they use; !: does not pass; *: no "
                                "other one that passes is as light and {}.",
                                merit == Merit::life ? "lives as long" : "uses as little"),
                    2) +
            "\n";
    }
    text += examples_text(origin, ranking);
    text += "\n" + recommendation_text(origin, ranking);
    if (ranking.is_unmoved()) text += unmoved_text(ranking);
    else
        for (const KeyLine& line : lines)
            if (const std::string words = key_line_text(line); !words.empty()) text += wrapped(words + ".", 2) + "\n";
    if (!lines.empty() && !ranking.is_unmoved()) text += "The other keys stay as in that option.\n";
    text += wrapped(
                "Mass: bars with fillets and grooves, butt, sleeve and sleeve welds from end to end as drawn. "
                "Judged is the sound splice, where the meridian model answers with the faces of a land or half lap "
                "free: run check on the option that you choose, for its cautions, its weak welds and its shop sheet.",
                2) +
            "\n";
    return text;
}

}  // namespace splicewright
