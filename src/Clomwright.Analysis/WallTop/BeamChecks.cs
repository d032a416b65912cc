using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>The bond beam as a ring of timbers: pulled by poles that push outward, joined by laps of half the depth with upright bolts, bent between tees and over openings that have no header.</summary>
/// <remarks>
/// The pull is that of every stage as it stands, held against strengths for loads that stay (no duration helps). In bending the beam counts as two halves that slide on each other, because a lap may lie
/// anywhere in the span; each span is simple. Over an opening with a header the header carries.
/// </remarks>
internal static class BeamChecks
{
    public const string Subject = "bond beam";

    /// <summary>A pole's seat along the beam, m.</summary>
    private const double Seat = 0.2;

    private static readonly Source Mechanics = Sources.Get("mechanics");

    public static IEnumerable<CheckedMember> Of(HouseGeometry geometry, RoofResult roof, Sequence<BeamPiece> pieces, Sequence<HoldDown> holds)
    {
        if (geometry.House.Roof is null)
        {
            return [];
        }

        if (geometry.House.BondBeam is not { } beam)
        {
            return [new("bond-beam-tension", Subject, new Message("analysis.members.no-beam")), new("bond-beam-bending", Subject, new Message("analysis.members.no-beam"))];
        }

        return [.. Pulled(beam, geometry.House.Roof, roof, pieces), Bent(geometry, beam, roof.Combined, holds), Places(beam, pieces)];
    }

    private static IEnumerable<CheckedMember> Pulled(BondBeam beam, Building.Roof kind, RoofResult roof, Sequence<BeamPiece> pieces)
    {
        var (pull, sense, why) = Pull(kind, roof);
        why ??= Why(beam, pieces);
        return why is null ? (Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres)!.System == TimberSystem.En ? LapsEn.Of(beam, pull, sense) : Laps(beam, pieces, pull, sense)) : ((string[])["bond-beam-tension", "bond-beam-bolts", "bond-beam-lap"]).Select(k => new CheckedMember(k, Subject, why));
    }

    private static (double Force, string Sense, Message? Why) Pull(Building.Roof kind, RoofResult roof)
    {
        if (roof.Plain.Value is { } plain)
        {
            return plain is { Thrust: > 0, Hoop: 0 }
                ? (0, "", Message.Of("analysis.walltop.thrust-not-ring", ("thrust", new Amount(plain.Thrust, Dimension.Force))))
                : double.IsFinite(plain.Hoop) ? (plain.Hoop, "thrust", null) : (0, "", new Message("analysis.roof.no-timber"));
        }

        if (roof.Reciprocal.Value is not { } frame)
        {
            return (0, "", roof.Reciprocal.NotChecked);
        }

        if (frame.Joints.Value is not { } joints)
        {
            return (0, "", frame.Joints.NotChecked);
        }

        var slipping = Thrust.Hoop(Math.Max(0, joints.OutwardWithoutFriction), frame.Geometry.Poles.Min(p => p.CrossingAngle));
        return kind is Building.Roof.Reciprocal { Joint: not PoleJoint.Pinned } && slipping > joints.HoopTension ? (slipping, "slip", null) : (joints.HoopTension, "fallback", null);
    }

    private static Message? Why(BondBeam beam, Sequence<BeamPiece> pieces) =>
        Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres) is not { Tension: not null } timber ? Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(beam.Material)))
        : pieces.Count == 0 ? new Message("analysis.walltop.no-pieces")
        : beam.Lap is null || beam.Bolt is null ? new Message("analysis.walltop.laps-not-described")
        : beam.Bolt.Value.Metres < Dowel.DiameterMin ? new Message("analysis.walltop.bolt-thin")
        : beam.Width <= beam.Bolt.Value ? Message.Of("analysis.walltop.leg-wide", ("leg", beam.Bolt.Value), ("beam", beam.Width))
        : null;

    private static IEnumerable<CheckedMember> Laps(BondBeam beam, Sequence<BeamPiece> pieces, double pull, string sense)
    {
        var timber = Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres)!;
        var (width, half, bolt, n) = (beam.Width.Metres, beam.Depth.Metres / 2, beam.Bolt!.Value.Metres, beam.Bolts);
        Symbol t = Worksheet.Computed("T", "beam-pull", pull, Dimension.Force), b = Worksheet.Given("b", "beam-width", width, Dimension.Length), d = Worksheet.Given("d", "beam-depth", 2 * half, Dimension.Length);
        Symbol dia = Worksheet.Given("D", "bolt-diameter", bolt, Dimension.Length), count = Worksheet.Given("n", "bolts-in-lap", n, Dimension.Count);
        var cd = Worksheet.Code("C_D", "duration-factor", 0.9, Dimension.Number, Sources.Get("nds-duration"));

        var sheet = new Worksheet("bond-beam-tension");
        var area = sheet.Step("beam-net-area", "A_n", "(b - D)*d/2", (width - bolt) * half, Dimension.Area, Mechanics, b, dia, d);
        var stress = sheet.Step("beam-tension", "f_t", "T/A_n", pull / area.Value.Si, Dimension.Stress, Mechanics, t, area);
        var allowed = sheet.Step(
            "tension-strength-allowed", "F_t1", "F_t*C_D", timber.Tension!.Value * cd.Value.Si, Dimension.Stress, Sources.Get("nds-memory"),
            Worksheet.Cited("F_t", "tension-strength", timber.Tension, Dimension.Stress), cd);
        yield return Made("bond-beam-tension", stress.Value, allowed.Value, sheet, Amount.Metres(width * stress.Value.Si / allowed.Value.Si));

        sheet = new Worksheet("bond-beam-bolts");
        var turn = 2 * pieces.Max(p => Math.Abs(p.Mitre));
        var member = new DowelMember(half, Dowel.Bearing(timber.SpecificGravity!.Value, bolt, turn));
        var z = Dowel.Steps(sheet, bolt, new(half, Dowel.BearingAlong(timber.SpecificGravity.Value)), member, turn, 1);
        var stiff = timber.Modulus.Value * width * half;
        var cg = Worksheet.Code("C_g", "bolt-group", Dowel.Group(n, bolt, Dowel.Spacing * bolt, stiff, stiff), Dimension.Number, Sources.Get("nds-memory"));
        var held = sheet.Step("bolts-held", "Z_n", "n*Z*C_D*C_g", n * z.Value.Si * cd.Value.Si * cg.Value.Si, Dimension.Force, Sources.Get("nds-memory"), count, z, cd, cg);
        yield return Made("bond-beam-bolts", t.Value, held.Value, sheet, Amount.Count((long)Math.Clamp(Math.Ceiling(pull / (z.Value.Si * cd.Value.Si * cg.Value.Si)), 1, 1000)));

        sheet = new Worksheet("bond-beam-lap");
        var least = (2 * Dowel.EndInTension + (n - 1) * Dowel.Spacing) * bolt;
        var needed = sheet.Step("lap-needed", "l", "(2*k_e + (n - 1)*k_s)*D", least, Dimension.Length, Sources.Get("nds-memory"),
            Worksheet.Code("k_e", "bolt-end", Dowel.EndInTension, Dimension.Number, Sources.Get("nds-memory")), count,
            Worksheet.Code("k_s", "bolt-spacing", Dowel.Spacing, Dimension.Number, Sources.Get("nds-memory")), dia);
        yield return Made("bond-beam-lap", needed.Value, Amount.Metres(beam.Lap!.Value.Metres), sheet, needed.Value);

        CheckedMember Made(string key, Amount demand, Amount capacity, Worksheet steps, Amount need) => new(key, Subject, new MemberCheck("", sense, demand, capacity, steps.Done, need));
    }

    /// <summary>The hardest simple span: between tees or straps under poles that lift, or over an opening without a header under poles that press.</summary>
    private static CheckedMember Bent(HouseGeometry geometry, BondBeam beam, CombinedStates combined, Sequence<HoldDown> holds)
    {
        const string Key = "bond-beam-bending";
        if (Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres) is not { } timber)
        {
            return new(Key, Subject, Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(beam.Material))));
        }

        if (combined.States.Count == 0)
        {
            return new(Key, Subject, combined.Missing.Count > 0 ? combined.Missing[0] : new Message("analysis.roof.none"));
        }

        if (holds.Count == 0)
        {
            return new(Key, Subject, new Message("analysis.walltop.no-tees"));
        }

        if ((timber.System == TimberSystem.En) != (combined.States[0].Combination.Form == Loads.LoadForm.Strength))
        {
            return new(Key, Subject, new Message("analysis.members.systems"));
        }

        var tees = Spans(geometry, holds).ToArray();
        var holes = geometry.Openings.Where(o => o.Header is null).Select(o => (From: o.Widest.From, Length: o.Widest.Width)).ToArray();
        var tried = combined.States.SelectMany(s => (s.Combination.DeadIsLeast ? tees : holes).Select(x => (State: s, Moment: Moment(geometry, s, x.From, x.Length)))).ToArray();
        if (tried.Length == 0)
        {
            return new(Key, Subject, combined.Missing.Count > 0 ? combined.Missing[0] : new Message("analysis.roof.none"));
        }

        var (state, moment) = tried.MaxBy(x => x.Moment / Strength.Factor(timber, x.State.Combination));

        var sheet = new Worksheet(Key);
        var fb = Strength.Adjusted(sheet, timber, state.Combination, timber.Bending, "bending-strength", timber.System == TimberSystem.Nds ? "F_b" : "f_m");
        Symbol b = Worksheet.Given("b", "beam-width", beam.Width.Metres, Dimension.Length), d = Worksheet.Given("d", "beam-depth", beam.Depth.Metres, Dimension.Length);
        var modulus = sheet.Step("beam-modulus-halves", "S", "b*d^2/12", beam.Width.Metres * beam.Depth.Metres * beam.Depth.Metres / 12, Dimension.Volume, Mechanics, b, d);
        var m = Worksheet.Computed("M", state.Combination.DeadIsLeast ? "beam-moment-tees" : "beam-moment-opening", moment, Dimension.Moment);
        var stress = sheet.Step("bending-stress", "f_b", "M/S", moment / modulus.Value.Si, Dimension.Stress, Mechanics, m, modulus);
        return new(Key, Subject, new MemberCheck(
            state.Combination.Key, state.Sense, stress.Value, fb.Value, sheet.Done, Amount.Metres(beam.Depth.Metres * Math.Sqrt(stress.Value.Si / fb.Value.Si))));
    }

    private static IEnumerable<(double From, double Length)> Spans(HouseGeometry geometry, Sequence<HoldDown> holds) =>
        holds.Select((h, i) => (h.Station, Length: holds.Count == 1 ? geometry.Curve.Length : geometry.Curve.Wrap(holds[(i + 1) % holds.Count].Station - h.Station)));

    private static double Moment(HouseGeometry geometry, CombinedState state, double from, double length)
    {
        // Stations run along the inside face; the beam's own line is a little longer where the wall bulges: the span is stretched by the ring's share.
        var top = geometry.Wall.Top.Metres;
        var offset = (geometry.Wall.InsideOffset(top) + geometry.Wall.OutsideOffset(top)) / 2;
        var stretch = geometry.Curve.OffsetArc(from, from + length, offset) / length;
        var load = new SpanLoad(length * stretch);
        var number = 0;
        foreach (var landing in geometry.Landings.Where(l => !l.Secondary))
        {
            var reaction = state.Forces.PlateReaction[number++];
            var force = state.Combination.DeadIsLeast ? -reaction : reaction;
            if (force > 0)
            {
                var away = geometry.Curve.Wrap(landing.Station - from);
                load.Patch(force, (away > geometry.Curve.Length - Seat ? away - geometry.Curve.Length : away) * stretch, Seat);
            }
        }

        return load.Solve().Moment;
    }

    /// <summary>Laps stand over cob, with the bolts' holes beside no leg.</summary>
    private static CheckedMember Places(BondBeam beam, Sequence<BeamPiece> pieces)
    {
        if (pieces.Count == 0)
        {
            return new("lap-places", Subject, new Message("analysis.walltop.no-pieces"));
        }

        if (beam.Lap is not { } lap)
        {
            return new("lap-places", Subject, new Message("analysis.walltop.laps-not-described"));
        }

        var sheet = new Worksheet("lap-places");
        var half = sheet.Step("lap-half", "l_h", "l/2", lap.Metres / 2, Dimension.Length, Mechanics, Worksheet.Given("l", "lap", lap.Metres, Dimension.Length));
        return new("lap-places", Subject, new MemberCheck("", "place", half.Value, Amount.Metres(Math.Max(1e-3, pieces.Min(p => p.Reach) + 1e-9)), sheet.Done));
    }
}
