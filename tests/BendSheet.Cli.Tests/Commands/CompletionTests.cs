using System.Diagnostics;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Tests.Commands;

[Collection(FromTheRepository.Name)]
public class CompletionTests : AtTheTerminal
{
    private const string Bash = "/bin/bash";

    [Theory]
    [InlineData("bendsheet sh", "show")]
    [InlineData("bendsheet explain leg", "leg-too-short")]
    [InlineData("bendsheet show samples/finch.yaml --line rear", "rear rear-axle-left rear-axle-right")]
    [InlineData("bendsheet show samples/wren.yaml --line ", "front")]
    [InlineData("bendsheet learn samples/wren.yaml --bender ", "hand")]
    [InlineData("bendsheet show --line f", "")]
    [InlineData("bendsheet show nowhere.yaml --line f", "")]
    [InlineData("bendsheet show - --line f", "")]
    [InlineData("bendsheet show samples/finch.yaml --format js", "json")]
    [InlineData("bendsheet print samples/finch.yaml --paper ", "a4 letter")]
    [InlineData("bendsheet print samples/finch.yaml --full-size d", "dial")]
    [InlineData("bendsheet print samples/finch.yaml --pa", "--pages --paper")]
    [InlineData("bendsheet completions ", "bash fish powershell zsh")]
    public async Task I_am_offered_what_can_be_typed(string line, string offered)
    {
        var ran = await Run($"[suggest:{line.Length}]", line);
        Assert.Equal(0, ran.Code);
        Assert.Equal(
            offered,
            string.Join(' ', ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Where(word => word[0] != '-' || line.EndsWith("--pa", StringComparison.Ordinal))));
    }

    /// <summary>A name with a space in it, in each way that a shell has to type one (POSIX.1-2017, Shell Command Language, 2.2).</summary>
    [Theory]
    [InlineData("bendsheet check \"my car.yaml\" --line ", "left door")]
    [InlineData("bendsheet check 'my car.yaml' --line le", "left door")]
    [InlineData(@"bendsheet check my\ car.yaml --line le", "left door")]
    [InlineData(@"bendsheet check 'my'\ car.yaml  --line 'left d", "left door")]
    [InlineData(@"bendsheet check my\ car.yaml --line left\ d", "left door")]
    [InlineData("bendsheet check \"my car.yaml\" --line \"left d", "left door")]
    [InlineData("bendsheet check my car.yaml --line le", "")]
    [InlineData(@"bendsheet check other\ car.yaml --line le", "")]
    public async Task A_name_with_a_space_may_be_typed_as_the_shell_has_it(string line, string offered)
    {
        var car = Typed(
            "units: mm\ntube: {od: 5}\nbender: {radius: 14}\nlines: {left door: [{straight: 120, bend: 45}, {straight: 50}]}\n",
            "my car.yaml");
        var folder = Path.GetDirectoryName(car) + "/";
        line = line.Replace("check ", "check " + folder, StringComparison.Ordinal)
            .Replace(folder + "\"", "\"" + folder, StringComparison.Ordinal).Replace(folder + "'", "'" + folder, StringComparison.Ordinal);
        var ran = await Run($"[suggest:{line.Length}]", line);
        Assert.Equal(0, ran.Code);
        Assert.Equal(offered, string.Join(' ', ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)));
    }

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("powershell")]
    public async Task Each_shell_has_a_script_that_says_how_to_load_it(string shell)
    {
        var ran = await Run("completions", shell);
        Assert.Equal(0, ran.Code);
        Assert.Contains($"bendsheet completions {shell}", ran.Output, StringComparison.Ordinal);
        Assert.Contains("[suggest:", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', ran.Output);
    }

    [Theory]
    [InlineData("tcsh", "bendsheet: `tcsh` is no shell that completions are made for: type `bash`, `zsh`, `fish` or `powershell`.\n")]
    [InlineData("bsh", "bendsheet: `bsh` is no shell that completions are made for: did you mean `bash`?\n")]
    public async Task Another_shell_is_told_which_there_are(string shell, string sentence)
    {
        var ran = await Run("completions", shell);
        Assert.Equal(2, ran.Code);
        Assert.StartsWith(sentence, ran.Error, StringComparison.Ordinal);
    }

    /// <summary>A real bash, with the program as built: what was typed up to the cursor, and the words it then offers.</summary>
    [Theory]
    [InlineData("bendsheet sh", "show")]
    [InlineData("bendsheet show samples/finch.yaml --line rear-", "rear-axle-left rear-axle-right")]
    [InlineData("bendsheet learn samples/wren.yaml --bender ", "hand")]
    [InlineData("bendsheet print samples/finch.yaml --paper l", "letter")]
    [InlineData("bendsheet check CAR --line le", @"left\ door")]
    [InlineData("bendsheet check sampl", "")]
    [InlineData("bendsheet check ", "")]
    [InlineData("bendsheet check --l", "--line")]
    public void A_real_bash_completes(string line, string offered)
    {
        if (File.Exists(Bash))
        {
            Assert.Equal(offered + "\n", InBash(line, line[(line.LastIndexOf(' ') + 1)..]));
        }
    }

    [Theory]
    [InlineData(@"left\ d", @"left\ door")]
    [InlineData("'left d", "left door")]
    [InlineData("\"le", "left door")]
    public void A_real_bash_completes_a_word_that_I_quote(string word, string offered)
    {
        if (File.Exists(Bash))
        {
            Assert.Equal(offered + "\n", InBash($"bendsheet check CAR --line {word}", word));
        }
    }

    /// <summary>What bash offers after a line, and the word of it that stands at the cursor.</summary>
    private string InBash(string line, string word)
    {
        var car = Typed(
            "units: mm\ntube: {od: 5}\nbender: {radius: 14}\nlines: {left door: [{straight: 120, bend: 45}, {straight: 50}]}\n");
        Typed(ShellCompletions.Of("bash"), "completions.bash");
        Typed($"#!/bin/bash\nexec dotnet '{typeof(CommandLine).Assembly.Location}' \"$@\"\n", "bendsheet");
        Typed(
            $$"""
            PATH="{{Path.GetDirectoryName(car)}}:$PATH"; chmod +x "{{Place("bendsheet")}}"; source "{{Place("completions.bash")}}"
            complete -p bendsheet | grep -q -- '-F _bendsheet bendsheet' || exit 7
            COMP_LINE="$LINE"; COMP_POINT=${#COMP_LINE}; COMP_WORDS=(bendsheet "$WORD"); COMP_CWORD=1
            _bendsheet bendsheet; IFS=' '; echo "${COMPREPLY[*]}"

            """.ReplaceLineEndings("\n"),
            "type.bash");
        var start = new ProcessStartInfo(Bash, ["--norc", Place("type.bash")])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
            Environment = { ["LINE"] = line.Replace("CAR", car, StringComparison.Ordinal), ["WORD"] = word },
        };
        using var bash = Process.Start(start)!;
        var said = bash.StandardOutput.ReadToEnd();
        bash.WaitForExit();
        Assert.Equal(0, bash.ExitCode);
        return said;
    }
}
