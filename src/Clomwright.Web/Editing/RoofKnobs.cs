using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>One knob as it stands on a roof: how far it turns, in its own steps, and what a turn writes.</summary>
internal sealed record StandingKnob
{
    /// <summary>Which.</summary>
    public required RoofKnob Key { get; init; }

    /// <summary>Where it stands, in steps; between two marks where the value is none of them.</summary>
    public required double Now { get; init; }

    /// <summary>The lowest mark of its tape.</summary>
    public required int Least { get; init; }

    /// <summary>The highest mark of its tape.</summary>
    public required int Most { get; init; }

    /// <summary>The value as a builder writes it.</summary>
    public required string Text { get; init; }

    /// <summary>What it turns, where the author named it.</summary>
    public string? Of { get; init; }

    /// <summary>The tape is a circle.</summary>
    public bool Round { get; init; }

    /// <summary>Words to choose from instead of a tape; empty for a tape.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>The edit that sets it on a mark.</summary>
    public required Func<int, Edit> At { get; init; }

    /// <summary>The edit that a written value asks for, or null and what is wrong with it.</summary>
    public required Func<string, (Edit? Edit, Message? Problem)> Written { get; init; }
}

/// <summary>The knobs of a roof, in the steps that a builder's tape is read in.</summary>
internal static class RoofKnobs
{
    private const int PolesLeast = 3;
    private const int PolesMost = 40;

    /// <summary>The knobs that this house's roof has; none without a roof.</summary>
    public static IReadOnlyList<StandingKnob> Of(House house)
    {
        if (house.Roof is not { } roof)
        {
            return [];
        }

        StandingKnob?[] all =
        [
            Count(roof), .. Poles(house.Units, roof), .. Own(house.Units, roof), Eave(house.Units, roof), Soil(house.Units, roof), Bearing(roof), Turning(roof),
        ];
        return [.. all.OfType<StandingKnob>()];
    }

    private static StandingKnob? Count(Roof roof) => roof switch
    {
        Roof.Reciprocal r => Counted(r.Poles, n => r with { Poles = n }),
        Roof.Radial r => Counted(r.Poles, n => r with { Poles = n }),
        _ => null,
    };

    private static IEnumerable<StandingKnob> Poles(UnitSystem units, Roof roof) => roof switch
    {
        Roof.Reciprocal r => Ends(units, r.Pole, pole => r with { Pole = pole }),
        Roof.Radial r => Ends(units, r.Pole, pole => r with { Pole = pole }),
        Roof.Shed r => Ends(units, r.Pole, pole => r with { Pole = pole }),
        Roof.Gable r => Ends(units, r.Pole, pole => r with { Pole = pole }),
        _ => [],
    };

    private static IEnumerable<StandingKnob> Own(UnitSystem units, Roof roof) => roof switch
    {
        Roof.Reciprocal r => [Ring(units, r.RingRadius, to => r with { RingRadius = to })],
        Roof.Radial { CentrePost: true } r => [Pitched(units, r.Pitch, to => r with { Pitch = to })],
        Roof.Radial r => [Ring(units, r.RingRadius, to => r with { RingRadius = to }), Pitched(units, r.Pitch, to => r with { Pitch = to })],
        Roof.Shed r => [Spaced(units, r.Spacing, to => r with { Spacing = to }), Pitched(units, r.Pitch, to => r with { Pitch = to })],
        Roof.Gable r => [Spaced(units, r.Spacing, to => r with { Spacing = to }), Pitched(units, r.Pitch, to => r with { Pitch = to })],
        _ => [],
    };

    private static StandingKnob Counted(int now, Func<int, Roof> to) => new()
    {
        Key = RoofKnob.Poles, Now = now, Least = PolesLeast, Most = PolesMost, Text = now.ToString(CultureInfo.InvariantCulture),
        At = n => new Edit.ChangeRoof(to(n)),
        Written = text => int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is >= PolesLeast and <= PolesMost
            ? (new Edit.ChangeRoof(to(n)), null)
            : (null, Message.Of("web.knob.not-poles", ("text", Shown(text)), ("least", PolesLeast), ("most", PolesMost))),
    };

    /// <summary>An even pole stays even when its butt is turned; a tip never grows past its butt.</summary>
    private static IEnumerable<StandingKnob> Ends(UnitSystem units, PoleSize pole, Func<PoleSize, Roof> to) =>
    [
        Tape(RoofKnob.Butt, units, pole.Butt, new(0.5, 1, 16), new(10, 30, 400), butt => to(new PoleSize(butt, pole.Butt == pole.Tip || pole.Tip > butt ? butt : pole.Tip))),
        Tape(RoofKnob.Tip, units, pole.Tip, new(0.5, 1, 16), new(10, 30, 400), tip => to(new PoleSize(tip > pole.Butt ? tip : pole.Butt, tip))),
    ];

    private static StandingKnob Ring(UnitSystem units, Length now, Func<Length, Roof> to) => Tape(RoofKnob.Ring, units, now, new(1, 4, 96), new(20, 100, 2400), to);

    private static StandingKnob Spaced(UnitSystem units, Length now, Func<Length, Roof> to) => Tape(RoofKnob.Spacing, units, now, new(1, 12, 120), new(20, 300, 3000), to);

    private static StandingKnob Eave(UnitSystem units, Roof roof) => Tape(RoofKnob.Eave, units, roof.Eave, new(1, 0, 72), new(20, 0, 1800), to => roof with { Eave = to });

    private static StandingKnob? Soil(UnitSystem units, Roof roof) => roof.Layers is not [.., var top] ? null
        : Tape(RoofKnob.Soil, units, top.Depth, new(0.5, 0.5, 16), new(10, 10, 400), to => roof with { Layers = roof.Layers.With(roof.Layers.Count - 1, top with { Depth = to }) }) with { Of = top.Name };

    private static StandingKnob Pitched(UnitSystem units, Slope now, Func<Slope, Roof> to)
    {
        // A quarter of an inch in a foot, or one per cent.
        var (steps, most) = units == UnitSystem.Imperial ? (48, 60) : (100, 120);
        return new()
        {
            Key = RoofKnob.Pitch, Now = now.RiseOverRun * steps, Least = 1, Most = Math.Max(most, (int)Math.Ceiling(Math.Min(now.RiseOverRun, 10) * steps)), Text = SlopeText.Written(now),
            At = mark => new Edit.ChangeRoof(to(new Slope((double)mark / steps))),
            Written = text => SlopeText.TryParse(text, out var slope, out var problem) ? (new Edit.ChangeRoof(to(slope)), null) : (null, problem),
        };
    }

    private static StandingKnob Bearing(Roof roof)
    {
        var now = roof.FirstBearing.Degrees;
        return new()
        {
            Key = RoofKnob.Bearing, Now = now, Least = 0, Most = 359, Round = true, Text = QuantityText.Written(roof.FirstBearing),
            At = degrees => new Edit.TurnRoof(new Angle(degrees - now)),
            Written = text => QuantityText.TryParse(Bare(text) ? $"{text} deg" : text, out Angle angle, out var problem) ? (new Edit.TurnRoof(new Angle(angle.Degrees - now)), null) : (null, problem),
        };

        static bool Bare(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
    }

    private static StandingKnob? Turning(Roof roof) => roof is not Roof.Reciprocal ring ? null : new()
    {
        Key = RoofKnob.Turn, Now = (int)ring.Turn, Least = 0, Most = 1, Round = true, Text = Word(ring.Turn), Choices = [.. Enum.GetValues<Turn>().Select(Word)],
        At = mark => new Edit.ChangeRoof(ring with { Turn = mark == 0 ? Turn.Clockwise : Turn.Anticlockwise }),
        Written = text => Enum.GetValues<Turn>().Where(turn => Word(turn) == text).Select(turn => (Edit)new Edit.ChangeRoof(ring with { Turn = turn })).FirstOrDefault() is { } edit
            ? (edit, null)
            : (null, Message.Of("web.knob.not-turn", ("text", Shown(text)))),
    };

    private static StandingKnob Tape(RoofKnob key, UnitSystem units, Length now, Marks inches, Marks millimetres, Func<Length, Roof> to)
    {
        var marks = units == UnitSystem.Imperial ? inches : millimetres;
        var unit = units == UnitSystem.Imperial ? Length.PerInch : Length.PerMillimetre;
        var step = (long)(marks.Step * unit);
        var at = (double)now.Nanometres / step;
        return new()
        {
            Key = key, Now = at, Least = (int)(marks.Least / marks.Step), Most = (int)Math.Max(marks.Most / marks.Step, Math.Ceiling(Math.Min(at, 1e6))),
            Text = LengthText.Written(now, units),
            At = mark => new Edit.ChangeRoof(to(new Length(step * mark))),
            Written = text => LengthText.TryParse(text, units == UnitSystem.Imperial ? Units.Inch : Units.Millimetre, out var length, out var problem)
                ? (new Edit.ChangeRoof(to(length)), null)
                : (null, problem),
        };
    }

    private static string Word(Turn turn) => turn == Turn.Clockwise ? "clockwise" : "anticlockwise";

    private static string Shown(string text) => text.Length <= 40 ? text : text[..40] + "…";

    /// <summary>Marks of a tape, in its own unit.</summary>
    private readonly record struct Marks(double Step, double Least, double Most);
}
