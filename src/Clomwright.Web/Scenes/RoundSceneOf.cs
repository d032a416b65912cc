using System.Runtime.InteropServices;
using Clomwright.Analysis.Comfort;
using Clomwright.Analysis.Weather;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Solids;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>The house in the round as the page draws it.</summary>
public static class RoundSceneOf
{
    private const int Around = 180;

    /// <summary>What lies on floor and wall is drawn this much over them, m.</summary>
    private const double Over = 0.004;

    private static readonly (string Key, SolidPart[] Parts)[] Kinds =
    [
        ("wall", [SolidPart.Wall]), ("stem", [SolidPart.Stem]), ("frames", [SolidPart.Leaf, SolidPart.Glass]), ("headers", [SolidPart.Header]), ("embeds", [SolidPart.Embed]), ("tees", [SolidPart.Tee]),
        ("beam", [SolidPart.BondBeam]), ("roof", [SolidPart.Pole, SolidPart.Secondary]),
    ];

    /// <summary>The scene.</summary>
    /// <param name="study">The house.</param>
    /// <param name="revision">Which one it is.</param>
    /// <param name="words">The language.</param>
    public static RoundScene Scene(HouseStudy study, long revision, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var geometry = study.Geometry;
        var (shape, roof) = (HouseSolids.Of(geometry), RoofSolids.Of(geometry, study.Roof));
        SolidMesh[] all = [.. shape, .. roof.Solids];
        SpacePoint low = Corner(all, Math.Min), high = Corner(all, Math.Max);
        return new RoundScene
        {
            Name = study.House.Name,
            Revision = revision,
            Says = pen.Say(roof.Solids.Count == 0 ? "web.round.says-open" : "web.round.says",
                ("length", Amount.Metres(geometry.Curve.Length)), ("height", (Amount)(geometry.Wall.Top - geometry.Wall.Base)), ("openings", geometry.Openings.Count), ("poles", roof.Solids.Count(s => s.Part == SolidPart.Pole))),
            Ring = Pen.Round(geometry.Curve.Length), Bottom = geometry.Wall.Base.Metres, Top = geometry.Wall.Top.Metres,
            Middle = [Pen.Round((low.East + high.East) / 2), Pen.Round((low.North + high.North) / 2), Pen.Round((low.Up + high.Up) / 2)],
            Radius = Pen.Round((high - low).Norm / 2),
            Ground = Math.Min(study.House.Site.Grade?.Metres ?? 0, 0),
            Floor = [.. Enumerable.Range(0, Around).Select(i => geometry.Curve.At(geometry.Curve.Length * i / Around)).Select(p => Pen.Point(p.East, p.North))],
            Bodies = [.. all.Select(s => Body(s, geometry, pen))],
            Deck = Pieces(roof.Deck),
            Kinds = [.. Kinds.Where(k => all.Any(s => k.Parts.Contains(s.Part))).Select(k => new NamedKind(k.Key, pen.Say($"web.round.kind.{k.Key}")))],
            NoSun = SunOf(study).NotChecked is { } why ? pen.Say(why) : null,
        };
    }

    /// <summary>The sun of a moment.</summary>
    /// <param name="study">The house.</param>
    /// <param name="day">Which day.</param>
    /// <param name="hour">Of the sun's own time.</param>
    /// <param name="words">The language.</param>
    public static RoundSun Sun(HouseStudy study, DateOnly day, double hour, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        if (SunOf(study).Value is not { } sun)
        {
            return new RoundSun(pen.Say(SunOf(study).NotChecked!), null, "", "");
        }

        var place = sun.Place(day, hour);
        if (!sun.Skyline.IsClear(place))
        {
            return new RoundSun(pen.Say("web.round.no-sun"), null, "", "");
        }

        var patches = sun.At(place);
        var pairs = patches.SelectMany(p => (Sequence<SpacePoint>[])[p.Floor.Select(q => SpacePoint.Of(q, Over)).ToSequence(), p.Wall.Select(q => OnWall(study.Geometry, q)).ToSequence()]).Where(p => p.Count > 3).ToArray();
        var toward = place.Toward;
        return new RoundSun(
            patches.Count == 0
                ? pen.Say("web.round.sun-outside")
                : pen.Say("web.comfort.sun-now", ("area", new Amount(patches.Sum(p => p.FloorArea), Dimension.Area)), ("openings", new Argument.List(patches.Select(p => (Argument)p.Opening).ToSequence()))),
            [Pen.Round(toward.East), Pen.Round(toward.North), Pen.Round(toward.Up)],
            Floats(pairs.SelectMany(Filled)), Pieces(pairs.Select(p => p.Plus(p[0]))));
    }

    private static Analysis.Known<SunInRoom> SunOf(HouseStudy study) => FromRoof.SunOf(study.Geometry, study.Roof, study.Weather);

    private static SpacePoint OnWall(HouseGeometry geometry, WallPoint place) =>
        SpacePoint.Of(geometry.Curve.At(place.Along, geometry.Wall.InsideOffset(place.Up) - Over), place.Up);

    /// <summary>A patch is told along its one side and back along the other, place by place.</summary>
    private static IEnumerable<SpacePoint> Filled(Sequence<SpacePoint> patch)
    {
        for (var i = 0; i + 1 < patch.Count / 2; i++)
        {
            var (a, b, c, d) = (patch[i], patch[i + 1], patch[^(i + 2)], patch[^(i + 1)]);
            SpacePoint[] two = [a, b, c, a, c, d];
            foreach (var point in two)
            {
                yield return point;
            }
        }
    }

    private static SpacePoint Corner(SolidMesh[] solids, Func<double, double, double> pick) => solids.Length == 0 ? default
        : solids.SelectMany(s => s.Points).Aggregate((a, b) => new(pick(a.East, b.East), pick(a.North, b.North), pick(a.Up, b.Up)));

    private static RoundBody Body(SolidMesh solid, HouseGeometry geometry, Pen pen)
    {
        var (bottom, height) = (geometry.Wall.Base.Metres, (geometry.Wall.Top - geometry.Wall.Base).Metres);
        var kind = Kinds.First(k => k.Parts.Contains(solid.Part)).Key;
        return new RoundBody(
            solid.Name, Label(solid, pen), kind, solid.Part is SolidPart.Header or SolidPart.Embed or SolidPart.Tee or SolidPart.Leaf or SolidPart.Glass ? Pen.Round(solid.Points.Min(p => p.Up)) : null,
            Floats(solid.Points), Bytes(solid.Normals), Whole(solid.Triangles),
            Floats(solid.Places.SelectMany(p => new[] { (float)(p.Along / geometry.Curve.Length), (float)((p.Up - bottom) / height) })), Pieces(solid.Edges), Pieces(solid.Joints));
    }

    /// <summary>What people call it: the author's name stands after the first word of a derived one.</summary>
    private static string Label(SolidMesh solid, Pen pen)
    {
        var name = solid.Part is SolidPart.Embed or SolidPart.Wall or SolidPart.Stem or SolidPart.BondBeam ? solid.Name : solid.Name[(solid.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..];
        return pen.Say($"web.round.part.{solid.Part.ToString().ToLowerInvariant()}", ("name", name));
    }

    private static string Pieces(IEnumerable<Sequence<SpacePoint>> lines) => Floats(lines.SelectMany(l => Enumerable.Range(0, Math.Max(0, l.Count - 1)).SelectMany(i => new[] { l[i], l[i + 1] })));

    private static string Floats(IEnumerable<SpacePoint> points) => Floats(points.SelectMany(p => new[] { (float)p.East, (float)p.North, (float)p.Up }));

    private static string Floats(IEnumerable<float> numbers) => Text<float>([.. numbers]);

    private static string Whole(Sequence<int> numbers) => Text(numbers.AsSpan());

    private static string Bytes(Sequence<SpacePoint> normals) => Text<sbyte>([.. normals.SelectMany(n => new[] { Share(n.East), Share(n.North), Share(n.Up), (sbyte)0 })]);

    private static sbyte Share(double number) => (sbyte)Math.Clamp(Math.Round(127 * number), -127, 127);

    /// <summary>Numbers in the order of bytes that browsers read.</summary>
    private static string Text<T>(ReadOnlySpan<T> numbers)
        where T : unmanaged
    {
        var bytes = MemoryMarshal.AsBytes(numbers).ToArray();
        if (!BitConverter.IsLittleEndian)
        {
            foreach (var part in bytes.Chunk(Marshal.SizeOf<T>()).Index())
            {
                part.Item.AsSpan().Reverse();
                part.Item.CopyTo(bytes, part.Index * part.Item.Length);
            }
        }

        return Convert.ToBase64String(bytes);
    }
}
