using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Clearance;

/// <summary>A place on a line, as a person finds it.</summary>
/// <param name="Line">The line.</param>
/// <param name="Place">On its centreline.</param>
public sealed record LinePlace(SolvedLine Line, TubePlace Place)
{
    /// <summary><c>120.0 mm (4.724 in) after bend 2</c>, <c>in bend 3</c>, <c>40.0 mm (1.575 in) from A</c>.</summary>
    public string InWords
    {
        get
        {
            if (Place.InBend)
            {
                return FormattableString.Invariant($"in bend {Place.Number + 1}");
            }

            var onStraight = FindingFigures.Mm(Place.AlongTube - StartOfStraight);
            return Place.Number == 0 ? $"{onStraight} from A" : FormattableString.Invariant($"{onStraight} after bend {Place.Number}");
        }
    }

    /// <summary>In the axes of the car, in millimetres.</summary>
    public Vector3D Point
    {
        get
        {
            var straight = Line.Centreline!.Straights[Place.Number];
            var along = Place.AlongTube - StartOfStraight;
            return Place.InBend
                ? Stretch.Of(Line.Centreline.Arcs[Place.Number]).PointAt(along - straight.Length)
                : Stretch.Of(straight).PointAt(along);
        }
    }

    /// <summary>Where the leg or the bend there was typed.</summary>
    public SourcePosition At =>
        Place.InBend ? Line.Layout!.Bends[Place.Number].Bend.TurnAt : Line.Layout!.Legs[Place.Number].At;

    private Length StartOfStraight
    {
        get
        {
            var along = Length.Zero;
            for (var i = 0; i < Place.Number; i++)
            {
                along += Line.Centreline!.Straights[i].Length + Line.Centreline.Arcs[i].Length;
            }

            return along;
        }
    }
}

/// <summary>A line that comes nearer to another one, or to a zone, than is wanted: the one nearest place.</summary>
/// <param name="First">On the line that stands first in the file.</param>
/// <param name="Second">On the other line; null where it is a zone.</param>
/// <param name="Zone">The zone; null where it is a line.</param>
/// <param name="Gap">Of air, outside to outside; below zero where both would be in one place.</param>
/// <param name="Wanted">Of air.</param>
public sealed record Approach(LinePlace First, LinePlace? Second, KeepClearZone? Zone, Length Gap, Length Wanted);
