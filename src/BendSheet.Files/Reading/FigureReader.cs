using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Files.Typed;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads a single figure as it was typed, and reports what is wrong with it.</summary>
internal static class FigureReader
{
    /// <summary>A length in the file's unit or its own; null after a finding.</summary>
    /// <param name="value">What was typed.</param>
    /// <param name="word">What it belongs to, for findings.</param>
    /// <param name="range">What it may be.</param>
    /// <param name="context">For findings.</param>
    public static Length? Length(YamlValue value, string word, Range range, FileContext context)
    {
        if (Text(value, word, context) is not { } text)
        {
            return null;
        }

        var wrong = LengthText.Read(text.Text, context.UnitAt(text.Position), out var millimetres);
        if (Checked(word, text, wrong, FileRules.UnreadableLength, millimetres, range, context) is not { } figure)
        {
            return null;
        }

        if (IsBareFraction(text.Text, context.UnitAt(text.Position)))
        {
            context.Report(FileRules.BareFraction.Warning(
                text.Position,
                $"{AsTyped.Show($"{word}: {text.Text}")} has no unit and is read as "
                    + $"{FindingFigures.Mm(Core.Units.Length.FromMillimetres(figure))}: if it is in inches, write "
                    + $"{AsTyped.Show($"{text.Text.Trim()} in")}; if not, write the figure with a point"));
        }

        return Core.Units.Length.FromMillimetres(figure);
    }

    /// <summary>A fraction, with nothing after it that says its unit, where a bare number is metric.</summary>
    public static bool IsBareFraction(string text, LengthUnit unit) => unit is not (LengthUnit.Inch or LengthUnit.Foot)
        && text.Any(letter => letter is '/' or '⁄') && text.All(letter => char.IsAsciiDigit(letter) || letter is '/' or '⁄' or '-' or ' ');

    /// <summary>An angle in degrees; null after a finding.</summary>
    public static Angle? Angle(YamlValue value, string word, Range range, FileContext context)
    {
        if (Text(value, word, context) is not { } text)
        {
            return null;
        }

        var wrong = AngleText.Read(text.Text, out var degrees);
        return Checked(word, text, wrong, FileRules.UnreadableAngle, degrees, range, context) is { } figure
            ? Core.Units.Angle.FromDegrees(figure)
            : null;
    }

    /// <summary>A rotation, clockwise positive; null after a finding.</summary>
    public static Angle? Rotation(YamlValue value, string word, FileContext context)
    {
        if (Text(value, word, context) is not { } text)
        {
            return null;
        }

        var wrong = AngleText.ReadRotation(text.Text, out var degrees);
        return Checked(word, text, wrong, FileRules.UnreadableAngle, degrees, Range.Rotation, context) is { } figure
            ? Core.Units.Angle.FromDegrees(figure)
            : null;
    }

    private static YamlText? Text(YamlValue value, string word, FileContext context)
    {
        if (value is YamlText text)
        {
            return text;
        }

        context.Report(
            FileRules.WrongKind.Error(value.Position, $"`{word}` is one word or figure, and this is {FieldReader.Kind(value)}"));
        return null;
    }

    /// <summary>A whole number of things; null after a finding.</summary>
    public static int? Count(YamlText text, string word, Range range, FileContext context)
    {
        var isRead = double.TryParse(
            text.Text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number);
        var wrong = isRead && double.IsInteger(number) ? null : "is not a whole number: write how many there are, such as `4`";
        return (int?)Checked(word, text, wrong, FileRules.UnreadableNumber, number, range, context);
    }

    /// <summary>The figure that was read; null after a finding where it could not be, or is nothing real.</summary>
    public static double? Checked(
        string word, YamlText text, string? wrong, Rule unreadable, double figure, Range range, FileContext context)
    {
        if (text.IsUnclear)
        {
            return null;
        }

        if (CommaOfThousands.IsIn(text.Text))
        {
            context.Report(YamlRules.DecimalComma.Error(text.Position, CommaOfThousands.InWords(text.Text)));
            return null;
        }

        if (HasDecimalComma(text.Text))
        {
            context.Report(YamlRules.DecimalComma.Error(
                text.Position,
                $"{AsTyped.Show($"{word}: {text.Text}")} has a comma in its number: write the decimal point, as in `1.5`, and no comma "
                    + "for thousands"));
            return null;
        }

        if (wrong is not null)
        {
            context.Report(unreadable.Error(text.Position, $"{AsTyped.Show($"{word}: {text.Text}")} {wrong}"));
            return null;
        }

        if (!range.Allows(figure))
        {
            context.Report(
                FileRules.OutOfRange.Error(text.Position, $"{AsTyped.Show($"{word}: {text.Text}")} cannot be: it {range.Words}"));
            return null;
        }

        return figure;
    }

    private static bool HasDecimalComma(string text)
    {
        for (var comma = text.IndexOf(',', StringComparison.Ordinal); comma > 0; comma = text.IndexOf(',', comma + 1))
        {
            if (comma + 1 < text.Length && char.IsAsciiDigit(text[comma - 1]) && char.IsAsciiDigit(text[comma + 1]))
            {
                return true;
            }
        }

        return false;
    }
}
