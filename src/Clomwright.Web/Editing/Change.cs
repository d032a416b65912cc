using System.Text.Json.Serialization;

namespace Clomwright.Web.Editing;

/// <summary>What the page may ask to be changed.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(Move), "move")]
[JsonDerivedType(typeof(Nudge), "nudge")]
[JsonDerivedType(typeof(Write), "write")]
[JsonDerivedType(typeof(TakeWay), "take-way")]
[JsonDerivedType(typeof(Turn), "turn")]
[JsonDerivedType(typeof(Step), "step")]
[JsonDerivedType(typeof(Set), "set")]
[JsonDerivedType(typeof(Enter), "enter")]
[JsonDerivedType(typeof(AddTest), "add-test")]
[JsonDerivedType(typeof(RemoveTest), "remove-test")]
[JsonDerivedType(typeof(AddPart), "add-part")]
[JsonDerivedType(typeof(TakeOut), "take-out")]
[JsonDerivedType(typeof(Shift), "shift")]
[JsonDerivedType(typeof(MovePoint), "move-point")]
[JsonDerivedType(typeof(NudgePoint), "nudge-point")]
[JsonDerivedType(typeof(AddPoint), "add-point")]
[JsonDerivedType(typeof(TakePointOut), "take-point-out")]
public abstract record Change
{
    /// <summary>One of many quick ones: an opening that somebody has in hand.</summary>
    internal bool ByHand => this is Move or Nudge;

    /// <summary>A change of one opening.</summary>
    /// <param name="Opening">Its name.</param>
    public abstract record OfOpening(string Opening) : Change;

    /// <summary>An opening dragged.</summary>
    /// <param name="Opening">Its name.</param>
    /// <param name="Station">Where it was dropped along the inside face, m; set on the builder's grid.</param>
    /// <param name="Sill">Where its sill was dropped, m; null leaves it.</param>
    public sealed record Move(string Opening, double Station, double? Sill) : OfOpening(Opening);

    /// <summary>An opening moved by the arrow keys.</summary>
    /// <param name="Opening">Its name.</param>
    /// <param name="Along">Steps clockwise.</param>
    /// <param name="Up">Steps up.</param>
    /// <param name="Large">Large steps.</param>
    public sealed record Nudge(string Opening, int Along, int Up, bool Large) : OfOpening(Opening);

    /// <summary>A length written in a blank.</summary>
    /// <param name="Opening">Its name.</param>
    /// <param name="Field">Which blank.</param>
    /// <param name="Text">As it was written.</param>
    public sealed record Write(string Opening, OpeningField Field, string Text) : OfOpening(Opening);

    /// <summary>One of the ways to go on with a frame that came in another size, as they were tried last.</summary>
    /// <param name="Opening">The opening it was for.</param>
    /// <param name="Way">Which way: asitcame, shift or sill.</param>
    public sealed record TakeWay(string Opening, string Way) : OfOpening(Opening);

    /// <summary>A change by one knob of the roof.</summary>
    /// <param name="Knob">Which.</param>
    public abstract record OfRoof(RoofKnob Knob) : Change;

    /// <summary>A knob pulled to a mark.</summary>
    /// <param name="Knob">Which.</param>
    /// <param name="At">The mark, counted in the knob's own steps.</param>
    public sealed record Turn(RoofKnob Knob, int At) : OfRoof(Knob);

    /// <summary>A knob stepped up or down from where it stands.</summary>
    /// <param name="Knob">Which.</param>
    /// <param name="Steps">How many of its steps.</param>
    public sealed record Step(RoofKnob Knob, int Steps) : OfRoof(Knob);

    /// <summary>A value written in a knob's blank.</summary>
    /// <param name="Knob">Which.</param>
    /// <param name="Text">As it was written.</param>
    public sealed record Set(RoofKnob Knob, string Text) : OfRoof(Knob);

    /// <summary>A change by a blank: of the earth, the crew, or any place of the house.</summary>
    /// <param name="Blank">Which blank is told if it cannot be.</param>
    public abstract record OfBlank(string Blank) : Change;

    /// <summary>A value written in a blank.</summary>
    /// <param name="Blank">Its address.</param>
    /// <param name="Text">As it was written; nothing empties a blank that may be empty.</param>
    public sealed record Enter(string Blank, string Text) : OfBlank(Blank);

    /// <summary>A test added.</summary>
    /// <param name="Test">Which kind.</param>
    /// <param name="Texts">What was written, by the name of the field.</param>
    /// <param name="Blank">Which row of blanks it was written in.</param>
    public sealed record AddTest(EarthTest Test, IReadOnlyDictionary<string, string> Texts, string Blank) : OfBlank(Blank);

    /// <summary>A test taken out.</summary>
    /// <param name="Test">Which kind.</param>
    /// <param name="Index">Its place in the house file, from 0.</param>
    /// <param name="Blank">Its row of blanks.</param>
    public sealed record RemoveTest(EarthTest Test, int Index, string Blank) : OfBlank(Blank);

    /// <summary>A change of a part of a form.</summary>
    /// <param name="Path">Which part or list, as in diagnostics.</param>
    /// <param name="Blank">Which part of the form is told if it cannot be.</param>
    public abstract record OfPart(string Path, string Blank) : OfBlank(Blank);

    /// <summary>A part added where there is none, or at the end of a list.</summary>
    /// <param name="Path">Which part or list, as in diagnostics.</param>
    /// <param name="Way">The word of its kind where there are several; otherwise empty.</param>
    /// <param name="Texts">What was written of it, by key; what is usual stands where nothing was.</param>
    /// <param name="Blank">Which part of the form is told if it cannot be.</param>
    public sealed record AddPart(string Path, string Way, IReadOnlyDictionary<string, string> Texts, string Blank) : OfPart(Path, Blank);

    /// <summary>A part taken out.</summary>
    /// <param name="Path">Which, as in diagnostics.</param>
    /// <param name="Blank">Which part of the form is told if it cannot be.</param>
    public sealed record TakeOut(string Path, string Blank) : OfPart(Path, Blank);

    /// <summary>One of a list put before or behind its neighbours.</summary>
    /// <param name="Path">Which, as in diagnostics.</param>
    /// <param name="By">How many places down the list.</param>
    /// <param name="Blank">Which part of the form is told if it cannot be.</param>
    public sealed record Shift(string Path, int By, string Blank) : OfPart(Path, Blank);

    /// <summary>A change of a plan that is drawn by points.</summary>
    /// <param name="Point">Which point, from 0.</param>
    public abstract record OfPoint(int Point) : OfBlank("house.plan.points");

    /// <summary>A point dragged.</summary>
    /// <param name="Point">Which.</param>
    /// <param name="East">Where it was dropped, m from the drawing's origin; set on the builder's grid.</param>
    /// <param name="North">The same.</param>
    public sealed record MovePoint(int Point, double East, double North) : OfPoint(Point);

    /// <summary>A point moved by the arrow keys.</summary>
    /// <param name="Point">Which.</param>
    /// <param name="East">Steps east.</param>
    /// <param name="North">Steps north.</param>
    /// <param name="Large">Large steps.</param>
    public sealed record NudgePoint(int Point, int East, int North, bool Large) : OfPoint(Point);

    /// <summary>A point put between one and the next.</summary>
    /// <param name="Point">Which.</param>
    public sealed record AddPoint(int Point) : OfPoint(Point);

    /// <summary>A point taken out.</summary>
    /// <param name="Point">Which.</param>
    public sealed record TakePointOut(int Point) : OfPoint(Point);
}

/// <summary>A test of the mix that the page adds and takes out.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<EarthTest>))]
public enum EarthTest
{
    /// <summary>A shrinkage bar.</summary>
    [JsonStringEnumMemberName("bar")]
    Bar,

    /// <summary>A compression specimen.</summary>
    [JsonStringEnumMemberName("prism")]
    Prism,

    /// <summary>A brick broken by bending.</summary>
    [JsonStringEnumMemberName("brick")]
    Brick,

    /// <summary>A brick dropped.</summary>
    [JsonStringEnumMemberName("drop")]
    Drop,

    /// <summary>A block weighed as it dries.</summary>
    [JsonStringEnumMemberName("block")]
    Block,
}

/// <summary>A blank of an opening's sentence.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<OpeningField>))]
public enum OpeningField
{
    /// <summary>Station of its middle.</summary>
    [JsonStringEnumMemberName("station")]
    Station,

    /// <summary>Rough sill.</summary>
    [JsonStringEnumMemberName("sill")]
    Sill,

    /// <summary>Rough width.</summary>
    [JsonStringEnumMemberName("width")]
    Width,

    /// <summary>Rough height.</summary>
    [JsonStringEnumMemberName("height")]
    Height,
}

/// <summary>A knob of the roof. Which of them a roof has depends on its kind.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<RoofKnob>))]
public enum RoofKnob
{
    /// <summary>How many poles.</summary>
    [JsonStringEnumMemberName("poles")]
    Poles,

    /// <summary>Diameter of a pole at its butt; the tip goes along while the pole is even.</summary>
    [JsonStringEnumMemberName("butt")]
    Butt,

    /// <summary>Diameter of a pole at its tip.</summary>
    [JsonStringEnumMemberName("tip")]
    Tip,

    /// <summary>Radius of the ring.</summary>
    [JsonStringEnumMemberName("ring")]
    Ring,

    /// <summary>Between rafters.</summary>
    [JsonStringEnumMemberName("spacing")]
    Spacing,

    /// <summary>Pitch, where it is chosen and does not follow from the poles.</summary>
    [JsonStringEnumMemberName("pitch")]
    Pitch,

    /// <summary>Overhang.</summary>
    [JsonStringEnumMemberName("eave")]
    Eave,

    /// <summary>Depth of the topmost layer.</summary>
    [JsonStringEnumMemberName("soil")]
    Soil,

    /// <summary>Bearing of the first pole, or of the fall.</summary>
    [JsonStringEnumMemberName("bearing")]
    Bearing,

    /// <summary>Which way a reciprocal frame turns.</summary>
    [JsonStringEnumMemberName("turn")]
    Turn,
}

/// <summary>What the page looks at: only that is written for it.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Sight>))]
public enum Sight
{
    /// <summary>The unrolled wall from inside.</summary>
    [JsonStringEnumMemberName("inside")]
    Inside,

    /// <summary>The unrolled wall from outside.</summary>
    [JsonStringEnumMemberName("outside")]
    Outside,

    /// <summary>The roof.</summary>
    [JsonStringEnumMemberName("roof")]
    Roof,

    /// <summary>The earth: jar, recipe and tests.</summary>
    [JsonStringEnumMemberName("earth")]
    Earth,

    /// <summary>The days of the job, with the wall that they raise.</summary>
    [JsonStringEnumMemberName("days")]
    Days,

    /// <summary>Warmth, damp and sun.</summary>
    [JsonStringEnumMemberName("comfort")]
    Comfort,

    /// <summary>The place, the plan, what lies under the wall, and the rules.</summary>
    [JsonStringEnumMemberName("ground")]
    Ground,
}
