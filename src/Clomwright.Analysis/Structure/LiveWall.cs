using System.Collections.Immutable;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Mix;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>
/// The wall while an opening is moved: the grid of the wall as it was taken in hand, its factor led to the opening, and the few cases that governed it then. Each move changes the cells that the opening cuts and
/// answers what those cases now do. The result of a study takes its place when the opening rests. Not for use from several threads at once; its memory is given back by <see cref="Dispose"/>.
/// </summary>
/// <remarks>Jambs cut cells instead of lying on lines, the foot holds both ways, and a case that begins to govern on the way is not among those looked at: a preview, never a finding.</remarks>
[Mutable("owns a factor that follows the opening in hand")]
public sealed class LiveWall : IDisposable
{
    /// <summary>Cases looked at, at most: as many as the factor answers at once.</summary>
    public const int MostCases = 8;

    private readonly double strength;
    private readonly SolidGrid grid;
    private readonly WallCase[] cases;
    private readonly ElasticBody elastic;
    private readonly int known;
    private readonly KeptLoads kept;
    private WallSheet? last;

    private LiveWall(double strength, WallBody body, WallCase[] cases, string opening, (int From, int To) cells)
    {
        (this.strength, grid, this.cases, Opening) = (strength, body.Grid, cases, opening);
        known = cases[0].Coefficients.Length;
        kept = new KeptLoads(grid);
        elastic = new ElasticBody(body.Model);
        elastic.FocusOn(cells.From, cells.To);
    }

    /// <summary>The opening in hand.</summary>
    public string Opening { get; }

    /// <summary>The cases looked at, the one that used a pier most first.</summary>
    public Sequence<WallCase> Cases => cases.ToSequence();

    /// <summary>Bytes held outside the collected heap.</summary>
    public long Bytes => elastic.Bytes;

    /// <summary>Takes an opening in hand; or why it cannot be: it stands where it would meet another or the wall's edge and so is not in the wall, nothing governs the wall, or part of it is held by nothing.</summary>
    /// <param name="geometry">The house as it rests.</param>
    /// <param name="strength">Of its cob.</param>
    /// <param name="rested">What its wall carries.</param>
    /// <param name="opening">Name of the opening.</param>
    /// <param name="fineness">How finely; null takes the usual.</param>
    public static Known<LiveWall> Grab(HouseGeometry geometry, CobStrength strength, StructureResult rested, string opening, WallFineness? fineness = null)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(rested);
        if (geometry.Openings.FirstOrDefault(o => o.Opening.Name == opening) is not { } place)
        {
            return Message.Of("analysis.structure.not-in-wall", ("opening", opening));
        }

        WallCase[] cases =
        [
            .. rested.Piers.OrderByDescending(p => p.EdgeMost).Select(p => p.EdgeCase).Concat(rested.Landings.OrderByDescending(l => l.Pressure).Take(1).Select(l => l.Case))
                .Concat(rested.Tension.Take(1).Select(z => z.Case)).Where(c => c.Coefficients.Length > 0).Distinct().Take(MostCases),
        ];
        if (cases.Length == 0)
        {
            return new Message("analysis.structure.no-cases");
        }

        var body = new WallBody(geometry, strength.Characteristic, fineness ?? WallFineness.Usual);
        var from = CellAt(body.Grid, geometry.Curve.Wrap(place.Widest.From));
        var width = Enumerable.Range(1, body.Grid.Around).First(n => n == body.Grid.Around || LengthFrom(body.Grid, from, n) >= place.Widest.Width);
        var live = new LiveWall(strength.Characteristic, body, cases, opening, (from, from + width));
        if (live.elastic.LooseColumn is not { } loose)
        {
            return live;
        }

        live.Dispose();
        return Loose(body.Grid, loose);
    }

    /// <summary>What the wall carries with everything where it is now; or why that cannot be told from here: the roof presses elsewhere, or part of the wall is held by nothing. It can be asked again after the next move.</summary>
    /// <param name="geometry">The house as it is now.</param>
    /// <param name="seats">How far off the middle of the wall each pole presses now, m.</param>
    /// <param name="roof">What its roof does.</param>
    public Known<LiveStress> Move(HouseGeometry geometry, Sequence<double> seats, Roof.RoofResult roof)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(roof);
        var body = new WallBody(geometry, strength, grid);
        var basis = new BasisLoads(body, seats, roof.Wind.Value, LoadCases.Thrusts(geometry, roof), SoilPressure.Of(geometry.House.Site, geometry.Wall.Base.Metres), kept);
        if (basis.All.Count != known)
        {
            return new Message("analysis.structure.other-loads");
        }

        NodalLoad[] loads = [.. cases.Select(c => NodalLoad.Sum(basis.All, c.Coefficients))];
        var sheet = last = new WallSheet(body, body.Numbers["wall-stress-patch"], before: last);
        elastic.Become(body.Model with { Materials = Known(body.Model.Materials) });
        if (elastic.LooseColumn is { } loose)
        {
            return Loose(grid, loose);
        }

        var answers = elastic.Solve(loads);
        var fields = elastic.CellStresses(answers, again: true).EachBesideOthers(sheet.Means);
        PierSections[] piers = [.. geometry.Piers.Select(p => new PierSections(body, p)).Where(p => p.Rows.Length > 0)];
        Landing[] landings = [.. geometry.Landings.Where(l => !l.Secondary)];
        var envelope = new Envelope(sheet);
        for (var i = 0; i < cases.Length; i++)
        {
            envelope.Take(i, fields[i]);
        }

        return new LiveStress(Picture(sheet, envelope, body), [.. Piers(piers, sheet, envelope)], [.. Poles(landings, sheet, fields)]);
    }

    private static Message Loose(SolidGrid grid, int column) => Message.Of("analysis.structure.loose", ("station", Amount.Metres(grid.S[column / (grid.Up + 1)])));

    /// <summary>Gives all memory back.</summary>
    public void Dispose() => elastic.Dispose();

    /// <summary>Materials that are there already in the place of equal new ones: only then does the factor know which cells stayed as they were.</summary>
    private ImmutableArray<ElasticMaterial> Known(ImmutableArray<ElasticMaterial> materials)
    {
        var before = elastic.Model.Materials;
        return [.. materials.Select((m, i) => i < before.Length && Same(before[i], m) ? before[i] : before.FirstOrDefault(b => Same(b, m)) ?? m)];

        static bool Same(ElasticMaterial a, ElasticMaterial b) => a.Density == b.Density && a.Stiffness.SequenceEqual(b.Stiffness);
    }

    private static WallPicture Picture(WallSheet sheet, Envelope envelope, WallBody body) => new()
    {
        Stations = body.Grid.S.ToSequence(),
        Heights = body.Grid.Z.Take(body.CobRows + 1).ToSequence(),
        Share = sheet.Share.ToSequence(),
        Compression = envelope.Compression.Select((p, i) => sheet.Share[i] > 0 ? Math.Max(0, p) : 0).ToSequence(),
        Tension = envelope.Tension.Select((p, i) => sheet.Share[i] > 0 ? Math.Max(0, p) : 0).ToSequence(),
    };

    private IEnumerable<LivePier> Piers(PierSections[] piers, WallSheet sheet, Envelope envelope)
    {
        foreach (var pier in piers)
        {
            var stacks = pier.Stacks(sheet).ToArray();
            if (stacks.Length > 0)
            {
                var edge = stacks.MaxBy(s => envelope.Upright[s]);
                yield return new LivePier(pier.Pier.Address, envelope.Upright[edge], sheet.CobStationOf(edge), sheet.HeightOf(edge), cases[envelope.UprightCase[edge]]);
            }
        }
    }

    private IEnumerable<LivePole> Poles(Landing[] landings, WallSheet sheet, double[][] fields)
    {
        foreach (var landing in landings)
        {
            if (Hardest.Nearest(sheet, landing.Station) is >= 0 and var top)
            {
                var governs = Enumerable.Range(0, cases.Length).MaxBy(i => Hardest.Pressure(fields[i], top));
                yield return new LivePole(landing.Name, Hardest.Pressure(fields[governs], top), cases[governs]);
            }
        }
    }

    private static int CellAt(SolidGrid grid, double station)
    {
        var found = grid.S.ToArray().AsSpan().BinarySearch(station);
        return Math.Clamp(found >= 0 ? found : ~found - 1, 0, grid.Around - 1);
    }

    private static double LengthFrom(SolidGrid grid, int from, int cells)
    {
        var ring = grid.S[^1] - grid.S[0];
        var to = from + cells;
        return (to >= grid.Around ? grid.S[to - grid.Around] + ring : grid.S[to]) - grid.S[from];
    }
}

/// <summary>What the wall carries on the way, in the few cases that governed it when an opening was taken in hand.</summary>
/// <param name="Picture">The wall's face, the hardest of these cases.</param>
/// <param name="Piers">Piers, clockwise.</param>
/// <param name="Poles">Cob under each pole.</param>
public sealed record LiveStress(WallPicture Picture, Sequence<LivePier> Piers, Sequence<LivePole> Poles);

/// <summary>A pier on the way.</summary>
/// <param name="Address"><c>pier door|south-window</c>.</param>
/// <param name="EdgeMost">Most upright compression of either face, as a mean over a patch, Pa.</param>
/// <param name="EdgeStation">Station of that patch, m.</param>
/// <param name="EdgeHeight">Height of it, m.</param>
/// <param name="EdgeCase">In which case.</param>
public sealed record LivePier(string Address, double EdgeMost, double EdgeStation, double EdgeHeight, WallCase EdgeCase);

/// <summary>Cob under a pole on the way.</summary>
/// <param name="Name">Of the landing.</param>
/// <param name="Pressure">Most upright compression of the top row of cob, as a mean over a patch, Pa.</param>
/// <param name="Case">In which case.</param>
public sealed record LivePole(string Name, double Pressure, WallCase Case);
