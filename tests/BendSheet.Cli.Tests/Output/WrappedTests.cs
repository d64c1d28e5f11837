using BendSheet.Cli.Output;

namespace BendSheet.Cli.Tests.Output;

public class WrappedTests
{
    /// <summary>Only where there is no room for both do a figure and its unit stand in two rows.</summary>
    [Theory]
    [InlineData("cut to 2280.0 mm (89 49/64+ in) now", 14, "cut to|2280.0 mm|(89 49/64+ in)|now")]
    [InlineData("cut to 2280.0 mm (89 49/64+ in) now", 9, "cut to|2280.0 mm|(89|49/64+|in) now")]
    [InlineData("cut to 2280.0 mm", 80, "cut to 2280.0 mm")]
    [InlineData("a wordthatiswider than", 6, "a|wordthatiswider|than")]
    public void A_figure_stays_with_its_unit(string words, int width, string rows) =>
        Assert.Equal(rows.Split('|'), Wrapped.Rows(words, width), StringComparer.Ordinal);
}
