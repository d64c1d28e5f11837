namespace BendSheet.Pdf;

/// <summary>A structure element (ISO 32000-1, 14.7.2).</summary>
/// <param name="type">A standard structure type (ISO 32000-1, 14.8.4).</param>
/// <param name="parent">Null for the section that a part is.</param>
/// <param name="index">In the order of beginning, in its part.</param>
internal sealed class StructureElement(string type, StructureElement? parent, int index)
{
    public string Type => type;

    public StructureElement? Parent => parent;

    public int Index => index;

    /// <summary>Elements below it, and contents with the index of their page and their number on it.</summary>
    public List<(StructureElement? Element, int Page, int Content)> Kids { get; } = [];

    /// <summary>What stands in its attribute dictionary, as written in the file.</summary>
    public string? Attributes { get; set; }

    /// <summary>For somebody who does not see it. Any text.</summary>
    public string? Alternative { get; set; }
}

/// <summary>
/// The structure of a part of a document: its elements in reading order, and which marked content of which of its pages each has. The first
/// element is the part itself, a section.
/// </summary>
internal sealed class StructurePart
{
    private readonly List<StructureElement> _elements = [new("Sect", parent: null, 0)];
    private readonly List<List<StructureElement>> _contents = [];

    /// <summary>In reading order, the section first.</summary>
    public IReadOnlyList<StructureElement> Elements => _elements;

    /// <summary>For each page the element that each marked content belongs to.</summary>
    public IReadOnlyList<IReadOnlyList<StructureElement>> Contents => _contents;

    /// <summary>A page begins; contents that are added lie on it.</summary>
    public void AddPage() => _contents.Add([]);

    /// <summary>A new last part of an element.</summary>
    /// <param name="type">What it is.</param>
    /// <param name="parent">The element; the section where it is left out.</param>
    public StructureElement Add(string type, StructureElement? parent = null)
    {
        var element = new StructureElement(type, parent ?? _elements[0], _elements.Count);
        element.Parent!.Kids.Add((element, 0, 0));
        _elements.Add(element);
        return element;
    }

    /// <summary>New marked content of an element on the last page.</summary>
    /// <returns>Its number on the page.</returns>
    public int AddContent(StructureElement element)
    {
        var contents = _contents[^1];
        element.Kids.Add((null, _contents.Count - 1, contents.Count));
        contents.Add(element);
        return contents.Count - 1;
    }
}
