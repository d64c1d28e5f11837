using System.Text;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Tests.Yaml;

/// <summary>
/// Files made to hurt, as large as they may be: each gives its finding, and takes memory in proportion to its size. How long they take is
/// in the benchmarks, because a test must not look at the clock.
/// </summary>
public class HostileYamlTests
{
    /// <summary>What may be allocated for each byte of a file, of the reading; the worst takes less than 100.</summary>
    private const int MostForEachByte = 150;

    public static TheoryData<string, string> Repeated => new()
    {
        { "[", "nested-too-deep" },
        { "{a: ", "nested-too-deep" },
        { "- ", "nested-too-deep" },
        { "? ", "nested-too-deep" },
        { "[a: ", "nested-too-deep" },
        { " ", "file-empty" },
        { "\n", "file-empty" },
        { "#", "file-empty" },
        { "#\n", "file-empty" },
        { "\t", "file-empty" },
        { "\u0001", "not-text" },
        { "\u0085", "control-character" },
        { "%\n", "directive" },
        { "\ta\n", "tab-in-indent" },
        { "\"", "text-after-quote" },
        { "\" ", "text-after-quote" },
        { "'x\n", "quote-not-closed" },
        { "{", "nested-too-deep" },
        { "a,", "(none)" },
        { "-", "(none)" },
        { "x", "(none)" },
        { "x\n", "(none)" },
        { "''", "(none)" },
        { "- 1\n", "too-many-values" },
        { "- {a: 1}\n", "too-many-values" },
        { "- &a 1\n", "too-many-mistakes" },
        { "- *a\n", "too-many-mistakes" },
        { "- !a 1\n", "too-many-mistakes" },
        { "a: 1\n", "too-many-mistakes" },
        { "---\n", "second-document" },
        { "a: ", "colon-twice" },
        { ":", "colon-twice" },
        { "}", "bracket-not-opened" },
        { ",", "stray-comma" },
        { "|\n", "(none)" },
        { "&", "anchor-or-alias" },
        { "*", "anchor-or-alias" },
        { "!", "tag" },
        { "@", "yaml-broken" },
    };

    public static TheoryData<string, string, string, string> Wrapped => new()
    {
        { "[", "1,", "]", "too-many-values" },
        { "{", "a: 1,", "}", "too-many-mistakes" },
        { "{", "a:1,", "}", "too-many-mistakes" },
        { "{", "1,5,", "}", "too-many-mistakes" },
        { "[", "[],", "]", "too-many-values" },
        { "[", "\n", "", "bracket-not-closed" },
        { "[", "\na", "", "bracket-not-closed" },
        { "{", "a ", "", "bracket-not-closed" },
        { "[", "''", "", "bracket-not-closed" },
        { "\"", "\n", "", "quote-not-closed" },
        { "\"", "\\", "", "quote-not-closed" },
        { "a: 1\n", "\n ", "b: 2", "uneven-indent" },
        { "a: |\n", " \n", "}", "bracket-not-opened" },
    };

    [Theory]
    [MemberData(nameof(Repeated))]
    public void Four_mebibytes_of_one_thing_end_in_their_finding(string piece, string rule) => EndsIn("", piece, "", rule);

    [Theory]
    [MemberData(nameof(Wrapped))]
    public void Four_mebibytes_between_two_brackets_end_in_their_finding(string first, string piece, string last, string rule) =>
        EndsIn(first, piece, last, rule);

    [Fact]
    public void A_hundred_thousand_brackets_are_too_deep()
    {
        var reading = YamlTexts.Read(new string('[', 100_000) + new string(']', 100_000));
        Assert.Equal("1:33 nested-too-deep", YamlTexts.Places(reading));
        Assert.Null(reading.Root);
    }

    [Fact]
    public void Thirty_two_levels_are_read()
    {
        Assert.Empty(YamlTexts.Read(new string('[', 32) + new string(']', 32)).Findings);
        Assert.Equal("1:33 nested-too-deep", YamlTexts.Places(YamlTexts.Read(new string('[', 33) + new string(']', 33))));
    }

    [Fact]
    public void A_bomb_of_aliases_does_not_go_off()
    {
        var bomb = new StringBuilder("a0: &a0 [x]\n");
        for (var i = 1; i < 30; i++)
        {
            bomb.Append(System.Globalization.CultureInfo.InvariantCulture,
                $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n");
        }

        var reading = YamlTexts.Read(bomb.ToString());
        Assert.Equal(YamlDocument.MostFindings + 1, reading.Findings.Count);
        Assert.Equal("too-many-mistakes", reading.Findings[^1].Rule.Name);
        Assert.Null(reading.Root);
    }

    [Fact]
    public void No_more_than_the_limit_is_read_from_the_disk()
    {
        using var endless = new EndlessStream();
        var reading = YamlDocument.Read("f", endless);
        Assert.Equal("1:1 file-too-large", YamlTexts.Places(reading));
        Assert.Equal(YamlDocument.MostBytes + 1, endless.Given);
    }

    [Fact]
    public void A_stream_that_gives_a_byte_at_a_time_is_read_to_its_end()
    {
        using var slow = new EndlessStream { Text = "a: 1\na: 2\n" };
        Assert.Equal("2:1 duplicate-word", YamlTexts.Places(YamlDocument.Read("f", slow)));
    }

    [Fact]
    public void Ten_thousand_lines_take_ten_times_the_memory_of_a_thousand()
    {
        Allocated(1_000);
        Assert.InRange((double)Allocated(10_000) / Allocated(1_000), 8, 12);
    }

    /// <summary>Bytes allocated while reading so many lines.</summary>
    private static long Allocated(int lines)
    {
        var typed = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(1, lines).Select(n =>
            FormattableString.Invariant($"l{n}: [{{straight: 120, bend: 45}}, {{straight: 80}}]\n"))));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var reading = YamlDocument.Read("f", typed);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Empty(reading.Findings);
        Assert.Equal(lines, ((YamlMap)reading.Root!).Entries.Count);
        return allocated;
    }

    private static void EndsIn(string first, string piece, string last, string rule)
    {
        var room = YamlDocument.MostBytes - Encoding.UTF8.GetByteCount(first + last);
        var typed = first + string.Concat(Enumerable.Repeat(piece, room / Encoding.UTF8.GetByteCount(piece))) + last;
        var before = GC.GetAllocatedBytesForCurrentThread();
        var reading = YamlTexts.Read(typed);
        Assert.InRange((GC.GetAllocatedBytesForCurrentThread() - before) / typed.Length, 0, MostForEachByte);
        Assert.Equal(rule, reading.Findings is [.., var final] ? final.Rule.Name : "(none)");
    }

    /// <summary>Without a text it never ends. Counts what was asked for.</summary>
    private sealed class EndlessStream : Stream
    {
        public string? Text { get; init; }

        public long Given { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => Given; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            if (Text is null)
            {
                buffer.AsSpan(offset, count).Fill((byte)'\n');
                Given += count;
                return count;
            }

            if (Given == Text.Length)
            {
                return 0;
            }

            buffer[offset] = (byte)Text[(int)Given++];
            return 1;
        }

        public override void Flush() => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
