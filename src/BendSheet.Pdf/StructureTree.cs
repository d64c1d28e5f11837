using System.Text;

namespace BendSheet.Pdf;

/// <summary>
/// The structure of a document (ISO 32000-1, 14.7), made of that of its parts. PDFsharp can build one as well, but takes as long for it as
/// for the pages.
/// </summary>
/// <param name="parts">In reading order.</param>
internal sealed class StructureTree(IReadOnlyList<StructurePart> parts)
{
    /// <summary>In a file, ordinarily, in bytes.</summary>
    public int ExpectedSize => 128 * parts.Sum(part => part.Elements.Count);

    /// <summary>The body of the root object.</summary>
    /// <param name="body">Where it goes.</param>
    /// <param name="first">Object number of the document's own element; those of the parts follow it.</param>
    public void WriteRoot(SyntaxWriter body, int first)
    {
        body.Raw("<</Type/StructTreeRoot/K "u8).Integer(first).Raw(" 0 R/ParentTreeNextKey "u8)
            .Integer(parts.Sum(part => part.Contents.Count))
            .Raw("/ParentTree<</Nums["u8);
        var page = 0;
        foreach (var (part, offset, _) in Placed(first))
        {
            foreach (var contents in part.Contents)
            {
                body.Integer(page++).Raw("["u8);
                foreach (var element in contents)
                {
                    body.Integer(offset + element.Index).Raw(" 0 R "u8);
                }

                body.Raw("]"u8);
            }
        }

        body.Raw("]>>>>"u8);
    }

    /// <summary>The objects of all elements.</summary>
    /// <param name="file">Where they go; they get the next numbers.</param>
    /// <param name="first">Object number of the first.</param>
    /// <param name="root">Object number of the root object.</param>
    /// <param name="pages">Object numbers of the pages.</param>
    public void WriteElements(ObjectWriter file, int first, int root, IReadOnlyList<int> pages)
    {
        var document = file.Begin(first).Raw("<</S/Document/P "u8).Integer(root).Raw(" 0 R/K["u8);
        foreach (var (_, offset, _) in Placed(first))
        {
            document.Integer(offset).Raw(" 0 R "u8);
        }

        document.Raw("]>>"u8);
        file.End();
        foreach (var (part, offset, firstPage) in Placed(first))
        {
            foreach (var element in part.Elements)
            {
                var body = file.Begin(offset + element.Index).Raw("<</S/"u8).Raw(element.Type)
                    .Raw("/P "u8).Integer(element.Parent is { } parent ? offset + parent.Index : first).Raw(" 0 R"u8);
                WriteKids(body, element, offset, firstPage, pages);
                if (element.Attributes is { } attributes)
                {
                    body.Raw("/A<<"u8).Raw(attributes).Raw(">>"u8);
                }

                if (element.Alternative is { } alternative)
                {
                    body.Raw("/Alt<"u8).Raw(Convert.ToHexString(Encoded(alternative))).Raw(">"u8);
                }

                body.Raw(">>"u8);
                file.End();
            }
        }
    }

    /// <summary>
    /// In PDFDocEncoding where that has all characters (ISO 32000-1, annex D.2: it is ASCII and most of Latin-1): it takes half as much as
    /// UTF-16.
    /// </summary>
    private static byte[] Encoded(string text) => text.All(character => character is (>= ' ' and <= '~') or (>= '\u00AE' and <= '\u00FF'))
        ? Encoding.Latin1.GetBytes(text)
        : [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)];

    private static void WriteKids(SyntaxWriter body, StructureElement element, int offset, int firstPage, IReadOnlyList<int> pages)
    {
        var kids = element.Kids;
        var own = kids.FindIndex(kid => kid.Element is null);
        var page = own < 0 ? -1 : kids[own].Page;
        if (page >= 0)
        {
            body.Raw("/Pg "u8).Integer(pages[firstPage + page]).Raw(" 0 R"u8);
        }

        if (kids.Count == 0)
        {
            return;
        }

        body.Raw("/K["u8);
        foreach (var kid in kids)
        {
            _ = kid switch
            {
                { Element: { } part } => body.Integer(offset + part.Index).Raw(" 0 R "u8),
                _ when kid.Page == page => body.Integer(kid.Content).Raw(" "u8),
                _ => body.Raw("<</Type/MCR/Pg "u8).Integer(pages[firstPage + kid.Page]).Raw(" 0 R/MCID "u8).Integer(kid.Content)
                    .Raw(">>"u8),
            };
        }

        body.Raw("]"u8);
    }

    /// <summary>Each part with the object number of its section and the index of its first page in the document.</summary>
    private IEnumerable<(StructurePart Part, int Offset, int FirstPage)> Placed(int first)
    {
        var (offset, page) = (first + 1, 0);
        foreach (var part in parts)
        {
            yield return (part, offset, page);
            offset += part.Elements.Count;
            page += part.Contents.Count;
        }
    }
}
