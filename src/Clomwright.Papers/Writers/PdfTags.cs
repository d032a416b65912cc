using System.Globalization;
using System.Text;
using Clomwright.Papers.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using PdfSharp.UniversalAccessibility;

namespace Clomwright.Papers.Writers;

/// <summary>The tree of what a PDF holds, for readers that speak or reflow (ISO 32000-1, 14.7 and 14.8): a section for each sheet, in it headings, paragraphs, tables and figures told in words.</summary>
internal sealed class PdfTags
{
    private readonly PdfDocument document;
    private readonly PdfDictionary root, whole;
    private readonly PdfArray sections, places;
    private int pages;

    public PdfTags(PdfDocument document)
    {
        this.document = document;
        root = Added();
        whole = Added();
        (sections, places) = (new PdfArray(document), new PdfArray(document));
        root.Elements.SetName("/Type", "/StructTreeRoot");
        root.Elements.SetReference("/K", whole);
        var tree = Added();
        tree.Elements["/Nums"] = places;
        root.Elements.SetReference("/ParentTree", tree);
        Name(whole, "Document", root);
        whole.Elements["/K"] = sections;
        document.Internals.Catalog.Elements.SetReference("/StructTreeRoot", root);
        var marked = new PdfDictionary(document);
        marked.Elements.SetBoolean("/Marked", true);
        document.Internals.Catalog.Elements["/MarkInfo"] = marked;
    }

    /// <summary>Begins a page, which is a section of its own.</summary>
    public Page Begin(PdfPage page, XGraphics graphics, string title)
    {
        var section = Added();
        Name(section, "Sect", whole);
        section.Elements.SetString("/T", title);
        sections.Elements.Add(section.Reference!);
        page.Elements.SetInteger("/StructParents", pages);
        var held = new PdfArray(document);
        places.Elements.Add(new PdfInteger(pages));
        places.Elements.Add(held);
        pages++;
        root.Elements.SetInteger("/ParentTreeNextKey", pages);
        return new Page(this, page, graphics, section, held);
    }

    private PdfDictionary Added()
    {
        var element = new PdfDictionary(document);
        document.Internals.AddObject(element);
        return element;
    }

    private static void Name(PdfDictionary element, string kind, PdfDictionary parent)
    {
        element.Elements.SetName("/S", "/" + kind);
        element.Elements.SetReference("/P", parent);
    }

    /// <summary>What is marked on one page.</summary>
    internal sealed class Page
    {
        private readonly PdfTags tags;
        private readonly PdfPage page;
        private readonly XGraphics graphics;
        private readonly PdfArray held;
        private readonly Stack<Node> nodes = [];

        /// <summary>What the marks that are now written belong to; null before the first.</summary>
        private Node? open;

        public Page(PdfTags tags, PdfPage page, XGraphics graphics, PdfDictionary section, PdfArray held)
        {
            (this.tags, this.page, this.graphics, this.held) = (tags, page, graphics, held);
            nodes.Push(new Node(section, "Sect", false));
        }

        /// <summary>What follows is part of a told thing.</summary>
        public void Enter(Telling telling, string words)
        {
            var (above, kind) = (nodes.Peek(), Kind(telling));
            if (above.Figure)
            {
                nodes.Push(above);
                return;
            }

            var element = tags.Added();
            Name(element, kind, above.Element!);
            Add(above.Element!, element.Reference!);
            if (telling == Telling.Figure)
            {
                element.Elements.SetString("/Alt", words);
            }

            nodes.Push(new Node(element, kind, telling == Telling.Figure));
        }

        /// <summary>What is written is part of a figure, or ornament.</summary>
        public bool IsFigure => nodes.Peek().Figure || nodes.Count == 1;

        /// <summary>The told thing ends.</summary>
        public void Leave() => nodes.Pop();

        /// <summary>Text or lines follow: text belongs to what is told, lines only to a figure; all else is ornament.</summary>
        public void Next(bool text)
        {
            var node = nodes.Peek();
            var target = node.Figure || (text && nodes.Count > 1) ? node : Node.Ornament;
            if (ReferenceEquals(target, open))
            {
                return;
            }

            End();
            open = target;
            if (target.Element is not { } element)
            {
                Content.Append("/Artifact BMC\n");
                return;
            }

            var place = held.Elements.Count;
            held.Elements.Add(element.Reference!);
            element.Elements.SetReference("/Pg", page);
            Add(element, new PdfInteger(place));
            Content.Append(CultureInfo.InvariantCulture, $"/{target.Kind}<</MCID {place}>>BDC\n");
        }

        /// <summary>Nothing more is written to this page.</summary>
        public void End()
        {
            // Text objects and marked content nest: the one ends before the other does.
            PdfRendererExtensions.BeginGraphicMode(graphics);
            if (open is not null)
            {
                Content.Append("EMC\n");
                open = null;
            }
        }

        /// <summary>The text of the page as far as it is written.</summary>
        private StringBuilder Content => graphics.Internals.ContentStringBuilder!;

        private void Add(PdfDictionary element, PdfItem kid)
        {
            switch (element.Elements["/K"])
            {
                case null:
                    element.Elements["/K"] = kid;
                    break;
                case PdfArray kids:
                    kids.Elements.Add(kid);
                    break;
                case var only:
                    element.Elements["/K"] = new PdfArray(tags.document, only, kid);
                    break;
            }
        }

        private static string Kind(Telling telling) => telling switch
        {
            Telling.Title => "H1",
            Telling.Heading => "H2",
            Telling.Figure => "Figure",
            Telling.Table => "Table",
            Telling.Row => "TR",
            Telling.Head => "TH",
            Telling.Cell => "TD",
            _ => "P",
        };

        /// <summary>An element that is being written, or ornament, which is none.</summary>
        private sealed record Node(PdfDictionary? Element, string Kind, bool Figure)
        {
            public static Node Ornament { get; } = new(null, "Artifact", false);

            public bool Equals(Node? other) => ReferenceEquals(this, other);

            public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
        }
    }
}
