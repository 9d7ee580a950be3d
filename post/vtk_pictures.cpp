// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/vtk_pictures.h"

#include <vtkActor.h>
#include <vtkCamera.h>
#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkLight.h>
#include <vtkLookupTable.h>
#include <vtkNew.h>
#include <vtkObjectFactory.h>
#include <vtkPNGWriter.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>
#include <vtkTextActor.h>
#include <vtkTextProperty.h>
#include <vtkTextRenderer.h>
#include <vtkUnsignedCharArray.h>
#include <vtkWindowToImageFilter.h>
#include <vtk_glew.h>

#include <Eigen/Geometry>
#include <array>
#include <cmath>
#include <fstream>
#include <functional>
#include <memory>

#include "cases/problem.h"
#include "post/offscreen_context.h"
#include "post/typeface.h"

namespace splicewright
{
namespace
{

// Draws into the surfaceless context. glewInit looks for a GLX display, finds none and says so with code 4, though the
// entry points are loaded by then: that code counts as success here.
class SurfacelessWindow : public vtkGenericOpenGLRenderWindow
{
public:
    static SurfacelessWindow* New();
    vtkTypeMacro(SurfacelessWindow, vtkGenericOpenGLRenderWindow)

        void draw_in(const OffscreenContext* context)
    {
        context_ = context;
    }
    void MakeCurrent() override { context_->make_current(); }
    bool IsCurrent() override { return context_->is_current(); }
    int SupportsOpenGL() override { return 1; }
    vtkTypeBool IsDirect() override { return 1; }
    void Frame() override {}
    void OpenGLInitContext() override
    {
        if (Initialized) return;
        constexpr GLenum no_glx_display = 4;
        const GLenum result = glewInit();
        GlewInitValid = result == GLEW_OK || result == no_glx_display;
        Initialized = GlewInitValid;
    }

private:
    const OffscreenContext* context_ = nullptr;
};
vtkStandardNewMacro(SurfacelessWindow)

    // VTK's type size counts points of 1/72 inch; at 72 dots per inch a point is a pixel.
    constexpr int dots_per_inch = 72;

void dress(vtkTextProperty* property, const Text& text, const Typeface& face, double scale)
{
    property->SetFontFamilyToArial();
    if (face.is_found())
    {
        property->SetFontFamily(VTK_FONT_FILE);
        property->SetFontFile((text.weight == Weight::bold ? face.bold : face.regular).c_str());
    }
    else property->SetBold(text.weight == Weight::bold ? 1 : 0);
    property->SetFontSize(static_cast<int>(std::lround(text.size * scale)));
    property->SetColor(text.colour.red, text.colour.green, text.colour.blue);
    property->SetVerticalJustificationToCentered();
    if (text.align == Align::left) property->SetJustificationToLeft();
    if (text.align == Align::centre) property->SetJustificationToCentered();
    if (text.align == Align::right) property->SetJustificationToRight();
}

TextWidth text_width(const Typeface& face)
{
    return [face](const std::string& words, double size, Weight weight)
    {
        vtkNew<vtkTextProperty> property;
        Text text{words};
        text.size = size;
        text.weight = weight;
        dress(property, text, face, 1);
        std::array<int, 4> box{};
        vtkTextRenderer::GetInstance()->GetBoundingBox(property, shown(words, face), box.data(), dots_per_inch);
        return double(box[1] - box[0] + 1);
    };
}

vtkNew<vtkPolyData> surface_data(const ShadedSurface& surface)
{
    vtkNew<vtkPoints> points;
    vtkNew<vtkFloatArray> normals, values;
    normals->SetNumberOfComponents(3);
    for (std::size_t i = 0; i < surface.point.size(); ++i)
    {
        points->InsertNextPoint(surface.point[i].data());
        normals->InsertNextTuple(surface.normal[i].data());
        values->InsertNextValue(static_cast<float>(surface.value[i]));
    }
    vtkNew<vtkCellArray> triangles;
    for (const auto& [a, b, c] : surface.triangle) triangles->InsertNextCell({a, b, c});
    vtkNew<vtkPolyData> data;
    data->SetPoints(points);
    data->SetPolys(triangles);
    data->GetPointData()->SetNormals(normals);
    data->GetPointData()->SetScalars(values);
    return data;
}

void add_surface(vtkRenderer* renderer, const Scene& scene, const SceneSurface& surface)
{
    const double table_top = std::max(scene.range.top, scene.range.peak);
    const std::vector<Colour> table = stress_table(scene.range.top, table_top);
    vtkNew<vtkLookupTable> colours;
    colours->SetNumberOfTableValues(static_cast<vtkIdType>(table.size()));
    for (std::size_t i = 0; i < table.size(); ++i)
        colours->SetTableValue(static_cast<vtkIdType>(i), table[i].red, table[i].green, table[i].blue);
    const double reach = scene.range.top * double(table.size()) / n_stress_colours;
    vtkNew<vtkPolyDataMapper> mapper;
    mapper->SetInputData(surface_data(surface.shape));
    mapper->SetLookupTable(colours);
    mapper->SetScalarRange(0, reach);
    mapper->InterpolateScalarsBeforeMappingOn();
    vtkNew<vtkActor> actor;
    actor->SetMapper(mapper);
    actor->GetProperty()->SetSpecular(0);
    actor->GetProperty()->SetAmbient(surface.lighting == Lighting::lit ? 0.58 : 1.0);
    actor->GetProperty()->SetDiffuse(surface.lighting == Lighting::lit ? 0.46 : 0.0);
    renderer->AddActor(actor);
}

void aim(vtkRenderer* renderer, const View& view)
{
    const Eigen::Vector3d focus = view.centre + (sheet_width / 2 - view.at.x()) * view.mm_per_unit * view.right +
                                  (sheet_height / 2 - view.at.y()) * view.mm_per_unit * view.up;
    const Eigen::Vector3d toward = view.right.cross(view.up);
    const double away = 2 * sheet_width * view.mm_per_unit;
    const Eigen::Vector3d eye = focus + away * toward;
    vtkCamera* camera = renderer->GetActiveCamera();
    camera->ParallelProjectionOn();
    camera->SetFocalPoint(focus.data());
    camera->SetPosition(eye.data());
    camera->SetViewUp(view.up.data());
    camera->SetParallelScale(sheet_height / 2 * view.mm_per_unit);
    camera->SetClippingRange(0.01 * away, 2 * away);
    vtkNew<vtkLight> lamp;
    const Eigen::Vector3d from = focus + away * (toward - 0.35 * view.right + 0.55 * view.up);
    lamp->SetPosition(from.data());
    lamp->SetFocalPoint(focus.data());
    lamp->SetIntensity(1.0);
    renderer->AddLight(lamp);
}

// Fills as flat shapes one above the other, each a little nearer to the eye than the one before: VTK's own
// two-dimensional mapper puts all at one depth and keeps the first.
void add_fills(vtkRenderer* renderer, const Sheet& sheet)
{
    vtkNew<vtkPoints> points;
    vtkNew<vtkCellArray> triangles;
    vtkNew<vtkUnsignedCharArray> colours;
    colours->SetNumberOfComponents(3);
    const auto byte = [](double channel) { return static_cast<unsigned char>(std::lround(255 * channel)); };
    const double layer = 1 / double(sheet.fill.size() + 1);
    for (std::size_t i = 0; i < sheet.fill.size(); ++i)
    {
        const Fill& fill = sheet.fill[i];
        vtkIdType first = 0, last = 0;
        for (std::size_t k = 0; k < fill.corner.size(); ++k)
        {
            last = points->InsertNextPoint(fill.corner[k].x(), fill.corner[k].y(), layer * double(i));
            if (k == 0) first = last;
            colours->InsertNextTypedTuple(
                std::array{byte(fill.colour.red), byte(fill.colour.green), byte(fill.colour.blue)}.data());
            if (k >= 2) triangles->InsertNextCell({first, last - 1, last});
        }
    }
    vtkNew<vtkPolyData> data;
    data->SetPoints(points);
    data->SetPolys(triangles);
    data->GetPointData()->SetScalars(colours);
    vtkNew<vtkPolyDataMapper> mapper;
    mapper->SetInputData(data);
    vtkNew<vtkActor> actor;
    actor->SetMapper(mapper);
    actor->GetProperty()->LightingOff();
    renderer->AddActor(actor);
    View sheet_view;
    aim(renderer, sheet_view);
    renderer->GetActiveCamera()->SetClippingRange(2 * sheet_width - 2, 2 * sheet_width + 1);
}

void add_texts(vtkRenderer* renderer, const Sheet& sheet, const Typeface& face, double scale)
{
    for (const Text& text : sheet.text)
    {
        vtkNew<vtkTextActor> actor;
        actor->SetInput(shown(text.words, face).c_str());
        dress(actor->GetTextProperty(), text, face, scale);
        // VTK centres on the whole line of type: a little above the middle of capitals and figures.
        actor->SetPosition(std::round(text.at.x() * scale), std::round((text.at.y() - 0.09 * text.size) * scale));
        renderer->AddViewProp(actor);
    }
}

void write_file(const std::filesystem::path& path, vtkUnsignedCharArray* bytes)
{
    std::ofstream file(path, std::ios::binary);
    if (bytes != nullptr) file.write(reinterpret_cast<const char*>(bytes->GetPointer(0)), bytes->GetNumberOfValues());
    file.close();
    if (bytes == nullptr || !file)
        throw CannotCompute({path.string(), 0, 0, "", "", "the picture cannot be written",
                             "check that the folder exists, may be written to, and has room"});
}

struct Target
{
    std::filesystem::path folder;
    double scale = 1;
};

void write_page(vtkRenderWindow* window, const Page& page, const Typeface& face, const Target& target)
{
    std::array<vtkNew<vtkRenderer>, 3> layers;
    window->SetNumberOfLayers(static_cast<int>(layers.size()));
    for (int i = 0; i < 3; ++i)
    {
        layers[std::size_t(i)]->SetLayer(i);
        layers[std::size_t(i)]->AutomaticLightCreationOff();
        window->AddRenderer(layers[std::size_t(i)]);
    }
    layers[0]->SetBackground(paper.red, paper.green, paper.blue);
    for (const SceneSurface& surface : page.scene.surface)
        if (!surface.shape.triangle.empty()) add_surface(layers[0], page.scene, surface);
    aim(layers[0], page.scene.view);
    add_fills(layers[1], page.sheet);
    add_texts(layers[2], page.sheet, face, target.scale);
    window->Render();

    vtkNew<vtkWindowToImageFilter> image;
    image->SetInput(window);
    image->SetInputBufferTypeToRGB();
    image->ReadFrontBufferOff();
    image->ShouldRerenderOff();
    vtkNew<vtkPNGWriter> writer;
    writer->SetInputConnection(image->GetOutputPort());
    writer->WriteToMemoryOn();
    writer->SetCompressionLevel(4);
    writer->Write();
    for (const auto& layer : layers) window->RemoveRenderer(layer);
    write_file(target.folder / page.file, writer->GetErrorCode() == 0 ? writer->GetResult() : nullptr);
}

// What is drawn once a window stands; returns the names of the files.
using Drawing = std::function<std::vector<std::string>(vtkRenderWindow* window)>;

std::vector<std::string> write_pages(vtkRenderWindow* window, const std::vector<Page>& pages, const Target& target)
{
    window->SetSize(static_cast<int>(std::lround(sheet_width * target.scale)),
                    static_cast<int>(std::lround(sheet_height * target.scale)));
    window->SetDPI(dots_per_inch);
    window->SetMultiSamples(8);
    const Typeface face = typeface();
    std::vector<std::string> files;
    for (const Page& page : pages)
    {
        write_page(window, page, face, target);
        files.push_back(page.file);
    }
    return files;
}

// VTK writes its complaints to the console; ours come as values and exceptions.
class QuietVtk
{
public:
    QuietVtk() : before_(vtkObject::GetGlobalWarningDisplay())
    {
        vtkObject::GlobalWarningDisplayOff();
        vtkTextRenderer::GetInstance()->SetDefaultBackend(vtkTextRenderer::FreeType);
    }
    ~QuietVtk() { vtkObject::SetGlobalWarningDisplay(before_); }
    QuietVtk(const QuietVtk&) = delete;
    QuietVtk& operator=(const QuietVtk&) = delete;

private:
    int before_;
};

// In a window that needs no display, else on a display of our own.
Pictures drawn(Display display, const Drawing& drawing)
{
    if (display == Display::none) return {{}, "pictures were not asked for"};
    const QuietVtk quiet;
    std::string why_not = "EGL was not to be used";
    if (display == Display::automatic)
    {
        const OffscreenContext context;
        why_not = context.why_not();
        if (why_not.empty())
        {
            vtkNew<SurfacelessWindow> window;
            window->draw_in(&context);
            return {drawing(window), ""};
        }
    }
    const VirtualDisplay virtual_display;
    if (!virtual_display.why_not().empty()) return {{}, why_not + "; " + virtual_display.why_not()};
    vtkNew<vtkRenderWindow> window;
    window->SetDisplayId(virtual_display.connection());
    window->SetOffScreenRendering(1);
    return {drawing(window), ""};
}

}  // namespace

TextWidth measured_text_width()
{
    const QuietVtk quiet;
    return text_width(typeface());
}

Pictures write_pictures(const PictureRequest& request)
{
    EXPECTS(request.scale > 0 && request.scale <= 8);
    return drawn(request.display,
                 [&](vtkRenderWindow* window)
                 {
                     const PictureContent content = picture_content(request, text_width(typeface()));
                     std::vector<Page> pages{section_page(content),
                                             content.is_solid() ? solid_cutaway_page(content) : cutaway_page(content),
                                             close_up_page(content)};
                     if (request.solid != nullptr)
                     {
                         if (!content.is_solid()) pages.push_back(solid_cutaway_page(content));
                         pages.push_back(solid_outside_page(content));
                         pages.push_back(solid_deformed_page(content));
                     }
                     if (request.contact != nullptr) pages.push_back(solid_contact_page(content));
                     if (request.scenarios.size() > 1) pages.push_back(scenarios_page(content));
                     return write_pages(window, pages, {request.folder, request.scale});
                 });
}

Pictures write_sheets(const std::vector<NamedSheet>& sheets, const std::filesystem::path& folder, Display display)
{
    std::vector<Page> pages;
    for (const NamedSheet& sheet : sheets) pages.push_back({sheet.name + ".png", {}, sheet.sheet});
    return drawn(display, [&](vtkRenderWindow* window) { return write_pages(window, pages, {folder, 1}); });
}

}  // namespace splicewright
