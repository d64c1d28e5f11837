// Makes routes.csv: random bent tubes whose fillets, lengths, points and boxes a general-purpose geometry kernel worked out.
//
// Kernel: Open CASCADE Technology 7.6.3 (Debian 12: libocct-foundation-dev, libocct-modeling-data-dev,
// libocct-modeling-algorithms-dev, all 7.6.3+dfsg1-7, and g++ 12).
//
//   OCCT="-lTKOffset -lTKFillet -lTKTopAlgo -lTKBRep -lTKGeomBase -lTKG3d -lTKMath -lTKernel"
//   g++ -std=c++17 -O1 -ffp-contract=off -isystem /usr/include/opencascade routes.cpp $OCCT -o routes
//   ./routes > routes.csv
//
// The seed is fixed, so it writes the same file again. Ours is only the recipe of a route: legs, bends, rotations, radius. The corner
// points come from the kernel's own rotations about an axis, the arcs from its fillet of two edges in their plane, the figures from its
// measuring of the finished wire and of the tube swept along it. Millimetres and degrees; in a field with several figures they are
// parted by spaces, the three of a point as well.

#include <BRepAdaptor_Curve.hxx>
#include <BRepAdaptor_Surface.hxx>
#include <BRepBndLib.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepGProp.hxx>
#include <BRepOffsetAPI_MakePipe.hxx>
#include <BRepTools_WireExplorer.hxx>
#include <Bnd_Box.hxx>
#include <ChFi2d_FilletAPI.hxx>
#include <GCPnts_AbscissaPoint.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Wire.hxx>
#include <gp_Circ.hxx>
#include <gp_Pln.hxx>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>
#include <stdexcept>
#include <string>
#include <vector>

namespace
{
constexpr int Routes = 240;
constexpr std::uint64_t Seed = 20240229;
constexpr double Degree = M_PI / 180;
constexpr double TubeDiameter = 4.7625;
constexpr int Grid = 100;

// The generator is fixed by the C++ standard; its distributions are not, so they are written out.
class Chance
{
public:
    double Between(double low, double high) { return low + (high - low) * std::ldexp(double(bits() >> 11), -53); }
    int Whole(int low, int high) { return low + int(bits() % std::uint64_t(high - low + 1)); }
    bool OneIn(int n) { return Whole(1, n) == 1; }
    // As a person would type it.
    double Typed(double low, double high, double step) { return std::round(Between(low, high) / step) * step; }

private:
    std::mt19937_64 bits{Seed};
};

struct Recipe
{
    double radius;
    std::vector<double> legs, bends, rotations;
};

double Setback(const Recipe& recipe, int bend)
{
    return bend < 0 || bend >= int(recipe.bends.size()) ? 0 : recipe.radius * std::tan(recipe.bends[bend] * Degree / 2);
}

// 1 to 9 corners, legs 40 to 900, bends 5 to 150, one radius from 8 to 30. Every fillet fits: a leg holds both setbacks; one in six is
// only a few tenths longer than that, or than 40.
Recipe Draw(Chance& chance)
{
    const double square[] = {30, 45, 90}, plane[] = {0, 180};
    Recipe recipe{chance.Typed(8, 30, 1.0 / 64), {}, {}, {}};
    const int corners = chance.Whole(1, 9);
    for (int i = 0; i < corners; i++)
    {
        recipe.bends.push_back(chance.OneIn(4) ? square[chance.Whole(0, 2)] : chance.Typed(5, 150, 1.0 / 8));
        recipe.rotations.push_back(chance.OneIn(4) ? plane[chance.Whole(0, 1)] : chance.Typed(-180, 180, 1.0 / 8));
    }

    for (int i = 0; i <= corners; i++)
    {
        const double least = std::max(40.0, std::ceil(10 * (Setback(recipe, i - 1) + Setback(recipe, i))) / 10 + 0.1);
        recipe.legs.push_back(chance.OneIn(6) ? least : std::max(least, chance.Typed(40, 900, 1.0 / 8)));
    }

    return recipe;
}

// From the origin along +X, the first bend towards +Y; go straight, roll the axis of the bend about the way, turn the way about the axis.
// Both turns are right-handed: a roll is clockwise for somebody who looks along the way.
std::vector<gp_Pnt> Corners(const Recipe& recipe)
{
    const gp_Pnt origin;
    gp_Dir way(1, 0, 0), axis(0, 0, 1);
    std::vector<gp_Pnt> points{origin};
    for (size_t i = 0; i < recipe.legs.size(); i++)
    {
        points.push_back(points.back().Translated(gp_Vec(way) * recipe.legs[i]));
        if (i < recipe.bends.size())
        {
            axis.Rotate(gp_Ax1(origin, way), recipe.rotations[i] * Degree);
            way.Rotate(gp_Ax1(origin, axis), recipe.bends[i] * Degree);
        }
    }

    return points;
}

struct Filleted
{
    std::vector<TopoDS_Edge> straights, arcs;
    TopoDS_Wire wire;
};

Filleted Fillet(const std::vector<gp_Pnt>& points, double radius)
{
    Filleted result;
    for (size_t i = 1; i < points.size(); i++)
    {
        result.straights.push_back(BRepBuilderAPI_MakeEdge(points[i - 1], points[i]));
    }

    for (size_t i = 1; i + 1 < points.size(); i++)
    {
        const gp_Pln plane(points[i], gp_Vec(points[i - 1], points[i]).Crossed(gp_Vec(points[i], points[i + 1])));
        ChFi2d_FilletAPI fillet(result.straights[i - 1], result.straights[i], plane);
        if (!fillet.Perform(radius) || fillet.NbResults(points[i]) < 1)
        {
            throw std::runtime_error("no fillet");
        }

        result.arcs.push_back(fillet.Result(points[i], result.straights[i - 1], result.straights[i]));
        const BRepAdaptor_Curve arc(result.arcs.back());
        if (arc.GetType() != GeomAbs_Circle || arc.Circle().Radius() != radius)
        {
            throw std::runtime_error("not an arc of the radius");
        }
    }

    BRepBuilderAPI_MakeWire wire;
    for (size_t i = 0; i < result.straights.size(); i++)
    {
        wire.Add(result.straights[i]);
        if (i < result.arcs.size())
        {
            wire.Add(result.arcs[i]);
        }
    }

    result.wire = wire.Wire();
    return result;
}

// A disk square to the first straight, swept along the wire.
TopoDS_Shape Tube(const TopoDS_Wire& wire)
{
    const gp_Circ outside(gp_Ax2(gp_Pnt(), gp_Dir(1, 0, 0)), TubeDiameter / 2);
    const TopoDS_Wire rim = BRepBuilderAPI_MakeWire(BRepBuilderAPI_MakeEdge(outside));
    BRepOffsetAPI_MakePipe pipe(wire, BRepBuilderAPI_MakeFace(rim));
    return pipe.Shape();
}

double Length(const TopoDS_Edge& edge) { return GCPnts_AbscissaPoint::Length(BRepAdaptor_Curve(edge)); }

std::string Text(double value)
{
    char text[32];
    std::snprintf(text, sizeof text, "%.17g", value);
    return text;
}

std::string Text(const gp_Pnt& point) { return Text(point.X()) + " " + Text(point.Y()) + " " + Text(point.Z()); }

std::string Text(const TopoDS_Edge& edge) { return Text(Length(edge)); }

template <class T> std::string Text(const std::vector<T>& values)
{
    std::string text;
    for (const T& value : values)
    {
        text += (text.empty() ? "" : " ") + Text(value);
    }

    return text;
}

// Without its gap and without the edges' tolerances. The kernel searches the box of a torus step by step.
Bnd_Box Box(const TopoDS_Shape& shape)
{
    Bnd_Box box;
    BRepBndLib::AddOptimal(shape, box, false, false);
    box.SetGap(0);
    return box;
}

std::string Text(const Bnd_Box& box) { return Text(box.CornerMin()) + "," + Text(box.CornerMax()); }

// How far the farthest of a grid of points on the tube's own tori lies outside its box: above zero where the search for the box failed,
// which a draw of 240 routes may well hold once.
double Beyond(const TopoDS_Shape& tube, const Bnd_Box& box)
{
    Bnd_Box held = box;
    for (TopExp_Explorer face(tube, TopAbs_FACE); face.More(); face.Next())
    {
        const BRepAdaptor_Surface surface(TopoDS::Face(face.Current()));
        if (surface.GetType() != GeomAbs_Torus) { continue; }
        const double u = surface.FirstUParameter(), du = (surface.LastUParameter() - u) / Grid;
        const double v = surface.FirstVParameter(), dv = (surface.LastVParameter() - v) / Grid;
        for (int i = 0; i <= Grid * Grid + 2 * Grid; i++)
        {
            held.Add(surface.Value(u + i / (Grid + 1) * du, v + i % (Grid + 1) * dv));
        }
    }

    const gp_XYZ low = box.CornerMin().XYZ() - held.CornerMin().XYZ(), high = held.CornerMax().XYZ() - box.CornerMax().XYZ();
    return std::max({low.X(), low.Y(), low.Z(), high.X(), high.Y(), high.Z()});
}

double Length(const TopoDS_Wire& wire)
{
    GProp_GProps properties;
    BRepGProp::LinearProperties(wire, properties);
    return properties.Mass();
}

// How far along the wire a place somewhere in one of its arcs lies.
double InArc(const Filleted& filleted, Chance& chance)
{
    const int arc = chance.Whole(0, int(filleted.arcs.size()) - 1);
    double place = chance.Between(0, 1) * Length(filleted.arcs[arc]) + Length(filleted.straights[arc]);
    for (int i = 0; i < arc; i++)
    {
        place += Length(filleted.straights[i]) + Length(filleted.arcs[i]);
    }

    return place;
}

// The point so far along the wire from end A, found edge by edge: asked for a point of the wire as one curve, the kernel does not always
// reach it.
gp_Pnt PointAt(const TopoDS_Wire& wire, double place)
{
    for (BRepTools_WireExplorer edge(wire); edge.More(); edge.Next())
    {
        const BRepAdaptor_Curve curve(edge.Current());
        const double length = Length(edge.Current());
        if (place <= length)
        {
            const bool reversed = edge.Orientation() == TopAbs_REVERSED;
            const double from = reversed ? curve.LastParameter() : curve.FirstParameter();
            return curve.Value(GCPnts_AbscissaPoint(curve, reversed ? -place : place, from).Parameter());
        }

        place -= length;
    }

    throw std::runtime_error("beyond end B");
}
}

int main()
{
    Chance chance;
    std::printf("route,radius_mm,bends_deg,rotations_deg,corner_points_mm,length_mm,straights_mm,arcs_mm,at_mm,points_mm,"
                "box_low_mm,box_high_mm,tube_diameter_mm,tube_low_mm,tube_high_mm,tube_beyond_box_mm\n");
    for (int route = 1; route <= Routes; route++)
    {
        const Recipe recipe = Draw(chance);
        const std::vector<gp_Pnt> corners = Corners(recipe);
        const Filleted filleted = Fillet(corners, recipe.radius);
        const double length = Length(filleted.wire);
        const TopoDS_Shape tube = Tube(filleted.wire);
        const Bnd_Box box = Box(filleted.wire), tubeBox = Box(tube);

        // Two places anywhere, one in an arc.
        const std::vector<double> places{length * chance.Between(0, 1), length * chance.Between(0, 1), InArc(filleted, chance)};
        std::vector<gp_Pnt> points;
        for (double place : places)
        {
            points.push_back(PointAt(filleted.wire, place));
        }

        std::printf("%d,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s\n", route, Text(recipe.radius).c_str(), Text(recipe.bends).c_str(),
            Text(recipe.rotations).c_str(), Text(corners).c_str(), Text(length).c_str(), Text(filleted.straights).c_str(),
            Text(filleted.arcs).c_str(), Text(places).c_str(), Text(points).c_str(), Text(box).c_str(),
            Text(TubeDiameter).c_str(), Text(tubeBox).c_str(), Text(Beyond(tube, tubeBox)).c_str());
    }
}
