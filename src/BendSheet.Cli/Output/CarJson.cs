using System.Text.Json;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Clearance;
using BendSheet.Core.Commissioning;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Output;

/// <summary>The car as one thing, for another program: places, zones, what comes too near, filling and bleeding. Millimetres, unrounded.
/// </summary>
internal static class CarJson
{
    /// <summary>Places of lines, zones, clearances, filling, bleeding, clip holes and the commissioning page, inside an object.</summary>
    public static void Write(Utf8JsonWriter json, CarPlan plan)
    {
        json.WriteObjects("places", plan.Lines.Where(line => line is { Centreline: not null, Template.HasPlace: true }), line =>
        {
            json.WriteString("line", line.Template.Name);
            WriteVector(json, "A", line.Centreline!.EndA);
            WriteVector(json, "B", line.Centreline.EndB);
        });
        json.WriteNumber("clearance", plan.Measured.Room.Between.Millimetres);
        json.WriteObjects("keepClear", plan.Measured.Room.Zones, zone => WriteZone(json, zone));
        json.WriteObjects("tooNear", plan.Clearances.Approaches, approach => WriteApproach(json, approach));
        WriteFilling(json, plan.Filling);
        json.WriteObjects("clipRuns", plan.Lines.SelectMany(line => ClipRun.Of(line), (line, run) => (Line: line, Run: run)), one =>
        {
            json.WriteString("line", one.Line.Template.Name);
            json.WriteNumber("straight", one.Run.Straight);
            json.WriteNumber("first", one.Run.FirstAlongTube.Millimetres);
            json.WriteValues("holes", one.Run.Holes, hole => json.WriteNumberValue(hole.Millimetres));
            SolvedJson.WriteLength(json, "hole", one.Run.Hole);
        });
        json.WriteObjects("rails", plan.Rails, rail => WriteRail(json, rail));
        WriteCommissioning(json, plan.Commissioning());
    }

    /// <summary>How a port lies, inside its object.</summary>
    public static void WriteLie(Utf8JsonWriter json, PortLie? lie)
    {
        WriteVector(json, "at", lie?.Position);
        WriteVector(json, "faces", lie?.Facing);
        SolvedJson.WriteLength(json, "within", lie?.Position is null ? null : lie.Within);
    }

    /// <summary>How long a hose has to be, inside its object.</summary>
    public static void WriteSpans(Utf8JsonWriter json, HoseSpans? spans)
    {
        json.WriteStartObject("spans");
        SolvedJson.WriteLength(json, "droop", spans?.Droop);
        SolvedJson.WriteLength(json, "bump", spans?.Bump);
        SolvedJson.WriteLength(json, "lock", spans?.Lock);
        json.WriteEndObject();
        SolvedJson.WriteLength(json, "atLeast", spans?.Least);
        SolvedJson.WriteLength(json, "atMost", spans?.Most);
    }

    private static void WriteZone(Utf8JsonWriter json, KeepClearZone zone)
    {
        json.WriteString("name", zone.Name);
        var (from, to, radius) = zone.Shape switch
        {
            SolidBox box => (box.From, box.To, (Length?)null),
            SolidCylinder cylinder => (cylinder.From, cylinder.To, cylinder.Radius),
            _ => throw new InvalidOperationException("A zone of an unknown shape."),
        };
        json.WriteString("shape", radius is null ? "box" : "cylinder");
        WriteVector(json, "from", from);
        WriteVector(json, "to", to);
        SolvedJson.WriteLength(json, "radius", radius);
        json.WriteNumber("clearance", zone.Clearance.Millimetres);
        json.WriteString("why", zone.Why);
    }

    private static void WriteRail(Utf8JsonWriter json, ClipRail rail)
    {
        json.WriteString("name", rail.Name);
        json.WriteObjects("lines", rail.Lines, line =>
        {
            json.WriteString("line", line.Line);
            json.WriteNumber("straight", line.Straight);
            json.WriteNumber("from", line.From.Millimetres);
            json.WriteNumber("to", line.To.Millimetres);
            json.WriteBoolean("isReversed", line.Reversed);
        });
        json.WriteObjects("holes", rail.Holes, hole =>
        {
            json.WriteNumber("fromEdge", hole.Place.Millimetres);
            json.WriteObjects("clips", hole.Clips, clip =>
            {
                json.WriteString("line", clip.Line);
                json.WriteNumber("clip", clip.Number);
                json.WriteNumber("fromEdge", clip.Place.Millimetres);
            });
        });
    }

    private static void WriteApproach(Utf8JsonWriter json, Approach approach)
    {
        WritePlace(json, "first", approach.First);
        WritePlace(json, "second", approach.Second);
        json.WriteString("zone", approach.Zone?.Name);
        json.WriteNumber("gap", approach.Gap.Millimetres);
        json.WriteNumber("wanted", approach.Wanted.Millimetres);
    }

    private static void WritePlace(Utf8JsonWriter json, string name, LinePlace? place)
    {
        if (place is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("line", place.Line.Template.Name);
        json.WriteString("place", place.InWords);
        json.WriteNumber("fromA", place.Place.AlongTube.Millimetres);
        WriteVector(json, "at", place.Point);
        json.WriteEndObject();
    }

    private static void WriteFilling(Utf8JsonWriter json, Filling filling)
    {
        json.WriteObjects("filling", filling.Circuits, circuit =>
        {
            json.WriteString("circuit", circuit.Circuit.InWords);
            json.WriteNumber("litres", circuit.Litres);
            json.WriteNumber("tube", circuit.Tube.Millimetres);
            json.WriteValues("rough", circuit.Rough, json.WriteStringValue);
            json.WriteValues("notCounted", circuit.NotCounted, json.WriteStringValue);
        });
        json.WriteObjects("bleeding", filling.Bleeders, way =>
        {
            json.WriteString("bleeder", way.Bleeder);
            json.WriteString("circuit", way.Circuit.InWords);
            json.WriteNumber("tube", way.Tube.Millimetres);
            json.WriteNumber("hose", way.Hose.Millimetres);
            json.WriteBoolean("isAtLeast", way.IsAtLeast);
            json.WriteValues("through", way.Through, json.WriteStringValue);
        });
        json.WriteObjects("highPlaces", filling.HighPlaces, high =>
        {
            json.WriteString("line", high.Line);
            json.WriteNumber("height", high.Hump.Height.Millimetres);
            json.WriteNumber("fromA", high.Hump.AlongTube.Millimetres);
        });
    }

    private static void WriteCommissioning(Utf8JsonWriter json, CommissioningContent? page)
    {
        json.WriteString("commissioning", page?.Disclaimer);
        json.WriteObjects("commissioningTables", page?.Sections ?? [], section =>
        {
            json.WriteString("heading", section.Heading);
            json.WriteValues("remarks", section.Remarks, json.WriteStringValue);
            json.WriteValues("columns", section.Columns, json.WriteStringValue);
            json.WriteValues("rows", section.Rows, row =>
            {
                json.WriteStartArray();
                foreach (var cell in row.Cells)
                {
                    json.WriteStringValue(cell.Kind switch
                    {
                        CellKind.Box => "[ ]",
                        CellKind.Blank => cell.Words + "____",
                        _ => cell.Words,
                    });
                }

                json.WriteEndArray();
            });
        });
    }

    private static void WriteVector(Utf8JsonWriter json, string name, Vector3D? vector)
    {
        if (vector is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartArray(name);
        json.WriteNumberValue(known.X);
        json.WriteNumberValue(known.Y);
        json.WriteNumberValue(known.Z);
        json.WriteEndArray();
    }
}
