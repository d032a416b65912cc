using Clomwright.Evidence;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>The state of an open house, or one sentence why there is none; neither where the house is what the page shows.</summary>
public sealed record HouseAnswer(HouseState? State, string? Trouble)
{
    /// <summary>The page shows this house, as it is, already.</summary>
    public static HouseAnswer AsShown { get; } = new(null, null);
}

/// <summary>An open house as the page shows it.</summary>
public sealed record HouseState
{
    /// <summary>The key in addresses.</summary>
    public required string Key { get; init; }

    /// <summary>The author's name for it.</summary>
    public required string Name { get; init; }

    /// <summary>The file in the folder.</summary>
    public required string File { get; init; }

    /// <summary>Grows with every change.</summary>
    public required long Revision { get; init; }

    /// <summary>The file says what is shown.</summary>
    public required bool Saved { get; init; }

    /// <summary>Whether it is saved, in words.</summary>
    public required string SavedLine { get; init; }

    /// <summary>Saving was refused because another program changed the file meanwhile.</summary>
    public required bool FileDiffers { get; init; }

    /// <summary>Something can be taken back.</summary>
    public required bool CanUndo { get; init; }

    /// <summary>Something taken back can be put again.</summary>
    public required bool CanRedo { get; init; }

    /// <summary>Why the change just asked for was not made, if it was not.</summary>
    public required ChangeRefusal? Refusal { get; init; }

    /// <summary>The wall; null when something else is looked at.</summary>
    public required Scene? Scene { get; init; }

    /// <summary>The roof; null when something else is looked at.</summary>
    public required RoofScene? Roof { get; init; }

    /// <summary>The earth; null when something else is looked at.</summary>
    public required EarthScene? Earth { get; init; }

    /// <summary>Who works; null when something else is looked at.</summary>
    public required DaysScene? Days { get; init; }

    /// <summary>Warmth, damp and sun; null when something else is looked at.</summary>
    public required ComfortScene? Comfort { get; init; }

    /// <summary>The plan, what lies under the wall, and the rules; null when something else is looked at.</summary>
    public required GroundScene? Ground { get; init; }
}

/// <summary>Why a change was not made.</summary>
public sealed record ChangeRefusal(string? Opening, OpeningField? Field, RoofKnob? Knob, string? Blank, string Sentence)
{
    /// <summary>Of a row of blanks written together, the one it is about, kebab case; null for all of them.</summary>
    public string? Within { get; init; }

    /// <summary>Why a change was not made; it belongs to the blank that asked for it.</summary>
    /// <param name="change">What was asked.</param>
    /// <param name="reason">Why it was not done.</param>
    /// <param name="sentence">The same in words.</param>
    public static ChangeRefusal Of(Change change, Message reason, string sentence) => new(
        (change as Change.OfOpening)?.Opening, (change as Change.Write)?.Field, (change as Change.OfRoof)?.Knob, (change as Change.OfBlank)?.Blank, sentence) { Within = change is Change.AddPart or Change.AddTest ? WithinOf(reason) : null };

    /// <summary>Why something was not done that is no change of the house.</summary>
    public static ChangeRefusal Of(string sentence) => new(null, null, null, null, sentence);

    /// <summary>A reason that begins with what a blank is called: the words of a blank end in its name.</summary>
    private static string? WithinOf(Message reason) =>
        reason is { Key: "files.in-place" or "web.earth.in-blank", Arguments: [{ Value: Argument.Nested(var called) }, ..] } ? called.Key[(called.Key.LastIndexOf('.') + 1)..] : null;
}
