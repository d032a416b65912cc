using Clomwright.Analysis;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Scenes;

/// <summary>The scene of a roof: where its numbers become drawn places and words.</summary>
public static class RoofSceneOf
{
    /// <summary>The scene, in the words of a phrasebook, with the house's own units first.</summary>
    /// <param name="study">The study.</param>
    /// <param name="words">The language.</param>
    /// <param name="diagnostics">What is wrong or odd in the file, with paths as in the file.</param>
    public static RoofScene Scene(HouseStudy study, Phrasebook words, IEnumerable<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var result = study.Roof;
        var frame = result.Reciprocal.Value;
        var poles = frame?.Geometry.Poles ?? result.Plain.Value?.Places ?? [];
        var checks = frame?.Checks ?? result.Plain.Value?.Checks ?? [];
        var hardest = Hardest(checks, null);
        var plan = new RoofPlanViewOf(study.Geometry, poles, pen);
        var findings = FindingLines.Of(RoofFindings.Of(study.Findings), pen, finding => plan.IsPlaced(finding, frame?.Geometry));
        return new RoofScene
        {
            Kind = Kind(study.House.Roof),
            Trouble = poles.Count > 0 ? null : pen.Say(Why(study)),
            Knobs = [.. RoofKnobs.Of(study.House).Select(knob => Card(knob, study.House, pen))],
            Plan = plan.View(frame?.Geometry, study.House.Roof is Roof.Radial { CentrePost: false } radial ? radial.RingRadius.Metres : 0, Hardest(checks, "pole ")?.Subject, findings),
            Section = RoofSectionOf.View(study.Geometry, poles, frame?.Geometry, pen),
            Figures = [.. Figures(study, poles, pen)],
            Stages = [.. (frame?.Stages ?? result.Plain.Value?.Stages ?? []).Select(stage => Line(stage, result, pen))],
            Governs = hardest?.Check.Value is { } check
                ? pen.Say("web.roof.governs", ("combination", check.Combination), ("sense", new Message($"study.sense.{check.Sense}")), ("what", new Message($"rules.title.{RuleOf(hardest.Key)}")), ("subject", new Argument.Subject(hardest.Subject)), ("use", Amount.Fraction(check.Use)))
                : null,
            Tightest = RoofFindings.Tightest(findings, pen),
            Findings = [.. findings.Select(f => f.Line)],
            Totals = FindingLines.Totals(Tally.Of(findings.Select(f => f.Finding)), pen),
            House = FindingLines.Totals(study, pen).Line,
            Diagnostics = [.. diagnostics.Select(d => new DiagnosticLine(d.Path, pen.Say(d.What), d.Severity == Severity.Error))],
        };
    }

    private static string Kind(Roof? roof) => roof switch
    {
        Roof.Reciprocal => "reciprocal",
        Roof.Radial => "radial",
        Roof.Shed => "shed",
        Roof.Gable => "gable",
        _ => "none",
    };

    private static Message Why(HouseStudy study) => study.House.Roof is null ? new Message("web.roof.none")
        : study.Roof.Reciprocal.NotChecked is { Key: not "analysis.roof.not-reciprocal" } why ? why : study.Roof.Plain.NotChecked ?? new Message("web.roof.none");

    /// <summary>The check nearest to what is there, of those whose subject begins as asked.</summary>
    private static CheckedMember? Hardest(Sequence<CheckedMember> checks, string? subject) =>
        checks.Where(c => c.Check.Is && (subject is null || c.Subject.StartsWith(subject, StringComparison.Ordinal))).MaxBy(c => c.Check.Value!.Use);

    private static string RuleOf(string key) => key == "pole-seat" ? "pole-seat-bearing" : key;

    private static KnobCard Card(StandingKnob knob, House house, Pen pen)
    {
        var key = knob.Key.ToString().ToLowerInvariant();
        var label = knob.Of is { } named ? pen.Say("web.knob.soil", ("layer", named))
            : knob.Key == RoofKnob.Bearing && house.Roof is Roof.Shed or Roof.Gable ? pen.Say("web.knob.fall")
            : pen.Say($"web.knob.{key}");
        return new KnobCard(
            key, label, knob.Text, Math.Round(knob.Now, 4), knob.Least, knob.Most,
            [.. knob.Choices.Select(choice => new KnobChoice(choice, pen.Say($"web.turn.{choice}")))]);
    }

    private static StageLine Line(RoofStage stage, RoofResult roof, Pen pen)
    {
        var name = pen.Say(StageBending.Named(stage.Key));
        if (stage.Forces.Value is not { } forces)
        {
            return new StageLine(stage.Key, name, null, null, false, null, null, null, null, "unchecked", pen.Say(stage.Forces.NotChecked!));
        }

        var bending = roof.Reciprocal.Value is { } frame ? StageBending.Of(frame, stage.Key) : StageBending.Of(roof.Plain.Value!, stage.Key);
        return new StageLine(
            stage.Key, name, Force(forces.Governing.Max()), Force(forces.Governing.Min()), forces.Governing.Min() < 0, Force(forces.PlateReaction.Max()),
            pen.Short(new Amount(forces.BendingStress.Max(), Dimension.Stress)),
            bending.Value is { } known ? pen.Short(new Amount(known.Strength, Dimension.Stress)) : null,
            bending.Value is { } held ? pen.Short(Amount.Fraction(held.Use)) : null,
            bending.Value is { } use ? use.Use > 1 ? "short" : "met" : "unchecked",
            bending.NotChecked is { } why ? pen.Say(why) : null);

        string Force(double newtons) => pen.Short(new Amount(newtons, Dimension.Force));
    }

    private static IEnumerable<Figure> Figures(HouseStudy study, Sequence<PoleGeometry> poles, Pen pen)
    {
        if (poles.Count == 0)
        {
            yield break;
        }

        var roof = study.Roof;
        yield return Of("pitch", new Amount(poles.Average(p => p.Pitch), Dimension.Angle));
        if (roof.Reciprocal.Value is { } frame)
        {
            yield return Of("clear", Amount.Metres(Math.Max(0, frame.Geometry.ClearOpening)));
            yield return Of("rise", Amount.Metres(frame.Geometry.Poles.Max(p => p.Rise)));
            yield return Of("ring-height", Amount.Metres(frame.Geometry.Poles.Max(p => p.HeightAt(p.TangentDistance)) - frame.Geometry.Poles.Min(p => p.HeightAt(0))));
        }

        yield return Of("length", Amount.Metres(poles.Max(p => p.CutLength)));
        yield return Of("mass", roof.Reciprocal.Value?.Poles.Max(p => p.Mass) is { } kg ? new Amount(kg, Dimension.Mass) : roof.Plain.Value?.Rafters.Max(r => r.Mass) is { } other ? new Amount(other, Dimension.Mass) : null);
        yield return Of("drop", Amount.Metres(poles.Max(p => p.EaveDrop)));
        yield return Of("wet", roof.LayersWet.Value is { } wet ? new Amount(wet.Value, Dimension.AreaLoad) : null);
        yield return Of("dry", roof.LayersDry.Value is { } dry ? new Amount(dry.Value, Dimension.AreaLoad) : null);
        yield return Of("snow", roof.Snow.Value is { } snow ? new Amount(snow.Balanced, Dimension.AreaLoad) : null);

        Figure Of(string key, Amount? amount) => new(pen.Say($"web.roof.figure.{key}"), amount is { } known ? pen.Say(known) : pen.Say("web.not-checked"));
    }
}
