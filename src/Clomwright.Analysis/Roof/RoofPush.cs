using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>What pushes a roof sideways, and how it flows through the roof into the ring of the wall.</summary>
/// <remarks>
/// Wind pushes on the height of the roof and the upper half of the wall. An earthquake shakes the wet roof, the code's share of snow, and of the wall what leans on the roof (<see cref="ShakenHouse"/>). Round a ring the roof holds on as sin(theta): the most for each metre is H/(pi R), with R = 2A/L of the bond-beam line, which is the radius of a circle and less than the mean one of anything else.
/// </remarks>
internal sealed class RoofPush
{
    private readonly double windHeight, windAcross, width, roofWeight;
    private readonly ShakenHouse house;
    private readonly SeismicLoad? quake;
    private readonly Source mechanics = Sources.Get("mechanics");

    private RoofPush(double radius, double windHeight, double windAcross, double width, double roofWeight, ShakenHouse house, SeismicLoad? quake, Sequence<Combination> combinations)
    {
        Radius = radius;
        Combinations = combinations;
        (this.windHeight, this.windAcross, this.width, this.roofWeight, this.house, this.quake) = (windHeight, windAcross, width, roofWeight, house, quake);
    }

    /// <summary>R, m.</summary>
    public double Radius { get; }

    /// <summary>Combinations in which something pushes sideways that is known; never empty.</summary>
    public Sequence<Combination> Combinations { get; }

    /// <summary>The forces on a placed house, or why they are not known. An earthquake that is not known is left out, and said with the combinations of the roof.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="plate">Offset of the bond-beam line from the inside curve, m.</param>
    /// <param name="rise">Of the roof over the bond beam, m.</param>
    /// <param name="wet">Weight of the roof with wet layers, N; or why it is not known.</param>
    /// <param name="snow">On it.</param>
    /// <param name="wind">On it.</param>
    /// <param name="european">Whether the timber is of EN 338.</param>
    public static Known<RoofPush> Of(HouseGeometry geometry, double plate, double rise, (double? Weight, Message? Why) wet, SnowLoad? snow, Known<WindLoad> wind, bool european)
    {
        var site = geometry.House.Site;
        if (LoadEditions.Parse(site.Loads) is not { } edition)
        {
            return new Message("analysis.loads.no-edition");
        }

        if (european && edition != LoadEdition.En1990)
        {
            return new Message("analysis.members.systems");
        }

        if (wind.Value is not { } blow)
        {
            return wind.NotChecked!;
        }

        if (wet.Weight is not { } weight)
        {
            return wet.Why!;
        }

        var house = new ShakenHouse(geometry, rise);
        var width = geometry.EvenWidth;
        var roof = weight + Seismic.SnowWeight(snow, width);
        var quake = edition == LoadEdition.En1990 ? null
            : house.Under(roof).Value;
        var radius = 2 * geometry.Curve.OffsetArea(plate) / geometry.Curve.OffsetLength(plate);
        Sequence<Combination> all = [.. Loads.Combinations.Of(edition, european ? LoadForm.Strength : LoadForm.AllowableStress)
            .Where(c => c.Factor(LoadKind.Wind) > 0 || (c.Factor(LoadKind.Earthquake) > 0 && quake is not null))];
        return new RoofPush(radius, house.Height / 2 + Math.Max(0, rise), blow.WallsAcross, width, roof, house, quake, all);
    }

    /// <summary>H in a combination, N; 0 where nothing pushes.</summary>
    public double Force(Combination combination) =>
        combination.Factor(LoadKind.Wind) is > 0 and var blow ? blow * windAcross * width * windHeight
        : combination.Factor(LoadKind.Earthquake) is > 0 and var shake && quake is not null ? shake * house.ThroughRoof(quake, roofWeight) : 0;

    /// <summary>Most for each metre of the ring, N/m.</summary>
    public double Flow(Combination combination) => Force(combination) / (Math.PI * Radius);

    /// <summary>The combination that pushes most.</summary>
    public Combination Hardest => Combinations.MaxBy(Force)!;

    /// <summary>Puts H down.</summary>
    public Symbol Steps(Worksheet sheet, Combination combination)
    {
        if (combination.Factor(LoadKind.Wind) is > 0 and var blow)
        {
            return sheet.Step(
                "sideways-wind", "H", "k*p*b_w*h_w", Force(combination), Dimension.Force, mechanics, Worksheet.Code("k", "wind-factor", blow, Dimension.Number, combination.Source),
                Worksheet.Computed("p", "wind-across", windAcross, Dimension.AreaLoad), Worksheet.Computed("b_w", "house-width", width, Dimension.Length), Worksheet.Computed("h_w", "wind-height", windHeight, Dimension.Length));
        }

        if (quake is null || combination.Factor(LoadKind.Earthquake) is not (> 0 and var shake))
        {
            return sheet.Step("sideways-none", "H", "0*k", 0, Dimension.Force, mechanics, Worksheet.Computed("k", "sideways-none", 0, Dimension.Force));
        }

        return house.Steps(sheet, quake, roofWeight, shake, combination.Source);
    }

    /// <summary>Puts H/(pi R) down.</summary>
    public Symbol FlowSteps(Worksheet sheet, Combination combination) => sheet.Step(
        "deck-flow", "v", "H/(pi*R)", Flow(combination), Dimension.LineLoad, mechanics, Steps(sheet, combination), Worksheet.Computed("R", "ring-radius-mean", Radius, Dimension.Length));
}
