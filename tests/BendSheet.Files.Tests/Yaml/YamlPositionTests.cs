using System.Text;
using BendSheet.Core.Findings;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Tests.Yaml;

/// <summary>A table: what was typed, and which rule speaks at which line and column. <c>(none)</c>: it is right.</summary>
public class YamlPositionTests
{
    [Theory]
    // Brackets
    [InlineData("- {straight: 120, bend: 45\n- {straight: 3}", "1:3 bracket-not-closed")]
    [InlineData("tube: {od: 3/16 in\nbender: {radius: 9/16 in}\n", "1:7 bracket-not-closed")]
    [InlineData("lines:\n  f: [{straight: 120}, {straight: 80}\n  g: [{straight: 1}]\n", "2:6 bracket-not-closed")]
    [InlineData("a: 1\r\nb: {\r\n  c: 2\r\n\r\n", "2:4 bracket-not-closed")]
    [InlineData("x: [1, 2, 3\n", "1:4 bracket-not-closed")]
    [InlineData("- {straight: 1, bend: 45]\n", "1:25 bracket-not-closed")]
    [InlineData("- {straight: 120}}\n", "1:18 bracket-not-opened")]
    [InlineData("a: ]\n", "1:4 bracket-not-opened")]
    [InlineData("note: the } here\nx: [1 2\n", "2:4 bracket-not-closed")]
    [InlineData("note: |\n  two { braces\n  and [\nx: {a: 1\n", "4:4 bracket-not-closed")]
    [InlineData("a: [b] d\n", "1:8 yaml-broken")]
    // Quotes
    [InlineData("project: \"Finch\nunits: mm\n", "1:10 quote-not-closed")]
    [InlineData("project: \"Finch\nunits: mm\nname: \"rear\"\n", "1:10 quote-not-closed")]
    [InlineData("- {note: \"hot, bend: 3}\n- {note: \"x\"}\n", "1:10 quote-not-closed")]
    [InlineData("note: 'warm\n", "1:7 quote-not-closed")]
    [InlineData("name: 'Joe's line'\n", "1:12 text-after-quote")]
    [InlineData("length: \"2' 3\"\"\nunits: mm\n", "1:15 text-after-quote")]
    [InlineData("length: {a: \"2' 3\"\", b: 1}\n", "1:19 text-after-quote")]
    [InlineData("length: 2' 3-1/2\"\nb: {c: 12-5/16\"}\n", "(none)")]
    [InlineData("name: 'Joe''s line'\nb: \"a \\\" b\"\n", "(none)")]
    [InlineData("name: 'Joe''s line'\nb: \"a \\\" b\"\nc: {\n", "3:4 bracket-not-closed")]
    [InlineData("path: \"C:\\cars\"\n", "1:10 yaml-broken")]
    // Commas and colons
    [InlineData("- {straight: 120 bend: 45}\n", "1:18 comma-missing")]
    [InlineData("- [{straight: 1} {bend: 2}]\n", "1:18 comma-missing")]
    [InlineData("- {straight: 120,, bend: 45}\n", "1:18 stray-comma")]
    [InlineData("- {straight: 120},\n- {straight: 80}\n", "1:18 stray-comma")]
    [InlineData("a: ,b\n", "1:4 stray-comma")]
    [InlineData("- {straight: 120, bend: 45,}\n", "(none)")]
    [InlineData("- {straight: 1,5}\n", "1:14 decimal-comma")]
    [InlineData("- {straight: 1,5 mm, bend: 22,5}\n", "1:14 decimal-comma; 1:28 decimal-comma")]
    [InlineData("- {straight: 1,\n   5}\n", "1:14 decimal-comma")]
    [InlineData("- {bend: 45, 5: , note: 3}\n", "(none)")]
    [InlineData("- {straight:120}\n", "1:4 space-after-colon")]
    [InlineData("- {straight:120, bend:45}\n", "1:4 space-after-colon; 1:18 space-after-colon")]
    [InlineData("units:mm\ntube: 1\n", "1:1 space-after-colon")]
    [InlineData("tube: 1\nunits:mm\n", "2:1 space-after-colon")]
    [InlineData("units:\u00a0mm\ntube: 1\n", "1:1 space-after-colon")]
    [InlineData("- {straight 120, bend: 45}\n", "1:4 colon-missing")]
    [InlineData("units mm\ntube: 1\n", "1:1 colon-missing")]
    [InlineData("units: mm\npaper a4\ntube: 1\n", "2:1 colon-missing")]
    [InlineData("- {bend: 45, note: heat it, then bend}\n", "1:29 comma-in-text")]
    [InlineData("- {use: entry, reverse}\n", "(none)")]
    [InlineData("a: b: c\n", "1:5 colon-twice")]
    [InlineData("{a: b: c}\n", "1:5 comma-missing")]
    [InlineData("{a: 1: 2}\n", "1:5 comma-missing")]
    // Dashes and indentation
    [InlineData("- {a: 1}\n-{b: 2}\n", "2:1 space-after-dash")]
    [InlineData("-{straight: 120, bend: 45}\n", "1:1 space-after-dash")]
    [InlineData("f:\n  -straight: 120\n", "2:3 space-after-dash")]
    [InlineData("a: - b\n", "1:4 yaml-broken")]
    [InlineData("lines:\n    - {a: 1}\n   - {a: 2}\n", "3:4 uneven-indent")]
    [InlineData("a: 1\n b: 2\n", "2:2 uneven-indent")]
    [InlineData("l:\n  a: 1\n b: 2\n", "3:2 uneven-indent")]
    [InlineData("  a: 1\n b: 2\n", "2:2 uneven-indent")]
    [InlineData("a: b\n- c\n", "2:1 uneven-indent")]
    [InlineData("- a\nb: c\n", "2:1 uneven-indent")]
    [InlineData("lines:\n\tfront: 1\n", "2:1 tab-in-indent")]
    [InlineData("lines:\n  \tfront: 1\n\trear: 1\n", "2:3 tab-in-indent")]
    [InlineData("lines:\n\u00a0 front: 1\n", "2:1 tab-in-indent")]
    [InlineData("a:\t1\t# \tremark\n\t\n \t# remark\nb: 2\n-\tc", "5:1 uneven-indent")]
    [InlineData("a:\t1\t# \tremark\n\t\n \t# remark\nb: 2\n", "(none)")]
    // Characters
    [InlineData("a: 1\nb: x\0y\n", "2:5 control-character")]
    [InlineData("a: 1\u0085b: 2\u2028\nc: {straight:1}\n", "1:5 control-character; 1:7 colon-twice")]
    [InlineData("# \u001b[31m\na: 1\n", "1:3 control-character")]
    [InlineData("a: \uFEFF1\nb: 1,5\u200B\n", "1:4 control-character")]
    [InlineData("a: 45°\nb: Ærøskøbing 🚗, 1\nc: {d:1}\n", "3:5 space-after-colon")]
    [InlineData("a: {b: 🚗, d:1}\n", "1:12 space-after-colon")]
    [InlineData("{{\u0085\u00a0", "1:2 word-expected; 1:2 bracket-not-closed; 1:3 control-character")]
    // What YAML can do and a bench file cannot
    [InlineData("a: &b 1\nc: *b\n", "1:4 anchor-or-alias; 2:4 anchor-or-alias")]
    [InlineData("a: {c: 1}\nb:\n  <<: *a\n", "3:3 anchor-or-alias")]
    [InlineData("a: *\n", "1:4 anchor-or-alias")]
    [InlineData("a: !!int 1\nb: ! x\n", "1:4 tag; 2:4 tag")]
    [InlineData("!!]", "1:1 tag")]
    [InlineData("%YAML 1.2\n---\na: 1\n", "1:1 directive")]
    [InlineData("---\na: 1\n--- # more\nb: 2\n", "3:1 second-document")]
    [InlineData("---\na: 1\n...\n", "(none)")]
    [InlineData("? [a]\n: 1\n", "1:3 word-expected")]
    [InlineData("- {{straight: 120}}\n", "1:4 word-expected")]
    [InlineData("a: @b\n", "1:4 yaml-broken")]
    [InlineData("a: ? b\n", "1:4 yaml-broken")]
    // The same word twice
    [InlineData("a: 1\nb: 1\nc: 1\nd: 1\ne: 1\nf: 1\ng: 1\nh: 1\ni: 1\nj: 1\nj: 1\na: 1\n", "11:1 duplicate-word; 12:1 duplicate-word")]
    [InlineData("units: mm\nproject: x\nunits: in\n", "3:1 duplicate-word")]
    [InlineData("- {bend: 1, bend: 2, bend: 3}\n", "1:13 duplicate-word; 1:22 duplicate-word")]
    [InlineData("\"a\": 1\na: 2\n", "2:1 duplicate-word")]
    [InlineData("a: 1\na: 2\nc: {x: 1\n", "2:1 duplicate-word; 3:4 bracket-not-closed")]
    [InlineData("c: {x: 1, x: 2,\n", "1:4 bracket-not-closed; 1:11 duplicate-word")]
    // Nothing there
    [InlineData("", "1:1 file-empty")]
    [InlineData("\n \n# units: mm\r\n\t\n", "1:1 file-empty")]
    [InlineData("---\n~\n", "1:1 file-empty")]
    // Line ends
    [InlineData("a: 1\rb: 2\ra: 3\r", "3:1 duplicate-word")]
    [InlineData("a: 1\r\nb: 2\r\na: 3\r\n", "3:1 duplicate-word")]
    [InlineData("\uFEFFa: 1\na: 3", "2:1 duplicate-word")]
    [InlineData("\uFEFF{a:1}", "1:2 space-after-colon")]
    public void A_finding_stands_where_a_person_should_look(string typed, string places)
    {
        var found = YamlTexts.Places(YamlTexts.Read(typed));
        Assert.Equal(places, found.Length == 0 ? "(none)" : found);
    }

    [Theory]
    [InlineData("a: [1,\n")]
    [InlineData("a: [1,\n\n\n")]
    [InlineData("a: {b: 1,\r\n\r\n")]
    public void A_mistake_seen_only_at_the_end_is_never_placed_behind_the_text(string typed)
    {
        var reading = YamlTexts.Read(typed);
        var finding = Assert.Single(reading.Findings);
        Assert.InRange(finding.Position.Line, 1, 2);
        Assert.Null(reading.Root);
    }

    [Theory]
    [InlineData("a: 1\nb:\n- 2", "{a@1:1: 1@1:4, b@2:1: [2@3:3]@3:1}@1:1")]
    [InlineData("a: \"\"\nb:\nc: ~\nd: '~'", "{a@1:1: \"\"@1:4, b@2:1: ()@2:3, c@3:1: ()@3:4, d@4:1: \"~\"@4:4}@1:1")]
    [InlineData("[pull: 93, got: 90]", "[{pull@1:2: 93@1:8}@1:2, {got@1:12: 90@1:17}@1:12]@1:1")]
    [InlineData("{0-1: 120, on: yes, n: 010}", "{0-1@1:2: 120@1:7, on@1:12: yes@1:16, n@1:21: 010@1:24}@1:1")]
    [InlineData("a: 1\r\nb: 2", "{a@1:1: 1@1:4, b@2:1: 2@2:4}@1:1")]
    [InlineData("a: 1\rb: 2", "{a@1:1: 1@1:4, b@2:1: 2@2:4}@1:1")]
    [InlineData("\uFEFFa: 1", "{a@1:1: 1@1:4}@1:1")]
    [InlineData("note: |\n  one\n  two\n", "{note@1:1: \"one\ntwo\n\"@1:7}@1:1")]
    public void Every_value_knows_where_it_was_typed(string typed, string tree) =>
        Assert.Equal(tree, YamlTexts.Show(YamlTexts.Read(typed).Root));

    [Theory]
    [InlineData("{straight: 1,5, bend: 45}", "{straight@1:2: 1.5@1:12, bend@1:17: 45@1:23}@1:1")]
    [InlineData("{straight: 1,5 mm}", "{straight@1:2: 1.5 mm@1:12}@1:1")]
    [InlineData("{straight:120, bend 45 deg}", "{straight@1:2: 120@1:11, bend@1:16: 45 deg@1:21}@1:1")]
    [InlineData("{note: heat, then bend}", "{note@1:2: heat, then bend@1:8}@1:1")]
    [InlineData("a: 1\na: 2\nb: *x\nc: 3", "{a@1:1: 1@1:4, c@4:1: 3@4:4}@1:1")]
    [InlineData("%x\na: 1", "{a@2:1: 1@2:4}@2:1")]
    [InlineData("a: 1\n---\nb: 1", "{a@1:1: 1@1:4}@1:1")]
    [InlineData("a: [1", "{a@1:1: [1@1:5]@1:4}@1:1")]
    [InlineData("a:\n\tb: 1", "{a@1:1: {b@2:2: 1@2:5}@2:2}@1:1")]
    [InlineData("a:\n\tb:\n\t\t- c: 1", "{a@1:1: {b@2:2: [{c@3:5: 1@3:8}@3:5]@3:3}@2:2}@1:1")]
    [InlineData("a:\n    - b\n\t- c\n    - d", "{a@1:1: [b@2:7, c@3:4, d@4:7]@2:5}@1:1")]
    [InlineData("a:\n  b: 1\n \tc: 2\n\t  d: 3", "nothing")]
    [InlineData("a: \"one\nb: 2", "{a@1:1: \"one\"@1:4, b@2:1: 2@2:4}@1:1")]
    [InlineData("a: 'one # remark\nb: 2", "{a@1:1: \"one\"@1:4, b@2:1: 2@2:4}@1:1")]
    [InlineData("- {a: \"one, b: 2}\n- {a: \"x\"}", "[{a@1:4: one@1:8, b@1:13: 2@1:16}@1:3, {a@2:4: \"x\"@2:7}@2:3]@1:1")]
    [InlineData("a: \"2' 3-1/2\"\"\nb: 2", "{a@1:1: 2' 3-1/2\"@1:5, b@2:1: 2@2:4}@1:1")]
    [InlineData("a: \"3/16\" in\nb: 2", "{a@1:1: 3/16  in@1:5, b@2:1: 2@2:4}@1:1")]
    [InlineData("a: 'Joe's line'\nb: 2", "{a@1:1: \"Joe's line\"@1:4, b@2:1: 2@2:4}@1:1")]
    [InlineData("- {a: 1, b: 2},\n- {c: 3}", "[{a@1:4: 1@1:7, b@1:10: 2@1:13}@1:3, {c@2:4: 3@2:7}@2:3]@1:1")]
    [InlineData("{a: 1,, b: 2}", "{a@1:2: 1@1:5, b@1:9: 2@1:12}@1:1")]
    [InlineData("{a: 1 b: 2 c: 3}", "{a@1:2: 1@1:5, b@1:7: 2@1:10, c@1:12: 3@1:15}@1:1")]
    [InlineData("a: , 1", "{a@1:1: 1@1:6}@1:1")]
    public void What_was_meant_is_read_on_beside_the_finding(string typed, string tree)
    {
        var reading = YamlTexts.Read(typed);
        Assert.NotEmpty(reading.Findings);
        Assert.Equal(tree, YamlTexts.Show(reading.Root));
    }

    [Fact]
    public void A_file_in_another_encoding_is_told_to_be_saved_again()
    {
        var latin1 = YamlDocument.Read("f", Encoding.Latin1.GetBytes("a: 1\nb: ° 45°"));
        Assert.Equal("2:4 not-utf8", YamlTexts.Places(latin1));
        Assert.Equal("a: 1\nb: \uFFFD 45\uFFFD", latin1.Source.Text);
        Assert.Equal("1:1 not-utf8", YamlTexts.Places(YamlDocument.Read("f", Encoding.Unicode.GetBytes("a: 1"))));
        Assert.Equal("1:1 not-utf8", YamlTexts.Places(YamlDocument.Read("f", Encoding.BigEndianUnicode.GetBytes("a: 1"))));
        Assert.Equal("1:1 not-utf8", YamlTexts.Places(YamlDocument.Read("f", (byte[])[0xFF, 0xFE, (byte)'a', 0])));
        Assert.Equal(
            "1:3 not-utf8", YamlTexts.Places(YamlDocument.Read("f", (byte[])[0xEF, 0xBB, 0xBF, (byte)'a', (byte)':', 0xE2, 0x82])));
    }

    [Fact]
    public void A_file_that_is_no_text_is_told_so_and_not_shown()
    {
        byte[] picture = [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, 0, 0, 0, 13];
        foreach (var bytes in new[] { picture, "%PDF-1.7\n1 0 obj"u8.ToArray(), new byte[5000] })
        {
            var reading = YamlDocument.Read("f", bytes);
            Assert.Equal("1:1 not-text", YamlTexts.Places(reading));
            Assert.Equal("", reading.Source.Text);
        }
    }

    [Fact]
    public void Lines_can_be_shown_one_by_one()
    {
        var source = new SourceLines("f", "one\r\ntwo\rthree\n");
        Assert.Equal(4, source.Count);
        Assert.Equal("one|two|three|", string.Join("|", Enumerable.Range(1, 4).Select(n => source[n].ToString())));
        Assert.Equal(new SourcePosition("f", 3, 6), source.End);
        Assert.Equal(source.End, source.At(9, 1));
        Assert.Equal(new SourcePosition("f", 2, 4), source.At(2, 99));
    }
}
