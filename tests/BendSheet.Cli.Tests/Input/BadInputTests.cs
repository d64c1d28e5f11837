using System.Text;

namespace BendSheet.Cli.Tests.Input;

/// <summary>Whatever the file is, I am told what is wrong with it and where.</summary>
public class BadInputTests : AtTheTerminal
{
    private const string Top = "units: mm\ntube: {od: 5}\nbender: {radius: 15}\nlines:\n  a:\n";

    /// <summary>What is typed, and the place and the rule of the first finding.</summary>
    public static TheoryData<string, string> Typos => new()
    {
        { string.Empty, "1:1 file-empty" },
        { "\n\n# nothing yet\n", "1:1 file-empty" },
        { new string('[', 100_000) + new string(']', 100_000), "1:33 nested-too-deep" },
        { string.Concat(Enumerable.Repeat("{a: ", 100_000)), "1:129 nested-too-deep" },
        { AliasBomb(), "1:5 anchor-or-alias" },
        { Top + "\t- {straight: 80}\n", "6:1 tab-in-indent" },
        { Top + "    - {straight: 80}\nunits: in\n", "7:1 duplicate-word" },
        { Top + "    - {straight: 80, straight: 90}\n", "6:22 duplicate-word" },
        { Top + "    - {straight: 80}\n---\nunits: in\n", "7:1 second-document" },
        { Top + "    - {straight: NaN}\n", "6:18 unreadable-length" },
        { Top + "    - {straight: .inf}\n", "6:18 unreadable-length" },
        { Top + "    - {straight: 1e308}\n", "6:18 unreadable-length" },
        { Top + $"    - {{straight: 1{new string('0', 308)}}}\n", "6:18 out-of-range" },
        { Top + $"    - {{straight: 1{new string('0', 400)}}}\n", "6:18 out-of-range" },
        { Top + "    - {straight: -80}\n", "6:18 out-of-range" },
        { Top + "    - {straight: 80, bend: -45}\n    - {straight: 80}\n", "6:28 out-of-range" },
        { Top + "    - {straight: 80, bend: NaN}\n    - {straight: 80}\n", "6:28 unreadable-angle" },
        { Top.Replace("od: 5", "od: -5", StringComparison.Ordinal) + "    - {straight: 80}\n", "2:12 out-of-range" },
        { Top.Replace("units: mm\n", string.Empty, StringComparison.Ordinal) + "    - {straight: 80}\n", "1:1 missing-word" },
        { Top.Replace("units: mm", "units:", StringComparison.Ordinal) + "    - {straight: 80}\n", "1:1 missing-word" },
        { Top.Replace("units: mm", "units: furlong", StringComparison.Ordinal) + "    - {straight: 80}\n", "1:8 not-a-choice" },
        { Top.Replace("  a:", "  a/b:", StringComparison.Ordinal) + "    - {straight: 80}\n", "5:3 unusable-name" },
        { Top.Replace("  a:", "  ../../a:", StringComparison.Ordinal) + "    - {straight: 80}\n", "5:3 unusable-name" },
        { Top.Replace("  a:", "  'a\\b':", StringComparison.Ordinal) + "    - {straight: 80}\n", "5:3 unusable-name" },
        { Top.Replace("  a:", "  'C:a':", StringComparison.Ordinal) + "    - {straight: 80}\n", "5:3 unusable-name" },
        { Top + "    []\n", "6:5 wrong-kind" },
        { "just a sentence\n", "1:1 wrong-kind" },
        { "%PDF-1.7\n", "1:1 not-text" },
    };

    [Theory]
    [MemberData(nameof(Typos))]
    public async Task I_am_told_what_I_mistyped_and_where(string text, string expected)
    {
        var file = Typed(text);
        var place = expected.Split(' ')[0];
        var rule = expected.Split(' ')[1];
        foreach (var command in new[] { "check", "show", "print" })
        {
            var ran = await Run(command, file);
            Assert.Equal(2, ran.Code);
            var first = ran.Error.Split('\n')[0];
            Assert.StartsWith($"{file}:{place}: error: ", first, StringComparison.Ordinal);
            Assert.EndsWith($" [{rule}]", first, StringComparison.Ordinal);
        }

        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task A_megabyte_of_noise_is_no_text()
    {
        var noise = new byte[1024 * 1024];
        new Random(20_251).NextBytes(noise);
        await File.WriteAllBytesAsync(Place("noise"), noise);
        await AssertIsRefused("noise", ":1:1: error: ", "[not-text]");
    }

    [Fact]
    public async Task Fifty_megabytes_are_not_read()
    {
        using (var large = File.Create(Place("large.yaml")))
        {
            large.SetLength(50 * 1024 * 1024);
        }

        await AssertIsRefused("large.yaml", ":1:1: error: ", "[file-too-large]");
    }

    [Fact]
    public async Task Fifty_megabytes_of_rows_are_not_read_either()
    {
        await using (var large = new StreamWriter(Place("large.yaml")))
        {
            await large.WriteAsync(Top);
            for (var row = 0; row < 2_000_000; row++)
            {
                await large.WriteAsync("    - {straight: 120, bend: 45}\n");
            }
        }

        await AssertIsRefused("large.yaml", ":1:1: error: ", "[file-too-large]");
    }

    [Theory]
    [InlineData("folder", ": error: this is a folder: name the file in it")]
    [InlineData("nowhere.yaml", ": error: there is no such file")]
    [InlineData("nowhere/car.yaml", ": error: there is no such file")]
    [InlineData("notes/car.yaml", ": error: there is no such file")]
    public async Task I_am_told_that_a_name_leads_to_no_file(string name, string message)
    {
        Directory.CreateDirectory(Place("folder"));
        Typed("my notes", "notes");
        await AssertIsRefused(name, message, "[cannot-read]");
    }

    [Theory]
    [InlineData("\r\n", "")]
    [InlineData("\r", "")]
    [InlineData("\n", "\uFEFF")]
    [InlineData("\r\n", "\uFEFF")]
    public async Task The_line_ends_and_the_mark_of_another_system_just_work(string lineEnd, string mark)
    {
        var expected = await Run("show", Typed(CarFiles.Sound));
        var ran = await Run("show", Typed(mark + CarFiles.Sound.Replace("\n", lineEnd, StringComparison.Ordinal), "other.yaml"));
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Equal(expected.Output, ran.Output);
    }

    [Fact]
    public async Task The_place_of_a_finding_is_the_same_with_the_line_ends_and_the_mark_of_another_system()
    {
        var expected = await Run("check", Typed(CarFiles.LegTooShort));
        var ran = await Run("check", Typed("\uFEFF" + CarFiles.LegTooShort.Replace("\n", "\r\n", StringComparison.Ordinal)));
        Assert.Equal(expected.Error, ran.Error);
    }

    private async Task AssertIsRefused(string name, string message, string rule)
    {
        foreach (var command in new[] { "check", "show", "print" })
        {
            var ran = await Run(command, Place(name));
            Assert.Equal(2, ran.Code);
            var first = ran.Error.Split('\n')[0];
            Assert.StartsWith(Place(name) + message, first, StringComparison.Ordinal);
            Assert.EndsWith(rule, first, StringComparison.Ordinal);
        }
    }

    private static string AliasBomb()
    {
        var bomb = new StringBuilder("a0: &a0 [x]\n");
        for (var i = 1; i < 30; i++)
        {
            bomb.Append(
                System.Globalization.CultureInfo.InvariantCulture,
                $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n");
        }

        return bomb.ToString();
    }
}
