namespace BendSheet.Cli.Tests.Output;

public class SolvedCsvTests : AtTheTerminal
{
    private const string Heading =
        "line,cutLength,developedLength,number,straightBefore,rotate,dial,bend,pull,bender,radius,setback,arc,gain,"
            + "start,middle,end,mark,straightAfter,step,held,lineAt,swing,lever,note";

    [Fact]
    public async Task I_get_a_row_for_each_bend_and_every_row_has_a_cell_for_each_column()
    {
        var ran = await Run("show", Typed(CarFiles.Sound), "--format", "csv");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        var rows = Rows(ran.Output);
        Assert.Equal(Heading, string.Join(',', rows[0]));
        Assert.Equal("front-left 1; rear 1; rear 2", string.Join("; ", rows.Skip(1).Select(row => $"{row[0]} {row[3]}")));
        Assert.All(rows, row => Assert.Equal(25, row.Count));
    }

    [Fact]
    public async Task Figures_are_unrounded()
    {
        var row = Rows((await Run("show", Typed(CarFiles.Sound), "--format", "csv", "--line", "front-left")).Output)[1];
        var arc = Math.PI / 2 * 15;
        Assert.Equal(arc, Figure(row, "arc"), 9);
        Assert.Equal(85 + arc + 65, Figure(row, "cutLength"), 9);
        Assert.Equal(85 + (arc / 2), Figure(row, "middle"), 9);
        Assert.Equal(85, Figure(row, "straightBefore"), 9);
        Assert.Equal(65, Figure(row, "straightAfter"), 9);
    }

    [Fact]
    public async Task A_straight_line_has_one_row_without_a_bend()
    {
        var file = Typed("units: mm\ntube: {od: 5}\nbender: {radius: 15}\nlines: {straight: [{straight: 250}]}\n");
        var ran = await Run("show", file, "--format", "csv");
        Assert.Equal($"{Heading}\nstraight,250,250,,250{new string(',', 20)}\n", ran.Output);
    }

    [Fact]
    public async Task A_u_bend_has_no_setback_and_the_cell_is_empty()
    {
        var row = Rows((await Run("show", Typed(CarFiles.WithWarning), "--format", "csv")).Output)[1];
        Assert.Equal(string.Empty, Cell(row, "setback"));
        Assert.Equal(string.Empty, Cell(row, "gain"));
        Assert.Equal("180", Cell(row, "bend"));
    }

    [Fact]
    public async Task Commas_quotes_and_blanks_survive_as_RFC_4180_says()
    {
        const string Text = """
            units: mm
            tube: {od: 3/16 in}
            benders:
              'the "small", red one': {radius: 15}
            lines:
              'left, front':
                - {straight: 100, bend: 90, note: 'say "when", then heat; done'}
                - {straight: 80}
            wanted: {miss: 1 m, askew: 90}

            """;
        var ran = await Run("show", Typed(Text), "--format", "csv");
        Assert.Equal(0, ran.Code);
        Assert.Contains("\n\"left, front\",", ran.Output, StringComparison.Ordinal);
        Assert.Contains(",\"the \"\"small\"\", red one\",", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith(",\"say \"\"when\"\", then heat; done\"\n", ran.Output, StringComparison.Ordinal);
        var row = Rows(ran.Output)[1];
        Assert.Equal("left, front", row[0]);
        Assert.Equal("the \"small\", red one", Cell(row, "bender"));
        Assert.Equal("say \"when\", then heat; done", Cell(row, "note"));
    }

    [Fact]
    public async Task A_line_that_cannot_be_made_has_no_row()
    {
        var ran = await Run("show", Typed(CarFiles.LegTooShort), "--format", "csv");
        Assert.Equal(1, ran.Code);
        Assert.Equal("front-left", string.Join(' ', Rows(ran.Output).Skip(1).Select(row => row[0])));
    }

    [Fact]
    public async Task Of_a_file_that_cannot_be_read_I_get_the_heading()
    {
        var ran = await Run("show", Place("nowhere.yaml"), "--format", "csv");
        Assert.Equal(2, ran.Code);
        Assert.Equal(Heading + "\n", ran.Output);
    }

    private static string Cell(List<string> row, string column) => row[Array.IndexOf(Heading.Split(','), column)];

    private static double Figure(List<string> row, string column) =>
        double.Parse(Cell(row, column), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The cells, read as RFC 4180 says.</summary>
    private static List<List<string>> Rows(string csv)
    {
        var rows = new List<List<string>> { new() };
        var cell = new System.Text.StringBuilder();
        var quoted = false;
        for (var i = 0; i < csv.Length; i++)
        {
            if (csv[i] == '"' && quoted && i + 1 < csv.Length && csv[i + 1] == '"')
            {
                cell.Append(csv[i++]);
            }
            else if (csv[i] == '"')
            {
                quoted = !quoted;
            }
            else if (csv[i] is ',' or '\n' && !quoted)
            {
                rows[^1].Add(cell.ToString());
                cell.Clear();
                if (csv[i] == '\n')
                {
                    rows.Add([]);
                }
            }
            else
            {
                cell.Append(csv[i]);
            }
        }

        Assert.Empty(rows[^1]);
        rows.RemoveAt(rows.Count - 1);
        return rows;
    }
}
