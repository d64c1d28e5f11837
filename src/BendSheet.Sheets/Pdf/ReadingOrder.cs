using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace BendSheet.Sheets.Pdf;

/// <summary>
/// What is read out of a document in which order, that is the order of drawing, and as what (ISO 32000-1, 14.8). Lists and tables go on over
/// pages. No conformance is claimed with it.
/// </summary>
internal sealed class ReadingOrder
{
    private static readonly Dictionary<Role, string[]> Types = new()
    {
        [Role.Text] = ["P"],
        [Role.Title] = ["H1"],
        [Role.Heading] = ["H2"],
        [Role.ListItem] = ["L", "LI", "LBody"],
        [Role.Row] = ["Table", "TR"],
        [Role.Figure] = ["Figure"],
    };

    private StructureTree.Element _part;
    private StructureTree.Element? _group;
    private StructureTree.Element? _open;
    private Role _openRole;
    private bool _inContent;
    private bool _decorating;
    private Page? _page;

    /// <param name="document">Its catalogue gets what says that there is a structure.</param>
    public ReadingOrder(PdfDocument document)
    {
        _part = Tree.Root;
        document.Language = "en";
        var catalog = document.Internals.Catalog.Elements;
        var marked = new PdfDictionary(document);
        marked.Elements.SetBoolean("/Marked", true);
        catalog["/MarkInfo"] = marked;
        var root = new PdfDictionary(document);
        root.Elements.SetName("/Type", "/StructTreeRoot"); // the finishing pass writes it out
        document.Internals.AddObject(root);
        catalog["/StructTreeRoot"] = root.Reference;
    }

    /// <summary>What has been built so far.</summary>
    public StructureTree Tree { get; } = new();

    /// <summary>Begins what stands for itself: a line's sheet. Between its pages it goes on.</summary>
    public void BeginPart()
    {
        _part = Tree.Add("Sect", Tree.Root);
        _group = _open = null;
    }

    /// <summary>To be called for each page before anything is drawn on it.</summary>
    /// <param name="graphics">The page, in millimetres.</param>
    /// <param name="page">The same page.</param>
    /// <param name="size">Of the page.</param>
    /// <param name="mirrored">Drawn the wrong way round.</param>
    public void BeginPage(XGraphics graphics, PdfPage page, PaperSize size, bool mirrored)
    {
        graphics.Restore(graphics.Save()); // writes the page's own transformation now, not inside the first marked content
        _page = new(graphics, size, mirrored);
        page.Elements.SetInteger("/StructParents", Tree.AddPage());
    }

    /// <summary>To be called for each page while its graphics can still be drawn on.</summary>
    public void EndPage()
    {
        EndContent();
        _page = null;
    }

    /// <summary>Whatever is drawn has a role.</summary>
    /// <param name="role">What it is.</param>
    /// <param name="draw">Draws it.</param>
    /// <param name="alternative">Of a figure: what somebody needs to know who does not see it.</param>
    /// <param name="box">Of a figure, in millimetres on the page.</param>
    /// <param name="continues">The same paragraph or step as what was drawn before.</param>
    public void Draw(Role role, Action draw, string? alternative = null, XRect box = default, bool continues = false)
    {
        if (_decorating || role == Role.Nothing || (continues && _open is not null && _openRole == role))
        {
            draw();
        }
        else if (role == Role.Decoration)
        {
            EndContent();
            _page!.Mark("/Artifact BMC");
            _decorating = true;
            draw();
            _decorating = false;
            _page.Mark("EMC");
        }
        else if (role is Role.Cell or Role.ColumnHead or Role.RowHead)
        {
            DrawCell(role, draw);
        }
        else
        {
            Open(role);
            if (role == Role.Figure)
            {
                _open!.Alternative = alternative ?? string.Empty;
                _open.Attributes = _page!.Layout(box);
            }

            draw();
        }
    }

    /// <summary>To be called before ink comes on the page: what is empty gets no content.</summary>
    public void BeginContent()
    {
        if (!_inContent && !_decorating && _open is not null)
        {
            _page!.Mark(FormattableString.Invariant($"/{_open.Type}<</MCID {Tree.AddContent(_open)}>>BDC"));
            _inContent = true;
        }
    }

    private void EndContent()
    {
        if (_inContent)
        {
            _page!.Mark("EMC");
            _inContent = false;
        }
    }

    private void DrawCell(Role role, Action draw)
    {
        EndContent();
        var row = _open!;
        _open = Tree.Add(role == Role.Cell ? "TD" : "TH", row);
        _open.Attributes = role switch
        {
            Role.ColumnHead => "/O/Table/Scope/Column",
            Role.RowHead => "/O/Table/Scope/Row",
            _ => null,
        };
        draw();
        EndContent();
        _open = row;
    }

    /// <summary>It stays open, so that what continues it can go on in it, until the next one.</summary>
    private void Open(Role role)
    {
        EndContent();
        var types = Types[role];
        if (types.Length == 1)
        {
            _group = null;
            _open = Tree.Add(types[0], _part);
        }
        else
        {
            _group = string.Equals(_group?.Type, types[0], StringComparison.Ordinal) ? _group : Tree.Add(types[0], _part);
            _open = types[1..].Aggregate(_group!, (parent, type) => Tree.Add(type, parent));
        }

        _openRole = role;
    }

    private sealed record Page(XGraphics Graphics, PaperSize Size, bool Mirrored)
    {
        private const double PointsPerMillimetre = 72 / 25.4;

        /// <summary>
        /// Writes an operator as a comment, which is all that PDFsharp lets through; the finishing pass makes it one. It stands outside of text
        /// objects, whose ends marked content must not cross (ISO 32000-1, 14.6.1).
        /// </summary>
        public void Mark(string operation)
        {
            PdfRendererExtensions.BeginGraphicMode(Graphics);
            Graphics.WriteComment(MarkedOperators.Sign + operation);
        }

        /// <summary>The attributes of a figure with its place in points from the lower left corner.</summary>
        public string Layout(XRect box)
        {
            var left = Mirrored ? Size.WidthMm - box.Right : box.Left;
            var bottom = Size.HeightMm - box.Bottom;
            return FormattableString.Invariant(
                $"/O/Layout/BBox[{Points(left)} {Points(bottom)} {Points(left + box.Width)} {Points(bottom + box.Height)}]");
        }

        private static string Points(double millimetres) => FormattableString.Invariant($"{millimetres * PointsPerMillimetre:0.##}");
    }
}
