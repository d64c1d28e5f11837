// Makes solids.csv: random straights and arcs beside boxes and cylinders, with the least distance that a general-purpose geometry kernel
// worked out to the faces of these; nothing where a stretch goes through one. No stretch starts inside.
//
// Kernel: Open CASCADE Technology 7.6.3 (Debian 12: libocct-foundation-dev, libocct-modeling-data-dev,
// libocct-modeling-algorithms-dev, all 7.6.3+dfsg1-7, and g++ 12).
//
//   OCCT="-lTKTopAlgo -lTKBRep -lTKGeomBase -lTKG3d -lTKMath -lTKernel"
//   g++ -std=c++17 -O1 -ffp-contract=off -isystem /usr/include/opencascade solids.cpp $OCCT -o solids
//   ./solids > solids.csv
//
// The seed is fixed, so it writes the same file again. Millimetres and degrees, the three of a point parted by spaces; a straight has the
// radius 0; a box has the radius 0 and two opposite corners, a cylinder its radius and the middles of its ends.

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Wire.hxx>
#include <gp_Circ.hxx>
#include <gp_Cylinder.hxx>
#include <gp_Pln.hxx>
#include <gp_Pnt.hxx>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>
#include <stdexcept>
#include <vector>

namespace
{
constexpr int Pairs = 300;
constexpr std::uint64_t Seed = 20240307;
constexpr double Degree = M_PI / 180;

class Chance
{
public:
    double Between(double low, double high) { return low + (high - low) * std::ldexp(double(bits() >> 11), -53); }
    int Whole(int low, int high) { return low + int(bits() % std::uint64_t(high - low + 1)); }
    gp_Pnt Point(double reach)
    {
        const double x = Between(-reach, reach), y = Between(-reach, reach);
        return gp_Pnt(x, y, Between(-reach, reach));
    }

    gp_Dir Direction()
    {
        const double z = Between(-1, 1), turned = Between(0, 2 * M_PI), r = std::sqrt(1 - z * z);
        return gp_Dir(r * std::cos(turned), r * std::sin(turned), z);
    }

private:
    std::mt19937_64 bits{Seed};
};

std::vector<TopoDS_Face> Box(const gp_Pnt& from, const gp_Pnt& to)
{
    std::vector<TopoDS_Face> faces;
    for (int axis = 1; axis <= 3; axis++)
    {
        const int u = axis % 3 + 1, v = u % 3 + 1;
        const gp_XYZ ways[] = {gp_XYZ(1, 0, 0), gp_XYZ(0, 1, 0), gp_XYZ(0, 0, 1)};
        for (const gp_Pnt& end : {from, to})
        {
            gp_XYZ at(0, 0, 0);
            at.SetCoord(axis, end.Coord(axis));
            const gp_Pln plane(gp_Ax3(gp_Pnt(at), gp_Dir(ways[axis - 1]), gp_Dir(ways[u - 1])));
            faces.push_back(BRepBuilderAPI_MakeFace(plane, std::fmin(from.Coord(u), to.Coord(u)), std::fmax(from.Coord(u), to.Coord(u)),
                std::fmin(from.Coord(v), to.Coord(v)), std::fmax(from.Coord(v), to.Coord(v))));
        }
    }

    return faces;
}

std::vector<TopoDS_Face> Cylinder(const gp_Pnt& from, const gp_Pnt& to, double radius)
{
    const gp_Dir axis(gp_Vec(from, to));
    std::vector<TopoDS_Face> faces;
    faces.push_back(BRepBuilderAPI_MakeFace(gp_Cylinder(gp_Ax3(from, axis), radius), 0, 2 * M_PI, 0, from.Distance(to)));
    for (const gp_Pnt& end : {from, to})
    {
        const TopoDS_Edge rim = BRepBuilderAPI_MakeEdge(gp_Circ(gp_Ax2(end, axis), radius));
        const TopoDS_Wire wire = BRepBuilderAPI_MakeWire(rim);
        faces.push_back(BRepBuilderAPI_MakeFace(gp_Pln(end, axis), wire));
    }

    return faces;
}

bool IsInside(const gp_Pnt& p, const gp_Pnt& from, const gp_Pnt& to, double radius)
{
    if (radius > 0)
    {
        const gp_Vec axis(from, to), way(from, p);
        const double along = way.Dot(axis) / axis.Magnitude();
        return along > 0 && along < axis.Magnitude() && way.Crossed(axis).Magnitude() / axis.Magnitude() < radius;
    }

    bool inside = true;
    for (int axis = 1; axis <= 3; axis++)
    {
        inside = inside && (p.Coord(axis) - from.Coord(axis)) * (p.Coord(axis) - to.Coord(axis)) < 0;
    }

    return inside;
}

void Print(const gp_XYZ& p)
{
    std::printf("%.17g %.17g %.17g,", p.X(), p.Y(), p.Z());
}
}

int main()
{
    Chance chance;
    std::printf("pair,start_mm,direction,side,radius_mm,size,solid_from_mm,solid_to_mm,solid_radius_mm,distance_mm\n");
    for (int pair = 1; pair <= Pairs; pair++)
    {
        const gp_Pnt start = chance.Point(120);
        const gp_Dir direction = chance.Direction();
        const gp_Dir side = direction.Crossed(chance.Direction());
        double radius = 0, size = chance.Between(1, 200);
        TopoDS_Edge edge;
        if (pair % 2 == 0)
        {
            edge = BRepBuilderAPI_MakeEdge(start, start.Translated(gp_Vec(direction) * size));
        }
        else
        {
            radius = chance.Between(5, 80);
            size = chance.Between(5, 360);
            const gp_Ax2 axes(start.Translated(gp_Vec(side) * radius), direction.Crossed(side), side.Reversed());
            edge = BRepBuilderAPI_MakeEdge(gp_Circ(axes, radius), 0, size * Degree);
        }

        const gp_Pnt from = chance.Point(60), to = chance.Point(60);
        const double solidRadius = pair % 4 < 2 ? 0 : chance.Between(3, 40);
        if (IsInside(start, from, to, solidRadius))
        {
            pair--;
            continue;
        }

        double least = HUGE_VAL;
        for (const TopoDS_Face& face : solidRadius == 0 ? Box(from, to) : Cylinder(from, to, solidRadius))
        {
            const BRepExtrema_DistShapeShape distance(edge, face);
            if (!distance.IsDone())
            {
                throw std::runtime_error("no distance");
            }

            least = std::fmin(least, distance.Value());
        }

        std::printf("%d,", pair);
        Print(start.XYZ());
        Print(direction.XYZ());
        Print(side.XYZ());
        std::printf("%.17g,%.17g,", radius, size);
        Print(from.XYZ());
        Print(to.XYZ());
        std::printf("%.17g,%.17g\n", solidRadius, least);
    }
}
