using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Files.Reading;
using BendSheet.Files.Yaml;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>
/// What can be wrong with the words and figures of a file: where each finding stands and what it says would make it right.
/// </summary>
public class FileRuleTests
{
    /// <summary>File, place, rule, and the end of the message, which is the cure.</summary>
    public static TheoryData<string, string, string, string> Cases { get; } = new()
    {
        // Words
        {
            Top + "colour: red\n" + Line, "4:1", "unknown-word",
            "`colour` is not a word for the top of the file: it may have `project`, `units`, `paper`, `fractions`, `tube`, `tubes`, "
                + "`bender`, `benders`, `fittings`, `wire`, `tolerance`, `wanted`, `clips`, `templates`, `parts`, `hoses`, `pedal-switch`, "
                + "`keep-clear`, `clearance`, `lines`, `stock`, `cutting-loss`, `spare`, `practice`, `have`, `include`"
        },
        {
            Top + "include: workshop.yaml\n" + Line, "4:10", "cannot-read",
            "`workshop.yaml` cannot be included: there is no folder to look for it in"
        },
        {
            Top + "projekt: Finch\n" + Line, "4:1", "unknown-word",
            "`projekt` is not a word for the top of the file: did you mean `project`?"
        },
        { Rows("{straigth: 120}"), "6:8", "unknown-word", "`straigth` is not a word for a row: did you mean `straight`?" },
        {
            Rows("{straight: 120, bow: 45, rotate: 90 cw}", "{straight: 80}"), "6:23", "unknown-word",
            "it may have `straight`, `rotate`, `bend`, `included`, `bender`, `note`, `exact`, `use`, `reverse`, `mirror`, `offset`, "
                + "`run`, `saddle`, `bends`, `width`, `coil`, `radius`, `pitch`, `winds`"
        },
        {
            Top.Replace("od:", "OD:", StringComparison.Ordinal) + Line, "2:8", "unknown-word",
            "`OD` is not a word for a tube: did you mean `od`?"
        },
        {
            Top.Replace("od:", "diameter:", StringComparison.Ordinal) + Line, "2:8", "unknown-word",
            "`diameter` is not a word for a tube: it may have `od`, `wall`, `material`, `smallest-radius`"
        },
        { Top + "line:\n  fl:\n    - {straight: 80}\n", "4:1", "unknown-word", "did you mean `lines`?" },
        { Top + Line + "  fr: {miror: fl}\n", "8:8", "unknown-word", "did you mean `mirror`?" },
        {
            Top + "\"\\e[31mred\": 1\n" + Line, "4:1", "unknown-word",
            "` [31mred` is not a word for the top of the file: it may have `project`, `units`, `paper`, `fractions`, `tube`, `tubes`, "
                + "`bender`, `benders`, `fittings`, `wire`, `tolerance`, `wanted`, `clips`, `templates`, `parts`, `hoses`, `pedal-switch`, "
                + "`keep-clear`, `clearance`, `lines`, `stock`, `cutting-loss`, `spare`, `practice`, `have`, `include`"
        },
        { LongLine("checks: []"), "6:13", "wrong-kind", "such as `checks: {A-2: 344, bend 2: 34}`, and this is empty" },

        // Figures that nothing real has
        {
            Top.Replace("od: 3/16 in", "od: 3/16", StringComparison.Ordinal) + Line, "2:12", "bare-fraction",
            "if it is in inches, write `3/16 in`; if not, write the figure with a point"
        },
        { Rows("{straight: 12 5/16}"), "6:18", "bare-fraction", "write `12 5/16 in`; if not, write the figure with a point" },
        {
            Top.Replace("od: 3/16 in", "od: 25", StringComparison.Ordinal) + Line, "2:12", "unusual-tube", "check `od` and its unit"
        },
        {
            Top + "fittings: {a: {flare: bubble, countersink: 1}}\n" + Line, "4:31", "out-of-place",
            "and this end has none: take it out"
        },

        // Parts and ports
        {
            Top + "parts: {tee: {kind: tee, mounted: chassis}}\n" + Line, "4:26", "out-of-place",
            "and `tee` is a tee: take it out"
        },
        {
            Top + "parts: {tee: {kind: tee}}\n" + LongLine("from: tee.lift").Replace(Top, string.Empty, StringComparison.Ordinal), "7:11",
            "unknown-port", "`tee` has no port `lift`: did you mean `tee.left`?"
        },
        {
            Top + "parts: {tee: {kind: tee, ports: 3/8-24 flare}}\n" + Line, "4:33", "unreadable-port",
            "or name a standard one, such as `an-3`, `inverted 3/16` or `bubble 4.75`"
        },

        // Routes in other forms
        { Top + Line + "  fr: {mirror: fll}\n", "8:16", "unknown-name", "there is no line called `fll` to mirror: did you mean `fl`?" },
        { Top + "lines:\n  a: {mirror: b}\n  b: {mirror: a}\n", "6:15", "circle", "name a line that has a route of its own" },
        {
            Top + Line + "  fr: {mirror: fl, bender: hand}\n", "8:20", "out-of-place",
            "a mirrored line has it from the other one; take it out, or take `mirror` out"
        },
        {
            Top + "templates:\n  a:\n    - {use: a}\n" + Line, "6:13", "circle",
            "template `a` uses itself, here or through another: take one of the uses out"
        },
        { Top + "templates: []\n" + Line, "4:12", "wrong-kind", "such as `bracket:` with its rows below it, and this is empty" },
        {
            Rows("{use: hook}", "{straight: 80}"), "6:13", "unknown-name",
            "add `templates:` to the top of the file, and below it this name with its rows"
        },
        { Rows("{use: hook, offset: 20, bend: 30}", "{straight: 80}"), "6:19", "said-twice", "give each a row of its own" },
        {
            Rows("{straight: 20, offset: 20}", "{straight: 80}"), "6:7", "missing-word",
            "an offset needs its bend, or the run from corner to corner: add `bend` or `run`"
        },
        {
            Rows("{straight: 20, offset: 20, bend: 30, run: 40}", "{straight: 80}"), "6:44", "said-twice",
            "`bend` and `run` say the same slope twice: keep one of them"
        },
        { Rows("{straight: 20, offset: 20, bend: 100}", "{straight: 80}"), "6:40", "out-of-range",
            "must be from 0.1° (less is no bend) to 90°" },
        { Rows("{straight: 20, saddle: 20, bend: 30}", "{straight: 80}"), "6:7", "missing-word", "add `bends: 3` or `bends: 4`" },
        {
            Rows("{straight: 20, saddle: 20, bends: 4, bend: 30}", "{straight: 80}"), "6:7", "missing-word",
            "needs the length of its flat top, corner to corner: add `width`"
        },
        { Rows("{straight: 20, coil: 2, radius: 30}", "{straight: 80}"), "6:7", "missing-word", "add `pitch`" },
        {
            Rows("{straight: 20, coil: 2, radius: 30, pitch: 8, bend: 30}", "{straight: 80}"), "6:53", "out-of-place",
            "`bend` does nothing beside `coil`: take it out, or put it into a row of its own"
        },
        {
            LongLine("corners: [[0, 0, 0], [100, 0, 0]]"), "6:5", "said-twice",
            "`rows` and `corners` both say the route of this line: keep one of them"
        },
        { Top + "lines:\n  fl: {corners: [[0, 0, 0]]}\n", "5:17", "wrong-kind", "`[[0, 0, 0], [120, 0, 0], [160, 40, 0]]`" },
        {
            Top + "lines:\n  fl: {corners: [[0, 0, 0], [1, 2]]}\n", "5:29", "wrong-kind",
            "a corner is three figures, forward, left and up, such as `[120, 0, 40]`, and this is a list"
        },
        {
            Top + "lines:\n  fl: {corners: [[0, 0, 0], [100, 0, 0], [100, 0, 0]]}\n", "5:42", "same-point",
            "measure it again, or take one of the two out"
        },
        {
            Top + "lines:\n  fl: {corners: [[0, 0, 0], [100, 0, 0], [20, 0, 0]]}\n", "5:29", "turns-back",
            "a U-bend needs two corners, as far apart as its legs"
        },
        {
            Top + "lines:\n  fl: {corners: [[0, 0, 0], [100, 0, 0]], measured: outside}\n", "5:43", "out-of-place",
            "corner points say already how the line lies and where its corners are; take it out"
        },
        { Top + "lines:\n  fl: {legs: [{forward: 20, back: 5}]}\n", "5:29", "said-twice", "give the difference, one way" },
        { Top + "lines:\n  fl: {legs: []}\n", "5:14", "wrong-kind", "`[{forward: 120}, {up: 40, left: 15}]`" },
        {
            Top + "lines:\n  fl: {distances: []}\n", "5:19", "wrong-kind",
            "such as `distances: {A-1: 120, A-B: 166.5, 1-B: 60}`, and this is empty"
        },
        {
            Top + "lines:\n  fl: {distances: {0-1: 100, ends: 30}}\n", "5:30", "unknown-word",
            "`ends` is not a pair of corners: write two of A, B and the numbers of corners with a hyphen, such as "
                + "`distances: {A-1: 120, A-B: 166.5, 1-B: 60}`"
        },
        { Top + "lines:\n  fl: {distances: {0-1: 100 mn}}\n", "5:25", "unreadable-length", "write mm, cm, m, in or ft" },
        {
            Top + "lines:\n  fl: {distances: {0-1: 100, 1-2: 100, 0-2: 210}}\n", "5:45", "triangle-impossible",
            "measure 0-2 again, and if it stays, 0-1 and 1-2"
        },
        { Top + "lines:\n  fl: {distances: {0-1: 100}, side: up}\n", "5:37", "not-a-choice", "`side: up` is not one of `left`, `right`" },
        { LongLine("side: left"), "6:5", "out-of-place", "other ways to say a route leave no side open; take it out" },
        {
            LongLine("start: {heading: up}"), "6:12", "missing-word",
            "`start` does not say `towards`: write the way the line leaves end A and the way its first bend turns, such as `start: "
                + "{heading: up, towards: left}`"
        },
        { LongLine("start: {heading: up, towards: down}"), "6:26", "out-of-range", "`towards` must be square to `heading`" },

        // Missing
        {
            Top.Replace("units: mm\n", "", StringComparison.Ordinal) + Line, "1:1", "missing-word",
            "add `units: mm` (or cm, m, in, ft) at the top"
        },
        {
            "units: mm\nbender: {radius: 14}\n" + Line, "1:1", "missing-word",
            "the file has no tube: add one at the top, such as `tube: {od: 3/16 in}`"
        },
        {
            "units: mm\ntube: {od: 6}\n" + Line, "1:1", "missing-word",
            "the file has no bender: add one at the top, such as `bender: {radius: 9/16 in}`"
        },
        { Top, "1:1", "missing-word", "the file has no lines: add `lines:` with a name and the rows of its template" },
        {
            Top + "lines:\n", "4:1", "missing-word",
            "`lines` has no value: type it after the colon, or on the next lines two spaces further in, or take the word out"
        },
        {
            Top + Line.Replace("\n  ", "\n", StringComparison.Ordinal), "4:1", "missing-word",
            "type it after the colon, or on the next lines two spaces further in, or take the word out"
        },
        { "units: mm\ntube: {wall: 1}\nbender: {radius: 14}\n" + Line, "2:7", "missing-word", "add `od`, such as `od: 3/16 in`" },
        {
            "units: mm\ntube: {od: 6}\nbender: {grip: 1}\n" + Line, "3:9", "missing-word",
            "measured to the tube's centreline: add `radius`, such as `radius: 9/16 in`"
        },
        {
            Top + "fittings: {an3: {takes: 1}}\n" + Line, "4:17", "missing-word",
            "add `flare`, one of `single 37`, `single 45`, `double 45`, `bubble`, `none`"
        },
        {
            Top + "tolerance: {straight: 1}\n" + Line, "4:12", "missing-word",
            "the tolerance leaves out `bend` and `rotate`: say all three, such as `tolerance: {straight: 1 mm, bend: 1.5, rotate: 3}`"
        },
        {
            Rows("{straight: 120}", "{bend: 45}", "{straight: 80}"), "7:7", "missing-word",
            "add `straight` (`straight: 0` where there is none), or take the dash out if this belongs to the row above"
        },
        { Rows("{straight: , bend: 45}", "{straight: 80}"), "6:8", "missing-word", "or take the word out" },
        {
            Top + "lines:\n  fl: {made: false}\n", "5:3", "missing-word",
            "line `fl` has no route: add `rows:` with the template's straights and bends, or `corners`, `legs` or `distances`; or "
                + "`rough: 2.4 m`, about its length, until there is a template"
        },
        {
            Top.Replace("tube: {od: 3/16 in}", "tubes: {a: {od: 6}, b: {od: 8}}", StringComparison.Ordinal) + Line, "5:3", "missing-word",
            "add `tube:` with one of `a`, `b`"
        },
        {
            LongLine("measured: outside"), "6:5", "missing-word",
            "needs the wire's diameter: add it at the top of the file, such as `wire: {diameter: 2.4 mm, radius: 4 mm}`"
        },
        {
            LongLine("measured: along"), "6:5", "missing-word",
            "needs the wire's own bend radius to its centreline: add it at the top of the file, such as `wire: {diameter: 2.4 mm, "
                + "radius: 4 mm}`"
        },

        // Clips
        {
            LongLine("clips: {from-ends: 60}"), "6:12", "missing-word",
            "clips need the longest way between two of them: add `every`, such as `clips: {every: 300 mm}`"
        },
        { LongLine("clips: {evry: 300}"), "6:13", "unknown-word", "did you mean `every`?" },
        {
            LongLine("clips: 300"), "6:12", "wrong-kind",
            "`clips` is written as words with values, such as `{every: 300 mm}`, and this is `300`"
        },
        {
            LongLine("clips:"), "6:5", "missing-word",
            "`clips` has no value: type it after the colon, or on the next lines two spaces further in, or take the word out"
        },
        { LongLine("clips: {every: 19}"), "6:20", "out-of-range", "`every: 19` cannot be: it must be at least 20 mm, and at most 100 m" },
        { LongLine("clips: {every: 300, from-ends: 301}"), "6:25", "out-of-range", "make it smaller, or leave it out for half of `every`" },
        { LongLine("clips: {every: 300, hole: 0}"), "6:31", "out-of-range", "it must be above 0 and at most 100 m" },
        { Top + "clips: {every: often}\n" + Line, "4:16", "unreadable-length", "write a number, such as `310`, `310 mm` or `12 5/16 in`" },

        // Kinds
        {
            "- {straight: 80}\n", "1:1", "wrong-kind",
            "the top of the file is written as words with values, such as `units: mm`, and this is a list"
        },
        { "Finch\n", "1:1", "wrong-kind", "such as `units: mm`, and this is `Finch`" },
        {
            Top.Replace("{od: 3/16 in}", "3/16 in", StringComparison.Ordinal) + Line, "2:7", "wrong-kind",
            "such as `{od: 3/16 in}`, and this is `3/16 in`"
        },
        {
            Top.Replace("tube:", "tubes:", StringComparison.Ordinal) + Line, "2:8", "wrong-kind",
            "here the name is missing: write `tube` for a single one without a name, or put a name above its words"
        },
        {
            Top.Replace("{od: 3/16 in}", "{main: {od: 3/16 in}}", StringComparison.Ordinal) + Line, "2:7", "wrong-kind",
            "write `tubes` above several, or above one with a name"
        },
        {
            Top.Replace("tube: {od: 3/16 in}", "tubes: {}", StringComparison.Ordinal) + Line, "2:8", "wrong-kind",
            "`tubes` has a name for each tube, such as `tubes: {main: {od: 3/16 in}}`, and this is empty"
        },
        { Top + "fittings: {flare: none}\n" + Line, "4:11", "wrong-kind", "here the name is missing: put a name above its words" },
        {
            Top + "fittings: {an3: {flare: none, slide-on: [nut]}}\n" + Line, "4:42", "wrong-kind",
            "each with its length: `slide-on: [{nut: 17}, {sleeve: 9}]`"
        },
        { Top + "lines: [{straight: 80}]\n", "4:8", "wrong-kind", "such as `front-left:` with its rows below it, and this is a list" },
        { Top + "lines: {}\n", "4:8", "wrong-kind", "such as `front-left:` with its rows below it, and this is empty" },
        {
            Top + "lines:\n  fl:\n    straight: 80\n", "6:5", "wrong-kind",
            "each after a dash, such as `- {straight: 120, bend: 45}`; the last one only goes straight"
        },
        { Top + "lines:\n  fl:\n", "5:6", "wrong-kind", "such as `- {straight: 120, bend: 45}`; the last one only goes straight" },
        { Top + "lines:\n  fl: []\n", "5:7", "wrong-kind", "such as `- {straight: 120, bend: 45}`; the last one only goes straight" },
        {
            Rows("120"), "6:7", "wrong-kind",
            "a row is written as words with values, such as `{straight: 120, bend: 45}`, and this is `120`"
        },
        { Rows("{straight: [120]}"), "6:18", "wrong-kind", "`straight` is one word or figure, and this is a list" },
        {
            LongLine("from: [tee]"), "6:11", "wrong-kind",
            "an end of a line is written as words with values, such as `{at: master cylinder}`, and this is a list"
        },
        { Top + "wire: 2.4\n" + Line, "4:7", "wrong-kind", "such as `{diameter: 2.4 mm, radius: 4 mm}`, and this is `2.4`" },

        // Figures
        {
            Rows("{straight: 12 yards}"), "6:18", "unreadable-length",
            "`straight: 12 yards` has `yards` where a unit belongs: write mm, cm, m, in or ft"
        },
        {
            Rows("{straight: .nan}"), "6:18", "unreadable-length",
            "is not a length: write a number, such as `310`, `310 mm` or `12 5/16 in`"
        },
        {
            Rows("{straight: 1, bend: square}", "{straight: 8}"), "6:27", "unreadable-angle",
            "`bend: square` is not an angle: write degrees, such as `45`"
        },
        {
            Rows("{straight: 1, bend: 5, rotate: 90 left}", "{straight: 8}"), "6:38", "unreadable-angle",
            "`rotate: 90 left` has `left` left over: write `90 cw` or `90 ccw`"
        },
        {
            Top.Replace("9/16 in", "9/16 in, arc-factor: one", StringComparison.Ordinal) + Line, "3:39", "unreadable-number",
            "`arc-factor: one` is not a number: write one, such as `1.0`"
        },
        {
            Top.Replace("9/16 in", "9/16 in, arc-factor: -1", StringComparison.Ordinal) + Line, "3:39", "out-of-range",
            "must be from 0.5 to 1.5 (1 unless the tool was calibrated)"
        },
        { Rows("{straight: -5}"), "6:18", "out-of-range", "`straight: -5` cannot be: it must be 0 or more, and at most 100 m" },
        { Rows("{straight: 101 m}"), "6:18", "out-of-range", "it must be 0 or more, and at most 100 m" },
        { Rows($"{{straight: {new string('9', 400)}}}"), "6:18", "out-of-range", "it must be 0 or more, and at most 100 m" },
        {
            Rows("{straight: 1, bend: 0}", "{straight: 8}"), "6:27", "out-of-range",
            "(a row without a bend leaves it out; a bend to the other side is a rotation of 180)"
        },
        {
            Rows("{straight: 1, bend: 360.1}", "{straight: 8}"), "6:27", "out-of-range",
            "(a row without a bend leaves it out; a bend to the other side is a rotation of 180)"
        },
        {
            Rows("{straight: 1, included: 180}", "{straight: 8}"), "6:31", "out-of-range",
            "it must be from 0° to 179.9° (180° is no bend at all)"
        },
        {
            Rows("{straight: 1, bend: 5, rotate: 361 ccw}", "{straight: 8}"), "6:38", "out-of-range",
            "it must be at most one whole turn, 360°, either way"
        },
        { Top.Replace("9/16 in", "0", StringComparison.Ordinal) + Line, "3:18", "out-of-range", "it must be above 0 and at most 100 m" },
        {
            Top.Replace("9/16 in", "14, offset: -101 m", StringComparison.Ordinal) + Line, "3:30", "out-of-range",
            "it must be at most 100 m, either way"
        },
        {
            Top.Replace("3/16 in", "6, wall: 3", StringComparison.Ordinal) + Line, "2:15", "out-of-range",
            "which leaves no hole: check `od` and `wall`, and their units"
        },
        { Top + "tolerance: {straight: 1, bend: 181, rotate: 3}\n" + Line, "4:32", "out-of-range", "it must be from 0° to 180°" },
        {
            Rows("\n      straight: 120,5"), "7:17", "decimal-comma",
            "`straight: 120,5` has a comma in its number: write the decimal point, as in `1.5`, and no comma for thousands"
        },
        { Rows("\n      straight: 1.000,5"), "7:17", "decimal-comma", "and no comma for thousands" },

        // Choices and names
        {
            Top.Replace("mm", "inches", StringComparison.Ordinal) + Line, "1:8", "not-a-choice",
            "`units: inches` is not one of `mm`, `cm`, `m`, `in`, `ft`: did you mean `in`?"
        },
        { Top.Replace("mm", "'\"'", StringComparison.Ordinal) + Line, "1:8", "not-a-choice", "`ft`: did you mean `in`?" },
        { Top.Replace("mm", "Millimeters", StringComparison.Ordinal) + Line, "1:8", "not-a-choice", "`ft`: did you mean `mm`?" },
        { Top.Replace("mm", "feet", StringComparison.Ordinal) + Line, "1:8", "not-a-choice", "`ft`: did you mean `ft`?" },
        { LongLine("made: No"), "6:11", "not-a-choice", "is not one of `true`, `false`: did you mean `false`?" },
        { Top + "fractions: 1/32\n" + Line, "4:12", "not-a-choice", "is not one of `2`, `4`, `8`, `16`, `32`, `64`, `128`" },
        { Top + "paper: [a4]\n" + Line, "4:8", "wrong-kind", "`paper` is one of `a4`, `letter`, and this is a list" },
        { Top + "paper: a3\n" + Line, "4:8", "not-a-choice", "is not one of `a4`, `letter`" },
        {
            LongLine("measured: corners"), "6:15", "not-a-choice",
            "is not one of `corner`, `straight`, `outside`, `inside`, `along`: did you mean `corner`?"
        },
        { LongLine("measured: on the corner"), "6:15", "not-a-choice", "`along`: did you mean `corner`?" },
        { Rows("{straight: 120, angle: 45}", "{straight: 80}"), "6:23", "unknown-word", "did you mean `bend`?" },
        { Rows("{straight: 120, bend: 90 included}", "{straight: 80}"), "6:29", "unreadable-angle", "such as `included: 90`" },
        { Rows("{straight: 1,200, bend: 45}", "{straight: 80}"), "6:18", "decimal-comma", "write `1200` or `1.200`, without the comma" },
        { Rows("{straight: 120, coil: 0.0000001, radius: 20, pitch: 5}", "{straight: 80}"), "6:29", "out-of-range", "and their units" },
        { Rows("{straight: 120, offset: 0.01, run: 90 m}", "{straight: 80}"), "6:31", "out-of-range", "and at their units" },
        { Rows("{straight: 120, offset: 90 m, bend: 0.2}", "{straight: 80}"), "6:31", "out-of-range", "and at the units" },
        {
            Top + "templates: {t: [" + string.Join(", ", Enumerable.Repeat("{straight: 9, bend: 1}", 600)) + "]}\n"
                + "lines:\n  fl: [{use: t}, {use: t}, {straight: 80}]\n",
            "6:24", "too-many-rows", "and divide the line"
        },
        { LongLine("made: yes"), "6:11", "not-a-choice", "is not one of `true`, `false`: did you mean `true`?" },
        {
            Top + "fittings: {an3: {flare: 37}}\n" + Line, "4:25", "not-a-choice",
            "is not one of `single 37`, `single 45`, `double 45`, `bubble`, `none`"
        },
        {
            LongLine("tube: main"), "6:11", "unknown-name", "the file's only tube has no name: leave this out, or give it a name in `tubes`"
        },
        {
            LongLine("from: {fitting: an3}"), "6:21", "unknown-name",
            "add `fittings:` to the top of the file, and below it this name with `{flare: single 37, straight: 35 mm}` after its colon"
        },
        {
            Top.Replace("bender: {radius: 9/16 in}", "benders: {hand: {radius: 14}}", StringComparison.Ordinal)
                + "lines: {fl: {bender: hnad, rows: [{straight: 1}]}}\n",
            "4:22", "unknown-name", "there is no bender called `hnad`: did you mean `hand`?"
        },
        {
            Top.Replace("bender: {radius: 9/16 in}", "benders: {hand: {radius: 14}, small: {radius: 9}}", StringComparison.Ordinal)
                + "lines: {fl: {bender: big, rows: [{straight: 1}]}}\n",
            "4:22", "unknown-name", "there is no bender called `big`: the file has `hand`, `small`"
        },
        {
            Rows("{straight: 1, bend: 5, bender: hand}", "{straight: 8}"), "6:38", "unknown-name",
            "the file's only bender has no name: leave this out, or give it a name in `benders`"
        },
        { Top + "tubes: {main: {od: 6}}\n" + Line, "2:1", "said-twice", "move the single one into `tubes`, under a name of its own" },
        {
            Top + "benders: {main: {radius: 9}}\n" + Line, "3:1", "said-twice",
            "move the single one into `benders`, under a name of its own"
        },
        {
            Rows("{straight: 1, bend: 45, included: 135}", "{straight: 8}"), "6:31", "said-twice",
            "(bend = 180 − included): keep one of them"
        },
        {
            Top + Line.Replace("fl:", "front/left:", StringComparison.Ordinal), "5:3", "unusable-name",
            "use letters, figures, spaces and hyphens"
        },
        {
            Top.Replace("tube: {od: 3/16 in}", "tubes: {\"\\e[31m\": {od: 6}}", StringComparison.Ordinal) + Line, "2:9", "unusable-name",
            "the name of a tube has a character in it that cannot be seen: type it again"
        },
        {
            Top + "fittings: {an3: {flare: none, slide-on: [{\"\\a\": 17}]}}\n" + Line, "4:43", "unusable-name",
            "the name of a piece to slide on has a character in it that cannot be seen: type it again"
        },
        { Top + "project: \"a\\e[31m\"\n" + Line, "4:10", "control-character", "type the text again without it" },

        // Places
        {
            Rows("{straight: 1, rotate: 90 cw}"), "6:21", "out-of-place",
            "`rotate` does nothing in a row without a bend: put it into the row of the bend it belongs to"
        },
        {
            Rows("{straight: 1, note: tee}"), "6:21", "out-of-place",
            "`note` does nothing in a row without a bend: put it into the row of the bend it belongs to"
        },
        {
            LongLine("from: {at: tee, trim: 25}"), "6:21", "out-of-place",
            "`trim` belongs to end B (`to`): end A is finished first and all marks count from it"
        },
        {
            Top + "fittings: {an3: {flare: none, takes: 1}}\n" + Line, "4:31", "out-of-place",
            "take `takes` out, or say which flare is made"
        },
        {
            Rows("{straight: 1, bend: 45}"), "6:27", "ends-in-bend",
            "add a last row with the straight up to end B, such as `- {straight: 80}`"
        },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_mistake_gets_one_finding_where_it_was_typed_that_says_what_makes_it_right(
        string typed, string place, string rule, string cure)
    {
        var file = Read(typed);
        Assert.Equal($"{place} {rule}", Places(file));
        Assert.EndsWith(cure, file.Findings[0].Message, StringComparison.Ordinal);
        Assert.Equal(
            rule is "bare-fraction" or "unusual-tube" ? Severity.Warning : Severity.Error, file.Findings[0].Severity);
        Assert.Equal(RuleSubject.File, file.Findings[0].Rule.Subject);
    }

    [Fact]
    public void Every_rule_has_a_case()
    {
        var shown = Cases.Select(row => (string)row[2]).ToHashSet(StringComparer.Ordinal);
        Rule[] rules = [.. FileRules.All, YamlRules.DecimalComma, YamlRules.ControlCharacter, Route.EndsInBend];
        Assert.Empty(rules.Select(rule => rule.Name).Except(shown, StringComparer.Ordinal));
        Assert.Equal(typeof(FileRules).GetProperties().Length - 1, FileRules.All.Count);
        Assert.Empty(FileRules.All.Select(rule => rule.Name).Intersect(YamlRules.All.Select(rule => rule.Name), StringComparer.Ordinal));
    }

    [Fact]
    public void Eleven_mistakes_in_one_file_give_those_eleven_findings()
    {
        var file = Read(
            """
            units: mm
            papper: a4
            tube: {od: 3/16 in, wall: thin}
            bender: {radius: 9/16 in, mark: end, arc-factor: 3}
            fittings: {an3: {flare: none, takes: 0.5}}
            lines:
              front/left:
                - {straight: 120, bend: 45 cw}
                - {straight: 80}
              rear:
                from: {fitting: an4}
                measured: outside
                rows:
                  - {straight: 10 yards, bend: 30}
                  - {straight: 20}
              loop:
                - {straight: 60, bend: 180}

            """);
        Assert.Equal(
            "2:1 unknown-word; 3:27 unreadable-length; 4:33 not-a-choice; 4:50 out-of-range; 5:31 out-of-place; 7:3 unusable-name; "
            + "8:29 unreadable-angle; 11:21 unknown-name; 12:5 missing-word; 14:20 unreadable-length; 17:28 ends-in-bend",
            Places(file));
    }

    [Fact]
    public void Below_a_misspelt_word_everything_is_read_on()
    {
        var file = Read(Top + "lins:\n  fl:\n    rwos:\n      - {straght: -1, bnd: 400}\n      - {straight: 80}\n");
        Assert.Equal(
            "4:1 unknown-word; 6:5 unknown-word; 7:10 unknown-word; 7:19 out-of-range; 7:23 unknown-word; 7:28 out-of-range", Places(file));
    }

    [Fact]
    public void A_word_without_a_value_speaks_for_the_words_that_belong_below_it()
    {
        var file = Read("units: mm\ntube:\nod: 3/16 in\nwall: 1\nbender:\nradius: 9/16 in\n" + Line + "colour: red\n");
        Assert.Equal("2:1 missing-word; 5:1 missing-word; 11:1 unknown-word", Places(file));
    }

    [Theory]
    [InlineData("fittings:", "4:1 missing-word")]
    [InlineData("fittings: an3", "4:11 wrong-kind")]
    [InlineData("fittings: {}", "4:11 wrong-kind")]
    [InlineData("fittings: {flare: none}", "4:11 wrong-kind")]
    [InlineData("fittings: {an3: {flare: x}}", "4:25 not-a-choice")]
    [InlineData("fittings: {an3: }", "4:17 wrong-kind")]
    public void Fittings_that_cannot_be_read_are_not_reported_again_at_the_ends_that_use_them(string typed, string places) =>
        Assert.Equal(places, Places(Read(Top + typed + "\n" + LongLine("from: {fitting: an3}")[Top.Length..])));

    [Fact]
    public void A_name_in_both_forms_is_one_mistake_of_each_kind_and_no_more() =>
        Assert.Equal(
            "2:1 said-twice; 2:7 wrong-kind",
            Places(Read("units: mm\ntube: {main: {od: 5}}\ntubes: {main: {od: 6}}\nbender: {radius: 14}\n" + Line)));

    [Fact]
    public void An_unreadable_wire_is_reported_once_and_not_at_each_line_that_needs_it()
    {
        Assert.Equal("4:18 unreadable-length", Places(Read(Top + "wire: {diameter: x}\n" + LongLine("measured: outside")[Top.Length..])));
        Assert.Equal("4:1 missing-word", Places(Read(Top + "wire:\n" + LongLine("measured: along")[Top.Length..])));
    }

    [Fact]
    public void A_tube_that_cannot_be_read_is_not_reported_again_at_the_lines_that_use_it()
    {
        var file =
            Read("units: mm\ntubes: {main: {od: x}}\nbender: {radius: 14}\nlines:\n  a: {tube: main, rows: [{straight: 1}]}\n  b: "
                + "[{straight: 1}]\n");
        Assert.Equal("2:20 unreadable-length", Places(file));
        Assert.Empty(file.Lines);
    }

    [Fact]
    public void After_a_hundred_mistakes_the_list_ends_with_their_number()
    {
        var file = Read(Rows([.. Enumerable.Repeat("{straight: x}", 150)]));
        Assert.Equal(101, file.Findings.Length);
        Assert.Equal("106:18 too-many-mistakes", Places(file).Split("; ")[^1]);
        Assert.Contains("50 more mistakes after them", file.Findings[^1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_nothing_but_names_is_not_compared_name_by_name_and_its_messages_stay_short()
    {
        // Twice the names take twice the memory; comparing every name with every other would take four times as much.
        Allocated(4_500);
        Assert.InRange((double)Allocated(9_000) / Allocated(4_500), 1.5, 3);

        static long Allocated(int many)
        {
            var numbers = Enumerable.Range(0, many).ToList();
            var typed = "units: mm\ntube: {od: 5}\nbenders:\n" + string.Concat(numbers.Select(i => $"  hand{i}: {{radius: 14}}\n"))
                + "lines:\n"
                + string.Concat(numbers.Select(i => $"  l{i}: {{bender: x{i}, rows: [{{straight: 1}}]}}\n  m{i}: [{{straight: 1}}]\n"));
            var before = GC.GetAllocatedBytesForCurrentThread();
            var file = Read(typed);
            var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            Assert.Equal(101, file.Findings.Length);
            Assert.All(file.Findings, finding => Assert.InRange(finding.Message.Length, 20, 400));
            return allocated;
        }
    }
}
