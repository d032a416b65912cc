using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    private static bool Sensible(Need need) => need.Ratio is > 1 and < LargestRatio;

    /// <summary>Thicker leg and bar; a bar bends with the cube, a leg pulls with the square.</summary>
    private static IEnumerable<Edit> ThickerTees(Need need) => need.House.Tees is { Timber: { } timber } tees && Sensible(need)
        ? [new Edit.ChangeTees(tees with { Timber = need.Stock(timber.Metres * Math.Sqrt(need.Ratio)) }), new Edit.ChangeTees(tees with { Timber = need.Stock(timber.Metres * Math.Sqrt(need.Ratio)) + need.StockStep })]
        : [];

    /// <summary>A thicker bolt, in eighths of an inch or two millimetres; then in thicker timber and a deeper beam, for its edges.</summary>
    private static IEnumerable<Edit> TeeBolts(Need need)
    {
        if (need.House.Tees is not { Bolt: { } bolt } tees || !Sensible(need))
        {
            return [];
        }

        return [.. ((double[])[1, 2, 3, 4]).Select(k => new Edit.ChangeTees(tees with { Bolt = Thicker(need, bolt, k) }))];
    }

    private static Length Thicker(Need need, Length bolt, double steps) =>
        Length.Nearest(bolt.Metres + steps * (need.House.Units == UnitSystem.Imperial ? 0.0254 / 8 : 0.002));

    /// <summary>More bolts, in a lap long enough for them; then thicker ones.</summary>
    private static IEnumerable<Edit> BeamBolts(Need need)
    {
        if (need.House.BondBeam is not { Bolt: { } bolt, Lap: { } lap } beam || !Sensible(need))
        {
            return [];
        }

        var more = (int)Math.Ceiling(beam.Bolts * need.Ratio);
        return
        [
            .. ((int[])[more, more + 1]).Select(n => new Edit.ChangeBondBeam(beam with { Bolts = n, Lap = Longer(need, lap, n, bolt) })),
            .. ((double[])[1, 2, 4]).Select(k => Thicker(need, bolt, k)).Select(d => new Edit.ChangeBondBeam(beam with { Bolt = d, Lap = Longer(need, lap, beam.Bolts, d) })),
        ];
    }

    private static Length Longer(Need need, Length lap, int bolts, Length bolt)
    {
        var asked = need.Up((14 + 4 * (bolts - 1)) * bolt.Metres);
        return asked > lap ? asked : lap;
    }

    private static IEnumerable<Edit> LongerBeamLap(Need need) => need.House.BondBeam is { Lap: { } lap } beam && need.Comparison.Limit.Si is var asked && asked > lap.Metres && asked < LargestRatio * lap.Metres
        ? [new Edit.ChangeBondBeam(beam with { Lap = need.Up(asked) })]
        : [];

    private static IEnumerable<Edit> ShorterLap(Need need) => need.House.BondBeam is { Lap: { } lap, Bolt: { } bolt } beam && beam.Bolts > 1
        ? [new Edit.ChangeBondBeam(beam with { Lap = need.Up((14 + 4 * (beam.Bolts - 2)) * bolt.Metres), Bolts = beam.Bolts - 1 }), new Edit.ChangeBondBeam(beam with { Lap = need.Up(lap.Metres * 0.75) })]
        : [];

    private static IEnumerable<Edit> DeeperBeam(Need need) => need.House.BondBeam is { } beam && Sensible(need)
        ?
        [
            new Edit.ChangeBondBeam(beam with { Depth = need.Stock(beam.Depth.Metres * Math.Sqrt(need.Ratio)) }), new Edit.ChangeBondBeam(beam with { Width = need.Stock(beam.Width.Metres * need.Ratio) }),
            .. need.House.Tees is { } tees ? [new Edit.ChangeTees(tees with { Spacing = Share(tees.Spacing, 0.75) }), new Edit.ChangeTees(tees with { Spacing = Share(tees.Spacing, 0.5) })] : Array.Empty<Edit>(),
        ]
        : [];

    /// <summary>Room for a tee under a pole between two openings: cross pads on which their headers may bear less, 8 in being what practice asks on a pad; a shorter bar; both.</summary>
    private static IEnumerable<Edit> RoomForTees(Need need)
    {
        if (need.House.Tees is not { } tees)
        {
            return [];
        }

        var pads = Padded(need).ToList();
        Edit shorter = new Edit.ChangeTees(tees with { Bar = Share(tees.Bar, 0.75) }), shortest = new Edit.ChangeTees(tees with { Bar = Share(tees.Bar, 0.5) });
        return pads.Count == 0 ? [shorter, shortest] : [new Edit.Several(pads.ToSequence()), shorter, new Edit.Several([.. pads, shorter]), shortest, new Edit.Several([.. pads, shortest])];
    }

    /// <summary>Headers that reach into the stretch between two tees, on pads.</summary>
    private static IEnumerable<Edit> Padded(Need need)
    {
        var tees = need.Geometry.Tees;
        var curve = need.Geometry.Curve;
        var tee = tees.FirstOrDefault(t => $"tee {t.Number} to {t.Number % tees.Count + 1}" == need.Subject);
        if (tee is null)
        {
            return [];
        }

        var length = curve.Wrap(tees[tee.Number % tees.Count].Station - tee.Station);
        return need.Geometry.Openings
            .Where(o => curve.Wrap(o.Station - tee.Station) < length && o.Opening.Header is { } header && (!header.CrossPad || header.Bearing > OnPad))
            .Select(o => new Edit.ChangeOpening(o.Opening.Name, o.Opening with { Header = o.Opening.Header! with { CrossPad = true, Bearing = o.Opening.Header.Bearing > OnPad ? OnPad : o.Opening.Header.Bearing } }));
    }

    private static readonly Length OnPad = Length.FromInches(8);

    private static Embed? Strap(Need need) => need.House.Embeds.FirstOrDefault(e => e.Anchor is not null && need.Subject.Split('#')[0] == e.Name);

    /// <summary>A deeper anchor, a longer one, and both.</summary>
    private static IEnumerable<Edit> DeeperAnchor(Need need)
    {
        if (Strap(need) is not { Anchor: { } anchor } strap || !Sensible(need))
        {
            return [];
        }

        var (depth, bar) = (need.Up(anchor.Depth.Metres * need.Ratio), need.Up(anchor.Bar.Metres * need.Ratio));
        StrapAnchor[] tried = [anchor with { Depth = depth }, anchor with { Bar = bar }, anchor with { Depth = depth, Bar = bar }];
        return tried.Select(a => new Edit.ChangeEmbed(strap.Name, strap with { Anchor = a }));
    }

    private static IEnumerable<Edit> WiderStrap(Need need) => Strap(need) is { Width: { } width } strap && Sensible(need)
        ? [new Edit.ChangeEmbed(strap.Name, strap with { Width = need.Up(width.Metres * need.Ratio) })]
        : [];

    /// <summary>A deeper bond beam spreads a pole's force further along the wall, a wider one across it; enough for the pole that presses hardest, for the beam is one.</summary>
    private static IEnumerable<Edit> SpreadFurther(Need need)
    {
        var hardest = need.Study.WallTop.Bearing.Where(b => b.Check.Is).Select(b => b.Check.Value!).MaxBy(c => c.Use);
        if (need.House.BondBeam is not { } beam || hardest is not { Use: > 1 and < LargestRatio, Needed: { } width })
        {
            return [];
        }

        Edit[] deeper = [.. ((double[])[1.2, 1.5, 2, 3]).Select(more => new Edit.ChangeBondBeam(beam with { Depth = need.Stock(beam.Depth.Metres * more) }))];
        Edit[] wider = [.. ((int[])[0, 1, 2]).Select(steps => new Edit.ChangeBondBeam(beam with { Width = need.Stock(width.Si) + need.StockStep * steps }))];
        var both = new Edit.ChangeBondBeam(beam with { Width = need.Stock(width.Si), Depth = need.Stock(beam.Depth.Metres * 1.5) });
        return [.. DeeperSeats(need), deeper[0], wider[0], deeper[1], wider[1], deeper[2], wider[2], both, deeper[3]];
    }

    /// <summary>Tees closer together and deeper hold the beam and the wall; keys closer together the cob.</summary>
    private static IEnumerable<Edit> Sideways(Need need)
    {
        if (!Sensible(need))
        {
            return [];
        }

        if (need.Name == "cob on stem")
        {
            return need.House.Stem is { Keys: { } keys } stem ? [new Edit.ChangeStem(stem with { Keys = keys with { Spacing = Share(keys.Spacing, 0.98 / need.Ratio) } })] : [];
        }

        return need.House.Tees is { } tees
            ? [new Edit.ChangeTees(tees with { Spacing = Share(tees.Spacing, 0.75) }), new Edit.ChangeTees(tees with { Depth = Length.FromInches(24) }), new Edit.ChangeTees(tees with { Spacing = Share(tees.Spacing, 0.5) })]
            : [];
    }

    /// <summary>One more piece side by side, where the wall is thick enough for it.</summary>
    private static IEnumerable<Edit> OneMorePiece(Need need) => need.Opening is { Header: { } header } opening && Sensible(need)
        ? [new Edit.ChangeOpening(opening.Name, opening with { Header = header with { Pieces = header.Pieces + 1 } })]
        : [];

    /// <summary>The beam back on the middle; then outward by as much as its pieces lie inside the curve under the poles.</summary>
    private static IEnumerable<Edit> CentredBeam(Need need) => need.House.BondBeam is { } beam
        ? [new Edit.ChangeBondBeam(beam with { Offset = Length.Zero }), .. need.Study.WallTop.Seats is { Count: > 0 } seats ? [new Edit.ChangeBondBeam(beam with { Offset = Length.Nearest(beam.Offset.Metres - (seats.Min(s => s.OffCentre) + seats.Max(s => s.OffCentre)) / 2) })] : Array.Empty<Edit>()]
        : [];
}
