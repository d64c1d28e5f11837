using System.Globalization;

namespace BendSheet.Core.Sheet;

/// <summary>What stands at the views of the finished shape.</summary>
public static class ViewWords
{
    /// <summary>Caption of the view that shows all three axes at once.</summary>
    public const string Pictorial = "pictorial view";

    /// <summary>Caption of the view from above.</summary>
    public const string Top = "from above: X right, Y up";

    /// <summary>Caption of the view from the right of the car.</summary>
    public const string Side = "from the right: X right, Z up";

    /// <summary>Caption of the view from behind the car.</summary>
    public const string End = "from behind: Y left, Z up";

    /// <summary>Above the views.</summary>
    /// <param name="denominator">The scale of the flat ones is 1 : this.</param>
    /// <param name="axes">How the shape lies; null where that stands on a line of its own.</param>
    public static string Heading(double denominator, string? axes) =>
        WithScale("The finished shape", denominator) + (axes is null ? string.Empty : $" ({axes})");

    /// <summary>A caption with its own scale.</summary>
    /// <param name="caption">Of a view.</param>
    /// <param name="denominator">Its scale is 1 : this.</param>
    public static string WithScale(string caption, double denominator) =>
        string.Create(CultureInfo.InvariantCulture, $"{caption}, scale 1 : {denominator:0.#}");
}
