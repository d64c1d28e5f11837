// Makes stretches.csv: random pairs of straights and arcs whose least distance a general-purpose geometry kernel worked out.
//
// Kernel: Open CASCADE Technology 7.6.3 (Debian 12: libocct-foundation-dev, libocct-modeling-data-dev,
// libocct-modeling-algorithms-dev, all 7.6.3+dfsg1-7, and g++ 12).
//
//   OCCT="-lTKTopAlgo -lTKBRep -lTKGeomBase -lTKG3d -lTKMath -lTKernel"
//   g++ -std=c++17 -O1 -ffp-contract=off -isystem /usr/include/opencascade stretches.cpp $OCCT -o stretches
//   ./stretches > stretches.csv
//
// The seed is fixed, so it writes the same file again. Each stretch starts at a point, in a direction; an arc turns from there to a side
// at right angles to it. Ours is only where the stretches lie; the distance is the kernel's own. Millimetres and degrees, the three of a
// point parted by spaces; a straight has the radius 0.

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <TopoDS_Edge.hxx>
#include <gp_Ax1.hxx>
#include <gp_Circ.hxx>
#include <gp_Pnt.hxx>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>
#include <stdexcept>

namespace
{
constexpr int Pairs = 300;
constexpr std::uint64_t Seed = 20240301;
constexpr double Degree = M_PI / 180;

// The generator is fixed by the C++ standard; its distributions are not, so they are written out.
class Chance
{
public:
    double Between(double low, double high) { return low + (high - low) * std::ldexp(double(bits() >> 11), -53); }
    int Whole(int low, int high) { return low + int(bits() % std::uint64_t(high - low + 1)); }
    bool OneIn(int n) { return Whole(1, n) == 1; }
    gp_Dir Direction()
    {
        const double z = Between(-1, 1), turned = Between(0, 2 * M_PI), r = std::sqrt(1 - z * z);
        return gp_Dir(r * std::cos(turned), r * std::sin(turned), z);
    }

private:
    std::mt19937_64 bits{Seed};
};

struct Stretch
{
    gp_Pnt start;
    gp_Dir direction, side;
    double radius, size;
    TopoDS_Edge edge;
};

// Near enough to each other that the nearest places often lie between the ends. Arcs of 5 to 360 degrees, one in six a half or a whole turn.
Stretch Draw(Chance& chance, bool straight)
{
    Stretch stretch{gp_Pnt(chance.Between(-40, 40), chance.Between(-40, 40), chance.Between(-40, 40)), chance.Direction(), gp_Dir(), 0, 0, {}};
    stretch.side = stretch.direction.Crossed(chance.Direction());
    if (straight)
    {
        stretch.size = chance.Between(1, 150);
        stretch.edge = BRepBuilderAPI_MakeEdge(stretch.start, stretch.start.Translated(gp_Vec(stretch.direction) * stretch.size));
        return stretch;
    }

    stretch.radius = chance.Between(5, 60);
    stretch.size = chance.OneIn(6) ? 180.0 * chance.Whole(1, 2) : chance.Between(5, 360);
    const gp_Pnt centre = stretch.start.Translated(gp_Vec(stretch.side) * stretch.radius);
    const gp_Ax2 axes(centre, stretch.direction.Crossed(stretch.side), stretch.side.Reversed());
    stretch.edge = BRepBuilderAPI_MakeEdge(gp_Circ(axes, stretch.radius), 0, stretch.size * Degree);
    return stretch;
}

void Print(const Stretch& stretch)
{
    std::printf("%.17g %.17g %.17g,%.17g %.17g %.17g,%.17g %.17g %.17g,%.17g,%.17g,", stretch.start.X(), stretch.start.Y(), stretch.start.Z(),
        stretch.direction.X(), stretch.direction.Y(), stretch.direction.Z(), stretch.side.X(), stretch.side.Y(), stretch.side.Z(),
        stretch.radius, stretch.size);
}
}

int main()
{
    Chance chance;
    std::printf("pair,start_1_mm,direction_1,side_1,radius_1_mm,size_1,start_2_mm,direction_2,side_2,radius_2_mm,size_2,distance_mm\n");
    for (int pair = 1; pair <= Pairs; pair++)
    {
        // One pair in six is of straights, two a straight and an arc, three of arcs.
        const int kind = chance.Whole(1, 6);
        const Stretch first = Draw(chance, kind <= 3), second = Draw(chance, kind == 1);
        const BRepExtrema_DistShapeShape distance(first.edge, second.edge);
        if (!distance.IsDone())
        {
            throw std::runtime_error("no distance");
        }

        std::printf("%d,", pair);
        Print(first);
        Print(second);
        std::printf("%.17g\n", distance.Value());
    }
}
