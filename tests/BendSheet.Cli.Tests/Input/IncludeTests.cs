using System.Text;
using System.Text.RegularExpressions;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Tests.Input;

[Collection(FromTheRepository.Name)]
public partial class IncludeTests : AtTheTerminal
{
    private const string Workshop = """
        units: mm
        tubes:
          brake: {od: 4.7625, wall: 0.7112, material: copper-nickel}
        benders:
          hand: {radius: 14.2875, grip: 12, follow: 10, tests: [{pull: 93, got: 90}, {pull: 32, got: 30}]}
        fittings:
          an3: {flare: single 37, takes: 0.5, slide-on: [{nut: 17}, {sleeve: 9}], straight: 35}
        hoses:
          left: {from: tee.left, to: left front caliper, length: 350}
        stock: [{name: roll 1, tube: brake, length: 7620, left: 5400}]
        have: {an3 nut: 1}

        """;

    private const string Lines = """
        parts: {tee: {kind: tee, ports: [in, left]}}
        lines:
          front:
            from: {at: master cylinder, fitting: an3}
            to: {at: tee.in, fitting: an3}
            rows: [{straight: 120, bend: 45}, {straight: 60}]

        """;

    private const string Car = "include: workshop.yaml\nunits: mm\n" + Lines;

    [Theory]
    [InlineData("show")]
    [InlineData("show", "--format", "json")]
    [InlineData("learn")]
    [InlineData("stock")]
    public async Task I_get_the_same_as_if_all_were_in_one_file(params string[] asked)
    {
        Typed(Workshop, "workshop.yaml");
        var included = await Run([asked[0], Typed(Car), .. asked[1..]]);
        var whole = await Run([asked[0], Typed(Workshop + Lines), .. asked[1..]]);
        Assert.Equal(0, included.Code);
        Assert.Equal(WithoutPlaces(whole.Output), WithoutPlaces(included.Output));
        Assert.Equal(RulesOf(whole), RulesOf(included), StringComparer.Ordinal);
    }

    /// <summary>The same tool typed in inches in the one file, in millimetres in the other.</summary>
    [Fact]
    public async Task Each_file_has_its_own_unit()
    {
        Typed(Workshop, "workshop.yaml");
        var inMillimetres = await Run("show", Typed(Car));
        Typed(
            Workshop.Replace("units: mm", "units: in", StringComparison.Ordinal)
                .Replace("od: 4.7625, wall: 0.7112", "od: 0.1875, wall: 0.028", StringComparison.Ordinal)
                .Replace("radius: 14.2875, grip: 12, follow: 10", "radius: 0.5625, grip: 12 mm, follow: 1 cm", StringComparison.Ordinal)
                .Replace("takes: 0.5", "takes: 0.5 mm", StringComparison.Ordinal)
                .Replace("nut: 17", "nut: 17 mm", StringComparison.Ordinal).Replace("sleeve: 9", "sleeve: 9 mm", StringComparison.Ordinal)
                .Replace("straight: 35", "straight: 35 mm", StringComparison.Ordinal)
                .Replace("length: 350", "length: 350 mm", StringComparison.Ordinal)
                .Replace("length: 7620, left: 5400", "length: 300, left: 5400 mm", StringComparison.Ordinal),
            "workshop.yaml");
        var inInches = await Run("show", Typed(Car));
        Assert.Equal(0, inInches.Code);
        Assert.Equal(inMillimetres.Output, inInches.Output);
    }

    [Fact]
    public async Task What_is_wrong_in_the_other_file_is_shown_there()
    {
        Typed(Workshop.Replace("grip: 12", "grpi: 12", StringComparison.Ordinal), "workshop.yaml");
        var ran = await Run("check", Typed(Car));
        Assert.Equal(2, ran.Code);
        Assert.StartsWith(
            $"{Place("workshop.yaml")}:5:27: error: `grpi` is not a word for a bender: did you mean `grip`? [unknown-word]\n"
                + "  5 |   hand: {radius: 14.2875, grpi: 12, fol",
            ran.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_made_with_a_tool_of_the_other_file_is_shown_there()
    {
        Typed(Workshop.Replace("od: 4.7625", "smallest-radius: 20, od: 4.7625", StringComparison.Ordinal), "workshop.yaml");
        var ran = await Run("check", Typed(Car));
        Assert.Contains($"{Place("workshop.yaml")}:5:18: warning: line front: bender hand bends to", ran.Error, StringComparison.Ordinal);
        Assert.Contains("\n  5 |   hand: {radius: 14.2875", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>The tool that no line uses, the roll: a mistake there is none of the line's.</summary>
    [Theory]
    [InlineData("left: 5400", "left: many", false)]
    [InlineData("left: {from: tee.left", "left: {form: tee.left", false)]
    [InlineData("units: mm", "units: furlongs", true)]
    [InlineData("takes: 0.5", "takes: many", true)]
    public async Task A_mistake_there_stops_only_the_lines_that_it_concerns(string right, string wrong, bool concerns)
    {
        Typed(Workshop.Replace(right, wrong, StringComparison.Ordinal), "workshop.yaml");
        var ran = await Run("show", Typed(Car), "--line", "front");
        Assert.Equal(concerns ? 2 : 0, ran.Code);
        Assert.Equal(concerns, !ran.Output.StartsWith("front: cut ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("include: workshop.yaml", "include: nowhere.yaml", "1:10: error: `nowhere.yaml` cannot be included: there is no ")]
    [InlineData("include: workshop.yaml", "include: .", "1:10: error: `.` cannot be included: this is a folder: name the file in it")]
    [InlineData("include: workshop.yaml", "include: [nowhere.yaml]", "1:11: error: `nowhere.yaml` cannot be included: ")]
    [InlineData("include: workshop.yaml", "include: \"\"", "1:10: error: `` cannot be included: no file can be called so")]
    [InlineData("include: workshop.yaml", "include: {a: b}", "1:10: error: `include` is the name of a file, ")]
    [InlineData("include: workshop.yaml", "include:", "1:1: error: `include` has no value: ")]
    [InlineData("include: workshop.yaml", "inlcude: workshop.yaml", "1:1: error: `inlcude` is not a word for the top of the file: did you")]
    [InlineData("include: workshop.yaml", "include: [workshop.yaml, workshop.yaml]", "1:26: error: `workshop.yaml` is included already")]
    [InlineData("units: mm", "units: mm\ntube: {od: 5}\ntubes: {brake: {od: 5}}", "4:9: error: `brake` is in ")]
    [InlineData("units: mm", "units: mm\nfittings: {an3: {flare: none}}", "3:12: error: `an3` is in ")]
    [InlineData("units: mm", "units: mm\nhave: {an3 nut: 2}", "3:8: error: `an3 nut` is in ")]
    public async Task A_wrong_include_is_a_finding_at_its_place(string right, string wrong, string said)
    {
        Typed(Workshop, "workshop.yaml");
        var car = Typed(Car.Replace(right, wrong, StringComparison.Ordinal));
        var ran = await Run("check", car);
        Assert.Equal(2, ran.Code);
        Assert.Contains($"{car}:{said}", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>One cause, one finding: what might have stood in the file is not missed as well.</summary>
    [Theory]
    [InlineData("include: nowhere.yaml", "cannot-read")]
    [InlineData("include:", "missing-word")]
    public async Task Where_the_other_file_is_not_there_its_names_are_not_missed_as_well(string include, string rule)
    {
        var ran = await Run("check", Typed(Car.Replace("include: workshop.yaml", include, StringComparison.Ordinal)));
        Assert.Equal([$"[{rule}]\n"], RulesOf(ran), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_file_cannot_include_itself()
    {
        var car = Typed(Workshop + Lines + "include: ./car.yaml\n");
        var ran = await Run("check", car);
        Assert.Equal(2, ran.Code);
        Assert.Contains("error: the file cannot include itself: take this out [circle]", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("include: car.yaml\n", "1:1: error: a file that is included includes no other: put this `include` into the file that you")]
    [InlineData("lines: {rear: [{straight: 3}]}\n", "1:1: error: `lines` stands only in the file that you check and print: move it there")]
    [InlineData("project: x\n", "1:1: error: `project` stands only in the file that you check")]
    [InlineData("bendres: {}\n", "1:1: error: `bendres` is not a word for a file that is included: ")]
    [InlineData("have: {nut: 1\n", "1:7: error: this { was never closed")]
    public async Task A_wrong_word_in_the_other_file_is_a_finding_there(string typed, string said)
    {
        Typed(typed + Workshop.Replace("have: {an3 nut: 1}", string.Empty, StringComparison.Ordinal), "workshop.yaml");
        var ran = await Run("check", Typed(Car));
        Assert.Equal(2, ran.Code);
        Assert.Contains($"{Place("workshop.yaml")}:{said}", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_other_file_says_its_unit()
    {
        Typed(Workshop.Replace("units: mm\n", string.Empty, StringComparison.Ordinal), "workshop.yaml");
        var ran = await Run("check", Typed(Car));
        Assert.Contains(
            $"{Place("workshop.yaml")}:1:1: error: this file does not say in which unit its bare numbers are: add `units: mm`",
            ran.Error,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "[file-empty]")]
    [InlineData("- a\n", "[wrong-kind]")]
    [InlineData("%PDF-1.4\0\u0001", "[not-text]")]
    public async Task What_is_no_file_of_words_is_one_finding(string content, string rule)
    {
        Typed(content, "workshop.yaml");
        var ran = await Run("check", Typed(Car));
        Assert.Equal(2, ran.Code);
        Assert.Equal([rule + "\n"], RulesOf(ran), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_file_too_large_is_not_read()
    {
        Typed(new string('#', (4 * 1024 * 1024) + 1), "workshop.yaml");
        Assert.Contains(
            $"{Place("workshop.yaml")}:1:1: error: this file is larger than 4 MiB",
            (await Run("check", Typed(Car))).Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_many_files_are_refused()
    {
        for (var file = 0; file < 9; file++)
        {
            Typed($"units: mm\nfittings: {{f{file}: {{flare: none}}}}\n", $"f{file}.yaml");
        }

        var car = Typed("include: [f0.yaml, f1.yaml, f2.yaml, f3.yaml, f4.yaml, f5.yaml, f6.yaml, f7.yaml, f8.yaml]\n" + Workshop + Lines);
        Assert.Contains("1:83: error: a file includes at most 8 others: ", (await Run("check", car)).Error, StringComparison.Ordinal);
        File.WriteAllText(car, File.ReadAllText(car).Replace(", f8.yaml", string.Empty, StringComparison.Ordinal));
        Assert.Equal(0, (await Run("check", car)).Code);
    }

    [Fact]
    public async Task Rolls_of_both_files_count()
    {
        Typed(Workshop, "workshop.yaml");
        var ran = await Run("stock", Typed(Car + "stock: [{name: roll 2, tube: brake, length: 1000}]\n"));
        Assert.Contains("roll 1: not cut, 5400.0 mm", ran.Output, StringComparison.Ordinal);
        Assert.Contains("left on rolls  6400.0 mm", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_number_of_the_sheet_changes_with_the_other_file()
    {
        Typed(Workshop, "workshop.yaml");
        var car = Typed(Car);
        var before = Sheet().Match((await Run("show", car)).Output).Value;
        Assert.NotEmpty(before);
        Typed(Workshop + "# a remark\n", "workshop.yaml");
        Assert.Equal(before, Sheet().Match((await Run("show", car)).Output).Value);
        Typed(Workshop.Replace("takes: 0.5", "takes: 0.6", StringComparison.Ordinal), "workshop.yaml");
        Assert.NotEqual(before, Sheet().Match((await Run("show", car)).Output).Value, StringComparer.Ordinal);
    }

    [Fact]
    public async Task From_standard_input_it_is_looked_for_in_the_current_folder()
    {
        Piped = (await File.ReadAllTextAsync("samples/wren.yaml"))
            .Replace("include: workshop.yaml", "include: samples/workshop.yaml", StringComparison.Ordinal);
        var ran = await Run("show", "-");
        Assert.Equal(0, ran.Code);
        Assert.Equal((await Run("show", "samples/wren.yaml")).Output, ran.Output);
    }

    [Fact]
    public async Task The_sample_is_sound_and_shows_its_tools_tests()
    {
        var ran = await Run("check", "samples/wren.yaml");
        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain(" error: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("from 3 test bends", (await Run("learn", "samples/wren.yaml")).Output, StringComparison.Ordinal);
    }

    /// <summary>Whatever stands in the other file: findings, and no exception.</summary>
    [Fact]
    public void Any_text_can_be_included()
    {
        var random = new Random(15);
        string[] pieces =
            ["{", "}", "[", "]", ":", " ", "\n", "  ", "- ", "tubes", "benders", "include", "units", "units: mm\n", "0", "'", "&a"];
        for (var run = 0; run < 3000; run++)
        {
            var text = new StringBuilder(Workshop);
            for (var change = random.Next(1, 6); change > 0; change--)
            {
                var at = random.Next(text.Length);
                text.Remove(at, Math.Min(random.Next(4), text.Length - at)).Insert(at, pieces[random.Next(pieces.Length)]);
            }

            var read = TemplateReader.Read(
                "car.yaml",
                new MemoryStream(Encoding.UTF8.GetBytes(Car)),
                typed => new(typed, new MemoryStream(Encoding.UTF8.GetBytes(text.ToString())), null, IsItself: false));
            Assert.All(read.Findings, finding => Assert.True(finding.Position.FileNumber is 0 or 1));
        }
    }

    private static IEnumerable<string> RulesOf(Ran ran) => Rules().Matches(ran.Error).Select(one => one.Value);

    private static string WithoutPlaces(string output) => Places().Replace(output, "@");

    [GeneratedRegex(@"""file"": ""[^""]*""|""line"": \d+|""column"": \d+|\(line \d+\)", RegexOptions.NonBacktracking)]
    private static partial Regex Places();

    [GeneratedRegex(@"\[[a-z-]+\]\n", RegexOptions.NonBacktracking)]
    private static partial Regex Rules();

    [GeneratedRegex("sheet [0-9a-f]{6}", RegexOptions.NonBacktracking)]
    private static partial Regex Sheet();
}
