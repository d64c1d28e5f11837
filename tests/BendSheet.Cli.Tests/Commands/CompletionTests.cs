using System.Diagnostics;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Tests.Commands;

[Collection(FromTheRepository.Name)]
public class CompletionTests : AtTheTerminal
{
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
        if (!File.Exists("/bin/bash"))
        {
            return;
        }

        var car = Typed(
            "units: mm\ntube: {od: 5}\nbender: {radius: 14}\nlines: {left door: [{straight: 120, bend: 45}, {straight: 50}]}\n");
        line = line.Replace("CAR", car, StringComparison.Ordinal);
        Typed(ShellCompletions.Of("bash"), "completions.bash");
        Typed($"#!/bin/bash\nexec dotnet '{typeof(CommandLine).Assembly.Location}' \"$@\"\n", "bendsheet");
        Typed(
            $$"""
            PATH="{{Path.GetDirectoryName(car)}}:$PATH"; chmod +x "{{Place("bendsheet")}}"; source "{{Place("completions.bash")}}"
            complete -p bendsheet | grep -q -- '-F _bendsheet bendsheet' || exit 7
            COMP_LINE='{{line}}'; COMP_POINT=${#COMP_LINE}
            read -ra COMP_WORDS <<< "$COMP_LINE"; [[ "$COMP_LINE" == *' ' ]] && COMP_WORDS+=('')
            COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
            _bendsheet bendsheet; IFS=' '; echo "${COMPREPLY[*]}"

            """.ReplaceLineEndings("\n"),
            "type.bash");
        var start = new ProcessStartInfo("/bin/bash", ["--norc", Place("type.bash")])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        };
        using var bash = Process.Start(start)!;
        var said = bash.StandardOutput.ReadToEnd();
        bash.WaitForExit();
        Assert.Equal(0, bash.ExitCode);
        Assert.Equal(offered + "\n", said);
    }
}
