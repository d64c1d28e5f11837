using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Files.Reading;

/// <summary>What every reader of a part of one file shares.</summary>
/// <param name="unit">Of a bare number.</param>
internal sealed class FileContext(LengthUnit unit)
{
    private readonly List<Finding> _findings = [];

    /// <summary>The unit of a bare number.</summary>
    public LengthUnit Unit { get; set; } = unit;

    /// <summary>In the order they were found.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Keeps a finding; reading goes on.</summary>
    public void Report(Finding finding) => _findings.Add(finding);
}
