using System.Globalization;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.References;

/// <summary>Published threads of tube nuts, copied beside the program, against its catalogue of standard ports.</summary>
public class StandardPortTests
{
    private const string Table = "port_threads.csv";

    public static TheoryData<string> Ids { get; } = [.. ReferenceTable.Read(Table).Select(row => row["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_catalogue_has_the_printed_thread(string id)
    {
        var row = ReferenceTable.Read(Table).Single(row => string.Equals(row["id"], id, StringComparison.Ordinal));
        var confidence = PublishedValue.Confidence(row["mark"]);
        var own = StandardPort.Find(SeatOf(row["seat"]), PublishedValue.Length(row["tube"], row["unit"]));
        var found = Assert.Single(own, port => port.Source.Confidence == confidence && port.Thread.Fits(ThreadOf(row["printed"])));
        Assert.Equal(row["dash"], found.Dash == 0 ? string.Empty : found.Dash.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void What_the_catalogue_calls_confirmed_is_printed() => Assert.All(
        StandardPort.All.Where(own => own.Source.Confidence == Confidence.Confirmed),
        own => Assert.Contains(ReferenceTable.Confirmed(Table), row =>
            SeatOf(row["seat"]) == own.Seat && own.Thread.Fits(ThreadOf(row["printed"]))
            && Math.Abs((PublishedValue.Length(row["tube"], row["unit"]) - own.Size).Millimetres) < Tolerances.SameTubeSize.Millimetres));

    [Fact]
    public void What_a_size_alone_stands_for_is_as_sure_as_any_row_of_the_same_thread() => Assert.All(StandardPort.All, own =>
    {
        var first = StandardPort.Find(own.Seat, own.Size).First();
        Assert.True(!first.Thread.Fits(own.Thread) || first.Source.Confidence <= own.Source.Confidence);
    });

    private static Seat SeatOf(string word) =>
        Enum.GetValues<Seat>().Single(seat => string.Equals(seat.Word(), word, StringComparison.Ordinal));

    private static ScrewThread ThreadOf(string printed)
    {
        if (printed.StartsWith('M'))
        {
            var metric = printed[1..].Split('x');
            return ScrewThread.Metric(AssertGeometry.Number(metric[0]), AssertGeometry.Number(metric[1]));
        }

        var parts = printed.Split('-');
        return ScrewThread.Inch(PublishedValue.Length(parts[0], "in").Inches, AssertGeometry.Number(parts[1]));
    }
}
