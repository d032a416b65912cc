using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>What holds the frame when one pole fails, as the house file describes it: a strapped ring, a doubled frame, or a post under every crossing.</summary>
/// <remarks>
/// A sudden loss counts twice. Strapped, the frame stops being one of mutual support: each pole left leans as a strut on the ring, H_c = W x/z_far, and ring and bond beam hold a hoop
/// force of H_c/(2 sin(omega/2)); the strap is made for all of it, since across the gap of the lost pole the ring cannot press, and the nailed deck keeps the ring round. Doubled, one of a pair goes from half
/// of the load to all of it at once: 1.5 of all. On posts the orphan's end comes down on the one under its crossing.
/// </remarks>
internal static class LossChecks
{
    /// <summary>A sudden loss over a standing one.</summary>
    public const double Sudden = 2;

    /// <summary>From half of the load to all of it, suddenly: 0.5 + 2 (1 - 0.5).</summary>
    public const double SuddenOfPair = 1.5;

    /// <summary>Nail holes leave this much of a strap.</summary>
    public const double NailHoles = 0.75;

    /// <summary>Allowed tension over yield: 1/1.67.</summary>
    public const double SteelShare = 0.6;

    /// <summary>Permanent load on a post: nobody knows how long it stands after a loss.</summary>
    private static readonly Combination Permanent = new("D", LoadForm.AllowableStress, false, [new(LoadKind.Dead, 1)], Sources.Get("mechanics"));

    /// <summary>The checks of the way that is described; none where none is.</summary>
    public static Sequence<CheckedMember> Of(ReciprocalResult roof, Building.Roof.Reciprocal described, Known<Timber> timber, Building.Site site, Sequence<CombinedState> states)
    {
        if (described.IfOneFails is null)
        {
            return [];
        }

        if (roof.Loss.Value is not { } loss || timber.Value is not { } wood)
        {
            return [new("pole-loss", "poles", roof.Loss.NotChecked ?? timber.NotChecked!)];
        }

        if (states.Count == 0)
        {
            return [new("pole-loss", "poles", roof.Combined.Missing is [var missing, ..] ? missing : new Message("analysis.roof.no-timber"))];
        }

        return described.IfOneFails switch
        {
            Building.IfOneFails.Strap strap => [Strap(roof.Geometry, described, strap, states), Diaphragm(described)],
            Building.IfOneFails.Doubled => [Doubled(roof)],
            Building.IfOneFails.Post post => [Post(roof, loss, post, wood), Footing(loss, post, site)],
            _ => [],
        };
    }

    private static CheckedMember Strap(ReciprocalGeometry frame, Building.Roof.Reciprocal described, Building.IfOneFails.Strap strap, Sequence<CombinedState> states)
    {
        if (described.Deck is null)
        {
            return new("pole-loss", "strap", new Message("analysis.loss.no-deck"));
        }

        var hardest = states.MaxBy(s => Leaning(frame, s))!;
        var at = Enumerable.Range(0, frame.Count).MaxBy(i => Thrust.AgainstRing(frame, Moments(frame, hardest))[i]);
        var pole = frame.Poles[at];
        var angle = frame.Poles.Min(p => p.CrossingAngle);
        var (source, steel) = (Sources.Get("reciprocal-frame-statics"), Sources.Get("steel-memory"));
        var metal = Metal.Find("steel-strap")!;
        var sheet = new Worksheet("pole-loss-strap");
        var mo = Worksheet.Computed("M_o", "pole-load-moment", hardest.Forces.LoadMoment[pole.Number - 1], Dimension.Moment);
        var z = Worksheet.Computed("z", "ring-rise", pole.Slope * pole.Far, Dimension.Length);
        var thrust = mo.Value.Si / z.Value.Si;
        var h = sheet.Step("pole-thrust", "H_c", "M_o/z", thrust, Dimension.Force, source, mo, z);
        var omega = Worksheet.Computed("omega", "crossing-angle-least", angle, Dimension.Angle);
        var sudden = Worksheet.Code("k_d", "sudden-loss", Sudden, Dimension.Number, Sources.Get("dod-progressive-memory"));
        var tension = Sudden * Thrust.Hoop(thrust, angle);
        sheet.Step("strap-tension", "T", "k_d*H_c/(2*sin(omega/2))", tension, Dimension.Force, source, sudden, h, omega);
        var w = Worksheet.Given("w", "strap-width", strap.Width.Metres, Dimension.Length);
        var t = Worksheet.Given("t", "strap-thickness", strap.Thickness.Metres, Dimension.Length);
        var fy = Worksheet.Cited("F_y", "metal-yield", metal.Yield, Dimension.Stress);
        var share = Worksheet.Code("k_s", "steel-share", SteelShare, Dimension.Number, steel);
        var holes = Worksheet.Assumed("k_n", "nail-holes", NailHoles, Dimension.Number, Sources.Get("common-practice"));
        var capacity = SteelShare * metal.Yield.Value * NailHoles * w.Value.Si * t.Value.Si;
        sheet.Step("strap-capacity", "T_c", "k_s*F_y*k_n*w*t", capacity, Dimension.Force, steel, share, fy, holes, w, t);
        return new("pole-loss", "strap", new MemberCheck(hardest.Combination.Key, hardest.Sense, new Amount(tension, Dimension.Force), new Amount(capacity, Dimension.Force), sheet.Done,
            Amount.Metres(strap.Width.Metres * tension / capacity)));
    }

    /// <summary>The strapped ring is kept round by the deck, whose shear and nails no house file describes yet.</summary>
    private static CheckedMember Diaphragm(Building.Roof.Reciprocal described) =>
        new("pole-loss", "deck as diaphragm", new Message(described.Deck is null ? "analysis.loss.no-deck" : "analysis.loss.diaphragm"));

    private static double Leaning(ReciprocalGeometry frame, CombinedState state) => Thrust.AgainstRing(frame, Moments(frame, state)).Max();

    private static double[] Moments(ReciprocalGeometry frame, CombinedState state) => [.. frame.Poles.Select(p => state.Forces.LoadMoment[p.Number - 1])];

    private static CheckedMember Doubled(ReciprocalResult roof)
    {
        string[] keys = ["pole-bending-crossing", "pole-bending-plate", "pole-stub", "pole-shear"];
        var checks = roof.Checks.Concat(roof.StageChecks).Where(c => keys.Contains(c.Key)).ToArray();
        if (Array.Find(checks, c => !c.Check.Is) is { } unknown)
        {
            return new("pole-loss", "doubled frame", unknown.Check.NotChecked!);
        }

        if (checks.Length == 0)
        {
            return new("pole-loss", "doubled frame", new Message("analysis.roof.no-timber"));
        }

        var worst = checks.MaxBy(c => c.Check.Value!.Use)!.Check.Value!;
        var sheet = new Worksheet("pole-loss-doubled");
        var use = Worksheet.Computed("u", "share-used-alone", worst.Use, Dimension.Number);
        var sudden = Worksheet.Code("k_d", "sudden-loss-of-pair", SuddenOfPair, Dimension.Number, Sources.Get("dod-progressive-memory"));
        sheet.Step("share-used-sudden", "use", "k_d*u", SuddenOfPair * worst.Use, Dimension.Number, Sources.Get("mechanics"), sudden, use);
        return new("pole-loss", "doubled frame", new MemberCheck(worst.Combination, worst.Sense, Amount.Number(SuddenOfPair * worst.Use), Amount.Number(1), sheet.Done));
    }

    private static CheckedMember Post(ReciprocalResult roof, PoleLoss loss, Building.IfOneFails.Post post, Timber timber)
    {
        var frame = roof.Geometry;
        var length = roof.Raising.AxisHeight + frame.Poles.Max(p => p.HeightAt(p.Far) - p.DiameterAt(p.Far) / (2 * p.PitchCosine));
        if (Column.Slenderness(length, post.Diameter.Metres) > Column.MostSlender)
        {
            return new("pole-loss", "posts", Message.Of("analysis.loss.slender", ("length", Amount.Metres(length)), ("least", Amount.Metres(length / Column.MostSlender / Column.SquareShare))));
        }

        var sheet = new Worksheet("pole-loss-post");
        var prop = Worksheet.Computed("P", "prop-force", loss.PropForce, Dimension.Force);
        var sudden = Worksheet.Code("k_d", "sudden-loss", Sudden, Dimension.Number, Sources.Get("dod-progressive-memory"));
        sheet.Step("post-load", "N", "k_d*P", Sudden * loss.PropForce, Dimension.Force, Sources.Get("reciprocal-frame-statics"), sudden, prop);
        var capacity = Column.Capacity(sheet, timber, Permanent, post.Diameter.Metres, length);
        return new("pole-loss", "posts", new MemberCheck("D", StageStates.Prefix + loss.Stage, new Amount(Sudden * loss.PropForce, Dimension.Force), capacity.Value, sheet.Done,
            Amount.Metres(post.Diameter.Metres * Math.Pow(Sudden * loss.PropForce / capacity.Value.Si, 0.25))));
    }

    private static CheckedMember Footing(PoleLoss loss, Building.IfOneFails.Post post, Building.Site site)
    {
        if (site.SoilBearing is not { } bearing)
        {
            return new("pole-loss", "post footings", new Message("analysis.foundation.no-bearing"));
        }

        var sheet = new Worksheet("pole-loss-footing");
        var prop = Worksheet.Computed("P", "prop-force", loss.PropForce, Dimension.Force);
        var side = Worksheet.Given("b", "footing-side", post.Footing.Metres, Dimension.Length);
        var pressure = loss.PropForce / (post.Footing.Metres * post.Footing.Metres);
        sheet.Step("footing-pressure", "q", "P/b^2", pressure, Dimension.Stress, Sources.Get("mechanics"), prop, side);
        return new("pole-loss", "post footings", new MemberCheck("D", StageStates.Prefix + loss.Stage, new Amount(pressure, Dimension.Stress), new Amount(bearing.Pascals, Dimension.Stress), sheet.Done,
            Amount.Metres(post.Footing.Metres * Math.Sqrt(pressure / bearing.Pascals))));
    }
}
