namespace BendSheet.Cli.Tests.Asking;

/// <summary>A file that is asked for, through a pipe: each answer is a line of standard input.</summary>
public class AskedTests : AtTheTerminal
{
    private const string Bench = "mm\n3/16 in\n0.028 in\ncopper-nickel\n9/16 in\n\n12\n10\n93\n90\n\n";

    private const string Route = "corner\nfront-left\n120\n45\n3 15/16 in\n135 included\n90 cw\n30 cm\n\n\n";

    private const string Ends = "master cylinder\nan3\nsingle 37\n0.5\n17\n9\n35\nhose bracket\n\n15\n";

    [Fact]
    public async Task What_I_answer_is_a_file_that_reads_as_if_I_had_typed_it()
    {
        Piped = Bench + Route + Ends + "no\n";
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Empty(ran.Error);
        Assert.Equal(0, ran.Code);
        Assert.Equal(
            """
            # Measurements of a wire template, walked from end A to end B.
            #   bendsheet check FILE      is everything right?
            #   bendsheet show FILE       the figures
            #   bendsheet print FILE      the sheet for the bench

            units: mm                     # a bare number means this: mm, cm, m, in or ft

            tube: {od: 3/16 in, wall: 0.028 in, material: copper-nickel}

            bender:
              radius: 9/16 in             # of your own tool, to the tube's centreline: measure it on a test bend
              mark: start                 # what the tool's own line stands over: start or middle of the bend
              grip: 12                    # straight tube the tool needs where it holds
              follow: 10                  # straight tube it needs where it sweeps
              tests: [{pull: 93, got: 90}]

            fittings:
              an3:
                flare: single 37          # single 37, single 45, double 45, bubble or none
                takes: 0.5                # tube that the flare uses up: measure it on a practice piece
                slide-on: [{nut: 17}, {sleeve: 9}] # in the order they go on, with their lengths
                straight: 35              # straight tube that flaring bar and hardware need

            lines:
              front-left:
                from: {at: master cylinder, fitting: an3}
                to: {at: hose bracket, fitting: an3, trim: 15}
                measured: corner          # centreline corner to corner; or straight, outside, inside, along
                rows:
                  - {straight: 120, bend: 45}
                  - {straight: 3 15/16 in, rotate: 90 cw, included: 135}
                  - {straight: 30 cm}

            """,
            await File.ReadAllTextAsync(Place("car.yaml")));
        Assert.Equal(0, (await Run("check", Place("car.yaml"))).Code);
        Assert.Equal(0, (await Run("print", Place("car.yaml"))).Code);
        Assert.Equal("car.pdf car.yaml", InTheFolder());
    }

    [Fact]
    public async Task I_see_the_line_so_far_after_each_leg()
    {
        // 45° on 9/16 in: 14.2875 mm × tan 22.5° = 5.918 mm (0.233 in) of the next leg, which 6.0 mm and 7/32 in and a little are.
        Piped = Bench + Route;
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Contains("If it ended here: cut 120.0 mm", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Bend 1 uses up 6.0 mm (7/32+ in) of the next leg", ran.Output, StringComparison.Ordinal);
        Assert.Contains("The line is cut ", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\u2800", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mm\n3/16 in\n\n\n2\n", "not more than half of the tube's 4.8 mm", "Bender: radius")]
    [InlineData(Bench + "corner\nshort\n100\n90\n15\n", "the line ended with this leg", "Leg 2")]
    [InlineData(Bench + "corner\nshort\n100\n90\n26\n90\n", "[leg-too-short]", "Bend 2")]
    [InlineData(
        Bench + "corner\nshort\n100\n90\n26\n\nnowhere\nan3\nsingle 37\n\n17\n9\n40\n\nan3\n", "[end-too-short]", "Fitting at end B")]
    public async Task What_cannot_be_made_is_said_at_once_and_asked_again(string answers, string words, string question)
    {
        Piped = answers;
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Contains(words, ran.Output, StringComparison.Ordinal);
        Assert.StartsWith(question, ran.Output.Split("keep it as it is.\n")[1], StringComparison.Ordinal);
        Assert.Equal(2, ran.Code);
    }

    [Fact]
    public async Task What_I_measured_is_kept_where_I_say_it_twice()
    {
        Piped = Bench + "corner\nshort\n100\n90\n15\n15\n90\n90\n0\n200\n\n\n\n\n\n\nno\n";
        Assert.Equal(0, (await Run("start", Place("car.yaml"), "--ask")).Code);
        var check = await Run("check", Place("car.yaml"));
        Assert.Equal(1, check.Code);
        Assert.Contains("[leg-too-short]", check.Error, StringComparison.Ordinal);
        var text = await File.ReadAllTextAsync(Place("car.yaml"));
        Assert.Contains("- {straight: 15, rotate: 0, bend: 90}\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1,5", "[decimal-comma]")]
    [InlineData("about 20", "[unreadable-length]")]
    [InlineData("-3", "[out-of-range]")]
    [InlineData("}", "[unreadable-length]")]
    [InlineData("# of the wire", "[unreadable-length]")]
    [InlineData("", "This has to be answered.")]
    public async Task What_the_file_would_not_take_is_asked_again_and_again(string answer, string words)
    {
        Piped = $"{Bench}corner\nfront\n{answer}\n{answer}\n70\n\n\n\n\n\n\n";
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Equal(3, ran.Output.Split(words).Length);
        Assert.Equal(0, ran.Code);
        Assert.Contains("- {straight: 70}\n", await File.ReadAllTextAsync(Place("car.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_go_back_as_far_as_I_like_and_answer_anew()
    {
        Piped = "back\nin\n1/4 in\nback\nback\nmm\n8\n\n\n20\n" + "\n\n\n\ncorner\nfront\n100\n30\nback\n90\n120\n\n\n\n\n\n\n\nno\n";
        Assert.Equal(0, (await Run("start", Place("car.yaml"), "--ask")).Code);
        var text = await File.ReadAllTextAsync(Place("car.yaml"));
        Assert.Contains("units: mm", text, StringComparison.Ordinal);
        Assert.Contains("tube: {od: 8}\n", text, StringComparison.Ordinal);
        Assert.Contains("- {straight: 100, bend: 90}\n      - {straight: 120}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_question_mark_explains_each_question_with_an_example_that_it_takes()
    {
        // Every question that the two lines lead to, the example of each as its answer where it goes on.
        Piped = "?\nmm\n?\n3/16 in\n?\n\n?\n\n?\n9/16 in\n?\n\n?\n\n?\n\n?\n93\n?\n90\n\n?\noutside\n?\n2.4\n?\none\n?\n120\n?\n45\n100"
            + "\n45\n?\n0\n100\n\n?\n\n?\n\n?\nan3\n?\nsingle 37\n?\n\n?\n\n?\n\n?\n\n?\n\n?\n-\n?\n\n?\nno\n";
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Equal(0, ran.Code);
        var asked = Piped.Split('\n').Count(line => string.Equals(line, "?", StringComparison.Ordinal));
        Assert.Equal(asked, ran.Output.Split("For example: ").Length - 1);
        Assert.DoesNotContain("to:", (await File.ReadAllTextAsync(Place("car.yaml"))).Split("lines:")[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Several_lines_are_asked_for_one_after_the_other()
    {
        Piped = Bench + Route + Ends + "yes\nstraight\n4\nrear\n90\n180\n80\n\n\n\n\n\nan3\n\ny\n\nthird\n200\n\n\n\n\n\n\nn\n";
        Assert.Equal(0, (await Run("start", Place("car.yaml"), "--ask")).Code);
        var text = await File.ReadAllTextAsync(Place("car.yaml"));
        Assert.Contains("wire: {radius: 4}\n", text, StringComparison.Ordinal);
        var check = await Run("check", Place("car.yaml"));
        Assert.Equal(0, check.Code);
        Assert.Contains(": 3 lines, ", check.Output, StringComparison.Ordinal);
        Assert.Equal(3, text.Split("    measured: ").Length - 1);
    }

    [Fact]
    public async Task The_file_that_I_was_asked_for_names_its_schema()
    {
        Piped = Bench + Route + Ends + "no\n";
        Assert.Equal(0, (await Run("start", Place("car.yaml"), "--ask", "--schema")).Code);
        Assert.Equal("bendsheet.schema.json car.yaml", InTheFolder());
        Assert.StartsWith(
            "# yaml-language-server: $schema=bendsheet.schema.json\n\n# Measurements of a wire template",
            await File.ReadAllTextAsync(Place("car.yaml")),
            StringComparison.Ordinal);
        Assert.Equal(0, (await Run("check", Place("car.yaml"))).Code);
    }

    [Fact]
    public async Task Where_I_stop_the_schema_is_there_as_well()
    {
        Piped = Bench;
        Assert.Equal(2, (await Run("start", Place("car.yaml"), "--ask", "--schema")).Code);
        Assert.Equal("bendsheet.schema.json car.yaml", InTheFolder());
    }

    /// <summary>However early the answers end, the file has every one of them, and the reader says only what is missing.</summary>
    [Fact]
    public async Task Where_my_answers_end_nothing_of_them_is_lost()
    {
        var answers = (Bench + Route + Ends).Split('\n')[..^1];
        string[] words =
        [
            "3/16 in", "0.028 in", "copper-nickel", "9/16 in", "93", "front-left", "120", "3 15/16 in", "135", "90 cw", "30 cm", "an3",
            "15",
        ];
        for (var said = 1; said < answers.Length; said++)
        {
            Piped = string.Concat(answers.Take(said).Select(answer => answer + "\n"));
            var file = $"{said}.yaml";
            var ran = await Run("start", Place(file), "--ask");
            Assert.Equal(2, ran.Code);
            Assert.Contains($"what you said is in {Place(file)}", ran.Output, StringComparison.Ordinal);
            var text = await File.ReadAllTextAsync(Place(file));
            Assert.All(
                words.Where(word => answers.Take(said).Any(answer => answer.StartsWith(word, StringComparison.Ordinal))),
                word => Assert.Contains(word, text, StringComparison.Ordinal));
            Assert.Contains("\n# Not finished: the next question was \"", text, StringComparison.Ordinal);

            // Nothing that was said is a mistake, only what was not.
            var check = await Run("check", Place(file));
            Assert.DoesNotMatch(@"\[(unknown-word|unreadable|broken|not-a-choice|said-twice)", check.Error);
        }
    }

    [Fact]
    public async Task Without_an_answer_nothing_is_written()
    {
        Assert.Equal(2, (await Run("start", Place("car.yaml"), "--ask")).Code);
        Assert.Empty(InTheFolder());
    }

    [Fact]
    public async Task A_file_that_is_there_is_not_replaced_and_nothing_is_asked()
    {
        Piped = Bench;
        var ran = await Run("start", Typed("mine\n"), "--ask");
        Assert.Equal(3, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains("never overwritten", ran.Error, StringComparison.Ordinal);
        Assert.Equal("mine\n", await File.ReadAllTextAsync(Place("car.yaml")));
        Assert.Equal(3, (await Run("start", Place("nowhere/car.yaml"), "--ask")).Code);
        Assert.Equal(2, (await Run("start", "-", "--ask")).Code);
    }
}
