using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace BendSheet.Sheets.Tests;

/// <summary>The structure of a PDF as an independent reader finds it: what would be read out, in its order.</summary>
/// <param name="Type">Structure type (ISO 32000-1, 14.8.4).</param>
/// <param name="Text">Its own text, not that of its parts.</param>
/// <param name="Alternative">Its alternative text; null where it has none.</param>
/// <param name="Scope">Of a head cell.</param>
/// <param name="Parts">In reading order.</param>
internal sealed record ReadOut(string Type, string Text, string? Alternative, string? Scope, IReadOnlyList<ReadOut> Parts)
{
    /// <summary>The document's one root.</summary>
    public static ReadOut Of(PdfDocument document)
    {
        var catalog = document.Structure.Catalog.CatalogDictionary;
        var pageNumbers = new Dictionary<long, int>();
        foreach (var page in Entry<ArrayToken>(document, Entry<DictionaryToken>(document, catalog, "Pages")!, "Kids")!.Data
            .OfType<IndirectReferenceToken>())
        {
            pageNumbers.Add(page.Data.ObjectNumber, pageNumbers.Count + 1);
        }

        var texts = new Dictionary<(int Page, int Id), string>();
        foreach (var page in document.GetPages())
        {
            foreach (var marked in page.GetMarkedContents().Where(marked => !marked.IsArtifact))
            {
                texts.Add((page.Number, marked.MarkedContentIdentifier), TextOf(marked));
            }
        }

        var root = Entry<DictionaryToken>(document, Entry<DictionaryToken>(document, catalog, "StructTreeRoot")!, "K")!;
        return Read(document, root, texts, pageNumbers);
    }

    /// <summary>This and all that is below it, in reading order.</summary>
    public IEnumerable<ReadOut> All => [this, .. Parts.SelectMany(part => part.All)];

    /// <summary>All text below it, without blanks.</summary>
    public string Words => Printed.WithoutBlanks(string.Concat(All.Select(part => part.Text)));

    private static string TextOf(MarkedContentElement marked) => string.Concat(marked.Letters.Select(letter => letter.Value));

    private static ReadOut Read(
        PdfDocument document, DictionaryToken element, Dictionary<(int, int), string> texts, Dictionary<long, int> pageNumbers)
    {
        var text = new StringBuilder();
        var parts = new List<ReadOut>();
        foreach (var kid in Kids(document, element))
        {
            switch (Resolved(document, kid))
            {
                case NumericToken id:
                    text.Append(texts.GetValueOrDefault((PageOf(element), id.Int), string.Empty));
                    break;
                case DictionaryToken further when further.TryGet(NameToken.Create("MCID"), out NumericToken id):
                    text.Append(texts.GetValueOrDefault((PageOf(further), id.Int), string.Empty));
                    break;
                case DictionaryToken part:
                    parts.Add(Read(document, part, texts, pageNumbers));
                    break;
                default:
                    Assert.Fail($"{kid} is no part of a structure");
                    break;
            }
        }

        var attributes = Entry<DictionaryToken>(document, element, "A");
        return new(
            Entry<NameToken>(document, element, "S")!.Data,
            text.ToString(),
            Entry<HexToken>(document, element, "Alt") is { } hex
                ? TextOf([.. hex.Bytes])
                : null,
            attributes is null ? null : Entry<NameToken>(document, attributes, "Scope")?.Data,
            parts);

        int PageOf(DictionaryToken of) =>
            of.TryGet(NameToken.Create("Pg"), out IndirectReferenceToken page) ? pageNumbers[page.Data.ObjectNumber] : 0;
    }

    private static IReadOnlyList<IToken> Kids(PdfDocument document, DictionaryToken element) =>
        !element.TryGet(NameToken.Create("K"), out var kids) ? []
        : Resolved(document, kids) is ArrayToken array ? array.Data : [kids];

    private static IToken Resolved(PdfDocument document, IToken token) =>
        token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;

    private static T? Entry<T>(PdfDocument document, DictionaryToken dictionary, string key)
        where T : class, IToken => dictionary.TryGet(NameToken.Create(key), out var value) ? Resolved(document, value) as T : null;

    /// <summary>UTF-16 behind its mark, or else PDFDocEncoding (ISO 32000-1, 7.9.2.2), which is Latin-1 where these texts are.</summary>
    private static string TextOf(byte[] bytes) =>
        bytes is [0xFE, 0xFF, ..] ? Encoding.BigEndianUnicode.GetString(bytes[2..]) : Encoding.Latin1.GetString(bytes);
}
