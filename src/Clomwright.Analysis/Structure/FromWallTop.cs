using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>The wall under what its top hands down.</summary>
public static class FromWallTop
{
    private const int MostTogether = 24;

    /// <summary>Parts into which all cases are cut to be gone through beside each other; what comes out does not depend on it.</summary>
    private const int PartsOfCases = 4;

    /// <summary>Reactions that miss the loads by more than this share make the model worthless.</summary>
    public const double ReactionErrorMost = 1e-9;

    /// <summary>Stresses of the wall in every stage and combination; or why there are none.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="top">The wall top: where poles sit off the middle.</param>
    /// <param name="strength">Of this cob.</param>
    /// <param name="fineness">How finely; null takes the usual.</param>
    /// <param name="watch">Who waits and may give up; null where nobody does.</param>
    /// <exception cref="OperationCanceledException">The one who waited gave up.</exception>
    public static Known<StructureResult> Of(HouseGeometry geometry, RoofResult roof, WallTopResult top, CobStrength strength, WallFineness? fineness = null, Watch? watch = null) =>
        Of(geometry, roof, top, strength, WallChange.None, fineness, watch);

    /// <summary>The same with something taken otherwise than it is described, to see what hangs on it.</summary>
    internal static Known<StructureResult> Of(HouseGeometry geometry, RoofResult roof, WallTopResult top, CobStrength strength, WallChange change, WallFineness? fineness = null, Watch? watch = null)
    {
        if (WhyNot(geometry) is { } why)
        {
            return why;
        }

        var body = new WallBody(geometry, strength.Characteristic, fineness ?? WallFineness.Usual, change.HeadersHold);
        if (body.Grid.FoldedCells().Count > 0)
        {
            return new Message("analysis.structure.folds");
        }

        var soil = SoilPressure.Of(geometry.House.Site, geometry.Wall.Base.Metres);
        var basis = new BasisLoads(body, change.Seats(geometry, top), roof.Wind.Value, LoadCases.Thrusts(geometry, roof), soil);
        var stop = watch?.Cancelled ?? default;
        stop.ThrowIfCancellationRequested();
        // Loads and sheet do not wait for the factor.
        var beside = Task.Run(() =>
        {
            basis.MakeAll();
            return new WallSheet(body, body.Numbers["wall-stress-patch"]);
        });
        using var elastic = new ElasticBody(body.Model);
        var sheet = beside.GetAwaiter().GetResult();
        if (elastic.LooseColumn is { } loose)
        {
            return Message.Of("analysis.structure.loose", ("station", Amount.Metres(body.Grid.S[loose / (body.Grid.Up + 1)])));
        }

        return new WallStudy(body, basis, elastic, sheet, roof, strength, stop).Result(soil, change.Roof);
    }

    private static Message? WhyNot(HouseGeometry geometry) =>
        geometry.Wall.Top <= geometry.Wall.Base ? new Message("analysis.structure.no-wall")
        : geometry.Curve.ConcavityMax * Math.Max(geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres), geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres)) >= 1 ? new Message("analysis.structure.folds")
        : null;

    /// <summary>One solved wall on its way to a result; given up between two steps of the way.</summary>
    private sealed class WallStudy(WallBody body, BasisLoads basis, ElasticBody elastic, WallSheet sheet, RoofResult roof, CobStrength strength, CancellationToken stop)
    {
        private readonly HouseGeometry geometry = body.Geometry;
        private readonly Landing[] landings = [.. body.Geometry.Landings.Where(l => !l.Secondary)];
        private readonly PierSections[] piers = [.. body.Geometry.Piers.Select(p => new PierSections(body, p)).Where(p => p.Rows.Length > 0)];

        public Known<StructureResult> Result(SoilPressure? soil, double roofFactor)
        {
            stop.ThrowIfCancellationRequested();
            var answers = WallAnswers.Of(elastic, basis, sheet, body, piers, stop);
            if (!(answers.Checks.ReactionError <= ReactionErrorMost))
            {
                return Message.Of("analysis.structure.unbalanced", ("error", Amount.Number(answers.Checks.ReactionError)));
            }

            var (cases, missing, assumed) = LoadCases.Of(body, basis, roof, roofFactor);
            HeaderSeat[] seats = [.. HeaderSeat.Of(geometry, sheet)];
            stop.ThrowIfCancellationRequested();
            var (hardest, pulls) = Linear(answers, cases, () => new Hardest(sheet, piers, landings, seats, new PierUse(body, piers, strength.Allowable)));
            stop.ThrowIfCancellationRequested();
            var resolved = Resolve(answers, cases, hardest, pulls);
            var level = body.Numbers["wall-tension-unlooked"] * strength.Characteristic;
            var allowed = Allowed();
            return new StructureResult
            {
                Division = new WallDivision(body.Grid.Around, body.CobRows, body.Grid.Through, elastic.ActiveDofs, body.Modulus),
                Patch = body.Numbers["wall-stress-patch"],
                Piers = Piers(answers, cases, hardest).ToSequence(),
                Landings = Landings(answers, cases, hardest).ToSequence(),
                Headers = hardest.Ends.Select((end, i) => new HeaderStress(end.Opening, end.Left, hardest.EndPressure[i], cases[hardest.EndCase[i]])).ToSequence(),
                Layout = WallLayout.Of(body, basis, answers.Answers, LoadCases.RoofWeight(roof, "")),
                Soil = soil,
                Tension = TensionZones.Of(geometry, body, sheet, hardest.Sheet, cases, level).ToSequence(),
                TensionLevel = level,
                TensionMost = Enumerable.Range(0, sheet.Count).Where(s => sheet.Share[s] > 0).Max(s => hardest.Sheet.Tension[s]),
                Base = resolved with { Pulling = pulls.Count(p => p > 0) },
                Picture = Picture(hardest.Sheet),
                Checks = answers.Checks,
                Allowed = allowed,
                Cases = cases.Length,
                Missing = missing is [var first, ..] ? first : null,
                Assumptions = [.. Assumptions(), .. assumed, .. soil?.Assumptions ?? []],
            };
        }

        /// <summary>All cases with a foot that holds both ways, some of them beside others; how hard each pulls.</summary>
        private static (Hardest Hardest, double[] Pulls) Linear(WallAnswers answers, WallCase[] cases, Func<Hardest> fresh)
        {
            var pulls = new double[cases.Length];
            var parts = Enumerable.Range(0, PartsOfCases).ToArray().EachBesideOthers(part =>
            {
                var hardest = fresh();
                var (fields, forces, feet) = (new CaseSums(answers.Fields), new CaseSums(answers.Forces), new CaseSums(answers.Foot));
                var (field, force, foot) = (new double[answers.Fields[0].Length], new double[answers.Forces[0].Length], new double[answers.Foot[0].Length]);
                for (var i = part * cases.Length / PartsOfCases; i < (part + 1) * cases.Length / PartsOfCases; i++)
                {
                    fields.Of(cases[i], field);
                    forces.Of(cases[i], force);
                    feet.Of(cases[i], foot);
                    hardest.Take(i, field, force);
                    var (high, low) = (foot.Length > 0 ? foot.Max() : 0, foot.Length > 0 ? foot.Min() : 0);
                    pulls[i] = high > 1e-9 * Math.Abs(low) ? high : 0;
                }

                return hardest;
            });
            foreach (var later in parts[1..])
            {
                parts[0].Take(later);
            }

            return (parts[0], pulls);
        }

        /// <summary>Solves the cases that govern and pull again with a foot that lets go, and the one that pulls hardest.</summary>
        private BaseContact Resolve(WallAnswers answers, WallCase[] cases, Hardest hardest, double[] pulls)
        {
            var sheetOf = hardest.Sheet;
            var edges = piers.SelectMany(p => p.Stacks(sheet)).Select(s => sheetOf.UprightCase[s]);
            var most = Enumerable.Range(0, sheet.Count).Where(s => sheet.Share[s] > 0).MaxBy(s => sheetOf.Tension[s]);
            int[] wanted = [.. piers.Length > 0 ? piers.Select(Governing) : [], .. hardest.BearingCase, sheetOf.TensionCase[most], Array.IndexOf(pulls, pulls.Max())];
            int[] again = [.. wanted.Distinct().Where(i => pulls[i] > 0).OrderByDescending(i => pulls[i]).Take(MostTogether)];
            if (again.Length == 0)
            {
                return new BaseContact(0, 0, 0, null, true);
            }

            elastic.Become(body.Model with { Supports = body.Unilateral });
            var loads = again.Select(i => NodalLoad.Sum(basis.All, cases[i].Coefficients)).ToArray();
            SolidAnswer[] solved = [.. elastic.Solve(loads, stop)];
            stop.ThrowIfCancellationRequested();
            var stresses = elastic.CellStresses(solved, again: true);
            elastic.Become(body.Model);
            var fields = stresses.EachBesideOthers(sheet.Means);
            var forces = stresses.EachBesideOthers(s => WallAnswers.ForcesOf(piers, body, sheet, s));
            var feet = body.Unilateral.Springs.Count(s => s.PushesOnly);
            var (lifted, liftedCase, standing) = (0.0, (WallCase?)null, true);
            for (var n = 0; n < again.Length; n++)
            {
                if (!solved[n].IsInEquilibrium)
                {
                    (standing, liftedCase, lifted) = (false, cases[again[n]], 1);
                    continue;
                }

                hardest.Take(again[n], fields[n], forces[n]);
                var share = solved[n].Lifted.Length / (double)feet;
                (lifted, liftedCase) = share > lifted ? (share, cases[again[n]]) : (lifted, liftedCase);
            }

            return new BaseContact(0, again.Length, lifted, liftedCase, standing);

            int Governing(PierSections pier) => pier.Stacks(sheet).DefaultIfEmpty(most).MaxBy(s => sheetOf.Upright[s]) is var stack ? sheetOf.UprightCase[stack] : 0;
        }

        private IEnumerable<PierStress> Piers(WallAnswers answers, WallCase[] cases, Hardest hardest)
        {
            var (first, place) = (0, -1);
            foreach (var pier in piers)
            {
                place++;
                var sections = Enumerable.Range(first, pier.Rows.Length).ToArray();
                var mean = sections.MaxBy(i => hardest.Mean[i]);
                var stacks = pier.Stacks(sheet).ToArray();
                if (stacks.Length > 0)
                {
                    var edge = stacks.MaxBy(s => hardest.Sheet.Upright[s]);
                    yield return new PierStress
                    {
                        Address = pier.Pier.Address, MeanMost = hardest.Mean[mean], MeanAt = pier.Heights[mean - first], MeanCase = cases[hardest.MeanCase[mean]],
                        EdgeMost = hardest.Sheet.Upright[edge], EdgeStation = sheet.CobStationOf(edge), EdgeHeight = sheet.HeightOf(edge), EdgeOutside = hardest.Sheet.UprightOutside[edge],
                        EdgeCase = cases[hardest.Sheet.UprightCase[edge]],
                        Levels = ((int[])[0, pier.Rows.Length / 2, pier.Rows.Length - 1]).Distinct().Select(row => new PierLevel(
                            pier.Heights[row], pier.Areas[row], hardest.Mean[first + row],
                            stacks.Where(s => s % sheet.Rows == pier.Rows[row]).Select(s => hardest.Sheet.Upright[s]).DefaultIfEmpty(0).Max())).ToSequence(),
                        Across = Pushed(hardest.Use.Across[place], pier, cases), Along = Pushed(hardest.Use.Along[place], pier, cases),
                        MeanBare = -(answers.Forces[basis.Cob][PierSections.Parts * first] + answers.Forces[basis.Timber][PierSections.Parts * first]) / pier.Areas[0],
                        How = How(answers, cases[hardest.MeanCase[mean]], mean, hardest.Mean[mean] * pier.Areas[mean - first], pier.Areas[mean - first]) with { Place = pier.Pier.Address },
                    };
                }

                first += pier.Rows.Length;
            }
        }

        private static PierStand Pushed(PierPush push, PierSections pier, WallCase[] cases) =>
            new(push.Mode!, push.Asked, push.Holds, push.Load, pier.Heights[push.Row], pier.Deep[push.Row], pier.Areas[push.Row], cases[push.Case]);

        /// <summary>The mean of a section from its parts.</summary>
        private Calculation How(WallAnswers answers, WallCase one, int section, double total, double area)
        {
            var mechanics = Sources.Get("mechanics");
            var sheetOf = new Worksheet("wall-pier-mean");
            double Part(params IEnumerable<int> units) => -units.Sum(u => one.Coefficients[u] * answers.Forces[u][PierSections.Parts * section]);
            var weight = Part(basis.Cob, basis.Timber, basis.Plaster);
            var above = Part([.. basis.Press, .. basis.Pull]);
            var sideways = Part([basis.WallX, basis.WallY, basis.WallTwist, basis.RoofX, basis.RoofY, basis.RoofTwist, .. basis.Wind, .. basis.Thrust, .. basis.Soil]);
            var n = sheetOf.Step(
                "wall-pier-force", "N", "N_w + N_r + N_s + N_l", total, Dimension.Force, mechanics, Worksheet.Computed("N_w", "pier-from-weight", weight, Dimension.Force),
                Worksheet.Computed("N_r", "pier-from-roof", above, Dimension.Force), Worksheet.Computed("N_s", "pier-from-sideways", sideways, Dimension.Force),
                Worksheet.Computed("N_l", "pier-from-lifting", total - weight - above - sideways, Dimension.Force));
            sheetOf.Step("wall-pier-mean", "p", "N/A", total / area, Dimension.Stress, mechanics, n, Worksheet.Computed("A", "pier-section", area, Dimension.Area));
            return sheetOf.Done;
        }

        private IEnumerable<LandingStress> Landings(WallAnswers answers, WallCase[] cases, Hardest hardest)
        {
            var sums = new CaseSums(answers.Fields);
            var field = new double[answers.Fields[0].Length];
            var widths = Enumerable.Range(0, body.Grid.Around).Select(i => body.Grid.S[i + 1] - body.Grid.S[i]).ToArray();
            for (var i = 0; i < landings.Length; i++)
            {
                if (hardest.Tops[i] >= 0)
                {
                    var one = cases[hardest.BearingCase[i]];
                    sums.Of(one, field);
                    yield return new LandingStress(landings[i].Name, hardest.Bearing[i], one, hardest.Spread(field, hardest.Tops[i], widths));
                }
            }
        }

        /// <summary>The pressure allowed on cob times exp(-u2/2) of EN 1996 annex G; how far off the middle the load lies is in the stress already, the least of 0.05 t is in u.</summary>
        private Calculated<double> Allowed()
        {
            const double off = 0.05;
            var annex = Sources.Get("en-1996-annex-g");
            var wall = geometry.Wall;
            double height = (wall.Top - wall.Base).Metres, thickness = wall.ThicknessAt((wall.Top.Metres + wall.Base.Metres) / 2);
            var sheetOf = new Worksheet("wall-allowed");
            var slenderness = height / thickness * Math.Sqrt(1 / body.Numbers["wall-stiffness"]);
            var lambda = sheetOf.Step(
                "wall-slenderness", "lambda", "h/t*sqrt(1/k_E)", slenderness, Dimension.Number, annex, Worksheet.Computed("h", "cob-height", height, Dimension.Length),
                Worksheet.Computed("t", "wall-thickness-mean", thickness, Dimension.Length), body.Numbers.Symbol("k_E", "wall-stiffness"));
            var k = Worksheet.Code("k_e", "least-off-middle", off, Dimension.Number, annex);
            var bend = Math.Max(0, (slenderness - 0.063) / (0.73 - 1.17 * off));
            var u = sheetOf.Step("wall-bending-share", "u", "max(0,(lambda - 0.063)/(0.73 - 1.17*k_e))", bend, Dimension.Number, annex, lambda, k);
            var factor = Math.Exp(-bend * bend / 2);
            var phi = sheetOf.Step("wall-slenderness-factor", "Phi", "exp(-u^2/2)", factor, Dimension.Number, annex, u);
            var allowable = strength.Tag == Tag.Measured
                ? Worksheet.Cited("f_a", "cob-allowed", new Cited<double>(strength.Allowable, Sources.Get("en-1990-d"), Tag.Measured), Dimension.Stress)
                : Worksheet.Assumed("f_a", "cob-allowed", strength.Allowable, Dimension.Stress, Sources.Get("cob-strength-memory"));
            sheetOf.Step("wall-allowed", "f", "f_a*Phi", strength.Allowable * factor, Dimension.Stress, annex, allowable, phi);
            return new Calculated<double>(strength.Allowable * factor, sheetOf.Done);
        }

        private WallPicture Picture(Envelope envelope) => new()
        {
            Stations = body.Grid.S.ToSequence(),
            Heights = body.Grid.Z.Take(body.CobRows + 1).ToSequence(),
            Share = sheet.Share.ToSequence(),
            Compression = envelope.Compression.Select((p, i) => sheet.Share[i] > 0 ? Math.Max(0, p) : 0).ToSequence(),
            Tension = envelope.Tension.Select((p, i) => sheet.Share[i] > 0 ? Math.Max(0, p) : 0).ToSequence(),
        };

        private Sequence<Assumption> Assumptions() => body.Numbers.Assumed(
        [
            "wall-stiffness", "wall-cob-poisson", "wall-base-stiffness", "wall-stress-patch", "wall-tension-unlooked", "wall-joint-friction", "wall-tension-share",
            .. body.HasBeam || geometry.Openings.Any(o => o.Header is not null) ? (string[])["wall-timber-across", "wall-timber-shear", "wall-timber-rolling", "wall-timber-poisson"] : [],
            .. body.HasUnknownTimber ? (string[])["wall-timber-modulus"] : [],
        ]);
    }
}
