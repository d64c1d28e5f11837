using BendSheet.Core.Stock;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class StoresReaderTests
{
    private const string TwoTubes = "units: mm\ntubes: {main: {od: 3/16 in}, fuel: {od: 8}}\nbender: {radius: 9/16 in}\n";

    private const string MainLine = "lines: {a: {tube: main, rows: [{straight: 300}]}}\n";

    [Fact]
    public void Everything_there_is_can_be_typed()
    {
        var file = Read(TwoTubes + """
            stock:
              - {name: roll 1, tube: main, length: 25 ft, left: 5400, price: 50}
              - {kind: stick, tube: fuel, length: 2 m, count: 3}
            cutting-loss: 1.5
            spare: 10 %
            practice: {flares: 6, length: 80, tube: main}
            have: {nut: 4, an3 sleeve: 2}

            """ + MainLine);
        Assert.Empty(file.Findings);
        var stores = file.Stores;
        Assert.Equal(
            [
                ("roll 1", RollKind.Roll, "main", 7620.0, 5400.0, 1, (decimal?)50, true),
                ("stick of 2 m", RollKind.Stick, "fuel", 2000.0, 2000.0, 3, null, false),
            ],
            stores.Rolls.Select(
                roll => (roll.Name, roll.Kind, roll.Tube.Name, Math.Round(
                    roll.Length.Millimetres, 6), roll.Left.Millimetres, roll.Count, roll.Price, roll.LeftIsTyped)));
        Assert.Equal(1.5, stores.CuttingLoss.Millimetres);
        Assert.Equal(0.1, stores.Spare);
        Assert.Equal(
            [(6, 80.0, "main")], stores.Practice.Select(practice => (practice.Flares, practice.Length.Millimetres, practice.Tube.Name)));
        Assert.Equal([("nut", 4), ("an3 sleeve", 2)], stores.Have.Select(have => (have.Name, have.Count)));
    }

    /// <summary>What has no name is called what a person can see of it; its place in the list tells apart what looks alike.</summary>
    [Fact]
    public void A_roll_without_a_name_is_called_what_it_looks_like()
    {
        var file = Read(TwoTubes + """
            stock:
              - {tube: main, length: 25 ft}
              - {kind: stick, tube: main, length: 2 m}
              - {tube: fuel, length: 25 ft}
              - {name: Roll of 8 m, tube: main, length: 8 m}
              - {tube: main, length: 8 m}
              - {kind: stick, tube: main, length: 1500}

            """ + MainLine);
        Assert.Empty(file.Findings);
        Assert.Equal(
            [
                "roll of 25 ft, no. 1 in the list of stock", "stick of 2 m", "roll of 25 ft, no. 3 in the list of stock", "Roll of 8 m",
                "roll of 8 m, no. 5 in the list of stock", "stick of 1500 mm",
            ],
            file.Stores.Rolls.Select(roll => roll.Name), StringComparer.Ordinal);
    }

    [Fact]
    public void A_file_that_says_nothing_loses_a_millimetre_to_each_cut_and_has_nothing()
    {
        var stores = Read(Top + Line).Stores;
        Assert.Equal(1, stores.CuttingLoss.Millimetres);
        Assert.Empty(stores.Rolls);
        Assert.Equal(0, stores.Spare);
    }

    [Theory]
    [InlineData("6 flares")]
    [InlineData("6")]
    [InlineData("6 Flares")]
    [InlineData("{flares: 6}")]
    [InlineData("[{flares: 6}]")]
    public void Practice_can_be_typed_short(string typed)
    {
        var practice = Assert.Single(Sound(Top + $"practice: {typed}\n" + Line).Practice);
        Assert.Equal((6, 60.0), (practice.Flares, practice.Length.Millimetres));
    }

    [Fact]
    public void What_is_tried_and_what_was_counted_since_can_be_typed()
    {
        var stores = Sound(Top + "practice: {flares: 6, done: 2, bends: 3, bends-done: 1}\nhave: {nut: 4, sleeve: {left: 3}}\n" + Line);
        var practice = stores.Practice[0];
        Assert.Equal((6, 2, 3, 1), (practice.Flares, practice.Done, practice.Bends, practice.BendsDone));
        Assert.Equal([(4, false), (3, true)], stores.Have.Select(have => (have.Count, have.IsLeft)));
    }

    [Theory]
    [InlineData("10 %", 0.1)]
    [InlineData("7.5%", 0.075)]
    [InlineData("10 per cent", 0.1)]
    [InlineData("0 %", 0)]
    public void Spare_is_a_part_of_a_hundred(string typed, double spare) =>
        Assert.Equal(spare, Sound(Top + $"spare: {typed}\n" + Line).Spare, 1e-12);

    [Theory]
    [InlineData("stock: 5", "4:8 wrong-kind")]
    [InlineData("stock: []", "4:8 wrong-kind")]
    [InlineData("stock: [5]", "4:9 wrong-kind")]
    [InlineData("stock: [{name: a}]", "4:9 missing-word")]
    [InlineData("stock: [{lenght: 5 m}]", "4:10 unknown-word")]
    [InlineData("stock: [{length: 5 m, left: 6 m}]", "4:23 out-of-range")]
    [InlineData("stock: [{length: 0}]", "4:18 out-of-range")]
    [InlineData("stock: [{length: 5 m, price: -1}]", "4:30 out-of-range")]
    [InlineData("stock: [{length: 5 m, price: cheap}]", "4:30 unreadable-number")]
    [InlineData("stock: [{length: 5 m, count: 1.5}]", "4:30 unreadable-number")]
    [InlineData("stock: [{length: 5 m, count: 0}]", "4:30 out-of-range")]
    [InlineData("stock: [{length: 5 m, kind: coil}]", "4:29 not-a-choice")]
    [InlineData("stock: [{length: 5 m, tube: main}]", "4:29 unknown-name")]
    [InlineData("cutting-loss: 60", "4:15 out-of-range")]
    [InlineData("spare: 10", "4:8 unreadable-number")]
    [InlineData("spare: 10 mm", "4:8 unreadable-number")]
    [InlineData("spare: ten %", "4:8 unreadable-number")]
    [InlineData("spare: 110 %", "4:8 out-of-range")]
    [InlineData("spare: -5 %", "4:8 out-of-range")]
    [InlineData("spare: 10 %%", "4:8 unreadable-number")]
    [InlineData("practice: some", "4:11 unreadable-number")]
    [InlineData("practice: 6 pints", "4:11 unreadable-number")]
    [InlineData("practice: 2.5 flares", "4:11 unreadable-number")]
    [InlineData("practice: {length: 60}", "4:11 missing-word")]
    [InlineData("practice: {flares: 6, done: 7}", "4:23 out-of-range")]
    [InlineData("practice: {flares: 6, bends: 2, bends-done: 3}", "4:33 out-of-range")]
    [InlineData("practice: {flares: 6, bends-done: 1}", "4:23 out-of-range")]
    [InlineData("practice: [{flares: 600}, {flares: 401}]", "4:27 out-of-range")]
    [InlineData("practice: [{flares: 600}, {bends: 401}]", "4:27 out-of-range")]
    [InlineData("stock: [{length: 0.0000001}]", "4:18 out-of-range")]
    [InlineData("have: {nut: {left: some}}", "4:20 unreadable-number")]
    [InlineData("have: {nut: {lef: 4}}", "4:14 unknown-word")]
    [InlineData("have: nuts", "4:7 wrong-kind")]
    [InlineData("have: {nut: []}", "4:13 wrong-kind")]
    [InlineData("have: {nut: some}", "4:13 unreadable-number")]
    [InlineData("have: {nut: -4}", "4:13 out-of-range")]
    public void What_is_wrong_is_said_where_it_stands(string typed, string places) =>
        Assert.Equal(places, Places(Read(Top + typed + "\n" + Line)));

    [Theory]
    [InlineData("stock: [{length: 5 m}]", "4:9 missing-word")]
    [InlineData("practice: 6 flares", "4:11 missing-word")]
    [InlineData("practice: {flares: 6}", "4:11 missing-word")]
    public void Where_the_file_has_several_tubes_it_has_to_be_said_which(string typed, string places) =>
        Assert.Equal(places, Places(Read(TwoTubes + typed + "\n" + MainLine)));

    private static Stores Sound(string typed)
    {
        var file = Read(typed);
        Assert.Empty(file.Findings);
        return file.Stores;
    }

    [Fact]
    public void Practice_bends_have_a_length_of_their_own()
    {
        var practice = Assert.Single(Sound(Top + "practice: {bends: 3, bend-length: 250}\n" + Line).Practice);
        Assert.Equal((0, 3, 250.0), (practice.Flares, practice.Bends, practice.BendLength.Millimetres));
        Assert.Equal(200, Assert.Single(Sound(Top + "practice: {flares: 2, bends: 3}\n" + Line).Practice).BendLength.Millimetres);
    }
}
