using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules.Tests;

/// <summary>The same house turned on its site, seen in a mirror, or under other names.</summary>
internal static class Moved
{
    /// <summary>Turned clockwise by a quarter as often as said; the zero mark turns with it.</summary>
    public static House Turned(House house, int quarters)
    {
        var by = 90.0 * quarters;
        return house with
        {
            Plan = Turned(house.Plan, quarters) with
            {
                Bearing = Plus(house.Plan.Bearing, by),
                ZeroBearing = Plus(house.Plan.ZeroBearing, by),
                Centre = house.Plan.Centre is { } centre ? Turned(centre, quarters) : null,
            },
            Openings = house.Openings.Select(o => o with { Along = Plus(o.Along, by) }).ToSequence(),
            Niches = house.Niches.Select(n => n with { Along = Plus(n.Along, by) }).ToSequence(),
            Embeds = house.Embeds.Select(e => e with { Along = Plus(e.Along, by) }).ToSequence(),
            Roof = house.Roof is null ? null : house.Roof with
            {
                FirstBearing = Plus(house.Roof.FirstBearing, by),
                Landings = house.Roof.Landings.Select(b => Plus(b, by)).ToSequence(),
            },
        };
    }

    /// <summary>East and west exchanged. Stations count the other way, so they are told anew from where things stand.</summary>
    public static House Mirrored(House house)
    {
        var geometry = FromBuilding.Of(house);
        var ring = geometry.Curve.Length;
        return house with
        {
            Plan = Mirrored(house.Plan) with
            {
                Bearing = Minus(house.Plan.Bearing),
                ZeroBearing = Minus(house.Plan.ZeroBearing),
                Centre = house.Plan.Centre is { } centre ? Mirrored(centre) : null,
            },
            Openings = house.Openings.Select(o => o with { Along = Minus(o.Along, ring) }).ToSequence(),
            Niches = house.Niches.Select(n => n with { Along = Minus(n.Along, ring) }).ToSequence(),
            Embeds = house.Embeds.Select((e, i) => e with { Along = Last(geometry, i) is { } station ? Along.At(Length.Nearest(geometry.Curve.Wrap(ring - station))) : Minus(e.Along, ring) }).ToSequence(),
            Roof = house.Roof switch
            {
                Roof.Reciprocal roof => Mirrored(roof with { Turn = roof.Turn == Turn.Clockwise ? Turn.Anticlockwise : Turn.Clockwise }),
                { } roof => Mirrored(roof),
                null => null,
            },
        };
    }

    /// <summary>Every name another one.</summary>
    public static House Renamed(House house) => house with
    {
        Id = "other", Name = "Other", Notes = null,
        Openings = house.Openings.Select((o, i) => o with { Name = $"hole-{i}" }).ToSequence(),
        Niches = house.Niches.Select((n, i) => n with { Name = $"recess-{i}" }).ToSequence(),
        Embeds = house.Embeds.Select((e, i) => e with { Name = $"thing-{i}" }).ToSequence(),
    };

    /// <summary>Station of the last of a row, counted on from any of it that could be placed.</summary>
    private static double? Last(HouseGeometry geometry, int embed) => geometry.Embeds.FirstOrDefault(e => e.Index == embed) is { } placed
        ? placed.Station + (placed.Embed.Count - Number(placed.Address)) * (placed.Embed.Spacing ?? Length.Zero).Metres
        : null;

    private static int Number(string address) => address.Split('#') is [_, var number] ? int.Parse(number) : 1;

    private static Plan Turned(Plan plan, int quarters) => plan is Plan.Path path ? path with { Points = path.Points.Select(p => Turned(p, quarters)).ToSequence() } : plan;

    private static Plan Mirrored(Plan plan) => plan is Plan.Path path ? path with { Points = path.Points.Reverse().Select(Mirrored).ToSequence() } : plan;

    private static Roof Mirrored(Roof roof) => roof with { FirstBearing = Minus(roof.FirstBearing), Landings = roof.Landings.Select(Minus).ToSequence() };

    private static PlanPosition Turned(PlanPosition p, int quarters) => quarters == 0 ? p : Turned(new PlanPosition(p.North, -p.East), quarters - 1);

    private static PlanPosition Mirrored(PlanPosition p) => new(-p.East, p.North);

    private static Along Plus(Along along, double degrees) => along.Bearing is { } bearing ? Along.At(Plus(bearing, degrees)) : along;

    private static Along Minus(Along along, double ring) => along.Bearing is { } bearing ? Along.At(Minus(bearing)) : Along.At(Length.Nearest(ring - along.Station!.Value.Metres));

    private static Angle Plus(Angle angle, double degrees) => new((angle.Degrees + degrees) % 360);

    private static Angle Minus(Angle angle) => new((360 - angle.Degrees) % 360);
}
