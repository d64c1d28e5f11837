using BendSheet.Core.Survey;
using BendSheet.Core.Templates;

namespace BendSheet.Files.Reading;

/// <summary>Reads <c>to: back</c> of a taped distance: that the tape was held to the backs of bends and not to their corners.</summary>
/// <param name="Route">Of the line; null where it cannot be read.</param>
/// <param name="Wire">The template's; null where it cannot be read.</param>
/// <param name="Context">For findings.</param>
internal sealed record BackReader(Route? Route, Wire? Wire, FileContext Context)
{
    private const string To = "to";

    internal static readonly (bool IsBack, string Word)[] Places = [(false, "corner"), (true, "back")];

    /// <summary>What was measured, with the wire where it was to backs; null after a finding.</summary>
    /// <param name="measurement">As it was typed.</param>
    /// <param name="toCorners">The same to corners.</param>
    public TapedQuantity? Quantity(FieldReader measurement, TapedQuantity toCorners)
    {
        return IsBack(measurement) switch
        {
            null => null,
            false => toCorners,
            _ => Finding(measurement, toCorners) ? null : toCorners with { Back = Wire },
        };
    }

    /// <summary>Whether it was measured to backs; null after a finding.</summary>
    /// <param name="measurement">As it was typed.</param>
    public static bool? IsBack(FieldReader measurement) => measurement.Has(To) ? measurement.Choice(To, Places) : false;

    /// <summary>Whether all is known of the wire that backs follow from; otherwise there is a finding.</summary>
    /// <param name="measurement">As it was typed.</param>
    public bool WireIsKnown(FieldReader measurement)
    {
        if (Wire is { Diameter: not null, Radius: not null })
        {
            return true;
        }

        if (Wire is not null)
        {
            Context.Report(FileRules.MissingWord.Error(
                measurement.PositionOfValue(To),
                "`to: back` needs the wire's diameter and its own bend radius: add them at the top of the file, such as "
                    + $"`wire: {Vocabulary.Wire.Example}`, or measure to the corners"));
        }

        return false;
    }

    private bool Finding(FieldReader measurement, TapedQuantity toCorners)
    {
        var at = measurement.PositionOfValue(To);
        if (toCorners.Kind != TapedKind.Distance)
        {
            Context.Report(FileRules.OutOfPlace.Error(
                at, "ahead and aside are measured to a corner with a square: take `to` out, or measure a distance"));
            return true;
        }

        if (!WireIsKnown(measurement))
        {
            return true;
        }

        foreach (var place in new[] { toCorners.From, toCorners.To })
        {
            if (IsBend(place) && !(HasPoint(place - 1) && HasPoint(place + 1)))
            {
                Context.Report(TapedRules.NoDistance.Error(
                    at,
                    FormattableString.Invariant($"beside bend {place} is one without a corner, so that nobody knows where its back lies: ")
                        + "measure to its corner"));
                return true;
            }
        }

        return Route is null;
    }

    private bool IsBend(int place) => place > 0 && place <= Route?.Bends.Length;

    private bool HasPoint(int place) => !IsBend(place) || Route!.Bends[place - 1] is { HasCorner: true, FromTangent: false };
}
