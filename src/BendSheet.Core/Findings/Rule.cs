namespace BendSheet.Core.Findings;

/// <summary>What a rule speaks about, which decides the exit code of an error.</summary>
public enum RuleSubject
{
    /// <summary>The file itself: it cannot be read, or says something that has no meaning. Exit code 2.</summary>
    File,

    /// <summary>The tube: the file is understood, but what it describes cannot be made. Exit code 1.</summary>
    Making,
}

/// <summary>A rule that a finding can name.</summary>
/// <param name="Name">Short, in words joined by hyphens: <c>leg-too-short</c>. It is what people search for, so it never changes.</param>
/// <param name="Subject">The file or the tube.</param>
/// <param name="Why">One sentence for the list of rules: what the rule protects from.</param>
public sealed record Rule(string Name, RuleSubject Subject, string Why)
{
    /// <summary>A finding of this rule that stops the sheet.</summary>
    public Finding Error(SourcePosition position, string message) => new(Severity.Error, this, message, position);

    /// <summary>A finding of this rule that does not stop the sheet, but must be looked at.</summary>
    public Finding Warning(SourcePosition position, string message) => new(Severity.Warning, this, message, position);

    /// <summary>A finding of this rule that is only worth knowing.</summary>
    public Finding Note(SourcePosition position, string message) => new(Severity.Note, this, message, position);
}
