using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Sag in the stage in which it is most: on wet soil what lies for good creeps and the rest does not; a step of building does not last.</summary>
internal static class RingSag
{
    private static readonly string[] OnWetSoil = ["soilWet", "soilWetSnow", "oneSided", "drift", "ponded"];

    /// <summary>A pole or rafter whose sag is looked at.</summary>
    /// <param name="Subject">What it is called.</param>
    /// <param name="Index">Where it stands in the lists of <see cref="RoofForces"/>.</param>
    /// <param name="Length">Of its span along it, m.</param>
    public readonly record struct Span(string Subject, int Index, double Length);

    /// <summary>Of the ring of a reciprocal frame.</summary>
    public static CheckedMember InStages(ReciprocalResult roof, Timber timber) =>
        InStages("ring-sag", roof.Stage("soilWet"), StageStates.Of(roof, TimberSystem.Nds), [.. roof.Geometry.Poles.Select(p => new Span($"pole {p.Number}", p.Number - 1, p.LengthToFar))], timber);

    /// <summary>Of any poles, in stages that are not factored.</summary>
    public static CheckedMember InStages(string key, Known<RoofForces> soilWet, Sequence<CombinedState> stages, IReadOnlyList<Span> spans, Timber timber)
    {
        if (soilWet.Value is not { } wet)
        {
            return new CheckedMember(key, key == "ring-sag" ? "ring" : "rafters", soilWet.NotChecked!);
        }

        var creep = timber.System == TimberSystem.Nds ? Nds.Creep(green: true) : 1 + Ec5.Creep(2, green: true);
        var (stage, span, lasting, passing) = stages.SelectMany(s => spans.Select(p =>
        {
            var drop = s.Forces.Drop[p.Index];
            var still = OnWetSoil.Contains(s.Sense[StageStates.Prefix.Length..]) ? wet.Drop[p.Index] : 0;
            return (s, p, Lasting: still, Passing: drop - still);
        })).MaxBy(x => (creep * x.Lasting + x.Passing) / x.p.Length);
        var source = Sources.Get(timber.System == TimberSystem.Nds ? "nds-memory" : "en-1995-memory");
        var sheet = new Worksheet(key);
        var k = Worksheet.Code("K", "creep-factor", creep, Dimension.Number, source);
        var d = Worksheet.Computed("v_d", "drop-wet", lasting, Dimension.Length);
        var v = Worksheet.Computed("v_s", "drop-passing", passing, Dimension.Length);
        var sag = creep * lasting + passing;
        sheet.Step(key, "v", "K*v_d + v_s", sag, Dimension.Length, source, k, d, v);
        return new CheckedMember(key, span.Subject, new MemberCheck(stage.Combination.Key, stage.Sense, Amount.Metres(sag), Amount.Metres(span.Length / PoleChecks.SagLimit), sheet.Done));
    }
}
