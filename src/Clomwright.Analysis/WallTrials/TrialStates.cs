using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Solid;
using Hardest = Clomwright.Analysis.Structure.Hardest;

namespace Clomwright.Analysis.WallTrials;

/// <summary>The finished wall young under its roof, with its foot soaked, over settled ground and pushed by its roof: each a body of its own on a foot that lets go, under the loads that rest on it.</summary>
internal sealed class TrialStates
{
    /// <summary>Places of a dip round the ring.</summary>
    private const int Dips = 12;

    /// <summary>Loads looked at in each trial: those that press hardest of all that rest.</summary>
    private const int MostLoads = 8;

    private static readonly double[] Way = [0, 0.5, 1, 1.25, 1.5, 2], Skins = [0.125, 0.25, 0.375];

    private readonly TrialWall wall;
    private readonly WallBody body;
    private readonly RoofResult roof;
    private readonly double dry;
    private readonly (WallCase Case, NodalLoad Load)[] resting;

    /// <param name="wall">The wall.</param>
    /// <param name="roof">On it.</param>
    /// <param name="dry">Characteristic strength of its dry cob, Pa.</param>
    public TrialStates(TrialWall wall, RoofResult roof, double dry)
    {
        (this.wall, this.roof, this.dry, body) = (wall, roof, dry, wall.Body);
        var cases = LoadCases.Of(body, wall.Basis, roof).Cases.Where(c => c.From is null && c.Soil is null).ToArray();
        double Presses(WallCase one) => wall.Basis.Press.Sum(p => one.Coefficients[p]);
        double Uneven(WallCase one) => wall.Basis.Press.Length > 0 ? wall.Basis.Press.Max(p => one.Coefficients[p]) : 0;
        WallCase[] kept = [cases[0], .. cases.Skip(1).OrderByDescending(Presses).Take(MostLoads / 2), .. cases.Skip(1).OrderByDescending(Uneven).Take(MostLoads / 2)];
        resting = [.. kept.Distinct().Take(MostLoads).Select(c => (c, wall.Load(c)))];
    }

    /// <summary>As stiff and strong as it has dried by the day of its roof, under the stages of the roof up to wet soil.</summary>
    public Known<YoungWall> Young(WallDryness dryness, bool planned)
    {
        if (dryness.Roof.Value is not { } day)
        {
            return dryness.Roof.NotChecked!;
        }

        var (grid, rows) = (body.Grid, Enumerable.Range(0, body.Grid.Up).Select(wall.LiftOf).ToArray());
        var bays = Enumerable.Range(0, grid.Around).Select(i => TrialWall.BayOf(grid, dryness.Bays, wall.Geometry.Curve.Length, i)).ToArray();
        double Strength(int row, int column) => rows[row] < 0 ? dry : Math.Min(dry, day.Strength[rows[row]][bays[column]]);
        var model = wall.Model(body.Model.Cells.Select((cell, fill) =>
        {
            var (i, k, _) = grid.Position(cell);
            return body.IsTimber(cell) ? fill : fill with { Stiffness = Math.Max(1e6 / body.Modulus, Strength(k, i) / dry) };
        }));
        string[] stages = ["bare", "decked", "soilDry", "soilWet"];
        var loads = LoadCases.Of(body, wall.Basis, roof).Cases.Where(c => c.Soil is null && stages.Contains(c.Sense.Split('/')[^1])).Select(c => (Case: c, Load: wall.Load(c))).ToArray();
        if (loads.Length == 0)
        {
            return new Message("analysis.trials.no-roof-stages");
        }

        if (wall.Solve(model, [.. loads.Select(l => l.Load)]) is not { Stands: true } solved)
        {
            return new Message("analysis.trials.nothing-holds");
        }

        var (place, one) = Worst(wall.Sheet(model), solved, Strength, _ => true);
        return new YoungWall(day.Day ?? 0, planned, place!, loads[one].Case, dryness.RoofSafety, day.Strength.Min(l => l.Min()) / dry);
    }

    /// <summary>Soaked to the height and by the law of the hand, all round, over a part, and in a skin.</summary>
    public Known<SoakedWall> Soaked(Drying.Strength law)
    {
        var (grid, height, safety) = (body.Grid, body.Numbers["wall-wet-height"], body.Numbers["wall-wet-safety"]);
        var low = wall.Geometry.Wall.Base.Metres;
        bool Low(int row) => row < body.CobRows && (grid.Z[row] + grid.Z[row + 1]) / 2 < low + height;
        double Water(double way) => way <= 1 ? law.Equilibrium + way * (law.PlasticLimit - law.Equilibrium) : law.PlasticLimit + (way - 1) * (law.LiquidLimit - law.PlasticLimit);
        var all = new List<SoakedState>();
        foreach (var way in Way)
        {
            if (Soak(Water(way), law, Low, _ => true) is { } state)
            {
                all.Add(state);
            }
        }

        if (all.Count < Way.Length)
        {
            return new Message("analysis.trials.nothing-holds");
        }

        // The part that is worst at its plastic limit is followed through every water content.
        var parts = Parts().Select(p => (p.Address, p.Within, State: Soak(law.PlasticLimit, law, Low, p.Within))).Where(p => p.State is not null).ToArray();
        var worst = parts.MinBy(p => p.State!.Margin);
        var part = Way.Select(way => Soak(Water(way), law, Low, worst.Within)).OfType<SoakedState>().ToSequence();
        return new SoakedWall(
            height, all.ToSequence(), part, worst.Address, SkinsOf(Low).ToSequence(), law.PlasticLimit, all[Array.IndexOf(Way, 1)].Soaked, safety);
    }

    /// <summary>A dip of the ground, its edge fading as a cosine, at twelve places round the wall.</summary>
    public Known<SettledWall> Settled()
    {
        var (depth, arc, ring) = (body.Numbers["wall-settlement"], body.Numbers["wall-settlement-arc"], wall.Geometry.Curve.Length);
        var cells = body.Model.Cells;
        var level = wall.Model(cells);
        var sheet = wall.Sheet(level);
        WallCase[] cases = [resting[0].Case, .. resting.Length > 1 ? [resting[1].Case] : (WallCase[])[]];
        NodalLoad[] loads = [resting[0].Load, .. resting.Length > 1 ? [resting[1].Load] : (NodalLoad[])[]];
        if (wall.Solve(level, loads) is not { Stands: true } before)
        {
            return new Message("analysis.trials.nothing-holds");
        }

        var (edgeBefore, _, _, _) = Read(sheet, before);
        SettledWall? worst = null;
        var (tension, pulled, lifted, standing) = (0.0, 0.0, 0.0, true);
        for (var d = 0; d < Dips; d++)
        {
            var middle = ring * d / Dips;
            var springs = level.Supports.Springs.Select(s => s.Axis == 2 ? s with { Settlement = -depth * Dip(body.Grid.S[s.Node / (body.Grid.Through + 1) / (body.Grid.Up + 1)] - middle) } : s);
            var model = level with { Supports = new SolidSupports(springs, []) };
            if (wall.Solve(model, loads) is not { Stands: true } solved)
            {
                standing = false;
                continue;
            }

            var (edge, pull, one, _) = Read(sheet, solved);
            (tension, pulled) = pull > tension ? (pull, middle) : (tension, pulled);
            lifted = Math.Max(lifted, solved.Lifted);
            worst = worst is null || edge > worst.Edge ? new SettledWall(depth, arc, middle, edge, edgeBefore, 0, 0, 0, true, cases[one]) : worst;
        }

        return worst is null ? new Message("analysis.trials.nothing-holds") : worst with { Tension = tension, TensionStation = pulled, Lifted = lifted, Standing = standing };

        double Dip(double from) => Math.Abs(Math.IEEERemainder(from, ring)) is var x && x < arc / 2 ? (1 + Math.Cos(2 * Math.PI * x / arc)) / 2 : 0;
    }

    /// <summary>Under the hardest resting load, every pole pushes outward as hard as the hardest, and round the ring either way.</summary>
    public Known<PushedWall> Pushed(OutwardPush push)
    {
        if (push.Outward <= 0 || resting.Length < 2)
        {
            return new Message("analysis.trials.no-push");
        }

        var model = wall.Model(body.Model.Cells);
        var (one, rest) = resting[1];
        var without = rest;
        if (wall.Basis.Thrust.Length > 0)
        {
            var bare = (double[])one.Coefficients.Clone();
            Array.ForEach(wall.Basis.Thrust, t => bare[t] = 0);
            without = wall.Load(one with { Coefficients = bare });
        }

        NodalLoad[] loads = [without, without + push.On(wall, 1), without + push.On(wall, -1)];
        if (wall.Solve(model, loads) is not { } solved)
        {
            return new Message("analysis.trials.nothing-holds");
        }

        var sheet = wall.Sheet(model);
        var (before, _, _, _) = Read(sheet, solved with { Answers = solved.Answers[..1], Stresses = solved.Stresses[..1] });
        var (edge, pull, _, _) = Read(sheet, solved with { Answers = solved.Answers[1..], Stresses = solved.Stresses[1..] });
        return new PushedWall(push.Slipping, push.Outward, push.Round, edge, before, pull, solved.Lifted, solved.Stands, push.Holds, one) { Turns = push.Turns };
    }

    /// <summary>Most upright pressure, most tension, the load of the pressure and its stack.</summary>
    private static (double Edge, double Tension, int Load, int Stack) Read(WallSheet sheet, TrialWall.Solved solved)
    {
        var envelope = new Envelope(sheet);
        for (var n = 0; n < solved.Stresses.Length; n++)
        {
            envelope.Take(n, sheet.Means(solved.Stresses[n]));
        }

        var stacks = Enumerable.Range(0, sheet.Count).Where(s => sheet.Share[s] > 0).ToArray();
        var worst = stacks.MaxBy(s => envelope.Upright[s]);
        return (envelope.Upright[worst], stacks.Max(s => envelope.Tension[s]), envelope.UprightCase[worst], worst);
    }

    /// <summary>The place with least margin among some columns and rows, over all loads.</summary>
    private static (PressedPlace? Place, int Load) Worst(WallSheet sheet, TrialWall.Solved solved, Func<int, int, double> strength, Func<(int Row, int Column), bool> within)
    {
        (PressedPlace? Place, int Load) worst = (null, 0);
        for (var n = 0; n < solved.Stresses.Length; n++)
        {
            var means = sheet.Means(solved.Stresses[n]);
            for (var stack = 0; stack < sheet.Count; stack++)
            {
                var (row, column) = (stack % sheet.Rows, stack / sheet.Rows);
                if (sheet.Share[stack] <= 0 || !within((row, column)))
                {
                    continue;
                }

                var place = new PressedPlace(sheet.CobStationOf(stack), sheet.HeightOf(stack), Hardest.Pressure(means, stack), strength(row, column));
                worst = worst.Place is null || place.Margin < worst.Place.Margin ? (place, n) : worst;
            }
        }

        return worst;
    }

    private SoakedState? Soak(double water, Drying.Strength law, Func<int, bool> low, Func<double, bool> within)
    {
        var grid = body.Grid;
        var strength = law.Compressive(water);
        var columns = Enumerable.Range(0, grid.Around).Select(i => within((grid.S[i] + grid.S[i + 1]) / 2)).ToArray();
        bool Is(int row, int column) => low(row) && columns[column];
        var model = wall.Model(body.Model.Cells.Select((cell, fill) =>
        {
            var (i, k, _) = grid.Position(cell);
            return Is(k, i) && !body.IsTimber(cell) ? fill with { Stiffness = Math.Max(1e6 / body.Modulus, Math.Min(1, strength / law.Dry)) } : fill;
        }));
        if (wall.Solve(model, [.. resting.Select(r => r.Load)]) is not { Stands: true } solved)
        {
            return null;
        }

        var sheet = wall.Sheet(model);
        var soaked = Worst(sheet, solved, (row, column) => strength, at => Is(at.Row, at.Column)).Place!;
        var rest = Worst(sheet, solved, (row, column) => law.Dry, at => !Is(at.Row, at.Column)).Place!;
        return new SoakedState(water, strength, soaked, rest);
    }

    /// <summary>Each pier by itself; quarters of the ring where nothing is open.</summary>
    private IEnumerable<(string Address, Func<double, bool> Within)> Parts()
    {
        var (geometry, ring) = (wall.Geometry, wall.Geometry.Curve.Length);
        bool In(double s, double from, double width) => (s - from) % ring is var along && (along < 0 ? along + ring : along) < width;
        return geometry.Piers.Count > 0
            ? geometry.Piers.Select(p => (p.Address, (Func<double, bool>)(s => In(s, p.Span.From, p.Span.Width))))
            : Enumerable.Range(0, 4).Select(n => ($"arc {n + 1}", (Func<double, bool>)(s => In(s, n * ring / 4, ring / 4))));
    }

    private IEnumerable<SoakedSkin> SkinsOf(Func<int, bool> low)
    {
        var (grid, wallOf) = (body.Grid, wall.Geometry.Wall);
        var top = Enumerable.Range(0, body.CobRows).Where(low).Select(k => grid.Z[k + 1]).DefaultIfEmpty(grid.Z[0]).Max();
        var thickness = wallOf.ThicknessAt(wallOf.Base.Metres);
        foreach (var faces in (string[])["outside", "inside", "both"])
        {
            foreach (var share in Skins)
            {
                var cells = body.Model.Cells;
                cells = faces != "inside" ? cells.Without(grid, Region.Of(new GridBox(grid.S[0], grid.S[^1], grid.Z[0] - 1, top, 1 - share, 2))) : cells;
                cells = faces != "outside" ? cells.Without(grid, Region.Of(new GridBox(grid.S[0], grid.S[^1], grid.Z[0] - 1, top, -1, share))) : cells;
                var model = wall.Model(cells);
                var solved = wall.Solve(model, [.. resting.Select(r => r.Load)]);
                var place = solved is null ? new PressedPlace(0, 0, double.PositiveInfinity, dry) : Worst(wall.Sheet(model), solved, (_, _) => dry, _ => true).Place!;
                yield return new SoakedSkin(faces, share * thickness, place, solved is { Stands: true });
            }
        }
    }
}
