using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace BendSheet.Sheets.Pdf;

/// <summary>
/// The structure of a document (ISO 32000-1, 14.7 and 14.8): what is read out in which order, that is the order of drawing, and as what. Lists
/// and tables go on over pages. No conformance is claimed with it.
/// </summary>
internal sealed class ReadingOrder
{
    private readonly UAManager _manager;
    private readonly StructureBuilder _builder;
    private string? _group;
    private Role? _open;
    private bool _decorating;
    private bool _pageHasContent;
    private Page? _page;

    /// <param name="document">Without a page yet.</param>
    public ReadingOrder(PdfDocument document)
    {
        _manager = UAManager.ForDocument(document);
        _builder = _manager.StructureBuilder;
        document.Language = "en"; // the manager has set its own
    }

    /// <summary>Begins what stands for itself: a line's sheet. Between its pages it goes on.</summary>
    public void BeginPart() => _builder.BeginElement(PdfGroupingElementTag.Section);

    /// <summary>Ends it.</summary>
    public void EndPart()
    {
        CloseGroup(null);
        _builder.End();
    }

    /// <summary>To be called for each page before anything is drawn on it.</summary>
    /// <param name="graphics">The page, in millimetres.</param>
    /// <param name="size">Of the page.</param>
    /// <param name="mirrored">Drawn the wrong way round.</param>
    public void BeginPage(XGraphics graphics, PaperSize size, bool mirrored)
    {
        graphics.Restore(graphics.Save()); // writes the page's own transformation now, not inside the first marked content
        _page = new(graphics, size, mirrored);
        _pageHasContent = false;
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
        if (_decorating || role == Role.Nothing)
        {
            draw();
        }
        else if (continues && _open == role)
        {
            BeginContent(); // it may go on at the top of a page
            draw();
        }
        else if (role == Role.Decoration)
        {
            EndContent();
            _builder.BeginArtifact();
            _decorating = true;
            draw();
            _manager.BeginGraphicMode();
            _builder.End();
            _decorating = false;
        }
        else if (role is Role.Cell or Role.ColumnHead or Role.RowHead)
        {
            DrawCell(role, draw);
        }
        else
        {
            Open(role, alternative, box);
            draw();
        }
    }

    private void DrawCell(Role role, Action draw)
    {
        EndContent();
        _builder.BeginElement(role == Role.Cell ? PdfBlockLevelElementTag.TableDataCell : PdfBlockLevelElementTag.TableHeaderCell);
        if (role != Role.Cell)
        {
            _builder.CurrentStructureElement.TableAttributes.Elements.SetName("/Scope", role == Role.RowHead ? "/Row" : "/Column");
        }

        BeginContent();
        draw();
        EndContent();
        _builder.End();
    }

    /// <summary>It stays open, so that what continues it can go on in it, until the next one.</summary>
    private void Open(Role role, string? alternative, XRect box)
    {
        EndContent();
        CloseGroup(role switch { Role.ListItem => "L", Role.Row => "Table", _ => null });
        switch (role)
        {
            case Role.Title:
                _builder.BeginElement(PdfBlockLevelElementTag.Heading1);
                break;
            case Role.Heading:
                _builder.BeginElement(PdfBlockLevelElementTag.Heading2);
                break;
            case Role.ListItem:
                _builder.BeginElement(PdfBlockLevelElementTag.ListItem);
                _builder.BeginElement(PdfBlockLevelElementTag.ListBody);
                break;
            case Role.Row:
                _builder.BeginElement(PdfBlockLevelElementTag.TableRow);
                break;
            case Role.Figure:
                _builder.BeginElement(PdfIllustrationElementTag.Figure, alternative ?? string.Empty, _page!.OnPaper(box));
                break;
            default:
                _builder.BeginElement(PdfBlockLevelElementTag.Paragraph);
                break;
        }

        _open = role;
        if (role != Role.Row)
        {
            BeginContent();
        }
    }

    /// <summary>
    /// PDFsharp begins the first marked content of a page inside a text object, and all others outside. What crosses the ends of a text object is
    /// wrong (ISO 32000-1, 14.6.1), so the first one holds a blank and nothing else.
    /// </summary>
    private void BeginContent()
    {
        if (!_pageHasContent)
        {
            _page!.DrawBlank();
            _builder.EndMarkedContentsWithId();
            _manager.BeginGraphicMode();
            _pageHasContent = true;
        }
    }

    /// <summary>The text object inside the marked content ends first.</summary>
    private void EndContent()
    {
        _manager.BeginGraphicMode();
        _builder.EndMarkedContentsWithId();
    }

    /// <summary>Ends what is open, and the list or table around it unless the next one belongs to that too.</summary>
    private void CloseGroup(string? next)
    {
        if (_open is { } open)
        {
            _builder.End();
            if (open == Role.ListItem)
            {
                _builder.End();
            }

            _open = null;
        }

        if (string.Equals(_group, next, StringComparison.Ordinal))
        {
            return;
        }

        if (_group is not null)
        {
            _builder.End();
        }

        if (next is not null)
        {
            _builder.BeginBlockLevelElement(next);
        }

        _group = next;
    }

    private sealed record Page(XGraphics Graphics, PaperSize Size, bool Mirrored)
    {
        private const double PointsPerMillimetre = 72 / 25.4;

        /// <summary>In points from the lower left corner.</summary>
        public XRect OnPaper(XRect box)
        {
            var left = Mirrored ? Size.WidthMm - box.Right : box.Left;
            return new(
                Rounded(left), Rounded(Size.HeightMm - box.Bottom), Rounded(box.Width), Rounded(box.Height));
        }

        public void DrawBlank() => Graphics.DrawString(" ", Fonts.Typeface.Inter.Font(3), XBrushes.Black, 12, 14);

        private static double Rounded(double millimetres) => Math.Round(millimetres * PointsPerMillimetre, 2);
    }
}
