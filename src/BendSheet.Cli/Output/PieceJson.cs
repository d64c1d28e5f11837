using System.Text.Json;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;

namespace BendSheet.Cli.Output;

/// <summary>What the piece in hand came out as, as JSON: millimetres and degrees, unrounded, one standard deviation.</summary>
internal static class PieceJson
{
    private const double OneDegree = Math.PI / 180;

    /// <summary>The property <c>piece</c>; null where nothing was measured on one.</summary>
    public static void Write(Utf8JsonWriter json, PieceInHand? piece, int bends)
    {
        if (piece is null)
        {
            json.WriteNull("piece");
            return;
        }

        json.WriteStartObject("piece");
        json.WriteNumber("miss", piece.Miss.Millimetres);
        json.WriteNumber("askew", piece.Askew.Degrees);
        json.WriteObjects("measurements", piece.Readings, reading =>
        {
            json.WriteString("name", reading.Name);
            json.WriteNumber("measured", Value(reading.Measured, reading.Quantity.IsAngle));
            json.WriteNumber("expected", Value(reading.Expected, reading.Quantity.IsAngle));
            json.WriteNumber("within", Value(reading.Within, reading.Quantity.IsAngle));
            json.WriteNumber("residual", Value(reading.Residual, reading.Quantity.IsAngle));
        });
        json.WriteValues("mistakes", piece.Mistakes, mistake => WriteMistake(json, mistake));
        json.WriteString("tellsApart", piece.Telling?.Quantity.Name(bends));
        WriteCorrection(json, piece.Correction, bends);
        json.WriteEndObject();
    }

    private static void WriteMistake(Utf8JsonWriter json, PieceMistake mistake)
    {
        json.WriteStartObject();
        json.WriteString("name", PieceRules.Name(mistake));
        json.WriteNumber("size", Value(mistake.Size, mistake.IsAngle));
        json.WriteNumber("within", Value(mistake.Within, mistake.IsAngle));
        json.WriteEndObject();
    }

    private static void WriteCorrection(Utf8JsonWriter json, Correction? correction, int bends)
    {
        if (correction is null)
        {
            json.WriteNull("correction");
            return;
        }

        json.WriteStartObject("correction");
        json.WriteObjects("steps", correction.Steps, step =>
        {
            json.WriteString("name", new PieceQuantity(step.IsTwist ? PieceKind.Roll : PieceKind.Bend, 0, step.Bend).Name(bends));
            json.WriteNumber("by", step.By.Degrees);
            json.WriteString("until", step.Until?.Name(bends));
            json.WriteNumber("reads", step.Reads.Millimetres);
            if (step.Gap is { } gap)
            {
                json.WriteNumber(gap.IsAside ? "portAside" : "portAhead", gap.Left.Millimetres);
            }
        });
        json.WriteNumber("miss", correction.Miss.Millimetres);
        json.WriteNumber("askew", correction.Askew.Degrees);
        json.WriteEndObject();
    }

    private static double Value(double value, bool isAngle) => isAngle ? value / OneDegree : value;
}
