using System.Text;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Files.Reading;
using BendSheet.Sheets;

namespace BendSheet.Cli.Tests.Guide;

/// <summary>The drawings of the guide show its first line as it is now; the switch of <see cref="Rewriting"/> draws them again.</summary>
[Collection(FromTheRepository.Name)]
public class GuideDrawingTests
{
    private static readonly Lazy<SolvedLine> Line = new(() =>
    {
        using var typed = File.OpenRead("samples/guide/first.yaml");
        return CarPlan.Of(TemplateReader.Read("samples/guide/first.yaml", typed), ["front-left"]).Lines.Single();
    });

    [Fact]
    public void The_wire_with_its_measurements() => IsOrBecomes("wire.svg", GuideDrawings.Wire(
        Line.Value.Template.Route, [.. Line.Value.Centreline!.Corners.Select(corner => corner!.Value)]));

    [Fact]
    public void How_a_rotation_is_read() => IsOrBecomes("rotation.svg", GuideDrawings.Rotation());

    [Fact]
    public void How_ahead_and_aside_are_measured() => IsOrBecomes(
        "ahead-aside.svg", GuideDrawings.AheadAndAside([.. Line.Value.Centreline!.Corners.Select(corner => corner!.Value)]));

    [Fact]
    public void The_car_in_one_picture()
    {
        using var typed = File.OpenRead("samples/guide/car.yaml");
        var plan = CarPlan.Of(TemplateReader.Read("samples/guide/car.yaml", typed), []);
        IsOrBecomes("car.svg", Encoding.UTF8.GetString(CarDrawing.Of(plan.Picture()!).Svg.Span));
    }

    private static void IsOrBecomes(string name, string drawing)
    {
        var path = "samples/guide/pictures/" + name;
        if (Rewriting.IsWanted)
        {
            File.WriteAllText(path, drawing);
            return;
        }

        Assert.Equal(File.ReadAllText(path), drawing);
    }
}
