// SPDX-License-Identifier: GPL-2.0-or-later
#include "read_back.h"

#include <vtkCell.h>
#include <vtkCellData.h>
#include <vtkCellType.h>
#include <vtkDataArray.h>
#include <vtkFieldData.h>
#include <vtkImageData.h>
#include <vtkNew.h>
#include <vtkPNGReader.h>
#include <vtkPointData.h>
#include <vtkStringArray.h>
#include <vtkUnstructuredGrid.h>
#include <vtkXMLUnstructuredGridReader.h>

#include <Eigen/LU>
#include <array>
#include <cmath>
#include <set>

namespace splicewright::sample
{
namespace
{

// Volume of a second-order wedge: 7 points of degree 5 on the triangle times 3 Gauss points along the third axis.
double wedge_volume(vtkCell* cell)
{
    const double a = (6 - std::sqrt(15)) / 21, b = (6 + std::sqrt(15)) / 21;
    const double wa = (155 - std::sqrt(15)) / 2400, wb = (155 + std::sqrt(15)) / 2400;
    const double rule[7][3] = {{1. / 3, 1. / 3, 9. / 80}, {a, a, wa}, {1 - 2 * a, a, wa},
                               {a, 1 - 2 * a, wa},        {b, b, wb}, {1 - 2 * b, b, wb},
                               {b, 1 - 2 * b, wb}};
    const double line[3][2] = {{0.5 - std::sqrt(0.15), 5. / 18}, {0.5, 8. / 18}, {0.5 + std::sqrt(0.15), 5. / 18}};
    double volume = 0;
    for (const auto& [r, s, area] : rule)
        for (const auto& [t, length] : line)
        {
            const double place[3] = {r, s, t};
            std::array<double, 45> derivative{};
            cell->InterpolateDerivs(place, derivative.data());
            Eigen::Matrix3d jacobian = Eigen::Matrix3d::Zero();
            for (int k = 0; k < 15; ++k)
            {
                Eigen::Vector3d point;
                cell->GetPoints()->GetPoint(k, point.data());
                for (int axis = 0; axis < 3; ++axis)
                    jacobian.col(axis) += derivative[std::size_t(15 * axis + k)] * point;
            }
            volume += std::abs(jacobian.determinant()) * area * length;
        }
    return volume;
}

std::vector<std::string> texts(vtkStringArray* array)
{
    std::vector<std::string> result;
    for (vtkIdType i = 0; i < array->GetNumberOfValues(); ++i) result.push_back(array->GetValue(i));
    return result;
}

}  // namespace

ReadGrid read_grid(const std::filesystem::path& path)
{
    vtkNew<vtkXMLUnstructuredGridReader> reader;
    reader->SetFileName(path.c_str());
    reader->Update();
    vtkUnstructuredGrid* grid = reader->GetOutput();
    ReadGrid result;
    result.point.resize(3, grid->GetNumberOfPoints());
    for (vtkIdType i = 0; i < grid->GetNumberOfPoints(); ++i) grid->GetPoint(i, result.point.col(i).data());
    result.n_cells = static_cast<int>(grid->GetNumberOfCells());
    result.cell_type = result.n_cells > 0 ? grid->GetCellType(0) : 0;
    for (vtkIdType i = 0; i < grid->GetNumberOfCells(); ++i)
    {
        if (grid->GetCellType(i) != result.cell_type) result.cell_type = 0;
        result.region.push_back(static_cast<int>(grid->GetCellData()->GetArray("region")->GetTuple1(i)));
        if (grid->GetCellType(i) == VTK_QUADRATIC_WEDGE) result.volume += wedge_volume(grid->GetCell(i));
    }
    for (int k = 0; k < grid->GetPointData()->GetNumberOfArrays(); ++k)
    {
        vtkDataArray* array = grid->GetPointData()->GetArray(k);
        Eigen::MatrixXd values(array->GetNumberOfComponents(), array->GetNumberOfTuples());
        for (vtkIdType i = 0; i < array->GetNumberOfTuples(); ++i) array->GetTuple(i, values.col(i).data());
        result.point_array[array->GetName()] = values;
        for (int c = 0; array->HasAComponentName() && c < array->GetNumberOfComponents(); ++c)
            result.component[array->GetName()].push_back(array->GetComponentName(c));
    }
    for (int k = 0; k < grid->GetFieldData()->GetNumberOfArrays(); ++k)
        if (auto* array = vtkStringArray::SafeDownCast(grid->GetFieldData()->GetAbstractArray(k)))
            result.field[array->GetName()] = texts(array);
    return result;
}

ReadPicture read_picture(const std::filesystem::path& path)
{
    vtkNew<vtkPNGReader> reader;
    reader->SetFileName(path.c_str());
    reader->Update();
    vtkImageData* image = reader->GetOutput();
    std::set<std::array<int, 3>> colours;
    const auto* pixel = static_cast<const unsigned char*>(image->GetScalarPointer());
    const vtkIdType n_pixels = image->GetNumberOfPoints();
    for (vtkIdType i = 0; i < n_pixels; ++i) colours.insert({pixel[3 * i], pixel[3 * i + 1], pixel[3 * i + 2]});
    return {image->GetDimensions()[0], image->GetDimensions()[1], static_cast<int>(colours.size())};
}

}  // namespace splicewright::sample
