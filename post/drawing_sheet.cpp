// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/drawing_sheet.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "post/asked_words.h"
#include "post/dimensions.h"
#include "post/drawing_views.h"
#include "post/version.h"

namespace splicewright
{
namespace
{

// A3, lying. Source: [ISO5457], from memory: verify.
constexpr Box sheet_paper{0, 0, 420, 297}, frame{20, 10, 410, 287};
constexpr double text = 2.5, small = 2.3, view_title = 3.5;
constexpr Box title_block{230, 10, 410, 58};
constexpr double note_pitch = 4.2;
constexpr double row = 6;  // of parts list and title block

constexpr double largest_scale = 5;

bool fits(const Draft& view, const DrawingRoom& room)
{
    const Box box = extent(view);
    return box.width() <= room.width && box.height() <= room.height;
}

void add_words(Draft& draft, const std::string& words, const SheetPoint& at, double size, double room,
               Weight weight = Weight::regular)
{
    draft.text.push_back(
        {fitted(words, size, weight, room, draft_text_width), at, size, Align::left, weight, false, false});
}

void add_frame(Draft& draft, const Box& box, Pen pen)
{
    draft.line.push_back({{{box.left, box.bottom},
                           {box.right, box.bottom},
                           {box.right, box.top},
                           {box.left, box.top},
                           {box.left, box.bottom}},
                          pen});
}

void add_view(Draft& sheet, View2d view, const Case& asked, const char* name, const Box& room)
{
    const NamedScale scale = standard_scale(view, asked, {room.width(), room.height() - 9}, text);
    const Draft drawn = view(asked, scale.scale);
    const Box box = extent(drawn);
    const SheetPoint middle((room.left + room.right) / 2, (room.bottom + room.top - 9) / 2);
    append(sheet, moved(drawn, middle - SheetPoint((box.left + box.right) / 2, (box.bottom + box.top) / 2)));
    sheet.text.push_back({fmt::format("{}, {}", name, scale.name),
                          {room.left + 2, room.top - 4},
                          view_title,
                          Align::left,
                          Weight::bold});
}

// One cell of the title block: what it holds in small type, and below it the words or nothing.
struct Cell
{
    double left = 0, right = 0, top = 0, bottom = 0;
    std::string label, words;
};

void add_cell(Draft& draft, const Cell& cell)
{
    add_frame(draft, {cell.left, cell.bottom, cell.right, cell.top}, Pen::thin);
    const double room = cell.right - cell.left - 3;
    add_words(draft, cell.label, {cell.left + 1.2, cell.top - 1.9}, 1.8, room);
    add_words(draft, cell.words, {cell.left + 1.5, cell.bottom + 2.6}, text, room, Weight::bold);
}

void add_title_block(Draft& draft, const Case& asked, const std::string& checksum)
{
    const Box& b = title_block;
    add_frame(draft, b, Pen::outline);
    const double middle = b.left + 108, top = b.top;
    add_cell(draft, {b.left, middle, top, top - 9, "Title", asked.title});
    add_cell(draft, {middle, b.right, top, top - 9, "Drawing number", ""});
    const std::array<const char*, 3> people{"Drawn: name, date", "Checked: name, date", "Approved: name, date"};
    for (std::size_t i = 0; i < people.size(); ++i)
    {
        const double high = top - 9 - 8 * static_cast<double>(i);
        add_cell(draft, {b.left, b.left + 60, high, high - 8, people[i], ""});
        add_cell(draft, {b.left + 60, middle, high, high - 8, "Signature", ""});
    }
    const double split = middle + 36;
    add_cell(draft, {middle, split, top - 9, top - 17, "Scale", "as stated"});
    add_cell(draft, {split, b.right, top - 9, top - 17, "Units", "mm [inch]"});
    add_cell(draft, {middle, split, top - 17, top - 25, "General tolerances", ""});
    add_cell(draft, {split, b.right, top - 17, top - 25, "Surface", ""});
    add_cell(draft, {middle, split, top - 25, top - 33, "Revision", ""});
    add_cell(draft, {split, b.right, top - 25, top - 33, "Sheet", "1 of 1"});
    add_words(draft, fmt::format("Generated from the case by splicewright {}; SHA-256 of the case:", version()),
              {b.left + 1.5, b.bottom + 10}, small, b.width() - 3);
    add_words(draft, checksum, {b.left + 1.5, b.bottom + 6.4}, small, b.width() - 3);
    add_words(draft, "Advisory. Check every dimension against the parts before cutting.",
              {b.left + 1.5, b.bottom + 2.6}, small, b.width() - 3);
}

struct PartRow
{
    std::string number, part, material, length;
};

std::vector<PartRow> parts_of(const Case& asked, const std::optional<ShopSheet>& making)
{
    std::vector<PartRow> parts;
    for (const Side side : both_sides)
        if (const auto& bar = asked.bar[index(side)])
            parts.push_back({std::to_string(parts.size() + 1), fmt::format("{} bar", name_of(side)), bar->material.name,
                             making ? fmt::format("{:.1f} ±{:g}", making->cut.cut[index(side)], cut_tolerance_mm)
                                    : std::string("as drawn")});
    if (asked.sleeve)
        parts.push_back({"3", "sleeve", asked.sleeve->material.name, mm_text(asked.sleeve->length.value())});
    return parts;
}

void add_parts(Draft& draft, const std::vector<PartRow>& parts)
{
    const std::array<double, 5> x{230, 240, 268, 372, 410};
    double y = title_block.top;
    std::vector<PartRow> rows(parts.rbegin(), parts.rend());
    rows.push_back({"No.", "Part", "Material", "Cut length, mm"});
    for (const PartRow& part : rows)
    {
        const std::array<const std::string*, 4> words{&part.number, &part.part, &part.material, &part.length};
        for (std::size_t i = 0; i < words.size(); ++i)
        {
            add_frame(draft, {x[i], y, x[i + 1], y + row}, Pen::thin);
            add_words(draft, *words[i], {x[i] + 1.5, y + row / 2}, small, x[i + 1] - x[i] - 2.5,
                      &part == &rows.back() ? Weight::bold : Weight::regular);
        }
        y += row;
    }
}

std::vector<std::string> notes_of(const Case& asked, const std::optional<ShopSheet>& making)
{
    std::vector<std::string> notes{
        "Millimetres over the line, [inches] under it. Print at 100 % for the stated scales."};
    if (!making) return notes;
    notes.emplace_back("Weld symbols: ISO 2553, system A (from memory: verify). z: leg, s: depth of fusion.");
    if (has_end_view(asked))
        notes.emplace_back(
            "Behind the sign of a fillet: its length along the bar. Cut and outside are drawn through the welds.");
    if (asked.sleeve && asked.sleeve->weld.leg_on_bar != asked.sleeve->weld.leg_on_sleeve)
        notes.emplace_back("Of two legs, the first lies along the bar and the second up the sleeve.");
    for (const std::string& sentence : partial_weld_words(asked)) notes.push_back(sentence);
    notes.push_back(fmt::format("Welds: quality level {} of ISO 5817. Fillet filler {}, butt filler {}.",
                                name_of(making->quality), asked.sleeve ? asked.sleeve->weld.filler.name : "none",
                                asked.joint->filler.name));
    notes.push_back(fmt::format("Preheat at least {:.0f} °C, interpass at most {:.0f} °C; read the shop sheet first.",
                                making->heat.preheat_c, making->heat.interpass_c));
    for (const BoreBand& bore : making->bores)
        notes.push_back(fmt::format("Bore over the {} bar: Ø{:.3f} to Ø{:.3f} {} to {} (IT{})", name_of(bore.side),
                                    bore.least, bore.greatest, fine_inch_text(bore.least),
                                    fine_inch_text(bore.greatest), bore.grade));
    notes.emplace_back(asked.sleeve ? "Butt ground flush, round and blended before the sleeve goes on."
                                    : "Butt ground flush and blended.");
    return notes;
}

void add_notes(Draft& draft, const std::vector<std::string>& notes)
{
    double y = frame.bottom + 1 + note_pitch * static_cast<double>(notes.size());
    add_words(draft, "Notes", {frame.left + 2, y + 2.5}, view_title, 60, Weight::bold);
    for (std::size_t i = 0; i < notes.size(); ++i, y -= note_pitch)
        add_words(draft, fmt::format("{}. {}", i + 1, notes[i]), {frame.left + 2, y - 2}, small, 205);
}

}  // namespace

DrawingScale scale_that_fits(View2d view, const Case& asked, const DrawingRoom& room, double type)
{
    const double metal = extent(view(asked, {largest_scale, type})).width() / largest_scale;
    double low = 0.3 * room.width / metal, high = largest_scale;
    if (!fits(view(asked, {low, type}), room)) return {0.7 * room.width / metal, type};
    // A hundredth of a part is finer than the eye.
    while (high / low > 1.01)
    {
        const double middle = std::sqrt(low * high);
        (fits(view(asked, {middle, type}), room) ? low : high) = middle;
    }
    return {low, type};
}

NamedScale standard_scale(View2d view, const Case& asked, const DrawingRoom& room, double type)
{
    constexpr std::array<int, 3> enlarged{5, 2, 1}, reduced{2, 5, 10};
    for (const double size : {type, 0.8 * type})
    {
        for (const int factor : enlarged)
            if (fits(view(asked, {static_cast<double>(factor), size}), room))
                return {{static_cast<double>(factor), size}, fmt::format("{}:1", factor)};
        for (const int factor : reduced)
            if (fits(view(asked, {1.0 / factor, size}), room))
                return {{1.0 / factor, size}, fmt::format("1:{}", factor)};
    }
    DrawingScale scale = scale_that_fits(view, asked, room, 0.8 * type);
    while (!fits(view(asked, scale), room)) scale = {0.9 * scale.paper_per_metal, 0.9 * scale.text};
    return {scale, "not to scale"};
}

Markup drawing_sheet(const Case& asked, const std::optional<ShopSheet>& making, const std::string& checksum)
{
    Draft sheet;
    add_frame(sheet, frame, Pen::outline);
    const std::vector<PartRow> parts = parts_of(asked, making);
    const std::vector<std::string> notes = notes_of(asked, making);
    const double parts_top = title_block.top + row * static_cast<double>(parts.size() + 1);
    const double notes_top = frame.bottom + note_pitch * static_cast<double>(notes.size()) + 9;
    if (making)
    {
        const double shaft_bottom = 188;
        const double shaft_right = has_end_view(asked) ? 290 : 408;
        add_view(sheet, shaft_view, asked, "Whole shaft", {22, shaft_bottom, shaft_right, 286});
        if (has_end_view(asked))
            add_view(sheet, end_view, asked, "Sleeve welds", {shaft_right + 2, shaft_bottom, 408, 286});
        add_view(sheet, splice_view, asked, "Splice, cut half above", {22, notes_top, 228, shaft_bottom});
        add_view(sheet, preparation_view, asked, "Bar ends, tacked", {232, parts_top + 2, 408, shaft_bottom});
    }
    else add_view(sheet, shaft_view, asked, "Whole shaft", {22, parts_top + 2, 408, 280});
    add_title_block(sheet, asked, checksum);
    add_parts(sheet, parts);
    add_notes(sheet, notes);
    return svg_of(sheet, sheet_paper, {"drawing", "Shop drawing", "Dimensioned views of " + asked.title},
                  DraftSize::true_to_scale);
}

}  // namespace splicewright
