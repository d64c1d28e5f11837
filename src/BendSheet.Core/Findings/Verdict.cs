namespace BendSheet.Core.Findings;

/// <summary>What a set of findings comes to. The worst counts.</summary>
public enum Verdict
{
    /// <summary>No error; warnings and notes are allowed.</summary>
    Good,

    /// <summary>The file is understood, but something in it cannot be made.</summary>
    CannotBeMade,

    /// <summary>
    /// The file is wrong. No figure of it is shown: one might be made of a default in the place of what could not be read.
    /// </summary>
    WrongFile,
}

/// <summary>Judges findings.</summary>
public static class Verdicts
{
    /// <summary>The verdict: a wrong file counts more than a line that cannot be made.</summary>
    public static Verdict Verdict(this IEnumerable<Finding> findings)
    {
        var worst = Findings.Verdict.Good;
        foreach (var finding in findings)
        {
            if (finding.Severity == Severity.Error)
            {
                var verdict = finding.Rule.Subject == RuleSubject.File ? Findings.Verdict.WrongFile : Findings.Verdict.CannotBeMade;
                worst = verdict > worst ? verdict : worst;
            }
        }

        return worst;
    }
}
