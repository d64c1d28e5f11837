using System.Globalization;
using System.Text;
using BendSheet.Files.Reading;

namespace BendSheet.Benchmarks.Fuzzing;

/// <summary>
/// Files as tired hands and unkind ones type them, each from its own number, so that any of them can be made again: sound cars, cars with a
/// figure that nobody would type, sound files with slips, and words of the format thrown together.
/// </summary>
/// <param name="seed">Of the whole run.</param>
/// <param name="sound">Files to begin with.</param>
internal sealed class FuzzedFiles(int seed, IReadOnlyList<string> sound)
{
    private const int MostSlips = 5;

    /// <summary>What stands for a figure, a word or a piece of structure in another place.</summary>
    private static readonly string[] Pieces =
    [
        "0", "-1", "1e308", ".nan", "1/0", "0.0000001", "99999", "100 m", "180", "179.95", "359.99", "360", "90 ccw", "-45",
        "1,5",        "1,200", "3/16 in", "2' 3-1/2\"", "90 included", "\"\"", "~", "straight", "bend",
        "included", "rotate", "rows", "lines", "units: mm",
        "measured: along", "measured: outside", "mirror: front", "use: hump", "coil: 3", "offset: 40", "saddle: 30", "bends: 3",
        "width: 80",        "taped: {A-B: 300}",
        "checks: {A-B: 300, bend 1: 44}", "bent: [1]", "trial-fit: {ahead: 5}", "exact: true", "within: 1", "an-3",
        "circuit: rear", "none", "[]", "{}", "[1]", "{a: 1}", "\n", "\n  ", "\n    ", "\n     ", ": ", ", ", "- ", "{", "}", "#", "'", "\"",
        "&a", "*a", "!b", "%", "---\n", "°", "é", "🚗", "\u202e", "\t", "\0", "\u2028", new string('9', 400), new string('n', 120),
    ];

    private static readonly string[] Lengths =
    [
        "0", "0.001", "1", "2", "5", "12", "20", "35", "60", "75.5", "110", "180", "250", "600", "1500",
        "3/16 in", "2 5/16 in", "1 ft 3 in",
        "35mm", "0.4 m",
    ];

    private static readonly string[] OddLengths = ["-5", "1e5", "99 m", "100 m", "101 m", "1,200", "62,5", "0.0000001", "x", "", "1/3 ft"];

    private static readonly string[] Turns = ["0.1", "1", "5", "15", "22 1/2", "30", "45", "60", "89.5", "90", "110", "135", "170"];

    private static readonly string[] OddTurns =
        ["0", "0.05", "179.9", "180", "181", "200", "270", "359", "360", "400", "-30", "90 included", "x"];

    private static readonly string[] Rolls = ["0", "10", "45 cw", "90 ccw", "120", "-60", "180", "179 cw", "-90"];

    private static readonly string[] OddRolls = ["360", "-360", "5 left", "400", "x"];

    private static readonly string[] Tops =
    [
        "project: a car", "paper: letter", "fractions: 64", "wire: {diameter: 2.4, radius: 4}", "clips: {every: 200}", "spare: 10 %",
        "tolerance: {straight: 1, bend: 1.5, rotate: 3, tape: 1}", "wanted: {miss: 3, askew: 2}", "cutting-loss: 2", "practice: 6 flares",
        "stock: [{length: 25 ft, left: 5000}, {kind: stick, length: 1.5 m, count: 3, price: 9}]", "have: {clip: 3}", "pedal-switch: true",
        "parts: {tee: {kind: tee, ports: an-3}, m: {kind: master-cylinder, ports: {o: {is: an-3, circuit: front}}}}",
        "hoses: {h: {from: tee.left, to: m.o}}",
    ];

    private static readonly string[] Benders =
    [
        "{radius: 15, mark: start}", "{radius: 9/16 in, mark: middle, grip: 12, follow: 10}", "{radius: 30, offset: 2, arc-factor: 1.02}",
        "{radius: 14, body: 30, room: 200, clear-below: 60}", "{radius: 12, largest-bend: 95}",
        "{radius: 15, tests: [{pull: 93, got: 90}, {pull: 47, got: 45}, {pull: 64, got: 60}]}",
        "{radius: 15, tests: [{pull: 93, got: 90}, {pull: 120, got: 91}]}", "{radius: 15, scatter: {mark: 1, bend: 1, roll: 2}}",
    ];

    /// <summary>The file of a number, the same one in every run.</summary>
    public string this[int number]
    {
        get
        {
            var random = new Random(unchecked((seed * 1_000_003) + number));
            return (number % 4) switch
            {
                0 => Car(random, odd: 0),
                1 => Car(random, odd: 0.04),
                2 => Slipped(random.Next(3) == 0 ? Car(random, odd: 0) : sound[random.Next(sound.Count)], random),
                _ => Words(random),
            };
        }
    }

    private static string Slipped(string typed, Random random)
    {
        for (var times = random.Next(1, MostSlips + 1); times > 0; times--)
        {
            var piece = Pieces[random.Next(Pieces.Length)];
            var (start, length) = Token(typed, random);
            typed = random.Next(9) switch
            {
                0 => typed.Insert(start, piece),
                1 => typed.Remove(start, length),
                2 or 3 => typed.Remove(start, length).Insert(start, piece),
                4 => typed.Remove(Math.Min(start, typed.Length), Math.Min(1, typed.Length - start)),
                5 => Lines(typed, lines => (lines[random.Next(lines.Length)], lines[0]) = (lines[0], lines[random.Next(lines.Length)])),
                6 => Lines(typed, lines => lines[random.Next(lines.Length)] = string.Empty),
                7 => Lines(typed, lines => lines[random.Next(lines.Length)] += "\n" + lines[random.Next(lines.Length)]),
                _ => Lines(typed, lines => lines[random.Next(lines.Length)] = new string(' ', random.Next(7)) + lines[^1].TrimStart()),
            };
        }

        return typed;
    }

    private static string Lines(string typed, Action<string[]> change)
    {
        var lines = typed.Split('\n');
        change(lines);
        return string.Join('\n', lines);
    }

    /// <summary>A run of letters, figures and signs that is one word or figure, or else a single character.</summary>
    private static (int Start, int Length) Token(string typed, Random random)
    {
        static bool IsPart(char c) => char.IsLetterOrDigit(c) || c is '-' or '.' or '/' or '\'' or '"';
        if (typed.Length == 0)
        {
            return (0, 0);
        }

        var start = random.Next(typed.Length);
        var end = start + 1;
        while (IsPart(typed[start]) && start > 0 && IsPart(typed[start - 1]))
        {
            start--;
        }

        while (IsPart(typed[start]) && end < typed.Length && IsPart(typed[end]))
        {
            end++;
        }

        return (start, end - start);
    }

    /// <summary>A car that is sound but for its odd figures.</summary>
    private static string Car(Random random, double odd)
    {
        var figures = new Figures(random, odd);
        var text = new StringBuilder("units: ").Append(random.Next(8) == 0 ? "in" : "mm").Append('\n')
            .Append("tube: {od: 4.75, wall: 0.7, material: copper-nickel}\nbender: ").Append(figures.One(Benders)).Append('\n')
            .Append("fittings: {an3: {flare: single 37, takes: 0.5, slide-on: [{nut: 17}, {sleeve: 9}], straight: 35}}\n")
            .Append("templates: {hump: [{straight: 30, bend: 20}, {straight: 40, rotate: 180, bend: 20}], ")
            .Append("two: [{use: hump}, {straight: 10}, {use: hump, reverse: true, mirror: true}]}\n");
        foreach (var top in Tops.Where(_ => random.Next(5) == 0))
        {
            text.Append(top).Append('\n');
        }

        text.Append("lines:\n");
        for (var line = random.Next(1, 5); line > 0; line--)
        {
            text.Append(CultureInfo.InvariantCulture, $"  line {line}: ").Append(figures.Line(line)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Words of the format where they may stand, and where they may not.</summary>
    private static string Words(Random random)
    {
        var figures = new Figures(random, 0.1);
        var text = new StringBuilder(random.Next(3) > 0 ? "units: mm\ntube: {od: 4.75}\nbender: {radius: 15}\n" : string.Empty);
        foreach (var word in Vocabulary.File.Known.Where(_ => random.Next(4) == 0).Append("lines"))
        {
            text.Append(word).Append(": ").Append(figures.Anything(word is "lines" ? 4 : 3)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Figures, rows and lines.</summary>
    private sealed class Figures(Random random, double odd)
    {
        /// <summary>From here on lengths leave room for bends.</summary>
        private const int LongEnough = 8;

        private static readonly Vocabulary[] Places = [.. Vocabulary.All];

        public T One<T>(T[] all) => all[random.Next(all.Length)];

        public string Anything(int depth) => depth == 0 || random.Next(4) == 0 ? Value()
            : random.Next(3) == 0 ? $"[{Several(() => Anything(depth - 1))}]"
            : $"{{{Several(() => $"{Word()}: {Anything(depth - 1)}")}}}";

        public string Line(int number) => random.Next(10) switch
        {
            0 => $"{{mirror: line {random.Next(1, 5)}}}",
            1 => $"{{rough: {Length()}}}",
            2 => $"{{corners: [{Several(() => $"[{Length()}, {Length()}, {Length()}]")}]{Beside()}}}",
            3 => $"{{legs: [{Several(() => $"{{forward: {Length()}, {One(["up", "left", "down", "right"])}: {Length()}}}")}]{Beside()}}}",
            4 => $"{{distances: {{A-1: {Length()}, 1-2: {Length()}, 2-B: {Length()}, A-2: {Length()}, 1-B: {Length()}, A-B: {Length()}}}}}",
            5 or 6 => $"{{rows: [{Rows()}]{Beside()}}}",
            _ when number % 2 == 0 => $"[{Rows()}]",
            _ => "\n" + string.Concat(Enumerable.Range(0, random.Next(1, 8)).Select(_ => $"    - {Row()}\n")) + "    - {straight: 80}",
        };

        private string Beside()
        {
            string[] words =
            [
                $", from: {{at: tee.in, fitting: an3}}, to: {{at: m.o, fitting: an3, trim: {Length()}}}", ", measured: straight",
                $", start: {{heading: up, towards: left}}", $", taped: {{A-B: {Length()}, B ahead: {Length()}, 1-B: {Length()}}}",
                $", checks: {{A-B: {Length()}, bend 1: {Turn()}, roll 2: {Roll()}}}", $", bent: [{random.Next(1, 4)}]",
                $", trial-fit: {{ahead: {Length()}, aside: {Length()}}}", ", made: true", $", clips: {{every: {Length()}}}", ", bender: x",
            ];
            return string.Concat(words.Where(_ => random.Next(6) == 0));
        }

        private string Rows() =>
            $"{string.Join(", ", Enumerable.Range(0, random.Next(1, 7)).Select(_ => Row()))}, {{straight: {Length()}}}";

        private string Row() => random.Next(14) switch
        {
            0 => $"{{straight: {Length()}, rotate: {Roll()}, offset: {Length()}, bend: {Turn()}}}",
            1 => $"{{straight: {Length()}, offset: {Length()}, run: {Length()}}}",
            2 => $"{{straight: {Length()}, saddle: {Length()}, bends: 3, bend: {Turn()}}}",
            3 => $"{{straight: {Length()}, saddle: {Length()}, bends: 4, bend: {Turn()}, width: {Length()}}}",
            4 => $"{{straight: {Length()}, coil: {One(["0.5", "1", "3.25", "12"])}, radius: {Length()}, pitch: {Length()}}}",
            5 => $"{{use: {One(["hump", "two"])}, straight: {Length()}}}",
            6 => $"{{straight: {{length: {Length()}, within: 3}}, rotate: {Roll()}, bend: {{angle: {Turn()}, within: 1}}}}",
            7 => $"{{straight: {Length()}, rotate: {Roll()}, included: {Turn()}, exact: true, note: mind it}}",
            _ => $"{{straight: {Length()}, rotate: {Roll()}, bend: {Turn()}}}",
        };

        private string Length() => random.NextDouble() < odd ? One(OddLengths)
            : One(odd == 0 && random.Next(4) > 0 ? Lengths[LongEnough..] : Lengths);

        private string Turn() => random.NextDouble() < odd ? One(OddTurns) : One(Turns);

        private string Roll() => random.NextDouble() < odd ? One(OddRolls) : One(Rolls);

        private string Word() => random.Next(8) == 0 ? One(Pieces).Trim() : One([.. One(Places).Known]);

        private string Value() => random.Next(6) switch
        {
            0 => One(Lengths),
            1 => One(Turns),
            2 => One(OddLengths),
            3 => One(["true", "main", "an3", "line 1", "tee.in", "start", "corner", "bubble", "single 37", "an-3", "front"]),
            4 => Word(),
            _ => One(["0", "1", "2", "3"]),
        };

        private string Several(Func<string> one) => string.Join(", ", Enumerable.Range(0, random.Next(1, 6)).Select(_ => one()));
    }
}
