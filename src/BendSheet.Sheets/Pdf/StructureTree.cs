using System.Globalization;
using System.Text;

namespace BendSheet.Sheets.Pdf;

/// <summary>
/// The structure of a document (ISO 32000-1, 14.7): elements in reading order, and which marked content of which page each has. PDFsharp can
/// build one as well, but takes as long for it as for the pages.
/// </summary>
internal sealed class StructureTree
{
    private readonly List<Element> _elements = [];
    private readonly List<List<Element>> _contents = [];

    public StructureTree()
    {
        Root = new("Document", null, 0);
        _elements.Add(Root);
    }

    /// <summary>The one element that holds all others.</summary>
    public Element Root { get; }

    /// <summary>How many objects it takes in a file, without its root object.</summary>
    public int Count => _elements.Count;

    /// <summary>A page begins; contents that are added lie on it.</summary>
    /// <returns>Its key in the tree of parents.</returns>
    public int AddPage()
    {
        _contents.Add([]);
        return _contents.Count - 1;
    }

    /// <summary>A new last part of an element.</summary>
    public Element Add(string type, Element parent)
    {
        var element = new Element(type, parent, _elements.Count);
        parent.Kids.Add((element, 0, 0));
        _elements.Add(element);
        return element;
    }

    /// <summary>New marked content of an element on the last page.</summary>
    /// <returns>Its number on the page.</returns>
    public int AddContent(Element element)
    {
        var contents = _contents[^1];
        element.Kids.Add((null, _contents.Count - 1, contents.Count));
        contents.Add(element);
        return contents.Count - 1;
    }

    /// <summary>The body of the root object.</summary>
    /// <param name="first">Object number of the first element; the others follow it.</param>
    public byte[] RootBody(int first)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<</Type/StructTreeRoot/K {first} 0 R/ParentTreeNextKey {_contents.Count}/ParentTree<</Nums[");
        for (var page = 0; page < _contents.Count; page++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{page}[");
            foreach (var element in _contents[page])
            {
                text.Append(CultureInfo.InvariantCulture, $"{first + element.Index} 0 R ");
            }

            text.Append(']');
        }

        return Encoding.ASCII.GetBytes(text.Append("]>>>>").ToString());
    }

    /// <summary>The bodies of the elements' objects, in the order of their numbers.</summary>
    /// <param name="first">Object number of the first.</param>
    /// <param name="root">Object number of the root object.</param>
    /// <param name="pages">Object numbers of the pages.</param>
    public IEnumerable<byte[]> Bodies(int first, int root, IReadOnlyList<int> pages)
    {
        var text = new StringBuilder();
        foreach (var element in _elements)
        {
            text.Clear();
            text.Append(CultureInfo.InvariantCulture, $"<</S/{element.Type}/P {(element.Parent is { } parent ? first + parent.Index : root)} 0 R");
            AppendKids(text, element, first, pages);
            if (element.Attributes is { } attributes)
            {
                text.Append("/A<<").Append(attributes).Append(">>");
            }

            if (element.Alternative is { } alternative)
            {
                text.Append("/Alt<FEFF").Append(Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(alternative))).Append('>');
            }

            yield return Encoding.ASCII.GetBytes(text.Append(">>").ToString());
        }
    }

    private static void AppendKids(StringBuilder text, Element element, int first, IReadOnlyList<int> pages)
    {
        var kids = element.Kids;
        var own = kids.FindIndex(kid => kid.Element is null);
        var page = own < 0 ? -1 : kids[own].Page;
        if (page >= 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"/Pg {pages[page]} 0 R");
        }

        if (kids.Count == 0)
        {
            return;
        }

        text.Append("/K[");
        foreach (var kid in kids)
        {
            _ = kid switch
            {
                { Element: { } part } => text.Append(CultureInfo.InvariantCulture, $"{first + part.Index} 0 R "),
                _ when kid.Page == page => text.Append(CultureInfo.InvariantCulture, $"{kid.Content} "),
                _ => text.Append(CultureInfo.InvariantCulture, $"<</Type/MCR/Pg {pages[kid.Page]} 0 R/MCID {kid.Content}>>"),
            };
        }

        text.Append(']');
    }

    /// <summary>A structure element.</summary>
    /// <param name="type">A standard structure type (ISO 32000-1, 14.8.4).</param>
    /// <param name="parent">Null for the root.</param>
    /// <param name="index">In the order of beginning.</param>
    internal sealed class Element(string type, Element? parent, int index)
    {
        public string Type => type;

        public Element? Parent => parent;

        public int Index => index;

        /// <summary>Parts, and contents with the index of their page and their number on it.</summary>
        public List<(Element? Element, int Page, int Content)> Kids { get; } = [];

        /// <summary>What stands in its attribute dictionary, as written in the file.</summary>
        public string? Attributes { get; set; }

        /// <summary>For who does not see it. Any text.</summary>
        public string? Alternative { get; set; }
    }
}
