using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Stem, wall, lifts, bond beam, tees and finishes.</summary>
internal static class WallChecks
{
    /// <summary>Steeper faces than this are slips of the hand.</summary>
    private const double TaperMost = 0.5;

    public static void Of(House house, Checks checks)
    {
        var (stem, wall) = (house.Stem, house.Wall);
        checks.Size("stem.width", stem.Width, Limits.Thick);
        var based = checks.Height("stem.top", stem.Top);
        checks.Word("stem.material", stem.Material);
        checks.Word("stem.dampBreak", stem.DampBreak);
        checks.Positive("stem.allowedPressure", stem.AllowedPressure, 1e9);
        if (stem.Keys is { } keys)
        {
            checks.Size("stem.keys.spacing", keys.Spacing, Limits.Height);
            checks.Size("stem.keys.height", keys.Height, Limits.Thick);
            checks.Size("stem.keys.width", keys.Width, Limits.Thick);
        }

        if (stem.InsideOffset is { } offset)
        {
            _ = checks.NotBelow("stem.insideOffset", offset, -Limits.Thick) && checks.NotAbove("stem.insideOffset", offset, Limits.Thick);
        }

        var placed = checks.Height("wall.top", wall.Top) && based;
        if (placed && wall.Top <= stem.Top)
        {
            placed = false;
            checks.Error("wall.top", "building.wall-top", ("top", new Argument.Exact(wall.Top)), ("stem", new Argument.Exact(stem.Top)));
        }

        var faces = checks.Size("wall.thicknessAtTop", wall.ThicknessAtTop, Limits.Thick)
            & checks.Within("wall.outsideTaper", wall.OutsideTaper, -TaperMost, TaperMost)
            & checks.Within("wall.insideTaper", wall.InsideTaper, -TaperMost, TaperMost);
        if (placed && faces && ThicknessAtBase(house) <= 0)
        {
            checks.Error("wall.outsideTaper", "building.taper-eats-wall", ("thickness", new Argument.Exact(wall.ThicknessAtTop)));
        }

        if (placed)
        {
            Lifts(house, checks);
        }

        if (house.BondBeam is { } beam)
        {
            checks.Size("bondBeam.width", beam.Width, Limits.Thick);
            checks.Size("bondBeam.depth", beam.Depth, Limits.Thick);
            _ = checks.NotBelow("bondBeam.offset", beam.Offset, -Limits.Thick) && checks.NotAbove("bondBeam.offset", beam.Offset, Limits.Thick);
            checks.Word("bondBeam.material", beam.Material);
            checks.Size("bondBeam.lap", beam.Lap, Limits.Height);
            checks.Size("bondBeam.bolt", beam.Bolt, Limits.Thick);
            checks.Count("bondBeam.bolts", beam.Bolts, 1, Limits.Items);
        }

        if (house.Tees is { } tees)
        {
            checks.Size("tees.spacing", tees.Spacing, Limits.Height);
            checks.Size("tees.bar", tees.Bar, Limits.Height);
            checks.Size("tees.timber", tees.Timber, Limits.Thick);
            checks.Size("tees.bolt", tees.Bolt, Limits.Thick);
            checks.Word("tees.material", tees.Material);
            if (checks.Size("tees.depth", tees.Depth, Limits.Height) && placed && tees.Depth >= wall.Top - stem.Top)
            {
                checks.Error("tees.depth", "building.tees-depth", ("depth", new Argument.Exact(tees.Depth)), ("wall", new Argument.Exact(wall.Top - stem.Top)));
            }
        }
    }

    /// <summary>Thickness where the cob begins, m.</summary>
    public static double ThicknessAtBase(House house) =>
        house.Wall.ThicknessAtTop.Metres + (house.Wall.OutsideTaper.RiseOverRun + house.Wall.InsideTaper.RiseOverRun) * (house.Wall.Top.Metres - house.Stem.Top.Metres);

    private static void Lifts(House house, Checks checks)
    {
        var (height, tops, bottom, top) = (house.Lifts.Height, house.Lifts.Tops, house.Stem.Top, house.Wall.Top);
        if (height is not null == tops.Count > 0)
        {
            checks.Error("lifts", height is null ? "building.lifts-neither" : "building.lifts-both");
            return;
        }

        if (height is { } each)
        {
            var least = new Length((top - bottom).Nanometres / Limits.Lifts);
            if (checks.Size("lifts.height", each, Limits.Height) && each < least)
            {
                checks.Error("lifts.height", "building.lifts-many", ("height", new Argument.Exact(each)), ("most", Limits.Lifts));
            }

            return;
        }

        checks.Count("lifts.tops", tops.Count, 1, Limits.Lifts);
        for (var i = 0; i < tops.Count; i++)
        {
            var below = i == 0 ? bottom : tops[i - 1];
            if (tops[i] <= below)
            {
                checks.Error($"lifts.tops[{i}]", "building.lift-order", ("top", new Argument.Exact(tops[i])), ("below", new Argument.Exact(below)));
                return;
            }
        }

        if (tops[^1] != top)
        {
            checks.Error($"lifts.tops[{tops.Count - 1}]", "building.lift-last", ("last", new Argument.Exact(tops[^1])), ("top", new Argument.Exact(top)));
        }
    }
}
