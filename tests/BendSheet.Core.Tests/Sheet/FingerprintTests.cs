using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Bench;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Sheet;

public class FingerprintTests
{
    private static Dictionary<string, Func<LineTemplate, LineTemplate>> Changes { get; } = new(StringComparer.Ordinal)
    {
        ["name"] = line => line with { Name = "front-right" },
        ["habit"] = line => line with { Habit = MeasuredTo.Outside },
        ["tube diameter"] = line => line with { Tube = line.Tube with { OutsideDiameter = Lines.Mm(4.75) } },
        ["tube wall"] = line => line with { Tube = line.Tube with { Wall = Lines.Mm(0.7) } },
        ["tube wall unknown"] = line => line with { Tube = line.Tube with { Wall = null } },
        ["tube material"] = line => line with { Tube = line.Tube with { Material = "steel" } },
        ["smallest radius"] = line => line with { Tube = line.Tube with { SmallestRadius = Lines.Mm(10) } },
        ["wire diameter"] = line => line with { Wire = line.Wire with { Diameter = Lines.Mm(2.5) } },
        ["wire radius"] = line => line with { Wire = line.Wire with { Radius = Lines.Mm(5) } },
        ["tolerance of straights"] = line => line with { Tolerance = line.Tolerance! with { Straight = Lines.Mm(2) } },
        ["tolerance of bends"] = line => line with { Tolerance = line.Tolerance! with { Bend = Lines.Deg(2) } },
        ["tolerance of rotations"] = line => line with { Tolerance = line.Tolerance! with { Rotate = Lines.Deg(2) } },
        ["no tolerance"] = line => line with { Tolerance = null },
        ["clips"] = line => line with { Clips = Clips },
        ["spacing of clips"] = line => line with { Clips = Clips with { Every = Lines.Mm(301) } },
        ["clips from the ends"] = line => line with { Clips = Clips with { FromEnds = Lines.Mm(61) } },
        ["width of clips"] = line => line with { Clips = Clips with { Width = Lines.Mm(13) } },
        ["holes for clips"] = line => line with { Clips = Clips with { Hole = null } },
        ["a distance on the finished piece"] = line => line with { Checks = [new(new(PieceKind.Distance, 0, 4), 327, Lines.NameAt)] },
        ["another such distance"] = line => line with { Checks = [new(new(PieceKind.Distance, 0, 4), 328, Lines.NameAt)] },
        ["such a distance elsewhere"] = line => line with { Checks = [new(new(PieceKind.Distance, 1, 4), 327, Lines.NameAt)] },
        ["a bend by protractor"] = line => line with { Checks = [new(new(PieceKind.Bend, 0, 2), 0.6, Lines.NameAt)] },
        ["how sure that is"] = line => line with { Checks = [new(new(PieceKind.Bend, 0, 2), 0.6, Lines.NameAt) { Within = 0.01 }] },
        ["bends that are made"] = line => line with { Bent = [1] },
        ["a trial fit"] = line => line with { TrialFit = new(Lines.Mm(4), Lines.Mm(-2), Lines.NameAt) },
        ["a distance across the wire"] = line => Across(line, wire: null),
        ["the same to the backs of bends"] = line => Across(line, new(Lines.Mm(2.4), Lines.Mm(4))),
        ["how sure one leg is"] = line => Within(line, 3),
        ["how sure the same is otherwise"] = line => Within(line, 4),
        ["where A goes"] = line => line with { From = line.From with { At = "rear tee" } },
        ["where B goes"] = line => line with { To = line.To with { At = "rear tee" } },
        ["port of A"] = line => AtPort(line, 3, thread: null),
        ["thread of that port"] = line => AtPort(line, 4, thread: null),
        ["thread of the nut in it"] = line => AtPort(line, 3, ScrewThread.Inch(0.375, 24)),
        ["where that port lies"] = line => AtPort(line, 3, thread: null, new(new(100, 0, 50), null, Lines.NameAt)),
        ["the way it faces"] = line => AtPort(line, 3, thread: null, new(new(100, 0, 50), new(0, 1, 0), Lines.NameAt)),
        ["how sure its place is"] = line => AtPort(
            line, 3, thread: null, new(new(100, 0, 50), null, Lines.NameAt) { Within = Lines.Mm(6) }),
        ["trim"] = line => line with { To = line.To with { Trim = Lines.Mm(26) } },
        ["no fitting at A"] = line => line with { From = line.From with { Fitting = null } },
        ["fitting name"] = line => AtA(line, fitting => fitting with { Name = "an4" }),
        ["flare"] = line => AtA(line, fitting => fitting with { Flare = Flare.Bubble }),
        ["takes"] = line => AtA(line, fitting => fitting with { FlareAllowance = Lines.Mm(0.6) }),
        ["straight at the end"] = line => AtA(line, fitting => fitting with { Straight = Lines.Mm(36) }),
        ["hardware name"] = line => AtA(line, fitting => fitting with { Hardware = [new("nut", Lines.Mm(17)), new("ring", Lines.Mm(9))] }),
        ["hardware length"] = line => AtA(
            line, fitting => fitting with { Hardware = [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(8))] }),
        ["hardware order"] = line => AtA(line, fitting => fitting with { Hardware = [.. fitting.Hardware.Reverse()] }),
        ["hardware left out"] = line => AtA(line, fitting => fitting with { Hardware = fitting.Hardware[..1] }),
        ["ends swapped"] = line => line with { From = line.To, To = line.From },
        ["tool name"] = line => line.OnTool(FullLine.Hand with { Name = "other" }),
        ["tool radius"] = line => line.OnTool(FullLine.Hand with { Radius = Lines.Mm(15) }),
        ["tool mark"] = line => line.OnTool(FullLine.Hand with { Mark = MarkPlace.Middle }),
        ["tool offset"] = line => line.OnTool(FullLine.Hand with { Offset = Lines.Mm(1.4) }),
        ["tool line"] = line => line.OnTool(FullLine.Hand with { Line = "L" }),
        ["no wire"] = line => line with { HasWire = false },
        ["wire of another line"] = line => line with { WireOf = "other" },
        ["mirror image of that wire"] = line => line with { WireOf = "other", MirrorsWire = true },
        ["countersink"] = line => AtA(line, fitting => fitting with { Countersink = Lines.Mm(1.2) }),
        ["where the tool's line was found"] = line => line.OnTool(
            FullLine.Hand with { Tests = [TestBends.Marked(90, 200, 103, 103, 90)] }),
        ["tool grip"] = line => line.OnTool(FullLine.Hand with { Grip = Lines.Mm(13) }),
        ["tool follow"] = line => line.OnTool(FullLine.Hand with { Follow = Lines.Mm(11) }),
        ["tool's largest bend"] = line => line.OnTool(FullLine.Hand with { LargestBend = Lines.Deg(120) }),
        ["arc factor"] = line => line.OnTool(FullLine.Hand with { ArcFactor = 1.02 }),
        ["arc factor typed as 1"] = line => line.OnTool(FullLine.Hand with { ArcFactor = 1 }),
        ["no arc factor typed"] = line => line.OnTool(FullLine.Hand with { ArcFactor = null }),
        ["a test bend"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Pulled(93, 90)] }),
        ["another pull"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Pulled(94, 90)] }),
        ["another bend from it"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Pulled(93, 89)] }),
        ["two test bends"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Pulled(93, 90), TestBends.Pulled(47, 45)] }),
        ["a test piece"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Piece(90, 200, 103, 103)] }),
        ["its length"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Piece(90, 201, 103, 103)] }),
        ["its first leg"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Piece(90, 200, 104, 103)] }),
        ["its second leg"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Piece(90, 200, 103, 104)] }),
        ["its habit"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Piece(90, 200, 103, 103, MeasuredTo.Along)] }),
        ["its diameter"] = line => line.OnTool(FullLine.Hand with { Tests = [TestBends.Piece(90, 200, 103, 103, MeasuredTo.Outside, 5)] }),
        ["tool of one bend"] = line => line
            .WithBends(bend => bend.Turn == Lines.Deg(90) ? bend with { Bender = Lines.Bender(20, "big") } : bend),
        ["a leg"] = line => line.WithRows(row => row.Straight == Lines.Mm(60) ? row with { Straight = Lines.Mm(60.001) } : row),
        ["a bend"] = line => line.WithBends(bend => bend.Turn == Lines.Deg(30) ? bend with { Turn = Lines.Deg(30.001) } : bend),
        ["a rotation"] = line => line.WithBends(bend => bend.Turn == Lines.Deg(30) ? bend with { Rotation = Lines.Deg(-90) } : bend),
        ["a note"] = line => line.WithBends(bend => bend.Turn == Lines.Deg(30) ? bend with { Note = "here" } : bend),
        ["reversed"] = line => line with { Route = line.Route.Reversed() },
        ["mirrored"] = line => line with { Route = line.Route.Mirrored() },
        ["a row more"] = line => line with
        {
            Route = Lines.Of(FullLine.Hand, [120, 60, 200, 80, 0.001], (0, 45), (90, 30), (-45, 90), (0, 1)).Route,
        },
    };

    public static TheoryData<string> WhatChanges { get; } = [.. Changes.Keys];

    [Theory]
    [MemberData(nameof(WhatChanges))]
    public void It_changes_when_an_input_changes(string what) => Assert.NotEqual(
        Of(FullLine.Template), Of(Changes[what](FullLine.Template)), StringComparer.Ordinal);

    [Fact]
    public void No_two_changes_give_the_same() => Assert.Equal(
        Changes.Count, Changes.Values.Select(change => Of(change(FullLine.Template))).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void It_changes_with_the_project_and_the_notation()
    {
        var template = FullLine.Template;
        var all = new[]
        {
            Of(template),
            Fingerprint.Of(template, "Wren", FullLine.Metric),
            Fingerprint.Of(template, "Finch", FullLine.Metric.Other),
            Fingerprint.Of(template, "Finch", FullLine.Metric with { FractionsOf = 64 }),
        };
        Assert.Equal(4, all.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void It_does_not_change_with_the_places_where_things_were_typed()
    {
        var elsewhere = new SourcePosition("renamed.yaml", 99, 7);
        var hand = FullLine.Hand with { RadiusAt = elsewhere };
        var moved = FullLine.Template.WithRows(row => row with
        {
            StraightAt = elsewhere,
            Bend = row.Bend is { } bend ? bend with { TurnAt = elsewhere, Bender = hand } : null,
        }) with
        {
            At = elsewhere,
            Bender = hand,
        };
        Assert.Equal(Of(FullLine.Template), Of(moved));
    }

    /// <summary>The sheet beside the finished line stays the sheet of the file.</summary>
    [Fact]
    public void It_does_not_change_when_the_line_is_made()
    {
        var line = FullLine.Template;
        Assert.Equal(Of(line), Of(line with { Made = true }));
    }

    [Fact]
    public void It_does_not_change_with_a_test_of_another_tube()
    {
        var test = TestBends.Pulled(93, 90);
        var elsewhere = FullLine.Hand with { Tests = [test with { Tube = FullLine.Template.Tube with { Name = "other" } }] };
        Assert.Equal(Of(FullLine.Template), Of(FullLine.Template.OnTool(elsewhere)));
        Assert.NotEqual(
            Of(FullLine.Template),
            Of(FullLine.Template.OnTool(FullLine.Hand with { Tests = [test with { Tube = FullLine.Template.Tube }] })),
            StringComparer.Ordinal);
    }

    [Fact]
    public void It_tells_what_was_typed_not_how_that_is_adjusted()
    {
        // Corners A and 2 lie 167.9 mm apart by the rows.
        var typed = Across(Within(FullLine.Template, 3), wire: null, 169);
        var solved = CarPlan.Line(typed);
        Assert.NotEqual(typed.Route.Legs[0].Measured, solved.Template.Route.Legs[0].Measured);
        Assert.Equal(Of(typed), FullLine.Content(typed).Fingerprint);
    }

    [Fact]
    public void It_is_six_hexadecimal_digits_and_stands_on_the_sheet()
    {
        Assert.Matches("^[0-9a-f]{6}$", Of(FullLine.Template));
        Assert.Equal(Of(FullLine.Template), FullLine.Content(FullLine.Template).Fingerprint);
    }

    private static Clipping Clips => new(Lines.Mm(300), Lines.NameAt, Lines.Mm(60), Lines.Mm(5.5));

    private static string Of(LineTemplate template) => Fingerprint.Of(template, "Finch", FullLine.Metric);

    private static LineTemplate AtPort(LineTemplate line, int dash, ScrewThread? thread, PortLie? lie = null)
    {
        var port = new Port("left", StandardPort.OfDash(dash)!.Port, null) { Lie = lie };
        var tee = new Part("tee", PartKind.Tee, [port], 0, default);
        var changed = AtA(line, fitting => fitting with { Thread = thread });
        return changed with { From = changed.From with { Port = new(tee, port, default) } };
    }

    private static LineTemplate AtA(LineTemplate line, Func<Fitting, Fitting> change) =>
        line with { From = line.From with { Fitting = change(line.From.Fitting!) } };

    private static LineTemplate Across(LineTemplate line, Wire? wire, double apart = 300) => line with
    {
        Beside = [new(new(TapedKind.Distance, 0, 2) { Back = wire }, Lines.Mm(apart), Lines.NameAt)],
    };

    private static LineTemplate Within(LineTemplate line, double millimetres)
    {
        var leg = line.Route.Legs[0];
        var read = new Observation(ObservationKind.Leg, leg.Measured.Millimetres, leg.At) { Within = millimetres };
        return line with { Route = Route.Of(line.Route.Legs.SetItem(0, leg with { From = read }), line.Route.Bends) };
    }
}
