// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cstdlib>
#include <iostream>
#include <nlohmann/json.hpp>

#include "cases/read_case.h"
#include "solver/meridian.h"

namespace splicewright
{
namespace
{

nlohmann::ordered_json pair_of(const Measured& number) { return {number.value, number.error}; }

// Every number of the answer that has a bar, as [value, half width], for unit loads.
nlohmann::ordered_json numbers_of(const MeridianAnswer& answer)
{
    nlohmann::ordered_json json;
    json["twist"] = pair_of(answer.twist);
    json["end rotation"] = pair_of(answer.end_rotation);
    json["extension"] = pair_of(answer.extension);
    json["share, torsion"] = pair_of(answer.share.torsion);
    json["share, bending"] = pair_of(answer.share.bending);
    json["share, axial"] = pair_of(answer.share.axial);
    for (const SiteAnswer& site : answer.sites)
    {
        json[site.id + ", torsion"] = pair_of(site.torsion.von_mises);
        json[site.id + ", bending"] = pair_of(site.bending.von_mises);
        json[site.id + ", axial"] = pair_of(site.axial.von_mises);
    }
    return json;
}

int run(const char* file, double target_pct)
{
    const Result<Case> asked = read_case_file(file);
    if (!asked.has_value())
    {
        std::cerr << file << ": not a valid case; splicewright check tells why\n";
        return 2;
    }
    try
    {
        const MeridianAnswer answer = meridian_answer(asked.value(), Scenario{}, Accuracy{target_pct});
        std::cout << numbers_of(answer).dump(1) << '\n';
        return 0;
    }
    catch (const CannotCompute& failure)
    {
        std::cerr << failure.what() << '\n';
        return 3;
    }
}

}  // namespace
}  // namespace splicewright

int main(int n_arguments, char** arguments)
{
    if (n_arguments != 3)
    {
        std::cerr << "usage: meridian_numbers CASE ACCURACY_PERCENT\n";
        return 2;
    }
    return splicewright::run(arguments[1], std::atof(arguments[2]));
}
