// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace splicewright::sample
{

// What VTK's own reader finds in a file.
struct ReadGrid
{
    Eigen::Matrix3Xd point;
    int n_cells = 0;
    int cell_type = 0;                                          // of all cells, 0 when they differ
    std::map<std::string, Eigen::MatrixXd> point_array;         // a column for each point
    std::map<std::string, std::vector<std::string>> component;  // names
    std::map<std::string, std::vector<std::string>> field;      // text of the field data
    std::vector<int> region;                                    // of each cell
    double volume = 0;                                          // by quadrature over wedges, mm^3
};
ReadGrid read_grid(const std::filesystem::path& path);

struct ReadPicture
{
    int width = 0, height = 0, n_colours = 0;
};
ReadPicture read_picture(const std::filesystem::path& path);

}  // namespace splicewright::sample
