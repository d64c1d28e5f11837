using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Files.Reading;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>Typed cars, solved.</summary>
internal static class TypedCars
{
    public const string Top = "units: mm\ntube: {od: 3/16 in, wall: 0.028 in}\nbender: {radius: 9/16 in}\npedal-switch: true\n";

    /// <summary>The plan of a file without a mistake in it.</summary>
    public static CarPlan Plan(string text)
    {
        var file = TemplateReader.Read("car.yaml", new MemoryStream(Encoding.UTF8.GetBytes(text)));
        Assert.Empty(file.Findings);
        return CarPlan.Of(file, []);
    }

    /// <summary>The findings of one rule.</summary>
    public static List<Finding> Found(string text, Rule rule) => [.. Plan(text).Findings.Where(finding => finding.Rule == rule)];
}
