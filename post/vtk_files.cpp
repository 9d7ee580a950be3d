// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/vtk_files.h"

#include <vtkCellData.h>
#include <vtkCellType.h>
#include <vtkDoubleArray.h>
#include <vtkFieldData.h>
#include <vtkFloatArray.h>
#include <vtkIntArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkStringArray.h>
#include <vtkUnstructuredGrid.h>
#include <vtkXMLUnstructuredGridWriter.h>
#include <vtkZLibDataCompressor.h>

#include <fstream>
#include <initializer_list>

#include "cases/problem.h"
#include "post/drawn_section.h"
#include "post/revolve.h"
#include "solver/solid_bars.h"

namespace splicewright
{
namespace
{

using Components = std::vector<const char*>;
const Components cylinder_tensor{"rr", "tt", "zz", "rt", "tz", "rz"}, cylinder_vector{"r", "theta", "z"},
    space_tensor{"xx", "yy", "zz", "xy", "yz", "xz"}, space_vector{"x", "y", "z"};

// `values` has a row for each component and a column for each point.
template <class Array>
void add_array(vtkUnstructuredGrid* grid, const std::string& name, const Components& components,
               const Eigen::MatrixXd& values)
{
    EXPECTS(values.cols() == grid->GetNumberOfPoints() && values.allFinite());
    vtkNew<Array> array;
    array->SetName(name.c_str());
    array->SetNumberOfComponents(static_cast<int>(values.rows()));
    for (std::size_t k = 0; k < components.size(); ++k)
        array->SetComponentName(static_cast<vtkIdType>(k), components[k]);
    array->SetNumberOfTuples(values.cols());
    for (Eigen::Index i = 0; i < values.cols(); ++i) array->SetTuple(i, values.col(i).data());
    grid->GetPointData()->AddArray(array);
}

void add_points(vtkUnstructuredGrid* grid, const Eigen::Matrix3Xd& place)
{
    EXPECTS(place.allFinite());
    vtkNew<vtkPoints> points;
    points->SetDataTypeToDouble();
    points->SetNumberOfPoints(place.cols());
    for (Eigen::Index i = 0; i < place.cols(); ++i) points->SetPoint(i, place.col(i).data());
    grid->SetPoints(points);
}

template <int n_nodes>
void add_cells(vtkUnstructuredGrid* grid, int type, const Eigen::Matrix<int, n_nodes, Eigen::Dynamic>& cells)
{
    grid->AllocateExact(cells.cols(), cells.size());
    for (Eigen::Index i = 0; i < cells.cols(); ++i)
    {
        std::array<vtkIdType, n_nodes> ids{};
        for (int k = 0; k < n_nodes; ++k) ids[std::size_t(k)] = cells(k, i);
        grid->InsertNextCell(type, n_nodes, ids.data());
    }
}

void add_regions(vtkUnstructuredGrid* grid, const std::vector<int>& region_of, const std::vector<std::string>& names)
{
    vtkNew<vtkIntArray> region;
    region->SetName("region");
    for (const int index : region_of) region->InsertNextValue(index);
    grid->GetCellData()->AddArray(region);
    vtkNew<vtkStringArray> list;
    list->SetName("region_names");
    for (const std::string& name : names) list->InsertNextValue(name);
    grid->GetFieldData()->AddArray(list);
}

void add_note(vtkUnstructuredGrid* grid, const char* name, const std::string& text)
{
    vtkNew<vtkStringArray> note;
    note->SetName(name);
    note->InsertNextValue(text);
    grid->GetFieldData()->AddArray(note);
}

template <class Request>
void add_notes(vtkUnstructuredGrid* grid, const Request& request, const std::string& frame)
{
    add_note(grid, "title", request.title);
    add_note(grid, "load", request.load_text);
    add_note(grid, "units", "mm, MPa; shears are tensor components");
    add_note(grid, "frame", frame);
    add_note(grid, "program", "splicewright " + request.version);
}

// Written to memory first: the writer itself reports success on a full disk.
void write_grid(vtkUnstructuredGrid* grid, const std::filesystem::path& path)
{
    vtkNew<vtkXMLUnstructuredGridWriter> writer;
    writer->SetInputData(grid);
    writer->SetDataModeToAppended();
    writer->EncodeAppendedDataOff();
    vtkNew<vtkZLibDataCompressor> compressor;
    compressor->SetCompressionLevel(1);
    writer->SetCompressor(compressor);
    writer->WriteToOutputStringOn();
    const bool written = writer->Write() == 1 && writer->GetErrorCode() == 0;
    std::ofstream file(path, std::ios::binary);
    if (written)
    {
        const std::string bytes = writer->GetOutputString();
        file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    }
    file.close();
    if (!written || !file)
        throw CannotCompute({path.string(), 0, 0, "", "", "the file cannot be written",
                             "check that the folder exists, may be written to, and has room"});
}

Eigen::Matrix3Xd at_region_nodes(const SolvedFields& fields, const Eigen::Matrix3Xd& displacement)
{
    return displacement(Eigen::all, fields.region_nodes.node);
}

template <std::size_t n>
Eigen::Matrix<int, static_cast<int>(n), Eigen::Dynamic> as_columns(
    const std::vector<std::array<std::int32_t, n>>& cells)
{
    Eigen::Matrix<int, static_cast<int>(n), Eigen::Dynamic> columns(static_cast<Eigen::Index>(n),
                                                                    static_cast<Eigen::Index>(cells.size()));
    for (std::size_t i = 0; i < cells.size(); ++i)
        for (std::size_t k = 0; k < n; ++k)
            columns(static_cast<Eigen::Index>(k), static_cast<Eigen::Index>(i)) = cells[i][k];
    return columns;
}

struct UnitLoad
{
    const char* name;
    double factor;  // house unit loads in the load of the name
    const StressAmplitude& stress;
    const DisplacementAmplitude& displacement;
};

}  // namespace

void write_section_file(const FieldFileRequest& request)
{
    const SolvedFields& fields = request.fields;
    vtkNew<vtkUnstructuredGrid> grid;
    Eigen::Matrix3Xd place = Eigen::Matrix3Xd::Zero(3, static_cast<Eigen::Index>(fields.region_nodes.node.size()));
    place.topRows<2>() = fields.mesh.node(Eigen::all, fields.region_nodes.node);
    add_points(grid, place);
    add_cells(grid, VTK_QUADRATIC_TRIANGLE, fields.region_nodes.triangle);
    add_regions(grid, fields.mesh.region_of, fields.mesh.region);

    const UnitLoad loads[] = {{"torsion_per_kNm", 1e6, fields.torsion, fields.torsion_displacement},
                              {"bending_per_kNm", 1e6, fields.bending, fields.bending_displacement},
                              {"axial_per_kN", 1e3, fields.axial, fields.axial_displacement},
                              {"press", 1, fields.press, fields.press_displacement}};
    for (const auto& [name, factor, stress, displacement] : loads)
    {
        if (stress.value.cols() == 0) continue;
        const std::string prefix = name;
        const Eigen::Matrix<double, 6, Eigen::Dynamic> scaled = factor * stress.value;
        add_array<vtkDoubleArray>(grid, prefix + "_stress_MPa", cylinder_tensor, scaled);
        // Bending: rows rr tt zz rz vary as cos theta, rt tz as sin theta; von Mises where the cosine is 1.
        Eigen::Matrix<double, 6, Eigen::Dynamic> at_zero = scaled;
        if (&stress == &fields.bending) at_zero.middleRows(3, 2).setZero();
        add_array<vtkDoubleArray>(grid, prefix + "_von_mises_MPa", {}, von_mises(at_zero).transpose());
        add_array<vtkDoubleArray>(grid, prefix + "_displacement_mm", cylinder_vector,
                                  factor * at_region_nodes(fields, displacement.value));
    }
    const auto stress = combined_stress(fields, request.load, 0);
    add_array<vtkDoubleArray>(grid, "stress_MPa", cylinder_tensor, stress);
    add_array<vtkDoubleArray>(grid, "von_mises_MPa", {}, von_mises(stress).transpose());
    const DrawnSection drawn = drawn_section(fields, request.load);
    Eigen::RowVectorXd worst(static_cast<Eigen::Index>(drawn.vertex.size()));
    for (std::size_t i = 0; i < drawn.vertex.size(); ++i) worst(static_cast<Eigen::Index>(i)) = drawn.vertex[i].worst;
    add_array<vtkDoubleArray>(grid, "worst_angle_von_mises_MPa", {}, worst);
    add_array<vtkDoubleArray>(grid, "displacement_mm", cylinder_vector,
                              at_region_nodes(fields, combined_displacement(fields, request.load, 0)));
    grid->GetPointData()->SetActiveScalars("von_mises_MPa");
    add_notes(grid, request,
              "points (z, r, 0); the stated load at theta = 0, the tension side of bending; bending amplitudes: "
              "rr tt zz rz and u_r u_z times cos theta, rt tz and u_theta times sin theta");
    write_grid(grid, request.folder / "section.vtu");
}

void write_revolved_file(const FieldFileRequest& request)
{
    const SolvedFields& fields = request.fields;
    const RevolvedBody body = revolved(fields, n_revolved_sectors);
    vtkNew<vtkUnstructuredGrid> grid;
    add_points(grid, body.point);
    add_cells(grid, VTK_QUADRATIC_WEDGE, body.wedge);
    add_regions(grid, body.region, fields.mesh.region);
    const RevolvedFields values = revolved_fields(fields, request.load, body);
    add_array<vtkFloatArray>(grid, "stress_MPa", space_tensor, values.stress);
    add_array<vtkFloatArray>(grid, "von_mises_MPa", {}, values.von_mises.transpose());
    add_array<vtkFloatArray>(grid, "displacement_mm", space_vector, values.displacement);
    grid->GetPointData()->SetActiveScalars("von_mises_MPa");
    add_notes(grid, request,
              "x = r cos theta, y = r sin theta, z along the shaft; x > 0 is the tension side of bending");
    write_grid(grid, request.folder / "revolved.vtu");
}

void write_solid_file(const SolidFileRequest& request)
{
    if (request.fields.size() > most_solid_points)
    {
        const SolidFields fields = thinned(request.fields);
        write_solid_file({fields, request.load_text, request.title, request.version,
                          request.scenario + "; an eighth of the elements of the model, with the values of all",
                          request.folder});
        return;
    }
    const SolidFields& fields = request.fields;
    vtkNew<vtkUnstructuredGrid> grid;
    add_points(grid, fields.place);
    add_cells(grid, VTK_QUADRATIC_TETRA, as_columns(fields.element));
    add_regions(grid, fields.element_region, fields.region);
    const Eigen::Matrix<double, 6, Eigen::Dynamic> stress = fields.stress.cast<double>();
    Eigen::RowVectorXd principal(stress.cols());
    for (Eigen::Index i = 0; i < stress.cols(); ++i) principal(i) = largest_solid_principal(stress.col(i));
    add_array<vtkFloatArray>(grid, "stress_MPa", space_tensor, stress);
    add_array<vtkFloatArray>(grid, "von_mises_MPa", {}, von_mises(stress).transpose());
    add_array<vtkFloatArray>(grid, "principal_MPa", {}, principal);
    add_array<vtkFloatArray>(grid, "worst_of_turn_von_mises_MPa", {}, fields.von_mises.cast<double>().transpose());
    add_array<vtkFloatArray>(grid, "worst_of_turn_principal_MPa", {}, fields.principal.cast<double>().transpose());
    add_array<vtkFloatArray>(grid, "displacement_mm", space_vector, fields.displacement.cast<double>());
    grid->GetPointData()->SetActiveScalars("worst_of_turn_von_mises_MPa");
    add_note(grid, "scenario", request.scenario);
    add_notes(grid, request,
              "z along the shaft from the joint, y = 0 the cut plane of the half lap; stress and displacement with the "
              "tension side of bending towards +x; worst of turn: the largest over a turn of the bending, slit and lap "
              "free or touching, whichever is worse; at sharp ends of welds, holes and slits the values grow with the "
              "mesh and are no stress of the metal");
    write_grid(grid, request.folder / "solid.vtu");
}

void write_solid_lap_file(const SolidFileRequest& request)
{
    EXPECTS(!request.fields.contact.empty());
    Eigen::Index n = 0;
    for (const SolidContactFields& surface : request.fields.contact) n += surface.place.cols();
    Eigen::Matrix3Xd place(3, n);
    Eigen::RowVectorXd pressure(n), gap(n);
    std::vector<std::array<std::int32_t, 6>> faces;
    std::vector<int> surface_of;
    std::vector<std::string> names;
    Eigen::Index first = 0;
    for (const SolidContactFields& surface : request.fields.contact)
    {
        const Eigen::Index m = surface.place.cols();
        place.middleCols(first, m) = surface.place.cast<double>();
        pressure.segment(first, m) = surface.pressure.cast<double>().transpose();
        gap.segment(first, m) = surface.gap.cast<double>().transpose();
        for (std::array<std::int32_t, 6> face : surface.face)
        {
            for (std::int32_t& point : face) point += static_cast<std::int32_t>(first);
            faces.push_back(face);
            surface_of.push_back(static_cast<int>(names.size()));
        }
        names.push_back(surface.name);
        first += m;
    }
    vtkNew<vtkUnstructuredGrid> grid;
    add_points(grid, place);
    add_cells(grid, VTK_QUADRATIC_TRIANGLE, as_columns(faces));
    add_regions(grid, surface_of, names);
    add_array<vtkFloatArray>(grid, "pressure_MPa", {}, pressure);
    add_array<vtkFloatArray>(grid, "gap_mm", {}, gap);
    grid->GetPointData()->SetActiveScalars("pressure_MPa");
    add_note(grid, "scenario", request.scenario);
    add_notes(grid, request,
              "faces of the left bar before loading, z along the shaft from the joint; contact without friction under "
              "the torque and the axial load alone");
    write_grid(grid, request.folder / "solid-lap.vtu");
}

}  // namespace splicewright
