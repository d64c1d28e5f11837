using BendSheet.Sheets.Drawing;

namespace BendSheet.Pdf;

/// <summary>
/// What is read out of a part of a document, as what, and in which order: that of drawing (ISO 32000-1, 14.8). Lists and tables
/// go on over pages. No conformance is claimed with it.
/// </summary>
/// <param name="structure">Of a part that stands on its own, such as a line's sheet.</param>
internal sealed class ReadingOrder(StructurePart structure)
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

    private StructureElement? _group;
    private StructureElement? _open;
    private Role _openRole;
    private bool _inContent;
    private bool _decorating;
    private Page? _page;

    /// <summary>To be called for each page before anything is drawn on it.</summary>
    /// <param name="content">Of the page.</param>
    /// <param name="size">Of the page.</param>
    /// <param name="mirrored">Drawn the wrong way round.</param>
    public void BeginPage(SyntaxWriter content, PaperSize size, bool mirrored)
    {
        _page = new(content, size, mirrored);
        structure.AddPage();
    }

    /// <summary>To be called for each page when all has been drawn.</summary>
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
    public void Draw(Role role, Action draw, string? alternative = null, PageBox box = default, bool continues = false)
    {
        if (_decorating || role == Role.Nothing || (continues && _open is not null && _openRole == role))
        {
            draw();
        }
        else if (role == Role.Decoration)
        {
            EndContent();
            _page!.Content.Raw("/Artifact BMC\n"u8);
            _decorating = true;
            draw();
            _decorating = false;
            _page.Content.Raw("EMC\n"u8);
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
            _page!.Content.Raw("/"u8).Raw(_open.Type).Raw("<</MCID "u8).Integer(structure.AddContent(_open)).Raw(">>BDC\n"u8);
            _inContent = true;
        }
    }

    private void EndContent()
    {
        if (_inContent)
        {
            _page!.Content.Raw("EMC\n"u8);
            _inContent = false;
        }
    }

    private void DrawCell(Role role, Action draw)
    {
        EndContent();
        var row = _open!;
        _open = structure.Add(role == Role.Cell ? "TD" : "TH", row);
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

    /// <summary>Opens an element, which stays open until the next one, so that what continues it can go on in it.</summary>
    private void Open(Role role)
    {
        EndContent();
        var types = Types[role];
        if (types.Length == 1)
        {
            _group = null;
            _open = structure.Add(types[0]);
        }
        else
        {
            _group = string.Equals(_group?.Type, types[0], StringComparison.Ordinal) ? _group : structure.Add(types[0]);
            _open = types[1..].Aggregate(_group!, (parent, type) => structure.Add(type, parent));
        }

        _openRole = role;
    }

    private sealed record Page(SyntaxWriter Content, PaperSize Size, bool Mirrored)
    {
        private const double PointsPerMillimetre = 72 / 25.4;

        /// <summary>The attributes of a figure with its place in points from the lower left corner.</summary>
        public string Layout(PageBox box)
        {
            var left = Mirrored ? Size.WidthMm - box.Left - box.Width : box.Left;
            var bottom = Size.HeightMm - box.Top - box.Height;
            return FormattableString.Invariant(
                $"/O/Layout/BBox[{Points(left)} {Points(bottom)} {Points(left + box.Width)} {Points(bottom + box.Height)}]");
        }

        private static string Points(double millimetres) => FormattableString.Invariant($"{millimetres * PointsPerMillimetre:0.##}");
    }
}
