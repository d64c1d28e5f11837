using BendSheet.Core.Fittings;

namespace BendSheet.Core.Tests.Fittings;

public class ScrewThreadTests
{
    [Fact]
    public void Threads_that_look_alike_do_not_fit()
    {
        ScrewThread[] alike =
        [
            ScrewThread.Inch(0.375, 24),
            ScrewThread.Metric(10, 1),
            ScrewThread.Metric(9.525, 24),
            ScrewThread.Inch(7.0 / 16, 20),
            ScrewThread.Inch(7.0 / 16, 24),
            ScrewThread.Metric(11, 1.5),
            ScrewThread.Metric(10, 1.25),
            ScrewThread.Metric(12, 1),
            ScrewThread.Inch(1.0 / 8, 27),
            ScrewThread.Inch(1.0 / 8, 28),
        ];
        foreach (var one in alike)
        {
            Assert.Equal([one], alike.Where(one.Fits));
        }
    }

    [Fact]
    public void A_rounded_decimal_is_the_fraction() => Assert.True(ScrewThread.Inch(0.4375, 20).Fits(ScrewThread.Inch(0.438, 20)));
}
