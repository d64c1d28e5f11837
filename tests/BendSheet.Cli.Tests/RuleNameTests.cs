using System.Reflection;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Files.Reading;
using BendSheet.Files.Yaml;

namespace BendSheet.Cli.Tests;

/// <summary>A rule's name is what people search for and what other programs look at: no two rules share one.</summary>
public class RuleNameTests
{
    /// <summary>Every rule of the program, by the type that holds it.</summary>
    internal static readonly List<(Type Holder, Rule Rule)> All =
    [
        .. new[] { typeof(SolvedLine).Assembly, typeof(TemplateReader).Assembly, typeof(CommandLine).Assembly }
            .SelectMany(assembly => assembly.GetTypes())
            .Where(type => !type.ContainsGenericParameters)
            .SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
                .Where(property => property.PropertyType == typeof(Rule))
                .Select(property => (type, (Rule)property.GetValue(null)!))),
    ];

    [Fact]
    public void Every_rule_has_a_name_of_its_own()
    {
        Assert.Empty(All.GroupBy(one => one.Rule.Name, StringComparer.Ordinal).Where(same => same.Count() > 1)
            .Select(same => $"{same.Key}: {string.Join(", ", same.Select(one => one.Holder.Name))}"));
        Assert.InRange(All.Count, 50, 500);
    }

    [Fact]
    public void Rules_of_all_three_parts_are_among_them()
    {
        var names = All.Select(one => one.Rule.Name).ToList();
        Assert.Superset(
            new HashSet<string>(
                ["leg-too-short", "ends-in-bend", "no-corner", "cannot-read", "unknown-line", "unknown-word", "yaml-broken"],
                StringComparer.Ordinal),
            new HashSet<string>(names, StringComparer.Ordinal));
    }

    [Fact]
    public void Every_name_is_words_joined_by_hyphens_and_every_rule_says_why_it_is_there()
    {
        Assert.All(All, one =>
        {
            Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", one.Rule.Name);
            Assert.Matches(@"^[A-Z].+\.$", one.Rule.Why);
        });
    }

    [Fact]
    public void The_lists_of_the_files_rules_leave_none_out()
    {
        Assert.Equal(All.Where(one => one.Holder == typeof(FileRules)).Select(one => one.Rule.Name).Order(StringComparer.Ordinal),
            FileRules.All.Select(rule => rule.Name).Order(StringComparer.Ordinal));
        Assert.Equal(All.Where(one => one.Holder == typeof(YamlRules)).Select(one => one.Rule.Name).Order(StringComparer.Ordinal),
            YamlRules.All.Select(rule => rule.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_is_wrong_with_the_command_line_is_wrong_with_the_file()
    {
        Assert.Equal(RuleSubject.File, FileRules.CannotRead.Subject);
        Assert.Equal(RuleSubject.File, Choice.UnknownLine.Subject);
    }
}
