using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Json;
using Clomwright.Files.Migrations;
using Clomwright.Files.Shape;
using Clomwright.Files.Typing;

namespace Clomwright.Files;

/// <summary>A house file with its author's own text: spaces, order of keys, spelling of lengths. Immutable; a change makes a new one.</summary>
public sealed class HouseDocument
{
    private readonly Node root;
    private readonly IReadOnlySet<Node> leftOut;
    private readonly bool hasMark;

    private HouseDocument(string text, bool hasMark, Node root, IReadOnlySet<Node> leftOut, House? house)
    {
        Text = text;
        House = house;
        (this.hasMark, this.root, this.leftOut) = (hasMark, root, leftOut);
    }

    /// <summary>The text of the file.</summary>
    public string Text { get; }

    /// <summary>The house it describes, less what could not be read; null when too little could.</summary>
    public House? House { get; }

    /// <summary>The file's bytes: UTF-8, with a byte order mark if it came with one.</summary>
    public byte[] ToBytes() => FileText.Encode(Text, hasMark);

    /// <summary>A fresh document of a house.</summary>
    public static HouseDocument Of(House house) => Parse(HouseWriter.Write(house), false, house);

    /// <summary>Reads a house file. Never throws: what is wrong is said.</summary>
    public static HouseReading Read(ReadOnlySpan<byte> bytes)
    {
        var (text, hasMark, problem) = FileText.Decode(bytes);
        return text is null ? HouseReading.Refused(problem!) : Read(text, hasMark);
    }

    /// <summary>Reads the text of a house file. Never throws: what is wrong is said.</summary>
    public static HouseReading Read(string text) =>
        text.Length > FileText.SizeMost ? HouseReading.Refused(FileText.TooLarge(text.Length)) : Read(text, false);

    private static HouseReading Read(string text, bool hasMark)
    {
        try
        {
            text = MigrationSteps.Raise(text, MigrationSteps.All);
            var root = new JsonParser(text).Parse();
            if (root is not ObjectNode house)
            {
                return HouseReading.Refused(new Message("files.not-object"));
            }

            if (house.Find("format")?.Value is NumberNode { Value: > HouseShape.Format } format)
            {
                return HouseReading.Refused(Message.Of("files.format-newer", ("format", Amount.Number(format.Value)), ("newest", HouseShape.Format)));
            }

            return Understood(text, hasMark, root);
        }
        catch (JsonSyntaxException wrong)
        {
            var (line, column) = PositionOf(text, wrong.At);
            return HouseReading.Refused(Message.Of("files.at-line", ("line", line), ("column", column), ("what", Message.Of(wrong.Key, wrong.Arguments.ToArray()))));
        }
    }

    private static HouseReading Understood(string text, bool hasMark, Node root)
    {
        var reading = new Reading(text);
        var house = HouseShape.House.TryRead(root, KeyPath.Root, reading, out var read) ? read : null;
        var document = new HouseDocument(text, hasMark, root, reading.Dropped, house);
        var byItself = house is null ? [] : HouseDiagnostics.Of(house).Select(document.InFile);
        return new HouseReading(document, house, reading.Diagnostics.Concat(byItself).ToSequence());
    }

    /// <summary>The document of a changed house: only the lines of what changed differ, everything else stays byte for byte.</summary>
    /// <param name="changed">An edit of <see cref="House"/>.</param>
    /// <exception cref="InvalidOperationException">This document has no house.</exception>
    public HouseDocument With(House changed)
    {
        var house = House ?? throw new InvalidOperationException("A document without a house cannot be changed.");
        if (changed == house)
        {
            return this;
        }

        var text = new Patch(Text, leftOut).Of(root, HouseWriter.PieceOf(house), HouseWriter.PieceOf(changed));
        return Parse(text, hasMark, changed);
    }

    /// <summary>A text of our own making with the house that it was made from.</summary>
    private static HouseDocument Parse(string text, bool hasMark, House house)
    {
        var root = new JsonParser(text).Parse();
        var reading = new Reading(text);
        HouseShape.House.TryRead(root, KeyPath.Root, reading, out _);
        return new HouseDocument(text, hasMark, root, reading.Dropped, house);
    }

    /// <summary>The same diagnostic with the path as in the file: items that could not be read are counted too.</summary>
    /// <param name="ofHouse">A diagnostic of <see cref="House"/>.</param>
    public Diagnostic InFile(Diagnostic ofHouse)
    {
        if (leftOut.Count == 0)
        {
            return ofHouse;
        }

        var (node, path) = (root, KeyPath.Root);
        foreach (var step in PathStep.Of(ofHouse.Path))
        {
            if (step.Key is { } key)
            {
                (node, path) = ((node as ObjectNode)?.Find(key)?.Value, path[key]);
                continue;
            }

            var index = node is ArrayNode array ? Enumerable.Range(0, array.Items.Count).Where(i => !leftOut.Contains(array.Items[i])).Append(-1).Skip(step.Index).FirstOrDefault(-1) : -1;
            (node, path) = (index < 0 ? null : ((ArrayNode)node!).Items[index], path[index < 0 ? step.Index : index]);
        }

        return ofHouse with { Path = path.ToString() };
    }

    /// <summary>Where a path of the file stands, or the innermost part of it that does.</summary>
    /// <param name="path">As in a diagnostic of the file: <c>openings[2].width</c>.</param>
    public FilePosition PositionOf(string path)
    {
        var (node, at) = (root, root.Span.Start);
        foreach (var step in PathStep.Of(path))
        {
            switch (node)
            {
                case ObjectNode thing when step.Key is { } key && thing.Find(key) is { } member:
                    (node, at) = (member.Value, member.NameSpan.Start);
                    break;
                case ArrayNode list when step.Key is null && step.Index < list.Items.Count:
                    (node, at) = (list.Items[step.Index], list.Items[step.Index].Span.Start);
                    break;
                default:
                    return PositionOf(Text, at);
            }
        }

        return PositionOf(Text, at);
    }

    private static FilePosition PositionOf(string text, int at)
    {
        var before = text.AsSpan(0, Math.Min(at, text.Length));
        return new FilePosition(before.Count('\n') + 1, before.Length - before.LastIndexOf('\n'));
    }
}
