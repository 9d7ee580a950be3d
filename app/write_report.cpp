// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/write_report.h"

#include <fmt/format.h>

#include <fstream>

#include "app/content_hash.h"
#include "app/result_folder.h"
#include "cases/problem.h"
#include "post/drawing_sheet.h"
#include "post/result_json.h"
#include "post/site_loads.h"
#include "post/verdict_text.h"
#include "post/version.h"
#ifdef SPLICEWRIGHT_PICTURES
#include "post/vtk_files.h"
#include "post/vtk_pictures.h"
#endif

namespace splicewright
{
namespace
{

void write_text(const std::filesystem::path& file, const std::string& text)
{
    std::ofstream out(file, std::ios::binary);
    out << text;
    out.close();
    if (!out)
        throw CannotCompute({"", 0, 0, "result folder", "\"" + file.string() + "\"", "could not be written",
                             "name a folder on a disk with room that you may write to: --out FOLDER"});
}

#ifdef SPLICEWRIGHT_PICTURES

constexpr double plain_close_up_mm = 20;  // half width of the close-up of a site without a notch

std::vector<SiteMark> site_marks(const Report& report)
{
    const CombinedLoad load = peak_load(report.asked);
    const CheckRow* worst = governing(report.sound.checks);
    std::vector<SiteMark> marks;
    for (const SiteAnswer& site : report.sound.answer.sites)
    {
        const SiteDemand demand = site_demand(site, load);
        const bool governs = worst && worst->site == site.id;
        marks.push_back({site.id, demand.z, demand.r, fmt::format("{:.0f} MPa", demand.von_mises),
                         governs ? Importance::governing : Importance::ordinary});
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
    if (strength != nullptr) view.used = fmt::format("strength {:.0f} %", 100 * strength->utilisation);
    if (fatigue != nullptr)
        view.used += fmt::format("{}fatigue {:.0f} %", view.used.empty() ? "" : ", ", 100 * fatigue->utilisation);
    if (const CheckRow* worst = governing(judgement.checks)) view.place = fmt::format("first at {}", worst->site);
    return view;
}

void write_fields(const Report& report, const std::filesystem::path& folder, WrittenReport& written)
{
    const CombinedLoad load = peak_load(report.asked);
    const std::string load_text = peak_load_text(report.asked);
    const SolvedFields& fields = report.sound.answer.fields;
    const FieldFileRequest files{fields, load, load_text, report.asked.title, version(), folder};
    write_section_file(files);
    write_revolved_file(files);
    PictureRequest request{fields, report.asked, load, load_text, site_marks(report), folder};
    const CheckRow* worst = governing(report.sound.checks);
    if (worst && !is_weld_notch(worst->site)) request.close_up_half_width = plain_close_up_mm;
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

}  // namespace

std::string case_checksum(const Case& asked) { return in_hexadecimal(content_hash(asked.text)); }

WrittenReport write_report(const Report& report, const std::filesystem::path& folder)
{
    WrittenReport written;
    written.folder = folder;
    write_result_folder(folder,
                        [&](const std::filesystem::path& partial)
                        {
                            write_fields(report, partial, written);
                            write_text(partial / "case.toml", report.asked.text);
                            write_text(partial / "verdict.txt", verdict_text(report, Emphasis::plain));
                            write_text(partial / "result.json", result_json(report));
                            write_text(partial / "drawing.svg",
                                       drawing_sheet(report.asked, report.making, case_checksum(report.asked)).text());
                        });
    return written;
}

}  // namespace splicewright
