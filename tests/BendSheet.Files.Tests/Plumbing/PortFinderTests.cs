using BendSheet.Core.Findings;
using BendSheet.Files.Reading;
using BendSheet.Files.Tests.Reading;
using static BendSheet.Files.Tests.Plumbing.SmallCar;

namespace BendSheet.Files.Tests.Plumbing;

/// <summary>What leads to a port, and what is meant to.</summary>
public class PortFinderTests
{
    [Theory]
    [InlineData("^rear-cross.lft", "`rear-cross` has no port `lft`: did you mean `rear-cross.left`?")]
    [InlineData("^rear-cross.seven", "`rear-cross` has no port `seven`: it has `in`, `left`, `right`, `out`")]
    [InlineData("^rear-cross", "`rear-cross` has several ports: say which one, such as `rear-cross.in`")]
    public void A_port_that_the_part_does_not_have_is_an_error_with_the_nearest(string typed, string message) =>
        HasOne(With(("at: rear-cross.left", "at: " + typed)), Severity.Error, FileRules.UnknownPort, message);

    [Fact]
    public void Words_that_nearly_name_a_part_are_a_warning()
    {
        var found = Findings(With(("at: rear-cross.left", "at: ^rear-cros.left")));
        Assert.Equal("open-port, wheel-not-reached, unknown-name", Rules(found));
        Assert.Equal(Severity.Warning, found[2].Severity);
        Assert.Equal(
            "there is no part called `rear-cros`, so that `rear-cros.left` is taken for words only: did you mean `rear-cross`?",
            found[2].Message);
    }

    [Theory]
    [InlineData("behind the seat")]
    [InlineData("see p. 4")]
    [InlineData("chassis.left")]
    public void Other_words_are_words(string typed) =>
        Assert.Equal(
            "4:9 open-port",
            Places(TypedTemplates.Top + "parts: {u: {kind: union}}\nlines: {a: {from: u.in, to: " + typed
                + ", rows: [{straight: 100}]}}\n"));

    [Fact]
    public void The_name_of_a_part_with_one_port_is_enough() =>
        Assert.Empty(Findings(With(("at: left-rear.inlet", "at: left-rear"), ("at: left-front.inlet", "at: left-front"))));

    [Fact]
    public void A_part_sits_in_a_part_and_not_in_words() => HasOne(
        With(("screws-into: rear-cross.out", "screws-into: ^rear-cros.out")),
        Severity.Error,
        FileRules.UnknownName,
        "there is no part called `rear-cros`: did you mean `rear-cross`?");

    [Fact]
    public void A_part_with_several_ports_says_which_of_them_screws_in() => HasOne(
        With(("screws-into: {in: master.front}", "screws-into: ^master.front")),
        Severity.Error,
        FileRules.UnknownPort,
        "part `elbow` has several ports: say which of them screws in, such as `screws-into: {in: tee.left}`");

    [Fact]
    public void A_part_cannot_sit_in_itself() => HasOne(
        With(("{in: master.front}", "{in: ^elbow.out}")),
        Severity.Error,
        FileRules.Circle,
        "part `elbow` cannot sit in itself: name a port of another part");

    [Theory]
    [InlineData(
        "left-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}",
        "left-rear: {kind: wheel-cylinder, mounted: chassis, ports: ^3/8-24 flair 37}",
        "unreadable-port")]
    [InlineData(
        "left-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}",
        "left-rear: {kind: ^drum, ports: inverted 3/16}",
        "not-a-choice")]
    [InlineData(
        "left-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}", "left-rear: ^{ports: inverted 3/16}", "missing-word")]
    [InlineData("left-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}", "left-rear: ^{kind: other}", "missing-word")]
    [InlineData(
        "left-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}",
        "left-rear: {kind: reservoir, ports: ^inverted 3/16}",
        "wrong-kind")]
    [InlineData("have: 1", "have: ^1.5", "out-of-range")]
    [InlineData("ports: {in: 1/8 npt, out: an-3}", "ports: {in: 1/8 npt, out: an-3, ^in: an-3}", "duplicate-word")]
    [InlineData("ports: {in: 1/8 npt, out: an-3}", "ports: ^[]", "wrong-kind")]
    [InlineData("an3: {flare: single 37, thread: 3/8-24}", "an3: {flare: single 37, thread: ^3/8}", "unreadable-port")]
    [InlineData("left-hose: {from: {at: left-bracket.out, is: an-3}, to", "left-hose: ^{to", "missing-word")]
    public void What_cannot_be_read_is_one_error_and_nothing_follows_from_it(string instead, string typed, string rule)
    {
        var text = With((instead, typed));
        var finding = Assert.Single(Findings(text));
        Assert.Equal(rule, finding.Rule.Name);
        Assert.Equal(Caret(text), finding.Position);
        Assert.Equal(Severity.Error, finding.Severity);
    }

    private static string Places(string typed) =>
        string.Join("; ", Findings(typed).Select(finding => $"{finding.Position.Line}:{finding.Position.Column} {finding.Rule.Name}"));
}
