// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/write_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <set>

#include "app/content_hash.h"
#include "app/print_pdf.h"
#include "app/result_folder.h"
#include "cases/problem.h"
#include "post/drawing_sheet.h"
#include "post/report_html.h"
#include "post/result_json.h"
#include "post/site_loads.h"
#include "post/verdict_text.h"
#include "post/version.h"
#ifdef SPLICEWRIGHT_PICTURES
#include "post/view_sites.h"
#include "post/vtk_files.h"
#include "post/vtk_pictures.h"
#endif

namespace splicewright
{
namespace
{

constexpr std::uintmax_t most_kept_bytes = 1000000;  // of a file inside the page

#ifdef SPLICEWRIGHT_PICTURES

constexpr double plain_close_up_mm = 20;  // half width of the close-up of a site without a notch

const CheckRow* worst_row_at(const std::vector<CheckRow>& checks, const std::string& site)
{
    const CheckRow* worst = nullptr;
    for (const CheckRow& row : checks)
        if (row.site == site && row.valid() && (worst == nullptr || row.utilisation > worst->utilisation)) worst = &row;
    return worst;
}

std::vector<SiteMark> site_marks(const Report& report)
{
    const CombinedLoad load = peak_load(report.asked);
    const CheckRow* worst = governing(report.sound.checks);
    const auto importance = [&](const std::string& site)
    { return worst && worst->site == site ? Importance::governing : Importance::ordinary; };
    const std::map<std::string, int> number = site_numbers(report);
    std::vector<SiteMark> marks;
    for (const SiteAnswer& site : report.sound.answer.sites)
    {
        const SiteDemand demand = site_demand(site, load);
        marks.push_back({site.id, demand.z, demand.r, fmt::format("{:.0f} MPa", demand.von_mises), importance(site.id),
                         demand.around, number.at(site.id)});
    }
    if (!report.sound.solid) return marks;
    std::set<std::string> told;  // a site that is read at several places is marked at the first of them
    for (const auto& [site, place] : report.sound.solid->weld_metal)
    {
        const CheckRow* row = worst_row_at(report.sound.checks, site);
        if (row == nullptr || !told.insert(site).second) continue;
        marks.push_back({site, place.z(), std::hypot(place.x(), place.y()),
                         fmt::format("{:.0f} % used", 100 * row->utilisation), importance(site),
                         std::atan2(place.y(), place.x()), number.at(site)});
    }
    return marks;
}

ScenarioView scenario_view(const Report& report, const Judgement& judgement)
{
    const CheckRow* strength = governing(judgement.checks, CheckKind::strength);
    const CheckRow* fatigue = governing(judgement.checks, CheckKind::fatigue);
    ScenarioView view{
        fmt::format("{}: {}", judgement.answer.scenario.name, judgement.passes() ? "passes" : "DOES NOT PASS"), "", "",
        &judgement.answer.fields, peak_load(report.asked)};
    if (judgement.judged_by_solid && judgement.solid) view.solid = &*judgement.solid;
    if (strength != nullptr) view.used = fmt::format("strength {:.0f} %", 100 * strength->utilisation);
    if (fatigue != nullptr)
        view.used += fmt::format("{}fatigue {:.0f} %", view.used.empty() ? "" : ", ", 100 * fatigue->utilisation);
    if (const CheckRow* worst = governing(judgement.checks)) view.place = fmt::format("first at {}", worst->site);
    return view;
}

// The scenario whose faces of the lap touch: the sound splice before the others.
const Judgement* with_contact(const Report& report)
{
    const auto touches = [](const Judgement& one) { return one.solid && !one.solid->contact.empty(); };
    if (touches(report.sound)) return &report.sound;
    const auto found = std::find_if(report.what_if.begin(), report.what_if.end(), touches);
    return found == report.what_if.end() ? nullptr : &*found;
}

void write_solid_files(const Report& report, const std::filesystem::path& folder)
{
    const auto request = [&](const Judgement& shown) -> SolidFileRequest
    {
        return {*shown.solid, peak_load_text(report.asked), report.asked.title,
                version(),    shown.answer.scenario.name,   folder};
    };
    if (report.sound.solid) write_solid_file(request(report.sound));
    if (const Judgement* touching = with_contact(report)) write_solid_lap_file(request(*touching));
}

void write_fields(const Report& report, const std::filesystem::path& folder, WrittenReport& written)
{
    const CombinedLoad load = peak_load(report.asked);
    const std::string load_text = peak_load_text(report.asked);
    const SolvedFields& fields = report.sound.answer.fields;
    const FieldFileRequest files{fields, load, load_text, report.asked.title, version(), folder};
    if (!report.sound.judged_by_solid)
    {
        write_section_file(files);
        write_revolved_file(files);
    }
    write_solid_files(report, folder);
    PictureRequest request{fields, report.asked, load, load_text, site_marks(report), folder};
    const CheckRow* worst = governing(report.sound.checks);
    if (worst && !is_weld_notch(worst->site)) request.close_up_half_width = plain_close_up_mm;
    if (report.sound.solid) request.solid = &*report.sound.solid;
    if (report.sound.judged_by_solid) request.solid_part = SolidPart::answered;
    if (const Judgement* touching = with_contact(report))
    {
        request.contact = &touching->solid->contact;
        request.contact_scenario = touching->answer.scenario.name;
    }
    request.scenarios = {scenario_view(report, report.sound)};
    for (const Judgement& judgement : report.what_if) request.scenarios.push_back(scenario_view(report, judgement));
    const Pictures pictures = write_pictures(request);
    written.pictures = pictures.files;
    written.why_no_pictures = pictures.why_not;
}

#else

void write_fields(const Report&, const std::filesystem::path&, WrittenReport& written)
{
    written.why_no_pictures = "this program was built without VTK";
}

#endif

std::string checksum(const std::string& bytes) { return in_hexadecimal(content_hash(bytes)); }

std::string bytes_of(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

// The torque history stands beside the case.
void add_companions(const Case& asked, PageExtras& extras)
{
    if (!asked.load.history) return;
    const std::string& name = asked.load.history->file;
    const std::filesystem::path file = std::filesystem::path(asked.file).parent_path() / name;
    std::error_code unreadable;
    const auto size = std::filesystem::file_size(file, unreadable);
    if (unreadable || size > most_kept_bytes)
    {
        extras.left_out.push_back(name);
        return;
    }
    const std::string bytes = bytes_of(file);
    extras.companions.push_back({name, bytes, checksum(bytes)});
}

PageExtras page_extras(const Report& report, const std::filesystem::path& folder, const WrittenReport& written)
{
    const Case& asked = report.asked;
    PageExtras extras;
    for (const std::string& picture : written.pictures)
        extras.pictures.push_back({picture, bytes_of(folder / picture)});
    extras.why_no_pictures = written.why_no_pictures;
    extras.case_file = {std::filesystem::path(asked.file).filename().string(), asked.text, checksum(asked.text)};
    add_companions(asked, extras);
    return extras;
}

}  // namespace

WrittenReport write_report(const Report& report, const std::filesystem::path& folder, const ReportFiles& files)
{
    WrittenReport written;
    written.folder = folder;
    write_result_folder(
        folder,
        [&](const std::filesystem::path& partial)
        {
            write_fields(report, partial, written);
            write_result_file(partial / "case.toml", report.asked.text);
            write_result_file(partial / "verdict.txt", verdict_text(report, Emphasis::plain));
            write_result_file(partial / "result.json", result_json(report));
            write_result_file(partial / "drawing.svg",
                              drawing_sheet(report.asked, report.making, checksum(report.asked.text)).text());
            PageExtras extras = page_extras(report, partial, written);
            extras.options = files.options;
            write_result_file(partial / "report.html", report_html(report, extras));
            if (files.pdf)
                written.why_no_pdf = print_pdf(report_html(report, extras, PagePaper::a4), partial / "report.pdf");
        });
    return written;
}

}  // namespace splicewright
