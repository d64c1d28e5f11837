using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>What came of reading a file.</summary>
/// <param name="Root">Null when the file is empty or cannot be read to its end. It may be there beside errors: a mistake that leaves no
/// doubt of what was meant, such as a decimal comma, is reported and the tree has what was meant.</param>
/// <param name="Source">The text as it was decoded, by lines, to show the place of a finding. Empty when the file is no text at
/// all.</param>
/// <param name="Findings">In the order of the file.</param>
public sealed record YamlReading(YamlValue? Root, SourceLines Source, IReadOnlyList<Finding> Findings);
