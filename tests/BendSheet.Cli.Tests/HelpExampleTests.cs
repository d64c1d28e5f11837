namespace BendSheet.Cli.Tests;

[Collection(FromTheRepository.Name)]
public class HelpExampleTests : AtTheTerminal
{
    [Fact]
    public async Task I_can_type_every_example_of_the_help_as_it_stands()
    {
        File.Copy("samples/finch.yaml", Place("finch.yaml"));
        var help = await Run("--help");
        var examples = help.Output.Split('\n')
            .Where(row => row.StartsWith("  bendsheet ", StringComparison.Ordinal))
            .Select(row => row.Trim())
            .Where(row => !row.Contains('[', StringComparison.Ordinal))
            .ToList();
        Assert.InRange(examples.Count, 4, 24);

        // For the one that asks: unit, tube, radius, and one leg from A to B; what may be left out is.
        Piped = "\n8\n\n\n20\n\n\n\n\n\nfront\n100\n\n\n\n\n\n\nno\n";
        var before = Environment.CurrentDirectory;
        Environment.CurrentDirectory = Place(".");
        try
        {
            foreach (var example in examples)
            {
                var words = example.Split(' ')[1..].TakeWhile(word => !string.Equals(word, ">", StringComparison.Ordinal));
                var ran = await Run([.. words]);
                Assert.True(ran.Code == 0, $"`{example}` ended with {ran.Code}: {ran.Error}");
            }
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }

        var (drawings, others) = (InTheFolder().Split(' ').Where(IsDrawing), InTheFolder().Split(' ').Where(name => !IsDrawing(name)));
        Assert.Equal(
            "after.pdf bendsheet.schema.json board.pdf brake-lines.yaml clutch.yaml cover.pdf finch-clutch.pdf finch-filler.pdf "
            + "finch-front-left.pdf finch-front-right.pdf finch-rear-axle-left.pdf finch-rear-axle-right.pdf finch-rear.pdf "
            + "finch.pdf finch.yaml front.yaml rear.pdf",
            string.Join(' ', others));
        Assert.Equal(36, drawings.Count());

        static bool IsDrawing(string name) => name.EndsWith(".svg", StringComparison.Ordinal);
    }
}
