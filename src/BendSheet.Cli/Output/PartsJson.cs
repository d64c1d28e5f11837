using System.Buffers;
using System.Text;
using System.Text.Json;
using BendSheet.Cli.Input;
using BendSheet.Core.Plumbing;

namespace BendSheet.Cli.Output;

/// <summary>Parts, ports, what connects them and what they need, for another program; lengths in millimetres, unrounded.</summary>
public static class PartsJson
{
    /// <summary>One JSON document, with a line end behind it.</summary>
    public static string Of(SolvedFile solved)
    {
        var network = solved.ExitCode == ExitCodes.WrongInput ? PipeNetwork.None : solved.Network;
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, SolvedJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("project", solved.File.Project);
            WriteParts(json, network);
            WriteConnections(json, network, solved);
            WriteNeeds(json, network, solved);
            SolvedJson.WriteFindings(json, solved.Findings);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteParts(Utf8JsonWriter json, PipeNetwork network)
    {
        var circuits = Circuits.Of(network);
        var uses = network.Uses;
        json.WriteStartArray("parts");
        foreach (var part in network.Car.Parts)
        {
            json.WriteStartObject();
            json.WriteString("name", part.Name);
            json.WriteString("kind", part.Kind.Word());
            json.WriteNumber("have", part.Have);
            json.WriteString("pressureFrom", circuits.SourceOf(part));
            json.WriteStartArray("ports");
            foreach (var port in part.Ports)
            {
                json.WriteStartObject();
                json.WriteString("name", port.Name);
                WriteSpec(json, port.Spec);
                json.WriteString("circuit", port.Circuit);
                json.WriteString("connectedTo", uses[(part.Name, port.Name)].FirstOrDefault()?.Joint.InWords);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteConnections(Utf8JsonWriter json, PipeNetwork network, SolvedFile solved)
    {
        json.WriteStartArray("connections");
        foreach (var joint in network.Joints)
        {
            var line = joint.Kind == JointKind.Line
                ? solved.Lines.FirstOrDefault(solvedLine => string.Equals(solvedLine.Template.Name, joint.Name, StringComparison.Ordinal))
                : null;
            json.WriteStartObject();
            json.WriteString("kind", joint.Kind switch { JointKind.Line => "line", JointKind.Hose => "hose", _ => "screwed-into" });
            json.WriteString("name", joint.Name);
            SolvedJson.WriteLength(json, "length", line?.Plan?.CutLength ?? joint.Length);
            WriteEnd(json, "from", joint.A);
            WriteEnd(json, "to", joint.B);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteEnd(Utf8JsonWriter json, string name, JointEnd end)
    {
        json.WriteStartObject(name);
        json.WriteString("at", end.At);
        json.WriteString("part", end.Port?.Part.Name);
        json.WriteString("port", end.Port?.Port.Name);
        json.WriteString("fitting", end.Fitting?.Name);
        WriteSpec(json, end.Spec);
        json.WriteEndObject();
    }

    private static void WriteNeeds(Utf8JsonWriter json, PipeNetwork network, SolvedFile solved)
    {
        json.WriteStartArray("needs");
        foreach (var need in PlumbingNeeds.Of(network, solved.File.Notation))
        {
            json.WriteStartObject();
            json.WriteString("name", need.Name);
            json.WriteNumber("count", need.Count);
            json.WriteNumber("have", need.Have);
            json.WriteStartArray("usedAt");
            foreach (var place in need.UsedAt)
            {
                json.WriteStringValue(place);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSpec(Utf8JsonWriter json, PortSpec spec)
    {
        json.WriteString("thread", spec.Thread?.InWords);
        json.WriteString("seat", spec.Seat?.Word());
    }
}
