using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Asking;

/// <summary>
/// Everything that is asked, in the order of the work. The first question that is due comes next, so that the answers alone decide
/// where the conversation stands, and going back drops the last one.
/// </summary>
internal static class Questions
{
    private const string Yes = "yes";
    private const string No = "no";

    private const string FittingHelp = "Type a name of your own: what it is made of is asked the first time. The same name again is the "
        + "same fitting.";

    private const string NoteHelp = "Words after ` # ` are printed beside the bend.";

    private const string BendHelp = "0 is straight on, 90 a square corner, 180 a U. Measured between the legs instead, type it as "
        + "`135 included`. Two bends to a parallel run: `offset 25, bend 30` or `offset 25, run 60`. Over a pipe: `saddle 30, bends 3, "
        + "bend 22.5`; over a box: `saddle 40, bends 4, bend 45, width 100`. Wound on a former: `coil 2, radius 30, pitch 8`. " + NoteHelp;

    private const string Rotate = "rotate";
    private const string Coil = "coil";

    private static readonly string[] ForSeveral = ["offset", "saddle", Coil];

    private static readonly string Units = string.Join(", ", Enum.GetValues<LengthUnit>().Select(unit => unit.Symbol()));

    private static readonly string Habits = string.Join(", ", MeasuredToWords.All.Select(known => known.Word));

    private static readonly string FlareWords = string.Join(", ", Flares.All.Select(known => known.Words));

    private static readonly Question[] OfTheBench =
    [
        Needed(_ => $"Unit of a number without one ({Units})", "in", "Lengths may have a unit of their own all the same, such as 3/16 in.",
            said => said.Units is null, (said, text) => said.Units = text) with { Default = _ => LengthUnit.Millimetre.Symbol() },
        Needed(_ => "Tube: outside diameter", "3/16 in", "Measured with a caliper on a clean piece.",
            said => said.Od is null, (said, text) => said.Od = text),
        Optional(_ => "Tube: wall", "0.028 in", "What the supplier gives. With it, flares and thin walls are checked.",
            said => said.Wall is null, (said, text) => said.Wall = text),
        Optional(_ => "Tube: material", "copper-nickel", "Steel, copper-nickel, stainless, aluminium: with it the bend radius is checked.",
            said => said.Material is null, (said, text) => said.Material = text),
        Needed(_ => "Bender: radius to the tube's centreline", "9/16 in", "Not the former's own radius: half of the tube's diameter is "
            + "added to that. Measure it on a test bend.", said => said.Radius is null, (said, text) => said.Radius = text),
        Needed(_ => "Bender: its line stands over the start or the middle of a bend", "start",
            "The line on the tool that a pen mark is laid at.",
            said => said.Mark is null, (said, text) => said.Mark = text) with { Default = _ => "start" },
        Optional(_ => "Bender: straight tube that it needs where it holds", "12", "From the start of the bend to the end of the clamp.",
            said => said.Grip is null, (said, text) => said.Grip = text),
        Optional(_ => "Bender: straight tube that it needs where it sweeps", "10", "From the end of the bend to the end of the slide or "
            + "roller: a leg that is shorter cannot be bent.", said => said.Follow is null, (said, text) => said.Follow = text),
        Optional(said => said.Tests.Count == 0 ? "Test bend: pulled to, on the tool's dial" : "Another test bend: pulled to", "93",
            "Bend a scrap, read the dial, let go and measure the bend: springback is learned from the two figures.",
            said => !said.TestsDone && said.Tests is not [.., { Got: null }], TakePull) with { Empty = "none" },
        Needed(said => $"Test bend: pulled to {said.Tests[^1].Pull}, and came back to", "90", "Measured on the scrap after letting go.",
            said => said.Tests is [.., { Got: null }], (said, text) => said.Tests[^1].Got = text),
    ];

    private static readonly Question[] OfTheRoute =
    [
        Needed(_ => $"How the legs were measured ({Habits})", "outside",
            "corner: from corner to corner of the centreline. straight: only the flat part between two bends. outside, inside: "
            + "with a ruler along that side. along: with a tape along the wire, from the "
            + "middle of a bend to the middle of the next.",
            said => said.Lines.Count == 0 || said.Another, TakeHabit) with
        {
            Default = said => said.Line?.Measured ?? MeasuredToWords.All[0].Word,
        },
        Needed(_ => "Wire: radius of its own bends, to its centreline", "4", "Measured on a bend of the wire.",
            said => said.WireRadius is null && said.Needs(MeasuredToWords.NeedsWireRadius), (said, text) => said.WireRadius = text),
        Needed(_ => "Wire: diameter", "2.4", "Measured with a caliper.",
            said => said.WireDiameter is null && said.Needs(MeasuredToWords.NeedsWireDiameter), (said, text) => said.WireDiameter = text),
        Needed(_ => "Name of the line", "front-left", "It is printed on the sheet and becomes part of a file's name.",
            said => said.Line is { Name: null }, (said, text) => said.Line!.Name = text) with
        {
            Default = said => $"line-{said.Lines.Count}",
        },
        Needed(said => $"Leg {said.Line!.Bends + 1}, from {(said.Line.Rows.Count == 0 ? "end A" : $"bend {said.Line.Bends}")}",
            "120", $"Walk from end A to end B. Any notation of the file: 120, 30 mm, 1 3/16, 12-5/16\", 3'-2 1/2\". {NoteHelp}",
            said => said.Line is { HasEnded: false } line && line.Rows is not [.., { Bend: null } or { Roll: null }], TakeLeg) with
        {
            Shapes = true,
        },
        Optional(said => $"Bend {said.Line!.Bends + 1}: how far the tube turns, or an offset, saddle or coil", "45", BendHelp,
            said => said.Line is { Rows: [.., { Bend: null }] }, TakeBend) with
        {
            Empty = "none, this leg ends at B",
            Shapes = true,
        },
        Needed(said => $"Roll from bend {said.Line!.Bends - said.Line.Rows[^1].Bends} to bend "
                + $"{said.Line.Bends - said.Line.Rows[^1].Bends + 1}",
            "90 cw",
            "How far the bending plane turns between the two, seen from A along the tube: cw clockwise, ccw the other way. "
            + "0 where both bends turn the same way in one "
            + "plane, 180 where they turn opposite ways.",
            said => said.Line is { HasEnded: false, Rows: [.., { Roll: null }] },
            (said, text) => said.Line!.Rows[^1].Roll = OfRow(said, text)) with
        {
            Shapes = true,
        },
        Optional(said => said.Line!.Taped.Count > 0 ? "Taped as well" : $"Taped across the wire, such as `{said.Line.ToTape?.First}: ...`",
            "A-2: 168", "Between two of A, the corners and B. Or `B ahead: 225`: how far B lies ahead of A along a straight edge on the "
            + "straight at A; `B aside: 237.5`: how far off that straight. Less sure than the tape: `A-2: {distance: 168, within: 3}`.",
            said => said.Line is { HasEnded: true, TapingDone: false } line && (line.Taped.Count > 0 || NextToTape(said).First is not null),
            TakeTaped) with
        {
            Empty = "no more",
            Shapes = true,
            Wrong = text => text.Contains(':', StringComparison.Ordinal) ? null
                : "Type what was measured, a colon and the reading, such as `A-2: 168` or `B ahead: 225`.",
        },
    ];

    private static readonly Question[] OfTheEnds =
    [
        Optional(_ => "End A leads to", "master cylinder", "Your own words, printed on the sheet.",
            said => said.Line is { From.At: null }, (said, text) => said.Line!.From.At = text),
        Optional(Fitting("A"), "nut-and-sleeve", FittingHelp,
            said => said.Line is { From.Fitting: null }, (said, text) => TakeFitting(said, said.Line!.From, text)) with { Empty = "none" },
        Needed(said => $"Fitting {said.OpenFitting!.Name}: its flare ({FlareWords})", "double 45",
            "How the end of the tube is formed. none is a plain end.",
            said => said.OpenFitting is { Flare: null }, (said, text) => said.OpenFitting!.Flare = text),
        Optional(said => $"Fitting {said.OpenFitting!.Name}: tube that the flare uses up", "0.5",
            "Measure a practice piece before and after.",
            said => said.OpenFitting is { Takes: null }, (said, text) => said.OpenFitting!.Takes = text),
        Optional(said => $"Fitting {said.OpenFitting!.Name}: length of its nut", "17", "It is slid on before the flare is made.",
            said => said.OpenFitting is { Nut: null }, (said, text) => said.OpenFitting!.Nut = text) with { Empty = "no nut" },
        Optional(said => $"Fitting {said.OpenFitting!.Name}: length of its sleeve", "9", "It is slid on after the nut.",
            said => said.OpenFitting is { Sleeve: null }, (said, text) => said.OpenFitting!.Sleeve = text) with { Empty = "no sleeve" },
        Optional(said => $"Fitting {said.OpenFitting!.Name}: straight tube that it and the flaring bar need", "35",
            "From the end of the tube to where a bend may begin.",
            said => said.OpenFitting is { Straight: null }, (said, text) => said.OpenFitting!.Straight = text),
        Optional(_ => "End B leads to", "hose bracket", "Your own words, printed on the sheet.",
            said => said.Line is { To.At: null }, (said, text) => said.Line!.To.At = text),
        Optional(Fitting("B"), "nut-and-sleeve", FittingHelp,
            said => said.Line is { To.Fitting: null }, (said, text) => TakeFitting(said, said.Line!.To, text)) with
        {
            Default = said => said.Line!.From.Fitting ?? string.Empty,
            Empty = "none",
        },
        Optional(_ => "Tube to leave on at end B, cut to fit on the car", "15", "Where you are not sure of the last length: it is "
            + "cut off once the line is offered up on the car.",
            said => said.Line is { To.Trim: null }, (said, text) => said.Line!.To.Trim = text) with { Empty = "none" },
        Needed(_ => "Another line?", Yes, "yes asks for the next line of the same tube and tool.",
            said => !said.Finished, TakeAnother) with
        {
            Default = _ => No,
            Wrong = text => IsYes(text) || IsNo(text) ? null : $"Type {Yes} or {No}.",
        },
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Question> All { get; } = [.. OfTheBench, .. OfTheRoute, .. OfTheEnds];

    /// <summary>What comes next; null where all is said.</summary>
    public static Question? Next(Said said) => All.FirstOrDefault(question => question.IsDue(said));

    /// <summary>What is to be measured across the wire of the last line, once all its legs are said.</summary>
    public static ToTape NextToTape(Said said) => said.Line!.ToTape ??= ToTape.Of(said);

    /// <summary>What was said with these answers, one after the other.</summary>
    public static Said After(IEnumerable<string> answers)
    {
        var said = new Said();
        foreach (var answer in answers)
        {
            Next(said)!.Take(said, answer);
        }

        return said;
    }

    private static Question Needed(
        Func<Said, string> asks, string example, string help, Func<Said, bool> isDue, Action<Said, string> take) =>
        new(asks, example, help, isDue, take);

    private static Question Optional(
        Func<Said, string> asks, string example, string help, Func<Said, bool> isDue, Action<Said, string> take) =>
        new(asks, example, help, isDue, take) { Default = _ => string.Empty, MayBeLeftOut = true };

    private static Func<Said, string> Fitting(string end) => said => said.Fittings.Count == 0
        ? $"Fitting at end {end}"
        : $"Fitting at end {end} ({string.Join(", ", said.Fittings.Select(fitting => fitting.Name))}, or a new one)";

    private static void TakePull(Said said, string text)
    {
        said.TestsDone = text.Length == 0;
        if (!said.TestsDone)
        {
            said.Tests.Add(new(text));
        }
    }

    private static void TakeHabit(Said said, string text)
    {
        said.Lines.Add(new(text));
        said.Another = false;
    }

    private static void TakeLeg(Said said, string text)
    {
        var (leg, note) = Noted.Of(text);
        said.Line!.Rows.Add(new(leg) { Note = note });
    }

    /// <summary>Before the first bend there is nothing to roll from.</summary>
    private static void TakeBend(Said said, string text)
    {
        var line = said.Line!;
        var row = line.Rows[^1];
        row.Bend = OfRow(said, text);
        var words = FileWords.Of(row.Bend);
        if (words.Any(one => ForSeveral.Contains(one.Word, StringComparer.Ordinal)))
        {
            row.Several = words;
        }

        row.Roll = line.Rows.Count == 1 || row.Bend.Length == 0 || HasWord(row, Rotate) ? string.Empty : null;
        row.Bends = row.Bend.Length == 0 ? 0
            : HasWord(row, Coil) ? Math.Max(1, Trial.Bends(said) - line.Bends)
            : HasWord(row, "saddle") ? words.Any(one => one is { Word: "bends", Value: "4" }) ? 4 : 3
            : HasWord(row, "offset") ? 2
            : 1;
    }

    private static bool HasWord(SaidRow row, string word) =>
        row.Several.Any(one => string.Equals(one.Word, word, StringComparison.Ordinal));

    /// <summary>The answer, without the note that is added to those of the row.</summary>
    private static string OfRow(Said said, string text)
    {
        var row = said.Line!.Rows[^1];
        var (answer, note) = Noted.Of(text);
        row.Note = row.Note.Length == 0 ? note : note.Length == 0 ? row.Note : $"{row.Note}; {note}";
        return answer;
    }

    private static void TakeTaped(Said said, string text)
    {
        var line = said.Line!;
        line.ToTape = null;
        line.TapingDone = text.Length == 0;
        if (text.Split(':', 2, StringSplitOptions.TrimEntries) is [var what, var reading])
        {
            line.Taped.Add((what, reading));
        }
    }

    private static void TakeFitting(Said said, SaidEnd end, string text)
    {
        end.Fitting = text;
        if (text.Length > 0 && !said.Fittings.Exists(known => string.Equals(known.Name, text, StringComparison.Ordinal)))
        {
            said.Fittings.Add(new(text));
        }
    }

    private static void TakeAnother(Said said, string text)
    {
        said.Another = IsYes(text);
        said.Finished = !said.Another;
    }

    private static bool IsYes(string text) => IsWord(text, Yes);

    private static bool IsNo(string text) => IsWord(text, No);

    private static bool IsWord(string text, string word) => text.Length > 0 && word.StartsWith(text, StringComparison.OrdinalIgnoreCase);
}
