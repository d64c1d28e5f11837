namespace BendSheet.Cli.Output;

/// <summary>
/// For each shell a function that asks the program itself, by <c>[suggest:COLUMN] "what is typed"</c>, and completes names of files where
/// the program has nothing to offer.
/// </summary>
public static class ShellCompletions
{
    private const string Bash = """
        # Completions of bendsheet for bash. Load them in every shell:
        #   echo 'source <(bendsheet completions bash)' >> ~/.bashrc
        _bendsheet() {
            local line="${COMP_LINE:0:COMP_POINT}" current="${COMP_WORDS[COMP_CWORD]}" word quoted= IFS=$'\n'
            # In a word that was begun with a quote, nothing else is quoted.
            if [[ "$current" == [\"\']* ]]; then quoted=1 current="${current:1}"; fi
            line="bendsheet ${line#* }"
            COMPREPLY=()
            for word in $("$1" "[suggest:${#line}]" "$line" 2>/dev/null); do
                # A name with a space in it is typed with a backslash before the space.
                [[ -n "$quoted" ]] || word="$(printf '%q' "$word")"
                # Options only after a dash: elsewhere a file comes first.
                if [[ "$word" == "$current"* && ( "$word" != -* || "$current" == -* ) ]]; then COMPREPLY+=("$word"); fi
            done
        }
        complete -o default -F _bendsheet bendsheet

        """;

    private const string Zsh = """
        #compdef bendsheet
        # Completions of bendsheet for zsh. Load them in every shell, after compinit:
        #   echo 'source <(bendsheet completions zsh)' >> ~/.zshrc
        _bendsheet() {
            local line="bendsheet ${(j: :)words[2,CURRENT]}"
            local -a found
            found=("${(@f)$(bendsheet "[suggest:${#line}]" "$line" 2>/dev/null)}")
            found=(${found:#})
            # Options only after a dash: elsewhere a file comes first.
            [[ $words[CURRENT] == -* ]] || found=(${found:#-*})
            if (( ${#found} )); then compadd -a found; else _files; fi
        }
        compdef _bendsheet bendsheet

        """;

    private const string Fish = """
        # Completions of bendsheet for fish. Load them in every shell:
        #   bendsheet completions fish > ~/.config/fish/completions/bendsheet.fish
        function __bendsheet_found
            set -l line (commandline -cp)
            set -l found (bendsheet "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null | string match -r '.+')
            # Options only after a dash: elsewhere a file comes first.
            string match -q -- '-*' (commandline -ct); or set found (string match -v -- '-*' $found)
            if count $found >/dev/null
                printf '%s\n' $found
            else
                __fish_complete_path (commandline -ct)
            end
        end
        complete -c bendsheet -f -a '(__bendsheet_found)'

        """;

    private const string PowerShell = """
        # Completions of bendsheet for PowerShell. Load them in every shell:
        #   'bendsheet completions powershell | Out-String | Invoke-Expression' >> $PROFILE
        Register-ArgumentCompleter -Native -CommandName bendsheet -ScriptBlock {
            param($wordToComplete, $commandAst, $cursorPosition)
            $line = $commandAst.ToString().PadRight($cursorPosition).Substring(0, $cursorPosition)
            # Options only after a dash: elsewhere a file comes first.
            bendsheet "[suggest:$cursorPosition]" "$line" 2>$null |
            Where-Object { $wordToComplete -like '-*' -or $_ -notlike '-*' } | ForEach-Object {
                $typed = if ($_ -match '\s') { "'$_'" } else { $_ }
                [System.Management.Automation.CompletionResult]::new($typed, $_, 'ParameterValue', $_)
            }
        }

        """;

    /// <summary>The shells that have one.</summary>
    public static IReadOnlyList<(string Shell, string Script)> Scripts { get; } =
        [("bash", Bash), ("zsh", Zsh), ("fish", Fish), ("powershell", PowerShell)];

    /// <summary>The script of a shell, with the line ends that shells know.</summary>
    public static string Of(string shell) =>
        Scripts.First(known => string.Equals(known.Shell, shell, StringComparison.Ordinal)).Script.ReplaceLineEndings("\n");
}
