using BendSheet.Cli.Output;

namespace BendSheet.Cli.Asking;

/// <summary>One thing that is asked.</summary>
/// <param name="Asks">In a few words, with what it belongs to.</param>
/// <param name="Example">An answer as it may be typed.</param>
/// <param name="Help">What it is and how it is measured, for <c>?</c>.</param>
/// <param name="IsDue">Whether it comes next, where nothing that stands before it does.</param>
/// <param name="Take">Adds the answer to what was said.</param>
internal sealed record Question(
    Func<Said, string> Asks, string Example, string Help, Func<Said, bool> IsDue, Action<Said, string> Take)
{
    /// <summary>What an empty answer stands for; null where there is no answer for everybody. Empty leaves the word out.</summary>
    public Func<Said, string?> Default { get; init; } = _ => null;

    /// <summary>It can be left out by a dash, whatever an empty answer stands for.</summary>
    public bool MayBeLeftOut { get; init; }

    /// <summary>What is wrong with an answer that is not written into the file, in a sentence; null where it will do.</summary>
    public Func<string, string?> Wrong { get; init; } = _ => null;

    /// <summary>The answer changes the line's shape, which is shown then.</summary>
    public bool Shapes { get; init; }

    /// <summary>In words, what an empty answer does, where it leaves the word out.</summary>
    public string Empty { get; init; } = "leave out";

    /// <summary>With what an empty answer stands for.</summary>
    public string Prompt(Said said) => Visible.Text(Default(said) switch
    {
        null => Asks(said),
        "" => $"{Asks(said)} [Enter: {Empty}]",
        var value => $"{Asks(said)} [{value}]",
    });
}
