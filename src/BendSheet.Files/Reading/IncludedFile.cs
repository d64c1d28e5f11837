namespace BendSheet.Files.Reading;

/// <summary>Opens a file that another one includes; the disk is no matter of the reader.</summary>
/// <param name="typed">Its name as typed after <c>include</c>.</param>
public delegate IncludedFile OpenIncluded(string typed);

/// <summary>A file that another one includes, open to be read; or why it cannot be.</summary>
/// <param name="Name">What findings call it.</param>
/// <param name="Content">Its bytes, closed by whoever reads them; null where there are none.</param>
/// <param name="Problem">Why it cannot be read, and what would make it right, as a part of a sentence; null where nothing is wrong.</param>
/// <param name="IsItself">It is the file that includes it.</param>
public sealed record IncludedFile(string Name, Stream? Content, string? Problem, bool IsItself);
