using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Files.Reading;

/// <summary>What every reader of a part of one file shares.</summary>
/// <param name="unit">Of a bare number.</param>
internal sealed class FileContext(LengthUnit unit)
{
    private readonly List<Reported> _findings = [];
    private readonly Dictionary<int, LengthUnit> _units = [];

    /// <summary>The unit of a bare number.</summary>
    public LengthUnit Unit { get; set; } = unit;

    /// <summary>A file that is included cannot be read: any name may be in it.</summary>
    public bool IsPartUnread { get; set; }

    /// <summary>The unit of a bare number in the file that it is typed in.</summary>
    public LengthUnit UnitAt(SourcePosition position) => _units.GetValueOrDefault(position.FileNumber, Unit);

    /// <summary>Keeps the unit of a file that is included.</summary>
    public void SetUnit(int fileNumber, LengthUnit of) => _units[fileNumber] = of;

    /// <summary>In the order they were found.</summary>
    public IReadOnlyList<Reported> Findings => _findings;

    /// <summary>Keeps a finding; reading goes on.</summary>
    public void Report(Finding finding) => _findings.Add(Reported.Of(finding));

    /// <summary>
    /// Keeps an error whose words take time, such as the search for the word that was meant: they are made only if it is shown.
    /// </summary>
    public void Report(Rule rule, SourcePosition position, Func<string> message) =>
        _findings.Add(new(position, () => rule.Error(position, message())));
}

/// <summary>A finding that is put into words when it is shown.</summary>
/// <param name="Position">Of the finding.</param>
/// <param name="Finding">Makes it.</param>
internal sealed record Reported(SourcePosition Position, Func<Finding> Finding)
{
    /// <summary>One that is in words already.</summary>
    public static Reported Of(Finding finding) => new(finding.Position, () => finding);
}
