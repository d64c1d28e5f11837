using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>
/// Reads a typed file into a tree of texts, lists and maps that know where they stand. Whatever the bytes are, the answer is a
/// <see cref="YamlReading"/>: what cannot be read is a finding. Only the plain part of YAML is taken, the part that a person types at the
/// bench: no anchors, aliases, tags, directives or second documents.
/// </summary>
public static class YamlDocument
{
    /// <summary>Larger files are not looked at: 4 MiB is some 60,000 rows.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    /// <summary>Lists and maps inside one another.</summary>
    public const int DeepestNesting = 32;

    /// <summary>Texts, lists and maps in one file.</summary>
    public const int MostValues = 400_000;

    /// <summary>
    /// A text with slips in its layout is read again until so many characters were read: a hundred times what people type, and large files
    /// still end soon.
    /// </summary>
    private const int MostReadAgain = 1024 * 1024;

    /// <summary>Reading stops after this many mistakes.</summary>
    public const int MostFindings = 100;

    /// <summary>
    /// Reads at most <see cref="MostBytes"/> and one byte. What the stream throws (a disk that does not answer) passes through.
    /// </summary>
    /// <param name="fileName">As the findings shall name it.</param>
    /// <param name="content">Read from where it stands; not closed.</param>
    /// <param name="fileNumber">Which of several files it is: 0 for the one that was asked for.</param>
    public static YamlReading Read(string fileName, Stream content, int fileNumber = 0)
    {
        ArgumentNullException.ThrowIfNull(content);
        var buffer = new byte[64 * 1024];
        using var bytes = new MemoryStream();
        while (bytes.Length <= MostBytes)
        {
            var count = content.Read(buffer, 0, (int)Math.Min(buffer.Length, MostBytes + 1 - bytes.Length));
            if (count == 0)
            {
                break;
            }

            bytes.Write(buffer, 0, count);
        }

        return Read(fileName, bytes.GetBuffer().AsMemory(0, (int)bytes.Length), fileNumber);
    }

    /// <summary>Reads the bytes of a file.</summary>
    /// <param name="fileName">As the findings shall name it.</param>
    /// <param name="content">The whole file, with or without a byte order mark.</param>
    /// <param name="fileNumber">Which of several files it is: 0 for the one that was asked for.</param>
    public static YamlReading Read(string fileName, ReadOnlyMemory<byte> content, int fileNumber = 0)
    {
        if (content.Length > MostBytes)
        {
            var nothing = new SourceLines(fileName, "", fileNumber);
            return new YamlReading(null, nothing, [YamlRules.FileTooLarge.Error(nothing.At(1, 1),
                "this file is larger than 4 MiB, far more than anybody types: give the file in which the lines of tube are typed")]);
        }

        var (source, undecoded) = FileText.Decode(fileName, content.Span, fileNumber);
        if (undecoded is not null)
        {
            return new YamlReading(null, source, [undecoded]);
        }

        var findings = new List<Finding>();
        var text = new RepairedText(source, LineScan.Clean(source, findings));
        var hasTabs = findings.Exists(finding => finding.Rule == YamlRules.TabInIndent);
        if (hasTabs && text.Length <= MostReadAgain)
        {
            text.ReplaceTabs();
        }

        var root = hasTabs && text.Length > MostReadAgain ? null : Tree(text, findings, hasTabs);
        return new YamlReading(root, source, [.. findings.Distinct().InFileOrder()]);
    }

    /// <summary>
    /// Reads the text; where a slip in its layout stops the reading, the slip is reported, put right in the way that its finding says, and
    /// the text read again, so that it hides nothing after it.
    /// </summary>
    /// <param name="text">As it is to be read.</param>
    /// <param name="findings">Takes what is wrong with it.</param>
    /// <param name="hasTabs">Its indents are partly a guess: where they do not fit together, nothing is said of it.</param>
    private static YamlValue? Tree(RepairedText text, List<Finding> findings, bool hasTabs)
    {
        for (var read = text.Length; ; read += text.Length)
        {
            List<Finding> found = [];
            var tree = new YamlTree(text, found) { IsExplained = findings.Count > 0 };
            var root = tree.Build();
            if (hasTabs && tree.Broken?.Rule == YamlRules.UnevenIndent)
            {
                return null;
            }

            if (tree.Broken is not { } broken || findings.Count >= MostFindings || read > MostReadAgain || !text.TryRepair(broken))
            {
                findings.AddRange(found);
                return root;
            }

            // What else was found is found again.
            findings.Add(found[^1]);
        }
    }
}
