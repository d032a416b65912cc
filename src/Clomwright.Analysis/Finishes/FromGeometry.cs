using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Finishes;

/// <summary>What other rooms of the analysis say to plasters; each known or with the reason why not.</summary>
/// <param name="Inside">When the inside face is dry enough.</param>
/// <param name="Outside">When the outside face is dry enough.</param>
/// <param name="Months">The climate of the site, month by month.</param>
public sealed record FinishInputs(Known<PlasterReady> Inside, Known<PlasterReady> Outside, Known<Months> Months)
{
    /// <summary>Nothing is known from elsewhere.</summary>
    public static FinishInputs None { get; } = new(new Message("analysis.finishes.no-drying"), new Message("analysis.finishes.no-drying"), new Message("analysis.finishes.no-months"));
}

/// <summary>Plasters and floor of a placed house.</summary>
public static class FromGeometry
{
    /// <summary>Areas, coats, lath, panels and floor. Total: what is missing is said in the result.</summary>
    public static FinishesResult Of(HouseGeometry geometry, FinishInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(inputs);
        var (assumed, calculations) = (new List<Assumption>(), new List<Calculation>());
        var reveals = Reveals.Of(geometry);
        var faces = Enum.GetValues<Face>().Select(face => FaceOf(geometry, reveals, face, inputs, assumed, calculations)).ToSequence();
        var laths = new LathPlaces(geometry, reveals, calculations);
        var places = laths.All();
        var linings = LiningPlaces.Of(geometry).ToSequence();
        var floor = new FloorBuild(geometry, assumed, calculations).Of();
        assumed.AddRange(Wastes(faces, places, laths, floor));
        if (linings.Count > 0 || geometry.House.Comfort.FloorEdge is not null)
        {
            assumed.Add(Assumed("waste-lining", Dimension.Fraction));
        }

        return new FinishesResult
        {
            Faces = faces, Lath = places, Panels = PanelChoices.Of(geometry.House), Floor = floor, Linings = linings,
            Orders = FinishOrders.Of(geometry, faces, places, linings, floor.Value),
            Assumptions = assumed.Distinct().ToSequence(), Calculations = calculations.ToSequence(),
        };
    }

    private static FacePlaster FaceOf(HouseGeometry geometry, RevealAreas reveals, Face face, FinishInputs inputs, List<Assumption> assumed, List<Calculation> calculations)
    {
        var plain = face == Face.Inside ? geometry.Measures.InsideFaceArea : geometry.Measures.OutsideFaceArea;
        var sides = reveals.Openings.Where(r => r.Face == face).Sum(r => r.Jambs + r.Head + r.Sill);
        var niches = reveals.Niches.Where(n => n.Face == face).Sum(n => n.Back + n.Sides - n.Mouth);
        var sheet = new Worksheet("plaster-area");
        var area = sheet.Step("plaster-area", "A", "A_f + A_r + A_n", plain + sides + niches, Dimension.Area, Sources.Get("wall-geometry"),
            Worksheet.Computed("A_f", "face-net", plain, Dimension.Area), Worksheet.Computed("A_r", "reveals", sides, Dimension.Area), Worksheet.Computed("A_n", "niches", niches, Dimension.Area));
        calculations.Add(sheet.Done with { Place = face == Face.Inside ? "inside face" : "outside face" });

        var materials = geometry.House.Finishes.Where(f => f.Face == face).Select(f => PlasterMaterial.Find(f.Material)).ToList();
        // The plaster that is slowest to stand frost rules the season.
        var rules = materials.OrderByDescending(m => m.Weather?.Months.Value ?? -1).FirstOrDefault();
        return new FacePlaster
        {
            Face = face, Plain = plain, Reveals = sides, Niches = niches, Area = area.Value.Si,
            Coats = new Coats(geometry.House, face, area, assumed, calculations).All(),
            Sealing = materials.FirstOrDefault(m => m.Binder == Binder.Sealing)?.Key,
            Ready = face == Face.Inside ? inputs.Inside : inputs.Outside,
            Season = rules is null ? new Message("analysis.finishes.no-finish") : Seasons.Of(rules, inputs.Months),
            SeasonRule = rules is null ? null : Seasons.Rule(rules),
        };
    }

    private static IEnumerable<Assumption> Wastes(Sequence<FacePlaster> faces, Sequence<LathPlace> places, LathPlaces laths, Known<FloorResult> floor)
    {
        if (faces.Any(f => f.Coats.Any(c => c.Depth > 0)))
        {
            yield return Assumed("waste-plaster", Dimension.Fraction);
        }

        if (faces.Any(f => f.Coats.Any(c => c.Ingredients.Count > 0)) || floor.Value?.Layers.Any(l => l.Ingredients.Count > 0) == true)
        {
            yield return Assumed("soil-loose", Dimension.Density);
            yield return Assumed("sand-loose", Dimension.Density);
            yield return Assumed("plaster-laid", Dimension.Density);
        }

        if (places.Count > 0)
        {
            yield return Assumed("lath-cover", Dimension.Length);
            yield return Assumed("waste-lath", Dimension.Fraction);
            if (places.Any(p => p.Length is null))
            {
                yield return Assumed("lath-embed", Dimension.Length);
            }

            if (places.Any(p => laths.Lap(p.Face).Tag == Tag.Assumed))
            {
                yield return Assumed("lath-lap", Dimension.Length);
            }
        }

        if (floor.Is)
        {
            yield return Assumed("waste-floor-stone", Dimension.Fraction);
            yield return Assumed("waste-floor-earth", Dimension.Fraction);
            if (floor.Value!.Layers.Any(l => l.Sheet is not null))
            {
                yield return Assumed("waste-floor-sheet", Dimension.Fraction);
            }
        }
    }

    private static Assumption Assumed(string key, Dimension dimension)
    {
        var value = PlasterMaterial.Number(key);
        return new Assumption(key, new Message($"analysis.assumed.{key}"), new Amount(value.Value, dimension), value.Source);
    }
}
