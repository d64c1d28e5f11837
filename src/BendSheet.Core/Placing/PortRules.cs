using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Placing;

/// <summary>What is to be said of a line whose template and whose ports disagree.</summary>
public static class PortRules
{
    /// <summary>The template ends elsewhere.</summary>
    public static Rule TemplateOffPort { get; } = new(
        "template-off-port",
        RuleSubject.Making,
        "Where template and car disagree one of them was measured wrongly, and the tube will not fit.");

    /// <summary>Above this a port faces another way than its line goes: only six ways have words, and ports stand between them (common
    /// practice, no source).</summary>
    private static Angle MostAskew { get; } = Angle.FromDegrees(15);

    /// <summary>In standard deviations: one honest measurement in twenty is as far off as this or further.</summary>
    private const double Unlikely = 2;

    /// <summary>At most one finding for each end.</summary>
    /// <param name="template">As typed.</param>
    /// <param name="placed">With its ports.</param>
    /// <param name="survey">Of both together.</param>
    public static IEnumerable<Finding> Check(LineTemplate template, PlacedTemplate placed, LineSurvey? survey)
    {
        if (placed.Miss is not { } miss)
        {
            yield break;
        }

        if (miss.AskewAtA is { } leaving && leaving > MostAskew)
        {
            yield return TemplateOffPort.Warning(
                template.From.Port!.Position,
                $"{template.Name}: {template.From.Port.InWords} faces {AngleNotation.Figure(leaving)} away from the way that the line "
                    + "leaves A: correct `faces`, or how the line lies");
        }

        var contradicts = placed.IsObserved && survey is { IsSuspect: true };
        var isOff = miss.Distance is { } distance && distance > Allowed(template);
        var isAskew = miss.Askew is { } entering && entering > MostAskew;
        if (!isOff && !isAskew && !contradicts)
        {
            yield break;
        }

        var words = InWords(template, miss, isAskew);
        yield return contradicts
            ? TemplateOffPort.Error(
                template.To.Port!.Position,
                $"{words}, more than both could be out: measure {Again(template)} again, and retype what is wrong{OrWiden(miss)}")
            : TemplateOffPort.Warning(template.To.Port!.Position, $"{words}{WhatToDo(template, placed, isAskew)}");
    }

    /// <summary>What both may well be out by is no mistake yet.</summary>
    private static string WhatToDo(LineTemplate template, PlacedTemplate placed, bool isAskew)
    {
        var measure = $"before cutting, measure {Again(template)}";
        return placed is { IsObserved: true, MayMiss: { } own, Miss.Distance: { } distance } && !isAskew
            && distance.Millimetres <= Unlikely * Math.Sqrt(Math.Pow(own.Millimetres, 2) + PortsMayMiss(template))
            ? $", no more than both may be out: the sheet is made so that B meets the port as well as it can; {measure} to be surer"
            : $": {measure}, and correct what is wrong";
    }

    /// <summary>How far the places of two ports may be out together; never less than the fit that the line wants.</summary>
    private static Length Allowed(LineTemplate template)
    {
        var places = Unlikely * Math.Sqrt(PortsMayMiss(template));
        return Length.FromMillimetres(Math.Max(template.Wanted.Miss.Millimetres, places));
    }

    /// <summary>The variance of the way from port to port, in square millimetres.</summary>
    private static double PortsMayMiss(LineTemplate template)
    {
        double Squared(LineEnd end) => Math.Pow(end.Port!.Port.Lie!.Within.Millimetres, 2);
        return Squared(template.From) + Squared(template.To);
    }

    private static string InWords(LineTemplate template, PortMiss miss, bool isAskew)
    {
        var port = template.To.Port!.InWords;
        var askew = isAskew ? $"{AngleNotation.Figure(miss.Askew!.Value)} askew" : null;
        if (miss.Distance is not { } distance)
        {
            return $"{template.Name}: template enters {port} {askew}";
        }

        var parts = miss.Beyond is { } beyond
            ? $" (forward {Part(beyond.X)}, left {Part(beyond.Y)}, up {Part(beyond.Z)} mm from it)"
            : string.Empty;
        var enters = askew is null ? string.Empty : $", and enters it {askew}";
        return $"{template.Name}: template ends {FindingFigures.Mm(distance)} from where {port} is typed{parts}{enters}";
    }

    private static string Again(LineTemplate template) =>
        $"from {template.From.Port!.InWords} to {template.To.Port!.InWords} on the car, and A to B on the template";

    /// <summary>With half the miss as one standard deviation, the miss is within reach of an honest measurement.</summary>
    private static string OrWiden(PortMiss miss) => miss.Distance is { } distance
        ? $"; where a port was measured roughly, say so with `within: {Math.Ceiling(distance.Millimetres / Unlikely):0} mm` in its `at`"
        : string.Empty;

    private static string Part(double millimetres) =>
        (Math.Round(millimetres, 1) + 0).ToString("0.0", CultureInfo.InvariantCulture).Replace('-', '−');
}
