using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text.RegularExpressions;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Stock;

/// <summary>
/// Every sentence that a plan prints, held against every other way to cut, in small tasks of whole millimetres. A sentence that no check
/// knows fails, so that a new claim has to bring its own.
/// </summary>
public partial class ClaimsTests
{
    private const int Tasks = 1_500;
    private const int Seed = 2604;

    private static readonly LengthNotation Millimetres = new(Imperial: false, 32);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Whatever_a_plan_prints_holds_against_every_other_way_to_cut(bool withRough)
    {
        var random = new Random(Seed);
        var said = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < Tasks; i++)
        {
            var claim = new Claim(i, SmallTask.Random(random, withRough));
            claim.IsSound();
            foreach (var sentence in claim.Sentences)
            {
                var name = claim.Check(sentence);
                said[name] = said.GetValueOrDefault(name) + 1;
            }
        }

        // What is never said was never checked.
        Assert.All(Claim.Always, name => Assert.True(said.GetValueOrDefault(name) > 20, name));
        Assert.Equal(withRough, said.ContainsKey("measured first"));
    }

    /// <summary>A plan, its words, and all other plans.</summary>
    private sealed partial class Claim
    {
        private const RegexOptions Named = RegexOptions.ExplicitCapture;

        /// <summary>Milliseconds: no sentence takes one.</summary>
        private const int Patience = 10_000;

        private readonly string _what;
        private readonly SmallTask _task;
        private readonly TubePlan _tube;
        private readonly CuttingPlan _plan;
        private readonly int _length;
        private readonly EveryPlan _others;

        public Claim(int number, SmallTask task)
        {
            _task = task;
            ImmutableArray<Piece> pieces =
            [
                .. task.Measured.Select((size, i) => Stocked.Piece(size, FormattableString.Invariant($"p{i}"))),
                .. task.Rough.Select(
                    (size, i) => Stocked.Piece(size, FormattableString.Invariant($"rough {i}")) with { Use = PieceUse.Rough }),
            ];
            ImmutableArray<Roll> rolls =
            [
                .. task.Rolls.Select((roll, i) =>
                    Stocked.Roll(roll.Length, roll.Left, FormattableString.Invariant($"roll {i}")) with { Price = roll.Price }),
            ];
            var (loss, spare) = (Lines.Mm(task.Loss), Lines.Mm(task.Spare));
            _plan = CuttingPlan.Of(pieces, rolls, loss, spare);
            _tube = new(Lines.Tube, new(pieces, pieces.Length * loss, spare), rolls, _plan) { Names = [] };
            _length = (int)(_plan.ToBuy?.Length.Millimetres ?? 0);
            _others = EveryPlan.Of(task, task.Pieces, _length, _plan.Bought);
            _what = string.Create(
                CultureInfo.InvariantCulture,
                $"task {number}: {string.Join(' ', task.Measured)} | {string.Join(' ', task.Rough)} from "
                    + $"{string.Join(' ', task.Rolls.Select(roll => $"{roll.Left}/{roll.Length}@{roll.Price}"))}, loss {task.Loss}, spare "
                    + $"{task.Spare}");
        }

        public static string[] Always { get; } = ["fits", "does not fit", "only spare", "fewer", "longest", "rolls cut"];

        public IEnumerable<string> Sentences =>
            StockTubes.Of(_tube, Millimetres).Remarks.SelectMany(remark => Sentence().Matches(remark).Select(match => match.Value.Trim()));

        /// <summary>Whatever is said or not: the spare is there, what is a guess comes last, and nothing measured waits for it.</summary>
        public void IsSound()
        {
            Stocked.IsSound(_plan, [.. _tube.Need.Pieces], _task.Loss);
            var left = _plan.Rolls.Select(roll => roll.Count * roll.Left.Millimetres);
            True((_task.SpareIsInOnePiece ? _plan.LongestLeft.Millimetres : left.Sum()) > _task.Spare - 1e-3);
            foreach (var uses in _plan.Rolls.Select(roll => roll.Cuts.Select(cut => cut.Piece.Use).ToList()))
            {
                Assert.Equal(uses.Order(), uses);
            }

            if (_task.Rough.Length > 0 && EveryPlan.Of(_task, _task.Measured).LeavesSpare)
            {
                True(_plan.Rolls.Where(roll => roll.IsBought).All(roll => roll.Cuts.All(cut => cut.Piece.Use == PieceUse.Rough)));
            }

            var findings = StockRules.Check(_tube).ToList();
            True(findings.TrueForAll(finding => finding.Rule != StockRules.NotProven));
            var severity = FitsWithoutSpare ? Severity.Warning : Severity.Error;
            Assert.Equal(_plan.Bought > 0 ? [severity] : [], findings.Select(finding => finding.Severity));
        }

        /// <summary>Fails where the sentence is not true of all plans.</summary>
        /// <returns>What it claims.</returns>
        public string Check(string sentence) => sentence switch
        {
            "Fits what is there." => Holds("fits", _plan.Bought == 0 && _others.LeavesSpare),
            _ when Buy().Match(sentence) is { Success: true } buy => WhyBuy(buy),
            "Fewer cannot do." => Holds("fewer", IsFewest && Lengths.Count == 1),
            "Fewer of this length cannot do." => Holds("fewer of this", IsFewest && _plan.MeasuredFirst),
            "Fewer of this length cannot do, and no other one of yours costs less." =>
                Holds("costs less", IsFewest && Other().All(other => Price(other.Length) * other.Count >= _plan.Cost)),
            "Fewer of this length cannot do, and of no other one of yours would fewer do." =>
                Holds("takes fewer", IsFewest && Other().All(other => other.Count >= _plan.Bought)),
            _ when sentence.StartsWith("Lines with a template are planned first,", StringComparison.Ordinal) => "measured first",
            _ when Left().Match(sentence) is { Success: true } left => LongestLeft(left),
            _ when Cut().Match(sentence) is { Success: true } cut => Holds(
                "rolls cut",
                Number(cut, "count") == NumberCut && _others.CutInto.Min(set => BitOperations.PopCount((uint)set)) == NumberCut),
            _ => throw new InvalidOperationException($"nothing checks: {sentence}"),
        };

        private bool FitsWithoutSpare => EveryPlan.Of(_task with { Spare = 0 }, _task.Pieces).Exists;

        private bool IsFewest => EveryPlan.Fewest(_task, _task.Pieces, _length, withSpare: true) == _plan.Bought;

        private int NumberCut => _plan.Rolls.Count(roll => !roll.Cuts.IsEmpty);

        private List<int> Lengths => [.. _task.Rolls.Select(roll => roll.Length).Distinct()];

        private decimal? Price(int length) => _task.Rolls.Where(roll => roll.Length == length).Min(roll => roll.Price);

        private IEnumerable<(int Length, int Count)> Other() =>
            Lengths.Select(length => (length, Count: EveryPlan.Fewest(_task, _task.Pieces, length, withSpare: true)))
                .Where(other => other.Count is not null).Select(other => (other.length, other.Count!.Value));

        private string WhyBuy(Match buy)
        {
            var isRight = _plan.Bought > 0 && Number(buy, "count") == _plan.Bought && Number(buy, "length") == _length && !EveryPlan
                .Of(_task, _task.Pieces).LeavesSpare;
            return buy.Groups["why"].Value switch
            {
                "The lines fit what is there, and the spare does not" => Holds("only spare", isRight && FitsWithoutSpare),
                "What is measured fits what is there, and lines without a template do not" => Holds(
                    "only rough", isRight && EveryPlan.Of(_task with { Spare = 0 }, _task.Measured).Exists),
                _ => Holds("does not fit", isRight),
            };
        }

        private string LongestLeft(Match left)
        {
            True(double.Parse(left.Groups["left"].Value, CultureInfo.InvariantCulture) == _plan.LongestLeft.Millimetres);
            return left.Groups["claim"].Length == 0
                ? Holds("longest, nothing claimed", _plan.MeasuredFirst)
                : Holds("longest", Math.Abs(_others.LongestLeft - _plan.LongestLeft.Millimetres) < 1e-3);
        }

        private string Holds(string name, bool isTrue)
        {
            Assert.True(isTrue, $"{name}: {_what}");
            return name;
        }

        private void True(bool isTrue) => Assert.True(isTrue, _what);

        private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

        [GeneratedRegex(@".+?\.(?=\s|$)", Named, Patience)]
        private static partial Regex Sentence();

        [GeneratedRegex(@"^(?<why>.*): buy (?<count>\d+) rolls? of (?<length>\d+) mm(, cost [\d.]+)?\.$", Named, Patience)]
        private static partial Regex Buy();

        [GeneratedRegex(
            @"^Longest piece left: (?<left>[\d.]+) mm \([^)]*\)(?<claim>, and no other way to cut these rolls leaves a longer one)?\.$",
            Named,
            Patience)]
        private static partial Regex Left();

        [GeneratedRegex(@"^(?<count>\d+) rolls are cut into: with fewer, so long a piece cannot be left\.$", Named, Patience)]
        private static partial Regex Cut();
    }
}
