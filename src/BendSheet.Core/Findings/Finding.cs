namespace BendSheet.Core.Findings;

/// <summary>How bad a finding is.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing is wrong.</summary>
    Note,

    /// <summary>The sheet is made, but a person should look first.</summary>
    Warning,

    /// <summary>No sheet is made from this.</summary>
    Error,
}

/// <summary>Everything the tool has to say about a file is a finding: a rule that does not hold, and where.</summary>
/// <param name="Severity">Error, warning or note.</param>
/// <param name="Rule">The rule that found it.</param>
/// <param name="Message">One plain sentence: what is wrong and what would make it right, with figures.</param>
/// <param name="Position">The word or number that was typed.</param>
public sealed record Finding(Severity Severity, Rule Rule, string Message, SourcePosition Position)
{
    /// <summary><c>file:line:column: severity: message [rule]</c>.</summary>
    public override string ToString() => $"{Position}: {SeverityWord}: {Message} [{Rule.Name}]";

    /// <summary><c>error</c>, <c>warning</c> or <c>note</c>.</summary>
    public string SeverityWord => Severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}
