using System.Collections.Immutable;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>A wall as a body of cells: cob, holes through it and into it, headers and bond beam of timber, on the stem as a bed of springs.</summary>
/// <remarks>
/// Holes take their share of every cell that they cut. A header fills part of a cell: the cell is then stiff along the wall as both side by side, across it as one behind the other, and weighs as both.
/// </remarks>
internal sealed class WallBody
{
    /// <summary>Cells with more timber than this say nothing of cob.</summary>
    public const double MostTimber = 0.05;

    private const double ModulusLeast = 1e6;

    private readonly double[] timber;
    private readonly bool headersHold;
    private readonly ImmutableArray<ElasticMaterial> cobWeights;
    private readonly ImmutableArray<ElasticMaterial> timberWeights;

    /// <summary>The body of a placed house.</summary>
    /// <param name="geometry">The house.</param>
    /// <param name="strength">Characteristic strength of its cob, Pa; its stiffness is a multiple.</param>
    /// <param name="fineness">How finely.</param>
    /// <param name="headersHold">False: headers are no stiffer along the wall than the cob beside them, as if their ends slipped.</param>
    public WallBody(HouseGeometry geometry, double strength, WallFineness fineness, bool headersHold = true)
        : this(geometry, strength, WallGrid.Of(geometry, fineness), headersHold)
    {
    }

    /// <summary>The same on a grid that is there already, so that what has moved since cuts cells where it now lies.</summary>
    public WallBody(HouseGeometry geometry, double strength, SolidGrid grid, bool headersHold = true)
    {
        this.headersHold = headersHold;
        Geometry = geometry;
        Grid = grid;
        HasBeam = geometry.House.BondBeam is { Depth.Nanometres: > 0 };
        Numbers = WallNumbers.Of(geometry.House.Assumed);
        Modulus = Math.Max(ModulusLeast, Numbers["wall-stiffness"] * strength);
        timber = new double[Grid.Cells];
        var fills = new MaterialList(Modulus, Numbers);
        var material = new int[Grid.Cells];
        foreach (var opening in geometry.Openings.Where(o => o.Header is not null))
        {
            AddHeader(opening, fills, material);
        }

        AddBeam(fills, material);
        var cells = SolidCells.Uniform(Grid, new CellFill(0)).Select((cell, fill) => fill with { Material = material[cell] }).Without(Grid, Voids());
        HasUnknownTimber = fills.HasUnknownTimber;
        (cobWeights, timberWeights) = (fills.CobWeights, fills.TimberWeights);
        var bed = Numbers["wall-base-stiffness"];
        Model = new SolidModel(Grid, fills.Materials, cells, SolidSupports.Bed(Grid, cells, bed, bed / 2, pushesOnly: false));
        Unilateral = SolidSupports.Bed(Grid, cells, bed, bed / 2, pushesOnly: true);
    }

    public HouseGeometry Geometry { get; }

    public SolidGrid Grid { get; }

    /// <summary>With a bed that holds both ways, so that answers may be added up.</summary>
    public SolidModel Model { get; }

    /// <summary>The same bed that lets go where the wall lifts.</summary>
    public SolidSupports Unilateral { get; }

    public bool HasBeam { get; }

    /// <summary>Whether a timber in it is of a kind that is not known.</summary>
    public bool HasUnknownTimber { get; }

    /// <summary>What nobody measured of it.</summary>
    public WallNumbers Numbers { get; }

    /// <summary>Young's modulus of cob, Pa.</summary>
    public double Modulus { get; }

    /// <summary>Rows of cells that are cob.</summary>
    public int CobRows => Grid.Up - (HasBeam ? 1 : 0);

    /// <summary>The model in which only cob weighs, and the one in which only timber does.</summary>
    public SolidModel CobAlone => Model with { Materials = cobWeights };

    /// <summary>The model in which only timber weighs.</summary>
    public SolidModel TimberAlone => Model with { Materials = timberWeights };

    /// <summary>Whether a cell is solid cob.</summary>
    public bool IsCob(int cell) => Model.Cells[cell].IsSolid && !IsTimber(cell);

    /// <summary>Whether a cell, solid or not, holds so much timber that it says nothing of cob.</summary>
    public bool IsTimber(int cell) => timber[cell] > MostTimber;

    /// <summary>Where the bond beam lies, as shares of the thickness at the wall top; all of it without one.</summary>
    public (double From, double To) BeamThrough
    {
        get
        {
            if (Geometry.House.BondBeam is not { } beam)
            {
                return (0, 1);
            }

            var thickness = Geometry.Wall.ThicknessAt(Geometry.Wall.Top.Metres);
            var (middle, half) = (0.5 + beam.Offset.Metres / thickness, beam.Width.Metres / thickness / 2);
            var (from, to) = (Math.Max(0, middle - half), Math.Min(1, middle + half));
            return to - from > 0.02 ? (from, to) : (0, 1);
        }
    }

    private void AddHeader(OpeningPlace opening, MaterialList fills, int[] material)
    {
        var (place, made) = (opening.Header!, opening.Opening.Header!);
        var modulus = Timber.Piece(made.Material, made.Width.Metres, made.Depth.Metres);
        var half = Math.Min(1, place.TotalWidth / place.WallThickness) / 2;
        var region = Region.Of(new GridBox(place.Span.From, place.Span.To, place.Bottom, place.Top, 0.5 - half, 0.5 + half));
        foreach (var (cell, share) in SolidCells.SharesOf(Grid, region))
        {
            if (share > 1e-6 && Grid.Position(cell).K < CobRows)
            {
                timber[cell] = share;
                material[cell] = fills.Mixed(modulus, share, headersHold);
            }
        }
    }

    private void AddBeam(MaterialList fills, int[] material)
    {
        if (Geometry.House.BondBeam is not { } beam || !HasBeam)
        {
            return;
        }

        var whole = fills.Mixed(Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres), 1);
        for (var cell = 0; cell < Grid.Cells; cell++)
        {
            if (Grid.Position(cell).K >= CobRows)
            {
                (timber[cell], material[cell]) = (1, whole);
            }
        }
    }

    /// <summary>What is not there: openings, niches, hollow things built in, and what lies beside the beam in its row.</summary>
    private IEnumerable<Region> Voids()
    {
        foreach (var opening in Geometry.Openings)
        {
            var hole = HoleSection.Of(Geometry, opening);
            var height = Math.Clamp((opening.Sill + opening.Head) / 2, Geometry.Wall.Base.Metres, Geometry.Wall.Top.Metres);
            for (var j = 0; j < Grid.Through; j++)
            {
                // Each layer with the jambs where its middle lies: splays and parallel reveals are wider at one face.
                yield return Taken(hole, OffsetAt(height, (Grid.T[j] + Grid.T[j + 1]) / 2), Grid.T[j], Grid.T[j + 1]);
            }
        }

        foreach (var niche in Geometry.Niches)
        {
            var hole = HoleSection.Of(Geometry, niche);
            var deep = niche.Niche.Depth.Metres / Geometry.Wall.ThicknessAt(niche.Bottom);
            var (from, to) = niche.Niche.Face == Face.Inside ? (-1, deep) : (1 - deep, 2.0);
            yield return Taken(hole, OffsetAt(niche.Bottom, niche.Niche.Face == Face.Inside ? deep / 2 : 1 - deep / 2), from, to);
        }

        foreach (var embed in Geometry.Embeds.Where(e => e.Volume > 0 && e.Embed.Width is not null && IsHollow(e)))
        {
            yield return Taken(embed);
        }

        if (HasBeam)
        {
            var (from, to) = BeamThrough;
            double low = Geometry.Wall.Top.Metres, high = Grid.Z[^1] + 1, length = Geometry.Curve.Length;
            yield return Region.Of(new GridBox(0, length, low, high, -1, from));
            yield return Region.Of(new GridBox(0, length, low, high, to, 2));
        }
    }

    private double OffsetAt(double height, double through)
    {
        var (inside, outside) = (Geometry.Wall.InsideOffset(height), Geometry.Wall.OutsideOffset(height));
        return inside + through * (outside - inside);
    }

    /// <summary>Glass and pipes count as holes; timber built in as cob.</summary>
    private bool IsHollow(EmbedPlace embed) => embed.Embed.Kind is EmbedKind.Bottle or EmbedKind.Sleeve or EmbedKind.Box or EmbedKind.Pipe
        && !Geometry.Openings.Any(o => embed.Height < o.Head && embed.Height > o.Sill && Math.Abs(Math.IEEERemainder(embed.Station - o.Station, Geometry.Curve.Length)) < o.Widest.Width / 2);

    /// <summary>A square prism that displaces as much as the embed does.</summary>
    private Region Taken(EmbedPlace embed)
    {
        var thickness = Geometry.Wall.ThicknessAt(Math.Clamp(embed.Height, Geometry.Wall.Base.Metres, Geometry.Wall.Top.Metres));
        var deep = embed.Embed.Through ? thickness : Math.Clamp(embed.Embed.Depth?.Metres ?? 0, 0.01, thickness);
        var half = Math.Sqrt(embed.Volume / deep) / 2;
        var share = deep / thickness;
        var (from, to) = embed.Embed.Through ? (-1.0, 2.0) : embed.Embed.Face == Face.Inside ? (-1, share) : (1 - share, 2);
        return Region.Of(new GridBox(embed.Station - half, embed.Station + half, embed.Height - half, embed.Height + half, from, to));
    }

    private static Region Taken(HoleSection hole, double offset, double from, double to)
    {
        if (hole.JambsAt(offset) is not { } span)
        {
            return Region.Of(default);
        }

        return hole.IsStraight
            ? Region.Of(new GridBox(span.From, span.To, hole.Sill, hole.Head, from, to))
            : Region.Between(span.From, span.To, s => hole.HeightsAt(Share(s)).Low, s => hole.HeightsAt(Share(s)).High, from, to);

        double Share(double s) => Math.Min(1, Math.Abs(s - span.Middle) / (span.Width / 2));
    }

    /// <summary>Materials as they are needed; each with what its cob and its timber weigh.</summary>
    private sealed class MaterialList
    {
        private readonly List<(ElasticMaterial Both, ElasticMaterial Cob, ElasticMaterial Wood)> list = [];
        private readonly double cob;
        private readonly double poisson;
        private readonly WallNumbers numbers;

        public MaterialList(double modulus, WallNumbers numbers)
        {
            (cob, poisson, this.numbers) = (modulus, numbers["wall-cob-poisson"], numbers);
            list.Add((ElasticMaterial.Isotropic(modulus, poisson, TakeDown.CobDensity), ElasticMaterial.Isotropic(modulus, poisson, TakeDown.CobDensity), ElasticMaterial.Isotropic(modulus, poisson, 0)));
        }

        public bool HasUnknownTimber { get; private set; }

        public ImmutableArray<ElasticMaterial> Materials => [.. list.Select(m => m.Both)];

        public ImmutableArray<ElasticMaterial> CobWeights => [.. list.Select(m => m.Cob)];

        public ImmutableArray<ElasticMaterial> TimberWeights => [.. list.Select(m => m.Wood)];

        /// <summary>Cob with a share of timber whose grain runs along the wall; an unknown timber is as stiff as is assumed.</summary>
        public int Mixed(Timber? timber, double share, bool holds = true)
        {
            HasUnknownTimber |= timber is null;
            var e = timber?.Modulus.Value ?? numbers["wall-timber-modulus"];
            var across = numbers["wall-timber-across"] * e;
            var (nu, shear) = (numbers["wall-timber-poisson"], cob / (2 * (1 + poisson)));
            var sz = Behind(numbers["wall-timber-shear"] * e, shear);
            var along = holds ? Beside(nu, poisson) : poisson;
            var moduli = new OrthotropicModuli(
                holds ? share * e + (1 - share) * cob : cob, Behind(across, cob), Behind(across, cob), along, Beside(nu, poisson), along,
                sz, Behind(numbers["wall-timber-rolling"] * e, shear), sz);
            var wood = share * (timber?.Weight.Value ?? TakeDown.BeamWeight) / UsUnits.Gravity;
            var earth = (1 - share) * TakeDown.CobDensity;
            list.Add((ElasticMaterial.Orthotropic(moduli, wood + earth), ElasticMaterial.Orthotropic(moduli, earth), ElasticMaterial.Orthotropic(moduli, wood)));
            return list.Count - 1;

            double Behind(double a, double b) => 1 / (share / a + (1 - share) / b);

            double Beside(double a, double b) => share * a + (1 - share) * b;
        }
    }
}
