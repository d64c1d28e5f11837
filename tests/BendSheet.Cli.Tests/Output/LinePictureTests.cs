namespace BendSheet.Cli.Tests.Output;

public class LinePictureTests : AtTheTerminal
{
    [Theory]
    [InlineData("table", true)]
    [InlineData("csv", false)]
    [InlineData("json", false)]
    [InlineData("rows", false)]
    public async Task I_see_the_line_in_a_terminal_that_can_show_it_and_only_with_the_table(string format, bool drawn)
    {
        Drawing = true;
        var ran = await Run("show", Typed(CarFiles.Sound), "--format", format);
        Assert.Equal(0, ran.Code);
        Assert.Equal(drawn, ran.Output.Any(character => character is >= '\u2801' and <= '\u28FF'));
    }

    [Fact]
    public async Task A_file_or_another_program_gets_the_table_without_the_picture()
    {
        var file = Typed(CarFiles.Sound);
        var plain = (await Run("show", file)).Output;
        Assert.DoesNotContain(plain, character => character is >= '\u2800' and <= '\u28FF');
        Drawing = true;
        var drawn = (await Run("show", file)).Output;
        Assert.Equal(
            plain.Split('\n').Where(row => row.Length > 0), drawn.Split('\n')
                .Where(row => row.Length > 0 && !IsPicture(row)), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_right_angle_looks_like_one_seen_from_above_at_a_slant()
    {
        Drawing = true;
        var rows = (await Run("show", Typed(CarFiles.Sound), "--line", "front-left")).Output.Split('\n').Where(IsPicture).ToList();
        Assert.InRange(rows.Count, 6, 16);
        Assert.All(rows, row => Assert.InRange(row.Length, 1, 62));
        Assert.Equal("1AB", string.Concat(rows.SelectMany(row => row).Where(char.IsAsciiLetterOrDigit).Order()));
    }

    [Fact]
    public async Task A_right_angle_is_drawn_like_this()
    {
        Drawing = true;
        var rows = (await Run("show", Typed(CarFiles.Sound), "--line", "front-left")).Output.Split('\n').Where(IsPicture);
        Assert.Equal(
            """
                 A⡀
                  ⠑⠤⡀
                    ⠈⠒⢄
                       ⠉⠢⣀                                          ⡠⠔⠁B
                          ⠑⠤⡀                                    ⢀⠔⠊
                            ⠈⠒⢄                                ⡠⠊⠁
                               ⠉⠢⣀                          ⣀⠔⠉
                                  ⠑⠤⡀                    ⢀⠤⠊
                                    ⠈⠒⢄                ⡠⠒⠁
                                       ⠉⠢⣀          ⣀⠔⠉
                                          ⠑⠤⣀⡀1 ⣀⣠⠴⠊
                                             ⠈⠉⠉⠁
            """.ReplaceLineEndings("\n"),
            string.Join('\n', rows));
    }

    [Fact]
    public async Task No_number_is_left_out_in_silence()
    {
        Drawing = true;
        var rows = string.Concat(
            Enumerable.Range(0, 60).Select(
                i => FormattableString.Invariant(
                    $"    - {{straight: {60 + (i % 7)}, rotate: {(i * 37 % 340) - 170}, bend: {30 + (i % 4 * 15)}}}\n")));
        var ran = await Run(
            "show", Typed("units: mm\ntube: {od: 5}\nbender: {radius: 15}\nlines:\n  many:\n" + rows + "    - {straight: 50}\n"));
        var picture = ran.Output[ran.Output.IndexOf(").\n\n", StringComparison.Ordinal)..];
        var said = picture.Split(
            [.. picture.Where(character => !char.IsAsciiDigit(character)).Distinct()], StringSplitOptions.RemoveEmptyEntries);
        Assert.All(
            Enumerable.Range(1, 60), number => Assert.Contains(FormattableString.Invariant($"{number}"), said, StringComparer.Ordinal));
    }

    /// <summary>Only dots, and letters and numbers of at most two figures.</summary>
    private static bool IsPicture(string row) =>
        row.Length > 0 && row.Any(character => character is >= '\u2801' and <= '\u28FF');
}
