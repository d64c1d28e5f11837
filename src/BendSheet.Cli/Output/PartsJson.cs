using System.Buffers;
using System.Text;
using System.Text.Json;
using BendSheet.Core.Car;
using BendSheet.Core.Fittings;
using BendSheet.Core.Plumbing;

namespace BendSheet.Cli.Output;

/// <summary>Parts, ports, what connects them and what they need, for another program; lengths in millimetres, unrounded.</summary>
public static class PartsJson
{
    /// <summary>One JSON document, with a line end after it.</summary>
    public static string Write(CarPlan plan)
    {
        var network = plan.Network;
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, SolvedJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("project", plan.Measured.Project);
            WriteParts(json, network);
            WriteConnections(json, network, plan);
            WriteNeeds(json, network, plan);
            CarJson.Write(json, plan);
            SolvedJson.WriteFindings(json, plan.Findings);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteParts(Utf8JsonWriter json, PipeNetwork network)
    {
        var circuits = Circuits.Of(network);
        var uses = network.Uses;
        json.WriteObjects("parts", network.Car.Parts, part =>
        {
            json.WriteString("name", part.Name);
            json.WriteString("kind", part.Kind.Word());
            json.WriteNumber("have", part.Have);
            json.WriteString("pressureFrom", circuits.SourceOf(part)?.InWords);
            json.WriteObjects("ports", part.Ports, port =>
            {
                json.WriteString("name", port.Name);
                WriteSpec(json, port.Spec);
                json.WriteString("circuit", port.Circuit);
                CarJson.WriteLie(json, port.Lie);
                json.WriteString("connectedTo", uses[(part.Name, port.Name)].FirstOrDefault()?.Connection.InWords);
            });
        });
    }

    private static void WriteConnections(Utf8JsonWriter json, PipeNetwork network, CarPlan plan)
    {
        var hoses = network.Car.Hoses.ToLookup(hose => hose.Name, StringComparer.Ordinal);
        json.WriteValues("connections", network.Connections, connection =>
        {
            var line = connection.Kind == ConnectionKind.Line
                ? plan.Lines.FirstOrDefault(
                    solvedLine => string.Equals(solvedLine.Template.Name, connection.Name, StringComparison.Ordinal))
                : null;
            json.WriteStartObject();
            json.WriteString(
                "kind", connection.Kind switch { ConnectionKind.Line => "line", ConnectionKind.Hose => "hose", _ => "screwed-into" });
            json.WriteString("name", connection.Name);
            SolvedJson.WriteLength(json, "length", line?.Plan?.CutLength ?? connection.Length);
            WriteEnd(json, "from", connection.A);
            WriteEnd(json, "to", connection.B);
            if (connection.Kind == ConnectionKind.Hose)
            {
                CarJson.WriteSpans(json, hoses[connection.Name].FirstOrDefault()?.Spans);
            }

            json.WriteEndObject();
        });
    }

    private static void WriteEnd(Utf8JsonWriter json, string name, ConnectionEnd end)
    {
        json.WriteStartObject(name);
        json.WriteString("at", end.At);
        json.WriteString("part", end.Port?.Part.Name);
        json.WriteString("port", end.Port?.Port.Name);
        json.WriteString("fitting", end.Fitting?.Name);
        WriteSpec(json, end.Spec);
        json.WriteEndObject();
    }

    private static void WriteNeeds(Utf8JsonWriter json, PipeNetwork network, CarPlan plan)
    {
        json.WriteObjects("needs", PlumbingNeeds.Of(network, plan.Measured.Notation), need =>
        {
            json.WriteString("name", need.Name);
            json.WriteNumber("count", need.Count);
            json.WriteNumber("have", need.Have);
            json.WriteValues("usedAt", need.UsedAt, place => json.WriteStringValue(place));
        });
    }

    private static void WriteSpec(Utf8JsonWriter json, PortSpec spec)
    {
        json.WriteString("thread", spec.Thread?.InWords);
        json.WriteString("seat", spec.Seat?.Word());
    }
}
