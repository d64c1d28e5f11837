using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>What the tag of one line says, to be wrapped round the finished line.</summary>
/// <param name="Name">Of the line.</param>
/// <param name="EndA">Where it runs from: <c>A: front-tee.left</c>.</param>
/// <param name="EndB">Where it runs to.</param>
/// <param name="Length">What was cut off the roll, in words.</param>
/// <param name="LengthOther">The same in the other unit.</param>
/// <param name="Sheet">The number of its sheet, in words; of a line without one, that it has none.</param>
/// <param name="TubeDiameter">Outside, to reach round it.</param>
public sealed record TagContent(
    string Name, string EndA, string EndB, string Length, string LengthOther, string Sheet, Length TubeDiameter);

/// <summary>The tags of a car.</summary>
/// <param name="Project">What they belong to; empty where the file does not say.</param>
/// <param name="Tags">One for each line, in the order of the file.</param>
public sealed record TagSheet(string Project, ImmutableArray<TagContent> Tags);
