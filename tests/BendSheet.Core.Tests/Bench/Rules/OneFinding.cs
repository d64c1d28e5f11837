using System.Globalization;
using System.Text.RegularExpressions;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Bench.Rules;

/// <summary>A bad shape gives exactly one finding, a good one none.</summary>
internal static class OneFinding
{
    public static void Is(LineTemplate template, Severity severity, Rule rule, SourcePosition position, string message)
    {
        var finding = Of(template);
        Assert.Equal(message, finding.Message);
        Assert.Equal(severity, finding.Severity);
        Assert.Same(rule, finding.Rule);
        Assert.Equal(position, finding.Position);
    }

    public static Finding Of(LineTemplate template) => Assert.Single(CarPlan.Line(template).Findings);

    public static void None(LineTemplate template) => Assert.Empty(CarPlan.Line(template).Findings);

    /// <summary>The millimetres that stand behind some words of a message.</summary>
    public static double MmAfter(string words, string message)
    {
        var match = Regex.Match(message, Regex.Escape(words) + " ([0-9.]+) mm", RegexOptions.NonBacktracking);
        Assert.True(match.Success, $"`{words}` and a length in: {message}");
        return double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
    }
}
