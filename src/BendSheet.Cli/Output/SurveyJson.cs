using System.Text.Json;
using BendSheet.Core.Survey;

namespace BendSheet.Cli.Output;

/// <summary>What a line's measurements came to, as JSON: millimetres and degrees, unrounded, one standard deviation.</summary>
internal static class SurveyJson
{
    /// <summary>The property <c>survey</c>; null where the line has no bend or no shape.</summary>
    public static void Write(Utf8JsonWriter json, LineSurvey? survey)
    {
        if (survey is null)
        {
            json.WriteNull("survey");
            return;
        }

        json.WriteStartObject("survey");
        json.WriteNumber("miss", survey.Miss.Millimetres);
        json.WriteNumber("askew", survey.Askew.Degrees);
        json.WriteNumber("spread", survey.Spread.Millimetres);
        json.WriteBoolean("atLeast", survey.IsAtLeast);
        json.WriteNumber("chiSquare", survey.ChiSquare);
        json.WriteNumber("toSpare", survey.ToSpare);
        WriteMeasurements(json, survey);
        WriteNext(json, survey);
        WriteSlips(json, survey);
        json.WriteEndObject();
    }

    private static void WriteMeasurements(Utf8JsonWriter json, LineSurvey survey)
    {
        json.WriteObjects("measurements", survey.Measurements, one =>
        {
            json.WriteString("name", one.Name);
            json.WriteNumber("measured", Value(one.Measured, one.IsAngle));
            json.WriteNumber("within", Value(one.Within, one.IsAngle));
            json.WriteNumber("adjusted", Value(one.Adjusted, one.IsAngle));
            json.WriteNumber("redundancy", one.Redundancy);
            if (one.Standardised is { } standardised)
            {
                json.WriteNumber("w", standardised);
            }
            else
            {
                json.WriteNull("w");
            }
        });
    }

    private static void WriteNext(Utf8JsonWriter json, LineSurvey survey)
    {
        json.WriteObjects("next", survey.Next, next =>
        {
            json.WriteString("name", next.Name);
            json.WriteNumber("expected", next.Expected.Millimetres);
            json.WriteNumber("within", next.Within.Millimetres);
            json.WriteNumber("miss", next.Miss.Millimetres);
            json.WriteNumber("askew", next.Askew.Degrees);
        });
    }

    private static void WriteSlips(Utf8JsonWriter json, LineSurvey survey)
    {
        json.WriteObjects("slips", survey.Slips, slip =>
        {
            json.WriteString("name", slip.Name);
            json.WriteNumber("measured", Value(slip.Measured, slip.IsAngle));
            json.WriteNumber("instead", Value(slip.Instead, slip.IsAngle));
            json.WriteString("kind", slip.Kind switch
            {
                SlipKind.Sense => "sense",
                SlipKind.Included => "included",
                SlipKind.Face => "face",
                SlipKind.Digits => "digits",
                SlipKind.Misread => "misread",
                _ => "other",
            });
        });
    }

    private static double Value(double value, bool isAngle) => isAngle ? value * 180 / Math.PI : value;
}
