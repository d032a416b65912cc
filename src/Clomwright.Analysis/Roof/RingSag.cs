using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Sag of the ring in the stage in which it is most: on wet soil what lies for good creeps and the rest does not; a step of building does not last.</summary>
internal static class RingSag
{
    private static readonly string[] OnWetSoil = ["soilWet", "soilWetSnow", "oneSided", "drift", "ponded"];

    public static CheckedMember InStages(ReciprocalResult roof, Timber timber)
    {
        if (roof.Stage("soilWet").Value is not { } wet)
        {
            return new CheckedMember("ring-sag", "ring", roof.Stage("soilWet").NotChecked!);
        }

        var creep = timber.System == TimberSystem.Nds ? Nds.Creep(green: true) : 1 + Ec5.Creep(2, green: true);
        var (stage, pole, lasting, passing) = StageStates.Of(roof, TimberSystem.Nds).SelectMany(s => roof.Geometry.Poles.Select(p =>
        {
            var drop = s.Forces.Drop[p.Number - 1];
            var still = OnWetSoil.Contains(s.Sense[StageStates.Prefix.Length..]) ? wet.Drop[p.Number - 1] : 0;
            return (s, p, Lasting: still, Passing: drop - still);
        })).MaxBy(x => (creep * x.Lasting + x.Passing) / x.p.LengthToFar);
        var source = Sources.Get(timber.System == TimberSystem.Nds ? "nds-memory" : "en-1995-memory");
        var sheet = new Worksheet("ring-sag");
        var k = Worksheet.Code("K", "creep-factor", creep, Dimension.Number, source);
        var d = Worksheet.Computed("v_d", "drop-wet", lasting, Dimension.Length);
        var v = Worksheet.Computed("v_s", "drop-passing", passing, Dimension.Length);
        var sag = creep * lasting + passing;
        sheet.Step("ring-sag", "v", "K*v_d + v_s", sag, Dimension.Length, source, k, d, v);
        return new CheckedMember("ring-sag", $"pole {pole.Number}", new MemberCheck(stage.Combination.Key, stage.Sense, Amount.Metres(sag), Amount.Metres(pole.LengthToFar / PoleChecks.SagLimit), sheet.Done));
    }
}
