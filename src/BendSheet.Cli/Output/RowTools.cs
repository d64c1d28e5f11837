using System.Collections.Immutable;
using BendSheet.Core.Car;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>
/// What the tools of written rows are called. The formers of coils stand in no `benders:`, and beside them a file's only bender needs a
/// name as well.
/// </summary>
internal sealed class RowTools
{
    private const string Former = "coil former";

    /// <summary>For a bender without a name, which is then the file's only one.</summary>
    private const string OwnBender = "hand";

    private readonly ImmutableArray<(Length Radius, string Name)> _formers;

    private RowTools(ImmutableArray<(Length Radius, string Name)> formers, bool ownHasNoName)
    {
        _formers = formers;
        OwnIsNamedHere = ownHasNoName && formers.Length > 0;
    }

    /// <summary>The file's only bender has no name, and the rows give it one.</summary>
    public bool OwnIsNamedHere { get; }

    /// <summary>The formers as entries of `benders:`; empty where there is no coil.</summary>
    public string Entries => string.Join(", ", _formers.Select(former => $"{former.Name}: {{radius: {SolvedRows.Mm(former.Radius)}}}"));

    /// <summary>Of the lines that are written, and with names that no bender of the file has for another radius.</summary>
    public static RowTools Of(CarPlan plan)
    {
        var radii = plan.Lines.SelectMany(line => line.Layout?.Bends ?? []).Where(bend => bend.Bend.FromTangent).Select(bend => bend.Radius)
            .Distinct().ToList();
        var benders = plan.Measured.Benders;
        var names = new List<string>();
        foreach (var radius in radii)
        {
            var numbered = Enumerable.Range(1, radii.Count + benders.Length)
                .Select(number => FormattableString.Invariant($"{Former} {number}"));
            names.Add((radii.Count == 1 ? numbered.Prepend(Former) : numbered).First(name =>
                !names.Contains(name, StringComparer.Ordinal)
                    && benders.All(bender => !IsCalled(bender, name) || IsSame(bender.Radius, radius))));
        }

        return new([.. radii.Zip(names)], benders is [{ Name.Length: 0 }]);
    }

    /// <summary>The name of a line's own bender; empty where none is needed.</summary>
    public string NameOf(Bender bender) => bender.Name.Length == 0 && OwnIsNamedHere ? OwnBender : bender.Name;

    /// <summary>The name of the tool that a bend is made on.</summary>
    public string NameOf(Bend bend) =>
        bend.FromTangent ? _formers.First(former => former.Radius == bend.Bender.Radius).Name : NameOf(bend.Bender);

    private static bool IsCalled(Bender bender, string name) => string.Equals(bender.Name, name, StringComparison.Ordinal);

    private static bool IsSame(Length one, Length other) => !one.FallsShortOf(other) && !other.FallsShortOf(one);
}
