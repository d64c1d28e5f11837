using System.Text;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Tests.Asking;

public class YamlWordTests : AtTheTerminal
{
    /// <summary>Whatever is answered comes back from the reader as it was typed.</summary>
    [Theory]
    [InlineData("master cylinder")]
    [InlineData("master: cylinder, left {A}")]
    [InlineData("the boss' own")]
    [InlineData("- dash")]
    [InlineData("#1")]
    [InlineData("a #1")]
    [InlineData("'quoted'")]
    [InlineData("\"half")]
    [InlineData("yes:")]
    [InlineData("C:\\car")]
    [InlineData("&a *b !c %d @e `f` ~")]
    [InlineData("Vorderachse, größer")]
    public async Task An_answer_is_read_as_it_was_typed(string answer)
    {
        Piped = $"\n8\n\n\n20\n\n\n\n\n\nfront\n100\n\n{answer}\n\n\n\n\nno\n";
        Assert.Equal(0, (await Run("start", Place("car.yaml"), "--ask")).Code);
        var file = TemplateReader.Read("car.yaml", new MemoryStream(await File.ReadAllBytesAsync(Place("car.yaml"))));
        Assert.Empty(file.Findings);
        Assert.Equal(answer, Assert.Single(file.Lines).From.At, StringComparer.Ordinal);
        Assert.Equal(Encoding.UTF8.GetBytes(answer).Length > 0, file.Source.Text.Contains("from", StringComparison.Ordinal));
    }
}
