using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Geometry;
using BendSheet.Core.Picture;
using BendSheet.Core.Plumbing;
using BendSheet.Files.Reading;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>What the picture of a typed car shows, and what it says that it does not show.</summary>
public class CarPictureTests
{
    private const string Head = """
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 9/16 in}
        pedal-switch: true
        wanted: {miss: 1 m, askew: 90}

        """;

    private const string Car = Head + """
        parts:
          master:
            kind: master-cylinder
            ports: {front: {circuit: front, at: {forward: 0, left: 0, up: 0}, faces: forward}, rear: {circuit: rear}}
          bracket:
            kind: other
            ports: {in: {at: {forward: 200, left: 100, up: 0}}, side: {at: {forward: 200, left: 100, up: 0}}, out: }
          caliper: {kind: caliper, ports: {inlet: {at: {forward: 200, left: 400, up: 0}}, bleeder: bleed}}
          tee: {kind: tee, ports: [in, left, right]}
        hoses:
          flex: {from: bracket.out, to: caliper.inlet, length: 350}
          reach: {from: bracket.side, to: caliper.inlet, length: 360, have: 1}
        keep-clear:
          exhaust: {box: {from: {forward: 0, right: 200}, to: {forward: 900, right: 100, up: 50}}, clearance: 60}
        lines:
          front: {from: master.front, to: bracket.in, made: true, rows: [{straight: 200, bend: 90}, {straight: 100}]}
          rear: {from: master.rear, to: tee.in, rows: [{straight: 300, bend: 45}, {straight: 100}]}
          later: {from: tee.left, to: somewhere, rough: 420}

        """;

    [Fact]
    public void Lines_lie_where_their_ports_are_with_the_length_that_the_cover_has()
    {
        var (plan, picture) = Of(Car);
        var front = picture!.Shown.Single(run => string.Equals(run.Name, "front", StringComparison.Ordinal));
        Assert.Equal(new Vector3D(0, 0, 0), front.Tube!.EndA);
        Assert.Equal(0, front.Tube.EndB.DistanceTo(new(200, 100, 0)), 1.0);
        Assert.Equal(plan.Cover().Lines.Single(line => line.Name is "front").CutLength!.Main, front.Length);
        Assert.True(front.IsMade);
        Assert.Equal("master.front → bracket.in", PictureWords.Ends(front));
        Assert.Equal("front", picture.Circuits[front.Circuit!.Value]);
    }

    [Fact]
    public void A_hose_is_drawn_where_both_ports_have_a_place()
    {
        var (_, picture) = Of(Car);
        var hose = Assert.Single(picture!.Shown, run => run.Kind == ConnectionKind.Hose);
        Assert.Equal(("reach", true), (hose.Name, hose.IsMade));
        Assert.Equal((new Vector3D(200, 100, 0), new Vector3D(200, 400, 0)), hose.Hose);
    }

    [Fact]
    public void What_the_views_do_not_show_whole_is_a_diagram_as_well()
    {
        var diagram = Of(Car).Picture!.Diagram!;
        Assert.Equal(["flex", "reach", "front", "rear", "later"], diagram.Shown.Select(run => run.Name), StringComparer.Ordinal);
        Assert.Equal(["master", "bracket", "caliper", "tee"], diagram.Parts.Select(part => part.Name), StringComparer.Ordinal);
        Assert.Equal(Enumerable.Range(1, 9), diagram.Shown.Select(run => run.Number).Concat(diagram.Parts.Select(part => part.Number)));
        Assert.False(diagram.HasPlaces);
        Assert.Empty(diagram.NotDrawn);
        Assert.Null(diagram.Diagram);
    }

    [Fact]
    public void Where_all_has_a_place_there_is_no_diagram()
    {
        var whole = Head + """
            parts:
              master: {kind: master-cylinder, ports: {out: {at: {forward: 0, left: 0, up: 0}, faces: forward}}}
              caliper: {kind: caliper, ports: {inlet: {at: {forward: 200, left: 100, up: 0}}}}
            lines: {front: {from: master.out, to: caliper.inlet, rows: [{straight: 200, bend: 90}, {straight: 100}]}}

            """;
        var picture = Of(whole).Picture!;
        Assert.True(picture.HasPlaces);
        Assert.Null(picture.Diagram);
    }

    [Fact]
    public void What_has_no_place_is_named_with_its_length()
    {
        var (plan, picture) = Of(Car);
        var rear = plan.Cover().Lines.Single(line => line.Name is "rear").CutLength!.Main;
        Assert.Equal(
            [
                $"Lines without a known place: rear ({rear}).", "Lines without a template: later (about 420.0 mm).",
                "Hoses without a known place at both ends: flex (350.0 mm).", "Parts without a known place: tee.",
            ],
            picture!.NotDrawn,
            StringComparer.Ordinal);
        Assert.Equal("60.0 mm", Assert.Single(picture.Zones).Clearance);
        Assert.Equal([1, 2], picture.Shown.Select(run => run.Number));
    }

    [Fact]
    public void Without_any_place_it_is_a_diagram_of_everything()
    {
        var (_, picture) = Of(Head + """
            parts:
              master: {kind: master-cylinder, ports: [out]}
              tee: {kind: tee, ports: [in, left, right]}
            lines:
              feed: {from: master.out, to: tee.in, rough: 300}
              left: {from: tee.left, rough: 500}

            """);
        Assert.False(picture!.HasPlaces);
        Assert.Empty(picture.NotDrawn);
        Assert.Equal(
            ["feed, about 300.0 mm", "left, about 500.0 mm"], picture.Shown.Select(PictureWords.Label), StringComparer.Ordinal);
    }

    [Fact]
    public void A_file_of_lines_alone_has_no_picture() =>
        Assert.Null(Of(Head + "lines:\n  one: [{straight: 200, bend: 90}, {straight: 80}]\n  two: [{straight: 300}]\n").Picture);

    private static (CarPlan Plan, CarPicture? Picture) Of(string text)
    {
        var plan = CarPlan.Of(TemplateReader.Read("car.yaml", new MemoryStream(Encoding.UTF8.GetBytes(text))), []);
        return (plan, plan.Picture());
    }
}
