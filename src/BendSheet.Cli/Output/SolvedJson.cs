using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Output;

/// <summary>All that was planned, for another program: millimetres and degrees, unrounded.</summary>
public static class SolvedJson
{
    /// <summary>How every result is written as JSON.</summary>
    internal static JsonWriterOptions Options { get; } = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>One JSON document, with a line end after it.</summary>
    public static string Write(CarPlan plan)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("project", plan.Measured.Project);
            json.WriteValues("lines", plan.Lines, line => WriteLine(json, line));
            WriteFindings(json, plan.Findings);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteLine(Utf8JsonWriter json, SolvedLine line)
    {
        json.WriteStartObject();
        json.WriteString("name", line.Template.Name);
        json.WriteString("tube", line.Template.Tube.Name);
        json.WriteBoolean("made", line.Template.Made);
        WriteNumbers(json, "legs", line.Layout?.Legs.Select(leg => leg.CornerToCorner) ?? []);
        WriteNumbers(json, "straights", line.Layout?.Legs.Select(leg => (Length?)leg.StraightLeft) ?? []);
        json.WriteStartArray("corners");
        foreach (var corner in line.Centreline?.Corners ?? [])
        {
            WritePoint(json, corner);
        }

        json.WriteEndArray();
        WriteLength(json, "centrelineLength", line.Plan?.CentrelineLength);
        WriteLength(json, "developedLength", line.Plan?.DevelopedLength);
        WriteLength(json, "cutLength", line.Plan?.CutLength);
        json.WriteStartArray("bends");
        foreach (var bend in line.Plan?.Bends ?? [])
        {
            WriteBend(json, bend);
        }

        json.WriteEndArray();
        json.WriteStartArray("flaredFirst");
        foreach (var end in line.Plan?.Order.FlaredFirst ?? [])
        {
            json.WriteStringValue(end.ToString());
        }

        json.WriteEndArray();
        WriteNumbers(json, "clips", line.Clips?.Clips.Select(clip => (Length?)clip.Mark) ?? []);
        SurveyJson.Write(json, line.Survey);
        PieceJson.Write(json, line.Piece, line.Template.Route.Bends.Length);
        WriteFindings(json, line.Findings);
        json.WriteEndObject();
    }

    private static void WriteBend(Utf8JsonWriter json, BenchBend bend)
    {
        json.WriteStartObject();
        json.WriteNumber("number", bend.Number);
        json.WriteNumber("bend", bend.Bend.Turn.Degrees);
        json.WriteNumber("rotate", bend.Bend.Rotation.Degrees);
        json.WriteNumber("dial", bend.Dial.Degrees);
        json.WriteNumber("lineAt", bend.LineAt.Degrees);
        json.WriteNumber("pull", bend.Pull.Degrees);
        WriteLength(json, "radius", bend.Layout.Radius);
        json.WriteString("bender", bend.Bender.Name);
        WriteLength(json, "setback", bend.Layout.Setback);
        WriteLength(json, "arc", bend.Layout.Arc);
        WriteLength(json, "gain", bend.Layout.Gain);
        WriteLength(json, "start", bend.Start);
        WriteLength(json, "middle", bend.Middle);
        WriteLength(json, "end", bend.End);
        WriteLength(json, "mark", bend.Mark);
        json.WriteNumber("step", bend.Step);
        json.WriteString("held", bend.Held.ToString());
        WriteLength(json, "swing", bend.Swing);
        WriteLength(json, "lever", bend.Lever);
        json.WriteEndObject();
    }

    internal static void WriteFindings(Utf8JsonWriter json, IEnumerable<Finding> findings)
    {
        json.WriteObjects("findings", findings, finding =>
        {
            json.WriteString("severity", finding.SeverityWord);
            json.WriteString("rule", finding.Rule.Name);
            json.WriteString("message", finding.Message);
            json.WriteString("file", finding.Position.File);
            json.WriteNumber("line", finding.Position.Line);
            json.WriteNumber("column", finding.Position.Column);
        });
    }

    private static void WriteNumbers(Utf8JsonWriter json, string name, IEnumerable<Length?> lengths)
    {
        json.WriteValues(name, lengths, length =>
        {
            if (length is { } known)
            {
                json.WriteNumberValue(known.Millimetres);
            }
            else
            {
                json.WriteNullValue();
            }
        });
    }

    private static void WritePoint(Utf8JsonWriter json, Vector3D? point)
    {
        if (point is not { } known)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartArray();
        json.WriteNumberValue(known.X);
        json.WriteNumberValue(known.Y);
        json.WriteNumberValue(known.Z);
        json.WriteEndArray();
    }

    internal static void WriteLength(Utf8JsonWriter json, string name, Length? length)
    {
        if (length is { } known)
        {
            json.WriteNumber(name, known.Millimetres);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
