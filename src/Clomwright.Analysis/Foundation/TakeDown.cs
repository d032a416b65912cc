using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Foundation;

/// <summary>Loads from the wall top to the bottom of the trench, for each metre of the stem's middle line.</summary>
internal sealed class TakeDown
{
    /// <summary>Of the wall as it stands, kg/m3: the upper of 1500 to 1800.</summary>
    public const double CobDensity = Cob.StandingDensity;

    /// <summary>Of plaster, kg/m3.</summary>
    public const double PlasterDensity = 1800;

    /// <summary>Of the bond beam, N/m3.</summary>
    public const double BeamWeight = 5500;

    /// <summary>Of a grade beam, kg/m3.</summary>
    public const double ConcreteDensity = 2400;

    private static readonly Source Mechanics = Sources.Get("mechanics");

    private readonly HouseGeometry geometry;
    private readonly House house;
    private readonly StemMaterial? material;
    private readonly Strip[] strips;
    private readonly double ring, inside, outside, centroid, beamLine, plasterIn, plasterOut;

    public TakeDown(HouseGeometry geometry)
    {
        this.geometry = geometry;
        house = geometry.House;
        var wall = geometry.Wall;
        var (low, top) = (wall.Base.Metres, wall.Top.Metres);
        material = StemMaterial.Find(house.Stem.Material);
        (inside, outside) = geometry.Stem;
        Line = (inside + outside) / 2;
        ring = geometry.Curve.OffsetLength(Line);
        centroid = Centroid(wall, low, top);
        beamLine = (wall.InsideOffset(top) + wall.OutsideOffset(top)) / 2 + (house.BondBeam?.Offset.Metres ?? 0);
        plasterIn = Depth(Face.Inside);
        plasterOut = Depth(Face.Outside);
        strips = [.. Strip.Of(geometry, Line)];
    }

    /// <summary>Offset of the stem's middle line from the inside curve, m.</summary>
    public double Line { get; }

    /// <summary>Every strip under a roof.</summary>
    /// <param name="reactions">Forces of the poles on the bond beam, N, in the order of the landings; null for the wall alone.</param>
    /// <param name="raised">Height of wall built on the wall top at each of these landings, m; null where there is none.</param>
    public Known<StripLoads> Of(Sequence<double>? reactions, double[]? raised = null)
    {
        var poles = geometry.Landings.Count(l => !l.Secondary);
        if (reactions is { } given && given.Count != poles)
        {
            return new Message("analysis.foundation.reactions");
        }

        if (strips.Any(s => !(s.Length > 0)))
        {
            return Message.Of("analysis.foundation.no-wall", ("strip", new Argument.Subject(strips.First(s => !(s.Length > 0)).Subject)));
        }

        if (!(Math.Min(geometry.Wall.ThicknessAt(geometry.Wall.Base.Metres), outside) > Math.Max(0, inside)))
        {
            return new Message("analysis.foundation.off-stem");
        }

        return new StripLoads(strips.Select(s => Load(
            s, reactions is not { } all ? 0 : s.Pole < 0 ? all.Sum(Pressed) : Pressed(all[s.Pole]), raised is null ? 0 : s.Pole < 0 ? raised.Average() : raised[s.Pole])).ToSequence());
    }

    private StripLoad Load(Strip strip, double reaction, double raised)
    {
        var wall = geometry.Wall;
        var height = (wall.Top - wall.Base).Metres;
        var thickAtBase = wall.ThicknessAt(wall.Base.Metres);
        var sheet = new Worksheet("foundation-load");
        var g = UsUnits.GravitySymbol;
        var rho = Worksheet.Assumed("rho", "cob-density-standing", CobDensity, Dimension.Density, Sources.Get("wellerlehm"));
        var n = Worksheet.Computed("n", "strip-length", strip.Length, Dimension.Length);
        var cob = sheet.Step(
            "strip-cob", "G_c", "rho*g*(V_w/L_s + V_o/n)", CobDensity * UsUnits.Gravity * (geometry.Measures.GrossVolume / ring + strip.OverOpenings / strip.Length), Dimension.LineLoad, Mechanics,
            rho, g, Worksheet.Computed("V_w", "wall-gross", geometry.Measures.GrossVolume, Dimension.Volume), Worksheet.Computed("L_s", "stem-ring", ring, Dimension.Length),
            Worksheet.Computed("V_o", "cob-over-openings", strip.OverOpenings, Dimension.Volume), n);
        var (coatInside, coatOutside) = (Worksheet.Given("d_i", "plaster-inside", plasterIn, Dimension.Length), Worksheet.Given("d_o", "plaster-outside", plasterOut, Dimension.Length));
        var plaster = sheet.Step(
            "strip-plaster", "G_p", "rho_p*g*H*(d_i + d_o)", PlasterDensity * UsUnits.Gravity * height * (plasterIn + plasterOut), Dimension.LineLoad, Mechanics,
            Worksheet.Assumed("rho_p", "plaster-density", PlasterDensity, Dimension.Density, Sources.Get("plaster-weight-memory")), g, Worksheet.Computed("H", "cob-height", height, Dimension.Length), coatInside, coatOutside);
        var beam = Worksheet.Computed("G_b", "beam-weight", house.BondBeam is { } made ? made.Width.Metres * made.Depth.Metres * BeamWeight : 0, Dimension.LineLoad);
        var high = sheet.Step(
            "strip-raised", "G_h", "rho*g*h_r*t_t", CobDensity * UsUnits.Gravity * raised * wall.ThicknessAtTop.Metres, Dimension.LineLoad, Mechanics,
            rho, g, Worksheet.Computed("h_r", "raised-wall", raised, Dimension.Length), Worksheet.Given("t_t", "thickness-at-top", wall.ThicknessAtTop.Metres, Dimension.Length));
        var onBeam = sheet.Step(
            "strip-roof", "R", "G_b + G_h + A/n", beam.Value.Si + high.Value.Si + reaction / strip.Length, Dimension.LineLoad, Mechanics,
            beam, high, Worksheet.Computed("A", "pole-on-beam", reaction, Dimension.Force), n);
        var all = sheet.Step("strip-on-stem", "N", "G_c + G_p + R", cob.Value.Si + plaster.Value.Si + onBeam.Value.Si, Dimension.LineLoad, Mechanics, cob, plaster, onBeam);

        var (near, far) = (Math.Max(0, inside), Math.Min(thickAtBase, outside));
        var middle = (near + far) / 2;
        var plasterLine = plasterIn + plasterOut > 0 ? plasterOut * (wall.OutsideOffset(wall.Base.Metres + height / 2)) / (plasterIn + plasterOut) + plasterIn * wall.InsideOffset(wall.Base.Metres + height / 2) / (plasterIn + plasterOut) : middle;
        var xc = Worksheet.Computed("x_c", "cob-line", centroid, Dimension.Length);
        var xp = Worksheet.Computed("x_p", "plaster-line", plasterLine, Dimension.Length);
        var xb = Worksheet.Computed("x_b", "beam-line", beamLine, Dimension.Length);
        var x = (cob.Value.Si * centroid + plaster.Value.Si * plasterLine + onBeam.Value.Si * beamLine) / all.Value.Si;
        var xn = sheet.Step("strip-line", "x_N", "(G_c*x_c + G_p*x_p + R*x_b)/N", x, Dimension.Length, Mechanics, cob, xc, plaster, xp, onBeam, xb, all);
        var xk = Worksheet.Computed("x_k", "contact-line", middle, Dimension.Length);
        var e = sheet.Step("stem-eccentricity", "e", "x_N - x_k", x - middle, Dimension.Length, Mechanics, xn, xk);
        var ground = Below(strip.Subject, all, xn);
        return new StripLoad
        {
            Subject = strip.Subject,
            Length = strip.Length,
            Cob = cob.Value.Si,
            Roof = onBeam.Value.Si,
            OnStem = all.Value.Si,
            StemEccentricity = e.Value.Si,
            Contact = far - near,
            StemPressure = Pressure(new Worksheet("stem-pressure"), all, Worksheet.Computed("B", "stem-contact", far - near, Dimension.Length), e, "stem-pressure", strip.Subject),
            FootEccentricity = ground.Foot,
            TrenchEccentricity = ground.Share,
            GroundPressure = ground.Pressure,
            LoadHow = sheet.Done,
        };
    }

    private BelowStem Below(string subject, Symbol onStem, Symbol line)
    {
        if (WhyNotBelow() is { } why)
        {
            return new BelowStem(why, why, why);
        }

        var (stem, trench, grade) = (house.Stem, house.Trench!, house.Site.Grade!.Value);
        var gravel = RoofMaterial.Find("gravel")!.Saturated;
        var foot = new Worksheet("stem-foot");
        var bs = Worksheet.Given("b_s", "stem-width", stem.Width.Metres, Dimension.Length);
        var height = (geometry.Wall.Base - grade).Metres;
        var ofStem = foot.Step(
            "stem-weight", "G_s", "rho_s*g*b_s*h_s", material!.Density.Value * UsUnits.Gravity * stem.Width.Metres * height, Dimension.LineLoad, Mechanics,
            Worksheet.Cited("rho_s", "stem-density", material.Density, Dimension.Density), UsUnits.GravitySymbol, bs, Worksheet.Computed("h_s", "stem-height", height, Dimension.Length));
        var stemLine = Worksheet.Computed("x_s", "stem-line", Line, Dimension.Length);
        var lever = onStem.Value.Si * (line.Value.Si - Line);
        foot.Step(
            "foot-share", "k_f", "abs(N*(x_N - x_s)/(N + G_s))/b_s", Math.Abs(lever / (onStem.Value.Si + ofStem.Value.Si)) / stem.Width.Metres, Dimension.Fraction, Mechanics,
            onStem, line, stemLine, ofStem, bs);

        var sheet = new Worksheet("ground-pressure");
        var bt = Worksheet.Given("b_t", "trench-width", trench.Width.Metres, Dimension.Length);
        var (beamWidth, beamDepth) = trench.GradeBeam is { } made ? (made.Width.Metres, made.Depth.Metres) : (stem.Width.Metres, 0);
        var bb = Worksheet.Given("b_b", trench.GradeBeam is null ? "stem-width" : "grade-beam-width", beamWidth, Dimension.Length);
        var db = Worksheet.Given("d_b", "grade-beam-depth", beamDepth, Dimension.Length);
        var dt = Worksheet.Given("d_t", "trench-depth", trench.Depth.Metres, Dimension.Length);
        var stone = trench.Depth.Metres - beamDepth;
        var width = Math.Min(trench.Width.Metres, beamWidth + stone);
        var b = sheet.Step("bearing-width", "B", "min(b_t, b_b + d_t - d_b)", width, Dimension.Length, Sources.Get("footing-spread-memory"), bt, bb, dt, db);
        var ofBeam = sheet.Step(
            "grade-beam-weight", "G_g", "rho_c*g*b_b*d_b", ConcreteDensity * UsUnits.Gravity * beamWidth * beamDepth, Dimension.LineLoad, Mechanics,
            Worksheet.Assumed("rho_c", "concrete-density", ConcreteDensity, Dimension.Density, Sources.Get("masonry-memory")), UsUnits.GravitySymbol, bb, db);
        var ofGravel = sheet.Step(
            "trench-weight", "G_t", "gamma_t*B*(d_t - d_b)", gravel.Value * width * stone, Dimension.LineLoad, Mechanics,
            Worksheet.Cited("gamma_t", "trench-fill", gravel, Dimension.Number), b, dt, db);
        var total = sheet.Step(
            "strip-on-ground", "N_t", "N + G_s + G_g + G_t", onStem.Value.Si + ofStem.Value.Si + ofBeam.Value.Si + ofGravel.Value.Si, Dimension.LineLoad, Mechanics, onStem, ofStem, ofBeam, ofGravel);
        var e = sheet.Step("trench-eccentricity", "e", "N*(x_N - x_s)/N_t", lever / total.Value.Si, Dimension.Length, Mechanics, onStem, line, stemLine, total);
        var share = new Worksheet("trench-share");
        share.Step("trench-share", "k", "abs(e)/B", Math.Abs(e.Value.Si) / width, Dimension.Fraction, Mechanics, e, b);
        var footDone = foot.Done;
        return new BelowStem(
            new Calculated<double>(footDone.Result.Si, footDone), new Calculated<double>(Math.Abs(e.Value.Si) / width, share.Done), Pressure(sheet, total, b, e, "ground-pressure", subject));
    }

    private Message? WhyNotBelow() =>
        house.Site.Grade is not { } grade ? new Message("analysis.foundation.no-grade")
        : house.Trench is not { Width.Nanometres: > 0, Depth.Nanometres: > 0 } trench ? new Message("analysis.foundation.no-trench")
        : grade >= geometry.Wall.Base ? new Message("analysis.foundation.stem-below-grade")
        : trench.Width < house.Stem.Width ? new Message("analysis.foundation.trench-narrow")
        : trench.GradeBeam is { } beam && (beam.Width < house.Stem.Width || beam.Width > trench.Width || beam.Depth >= trench.Depth) ? new Message("analysis.foundation.grade-beam")
        : material is null ? Message.Of("analysis.foundation.material", ("material", house.Stem.Material))
        : null;

    /// <summary>N/B (1 + 6e/B), beyond the middle third 2N/(3 (B/2 - e)).</summary>
    private static Known<Calculated<double>> Pressure(Worksheet sheet, Symbol load, Symbol width, Symbol eccentricity, string step, string subject)
    {
        var (most, _, contact) = Bearing.Pressure(load.Value.Si, width.Value.Si, eccentricity.Value.Si);
        if (!(contact > 0))
        {
            return Message.Of("analysis.foundation.tips", ("strip", new Argument.Subject(subject)));
        }

        var equation = Math.Abs(eccentricity.Value.Si) <= width.Value.Si / 6 ? "N/B*(1 + 6*abs(e)/B)" : "2*N/(3*(B/2 - abs(e)))";
        sheet.Step(step, "q", load.Name == "N" ? equation : equation.Replace("N", "N_t", StringComparison.Ordinal), most, Dimension.Stress, Mechanics, load, width, eccentricity);
        return new Calculated<double>(most, sheet.Done);
    }

    private double Depth(Face face) => house.Finishes.Where(f => f.Face == face).Sum(f => f.Thickness?.Metres ?? 0);

    private static double Pressed(double reaction) => Math.Max(0, reaction);

    /// <summary>Middle of the wall's section, both faces straight, m from the inside curve.</summary>
    private static double Centroid(WallSolid wall, double low, double top)
    {
        var half = (low + top) / 2;
        var area = wall.ThicknessAt(low) + 4 * wall.ThicknessAt(half) + wall.ThicknessAt(top);
        return (Moment(low) + 4 * Moment(half) + Moment(top)) / area;

        double Moment(double z) => (wall.OutsideOffset(z) * wall.OutsideOffset(z) - wall.InsideOffset(z) * wall.InsideOffset(z)) / 2;
    }

    /// <summary>What the stretch asks below the stem's top.</summary>
    private readonly record struct BelowStem(Known<Calculated<double>> Foot, Known<Calculated<double>> Share, Known<Calculated<double>> Pressure);
}
