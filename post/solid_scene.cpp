// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/solid_scene.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <set>

#include "mesh/triangle.h"
#include "post/flat_parts.h"
#include "solver/solid_face.h"

namespace splicewright
{
namespace
{

// Skins of fewer faces are drawn in sixteen triangles for each, others in four.
constexpr std::size_t few_faces = 20000;

struct Corner
{
    Eigen::Vector3d place, normal;
    double value = 0;
    Eigen::Vector3d shown = place;  // where it is drawn: moved or not
};

Corner between(const Corner& a, const Corner& b, double share)
{
    return {a.place + share * (b.place - a.place), (a.normal + share * (b.normal - a.normal)).normalized(),
            a.value + share * (b.value - a.value), a.shown + share * (b.shown - a.shown)};
}

// Sutherland and Hodgman, one half space after the other; from memory: verify.
std::vector<Corner> clipped(std::vector<Corner> polygon, const Piece& piece)
{
    for (const HalfSpace& half : piece)
    {
        std::vector<Corner> kept;
        for (std::size_t i = 0; i < polygon.size(); ++i)
        {
            const Corner &a = polygon[i], &b = polygon[(i + 1) % polygon.size()];
            const double from = half.normal.dot(a.place) - half.offset, to = half.normal.dot(b.place) - half.offset;
            if (from <= 0) kept.push_back(a);
            if ((from <= 0) != (to <= 0)) kept.push_back(between(a, b, from / (from - to)));
        }
        polygon = std::move(kept);
    }
    return polygon;
}

bool lies_inside(const Eigen::Vector3d& place, const Piece& piece)
{
    return std::ranges::all_of(piece, [&](const HalfSpace& half) { return half.normal.dot(place) <= half.offset; });
}

void append(ShadedSurface& surface, const std::vector<Corner>& polygon)
{
    const auto first = static_cast<int>(surface.point.size());
    for (const Corner& corner : polygon)
    {
        surface.point.push_back(corner.shown);
        surface.normal.push_back(corner.normal);
        surface.value.push_back(corner.value);
    }
    for (int k = 2; k < static_cast<int>(polygon.size()); ++k)
        surface.triangle.push_back({first, first + k - 1, first + k});
}

using FaceColumns = Eigen::Matrix<double, 3, 6>;

FaceColumns nodes_of(const SolidFields& fields, const SolidSkinFace& face, double times)
{
    FaceColumns nodes;
    for (int k = 0; k < 6; ++k)
    {
        const std::int32_t point = face.point[static_cast<std::size_t>(k)];
        nodes.col(k) = fields.place.col(point) + times * fields.displacement.col(point).cast<double>();
    }
    return nodes;
}

// A value on a face: linear in each of its four triangles.
double value_at(const std::array<double, 6>& value, const ReferencePoint& at)
{
    const std::array<double, 3> l{1 - at.x - at.y, at.x, at.y};
    for (std::size_t k = 0; k < 3; ++k)
        if (l[k] >= 0.5)
        {
            const std::size_t next = (k + 1) % 3, last = (k + 2) % 3;
            return value[k] * (2 * l[k] - 1) + value[3 + k] * 2 * l[next] + value[3 + last] * 2 * l[last];
        }
    return value[3] * (1 - 2 * l[2]) + value[4] * (1 - 2 * l[0]) + value[5] * (1 - 2 * l[1]);
}

// Corners of a face parted n times along each edge, and its triangles.
template <class Triangle>
void for_triangles(const SolidFields& fields, const SolidSkinFace& face, int n, double times, Triangle triangle)
{
    const FaceColumns nodes = nodes_of(fields, face, 0), moved = nodes_of(fields, face, times);
    std::array<double, 6> value{};
    for (std::size_t k = 0; k < 6; ++k) value[k] = fields.von_mises(face.point[k]);
    std::vector<Corner> grid;
    const auto at = [&](int i, int j) { return grid[static_cast<std::size_t>(j * (n + 1) - j * (j - 1) / 2 + i)]; };
    for (int j = 0; j <= n; ++j)
        for (int i = 0; i + j <= n; ++i)
        {
            const ReferencePoint where{double(i) / n, double(j) / n};
            const Eigen::Matrix<double, 3, 2> tangents = moved * shape_gradients(where);
            grid.push_back({nodes * shape_values(where),
                            Eigen::Vector3d(tangents.col(0)).cross(Eigen::Vector3d(tangents.col(1))).normalized(),
                            value_at(value, where), moved * shape_values(where)});
        }
    for (int j = 0; j < n; ++j)
        for (int i = 0; i + j < n; ++i)
        {
            triangle(at(i, j), at(i + 1, j), at(i, j + 1));
            if (i + j + 1 < n) triangle(at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
        }
}

int parts_of_edge(const std::vector<SolidSkinFace>& skin) { return skin.size() < few_faces ? 4 : 2; }

// Distance of all points from a plane.
Eigen::VectorXd distances(const SolidFields& fields, const HalfSpace& plane)
{
    return (fields.place.transpose() * plane.normal).array() - plane.offset;
}

// Where an edge of the flat mesh goes through the plane.
Corner crossing(const SolidFields& fields, const Eigen::VectorXd& distance, const Eigen::Vector3d& normal,
                std::int32_t a, std::int32_t b)
{
    const double share = distance(a) / (distance(a) - distance(b));
    const Eigen::Vector3d p = fields.place.col(a), q = fields.place.col(b);
    return {p + share * (q - p), normal, fields.von_mises(a) + share * (fields.von_mises(b) - fields.von_mises(a))};
}

// Corners of the cut through a tetrahedron, against the clock seen against the normal; empty where it is not cut. What
// lies in the plane counts as in front of it, so that a face in the plane is drawn once: that of the metal behind.
std::vector<Corner> cut_of(const SolidFields& fields, const Eigen::VectorXd& distance, const Eigen::Vector3d& normal,
                           const std::array<std::int32_t, 4>& corner)
{
    std::vector<std::int32_t> front, behind;
    for (const std::int32_t point : corner) (distance(point) >= 0 ? front : behind).push_back(point);
    if (front.empty() || behind.empty()) return {};
    std::vector<Corner> polygon;
    const auto add = [&](std::int32_t a, std::int32_t b)
    { polygon.push_back(crossing(fields, distance, normal, a, b)); };
    if (front.size() == 2)
    {
        add(front[0], behind[0]), add(front[0], behind[1]), add(front[1], behind[1]), add(front[1], behind[0]);
    }
    else
        for (const std::int32_t a : front)
            for (const std::int32_t b : behind) add(a, b);
    const Eigen::Vector3d one = polygon[1].place - polygon[0].place, other = polygon[2].place - polygon[0].place;
    if (one.cross(other).dot(normal) < 0) std::ranges::reverse(polygon);
    return polygon;
}

// The four flat triangles of a face of six nodes.
constexpr std::array<std::array<std::size_t, 3>, 4> face_parts{{{0, 3, 5}, {3, 1, 4}, {5, 4, 2}, {3, 4, 5}}};

// Pieces of a segment that lie inside.
void add_clipped(std::vector<SpaceSegment>& list, const Corner& a, const Corner& b, const std::vector<Piece>& pieces)
{
    for (const Piece& piece : pieces)
    {
        double from = 0, to = 1;
        for (const HalfSpace& half : piece)
        {
            const double p = half.normal.dot(a.place) - half.offset, q = half.normal.dot(b.place) - half.offset;
            if (p > 0 && q > 0) from = 2;
            else if (p > 0) from = std::max(from, p / (p - q));
            else if (q > 0) to = std::min(to, p / (p - q));
        }
        if (from < to) list.emplace_back(between(a, b, from).place, between(a, b, to).place);
    }
}

void add_face_lines(std::vector<SpaceSegment>& list, const SolidFields& fields, const Eigen::VectorXd& distance,
                    const Eigen::Vector3d& normal, const std::array<std::int32_t, 6>& face,
                    const std::vector<Piece>& pieces)
{
    const auto [low, high] = std::ranges::minmax(face, {}, [&](std::int32_t point) { return distance(point); });
    if (distance(low) >= 0 || distance(high) < 0) return;
    for (const auto& part : face_parts)
    {
        std::vector<Corner> ends;
        for (std::size_t k = 0; k < 3; ++k)
        {
            const std::int32_t a = face[part[k]], b = face[part[(k + 1) % 3]];
            if ((distance(a) >= 0) != (distance(b) >= 0)) ends.push_back(crossing(fields, distance, normal, a, b));
        }
        if (ends.size() == 2) add_clipped(list, ends[0], ends[1], pieces);
    }
}

// Both sides of an unfused face are cut in the same line.
void keep_one_side(std::vector<SpaceSegment>& lines)
{
    std::set<std::array<std::int64_t, 3>> known;
    std::erase_if(
        lines,
        [&](const SpaceSegment& line)
        {
            const Eigen::Vector3d sum = 1e5 * (line.first + line.second);
            return !known.insert({std::llround(sum.x()), std::llround(sum.y()), std::llround(sum.z())}).second;
        });
}

void add_element(SolidCut& cut, const SolidFields& fields, const Eigen::VectorXd& distance,
                 const Eigen::Vector3d& normal, const std::array<std::int32_t, 10>& element,
                 const std::vector<Piece>& pieces)
{
    for (const auto& part : flat_parts)
    {
        const std::vector<Corner> polygon =
            cut_of(fields, distance, normal, {element[part[0]], element[part[1]], element[part[2]], element[part[3]]});
        if (polygon.empty()) continue;
        for (const Piece& piece : pieces) append(cut.surface, clipped(polygon, piece));
    }
    for (const auto& points : element_faces)
    {
        std::array<std::int32_t, 6> face{};
        for (std::size_t k = 0; k < 6; ++k) face[k] = element[points[k]];
        add_face_lines(cut.elements, fields, distance, normal, face, pieces);
    }
}

}  // namespace

ShadedSurface solid_surface(const SolidFields& fields, const std::vector<SolidSkinFace>& skin,
                            const std::vector<Piece>& pieces, double times)
{
    ShadedSurface surface;
    const auto add = [&](const Corner& a, const Corner& b, const Corner& c)
    {
        for (const Piece& piece : pieces)
        {
            if (lies_inside(a.place, piece) && lies_inside(b.place, piece) && lies_inside(c.place, piece))
            {
                append(surface, {a, b, c});
                return;
            }
            append(surface, clipped({a, b, c}, piece));
        }
    };
    for (const SolidSkinFace& face : skin)
        if (face.kind == SolidFace::outside || (face.kind == SolidFace::unfused && times == 0))
            for_triangles(fields, face, parts_of_edge(skin), times, add);
    return surface;
}

SolidCut solid_cut(const SolidFields& fields, const std::vector<SolidSkinFace>& skin, const HalfSpace& plane,
                   const std::vector<Piece>& pieces)
{
    SolidCut cut;
    const Eigen::VectorXd distance = distances(fields, plane);
    for (const auto& element : fields.element)
    {
        const auto [low, high] = std::ranges::minmax(element, {}, [&](std::int32_t point) { return distance(point); });
        if (distance(low) < 0 && distance(high) >= 0) add_element(cut, fields, distance, plane.normal, element, pieces);
    }
    for (const SolidSkinFace& face : skin)
    {
        const bool is_unfused = face.kind == SolidFace::unfused;
        add_face_lines(is_unfused ? cut.unfused : cut.outline, fields, distance, plane.normal, face.point, pieces);
    }
    keep_one_side(cut.unfused);
    return cut;
}

SolidSection solid_section(const SolidFields& fields, const std::vector<SolidSkinFace>& skin, double around_rad)
{
    const Eigen::Vector3d outward(std::cos(around_rad), std::sin(around_rad), 0),
        across(-std::sin(around_rad), std::cos(around_rad), 0);
    const SolidCut cut = solid_cut(fields, skin, {across, 0}, {{{-outward, 0}}});
    const auto flat = [&](const Eigen::Vector3d& p) { return Eigen::Vector2d(p.z(), outward.dot(p)); };
    const auto flat_lines = [&](const std::vector<SpaceSegment>& lines)
    {
        std::vector<Segment> flat_list;
        for (const auto& [from, to] : lines) flat_list.emplace_back(flat(from), flat(to));
        return flat_list;
    };
    SolidSection made{{}, flat_lines(cut.outline), flat_lines(cut.unfused), flat_lines(cut.elements), {}};
    for (std::size_t i = 0; i < cut.surface.point.size(); ++i)
        made.section.vertex.push_back(
            {flat(cut.surface.point[i]), StressColumn::Zero(), StressColumn::Zero(), cut.surface.value[i]});
    made.section.triangle = cut.surface.triangle;
    const SolidExtent whole = solid_extent(fields);
    double bottom = whole.radius;
    for (const DrawnVertex& vertex : made.section.vertex) bottom = std::min(bottom, vertex.place(1));
    made.whole = {whole.left, bottom, whole.right, whole.radius};
    return made;
}

double angle_in_metal(const SolidFields& fields, const Eigen::Vector3d& place)
{
    constexpr double near = 3;  // mm
    const double around = std::atan2(place.y(), place.x());
    const Eigen::Vector3d across(-std::sin(around), std::cos(around), 0);
    double sum = 0;
    for (Eigen::Index i = 0; i < fields.place.cols(); ++i)
        if (const Eigen::Vector3d away = fields.place.col(i) - place; away.norm() < near) sum += across.dot(away);
    return around + (sum < 0 ? -beside_faces_rad : beside_faces_rad);
}

SolidExtent solid_extent(const SolidFields& fields)
{
    return {fields.place.row(2).minCoeff(), fields.place.row(2).maxCoeff(),
            fields.place.topRows<2>().colwise().norm().maxCoeff()};
}

}  // namespace splicewright
