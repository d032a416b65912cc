using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>The scene of a study: where numbers become drawn places and words.</summary>
public static class FromStudy
{
    /// <summary>The scene, in the words of a phrasebook, with the house's own units first.</summary>
    /// <param name="study">The study.</param>
    /// <param name="face">Where the wall is seen from.</param>
    /// <param name="words">The language.</param>
    /// <param name="diagnostics">What is wrong or odd in the file, with paths as in the file.</param>
    public static Scene Scene(HouseStudy study, Face face, Phrasebook words, IEnumerable<Diagnostic> diagnostics) => Scene(study, face, words, diagnostics, new SceneMemory());

    /// <summary>The same, with every part that is as it was before.</summary>
    /// <param name="study">The study.</param>
    /// <param name="face">Where the wall is seen from.</param>
    /// <param name="words">The language.</param>
    /// <param name="diagnostics">What is wrong or odd in the file, with paths as in the file.</param>
    /// <param name="made">Parts as they were made last.</param>
    /// <param name="before">While something is in hand, what was found of the house before: only what is told by where everything stands is found anew. Null finds everything.</param>
    internal static Scene Scene(HouseStudy study, Face face, Phrasebook words, IEnumerable<Diagnostic> diagnostics, SceneMemory made, Sequence<Finding>? before = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var (geometry, said) = (study.Geometry, diagnostics.ToSequence());
        var openings = StandingOpening.All(geometry);
        var found = before is { } known ? study.FindingsInHand(known) : study.Findings;
        made.WriteIn(pen.Units);
        var findings = FindingLines.Of(found, pen, null, made.Lines);
        var (bottom, top, wall) = (Extent.Bottom(study.House), Extent.Top(study.House), study.House.Wall.Top);
        return new Scene
        {
            Ring = Pen.Round(geometry.Curve.Length),
            Bottom = bottom,
            Top = top,
            Heights = made.Keep(null, "heights", (bottom, wall), () => Rulers.Heights(bottom, wall.Metres, pen)),
            Lifts = [.. geometry.Lifts.Select((lift, i) => (Lift: lift, Amounts: study.WallQuantities.Lifts.FirstOrDefault(q => q.Lift == i))).Select(l => made.Keep(null, "lift", (l.Lift, l.Amounts), () => Lift(l.Lift, l.Amounts, pen), $"{l.Lift.Number}"))],
            Face = face == Face.Inside ? "inside" : "outside",
            View = new FaceViewOf(geometry, face, pen).View(openings, findings, made),
            Openings = [.. openings.Select(opening => made.Keep(null, "card", (opening, wall, opening.Place is null ? (study.House.Openings, study.Diagnostics) : default), () => Card(opening, study, pen), opening.Opening.Name))],
            Parts = made.Keep(null, "parts", (study.House.Niches, study.House.Embeds, geometry.Niches, geometry.Embeds, study.House.Stem, study.House.Wall), () => BuiltIn.Of(geometry, pen)),
            Piers = [.. geometry.Piers.Select(pier => (Pier: pier, Standing: Standing(pier, found))).Select(p => made.Keep(null, "pier", (p.Pier, p.Standing), () => Line(p.Pier, p.Standing, pen), p.Pier.Address))],
            Findings = [.. findings.Select(f => f.Line)],
            InHand = before is not null,
            Totals = FindingLines.Totals(Tally.Of(found), pen),
            Figures = [.. Figures(study, pen).Select(figure => made.Keep(null, "figure", figure, () => figure, figure.Label))],
            Plan = PlanKeys.Of(geometry, made),
            Diagnostics = made.Keep<IReadOnlyList<DiagnosticLine>>(null, "diagnostics", said, () => [.. said.Select(d => new DiagnosticLine(d.Path, pen.Say(d.What), d.Severity == Severity.Error))]),
        };
    }

    private static LiftLine Lift(LiftSlice lift, LiftQuantities? amounts, Pen pen) => new(
        lift.Number.ToString(CultureInfo.InvariantCulture),
        lift.Bottom.Metres,
        lift.Top.Metres,
        pen.Short(lift.Top),
        pen.Short(new Volume(lift.NetVolume)),
        amounts?.Batches is { } batches ? pen.Short(Amount.Number(batches)) : null,
        amounts?.RisePerBatch is { } rise ? pen.Short(rise) : null);

    private static OpeningCard Card(StandingOpening standing, HouseStudy study, Pen pen)
    {
        var (opening, house) = (standing.Opening, study.House);
        var station = opening.Along.Station ?? Length.Nearest(standing.Station).RoundedTo(pen.Units == UnitSystem.Imperial ? new Length(Length.PerInch / 4) : Length.FromMillimetres(1));
        var fields = new OpeningFields(Written(station), Written(opening.Sill), Written(opening.Width), Written(opening.Height));
        return new OpeningCard
        {
            Name = opening.Name,
            Path = $"openings[{house.Openings.ToList().IndexOf(opening)}]",
            Label = pen.Say("web.opening.described", ("name", opening.Name), ("station", fields.Station), ("sill", fields.Sill), ("width", fields.Width), ("height", fields.Height)),
            Kind = opening.Kind.ToString().ToLowerInvariant(),
            Station = Pen.Round(standing.Station),
            Sill = opening.Sill.Metres,
            SillMin = Math.Min(0, opening.Sill.Metres),
            SillMax = Math.Max((house.Wall.Top - opening.Height).Metres, opening.Sill.Metres),
            AlongOnly = opening.Kind == OpeningKind.Door,
            Fields = fields,
            Trouble = standing.Place is null ? Trouble(opening, study, pen) : null,
        };

        string Written(Length length) => LengthText.Written(length, pen.Units);
    }

    private static string Trouble(Opening opening, HouseStudy study, Pen pen)
    {
        var index = study.House.Openings.ToList().IndexOf(opening);
        var reason = study.Diagnostics.FirstOrDefault(d => d.Path.StartsWith($"openings[{index}]", StringComparison.Ordinal));
        return reason is null ? pen.Say("web.no-place", ("name", opening.Name)) : pen.Say(reason.What);
    }

    /// <summary>A pier, with the worst of what is said of it.</summary>
    internal static PierLine Line(Pier pier, Sequence<Finding> findings, Pen pen) => Line(pier, Standing(pier, findings), pen);

    private static string Standing(Pier pier, Sequence<Finding> findings) => FindingLines.Worst(findings.Where(f => f.Subject == pier.Address).Select(f => f.Verdict));

    private static PierLine Line(Pier pier, string standing, Pen pen)
    {
        var label = pen.Say("web.pier.described", ("before", pier.Before), ("after", pier.After),
            ("inside", Amount.Metres(pier.WidthInside)), ("outside", Amount.Metres(pier.WidthOutside)), ("narrowest", Amount.Metres(pier.Narrowest)));
        return new PierLine(pier.Address, label, pen.Short(pier.Narrowest), standing);
    }

    private static IReadOnlyList<Figure> Figures(HouseStudy study, Pen pen)
    {
        var (measures, quantities) = (study.Geometry.Measures, study.WallQuantities);
        return
        [
            new(pen.Say("web.figure.batches"), quantities.Batches is { } batches ? pen.Say(Amount.Number(batches)) : pen.Say("web.not-checked")),
            new(pen.Say("web.figure.per-batch"), quantities.VolumePerBatch is { } one ? pen.Say(new Volume(one)) : pen.Say("web.not-checked")),
            new(pen.Say("web.figure.net"), pen.Say(new Volume(measures.NetVolume))),
            new(pen.Say("web.figure.gross"), pen.Say(new Volume(measures.GrossVolume))),
            new(pen.Say("web.figure.ring"), pen.Say(Amount.Metres(study.Geometry.Curve.Length))),
            new(pen.Say("web.figure.area"), pen.Say(new Area(measures.InsideArea))),
            new(pen.Say("web.figure.area-outside"), pen.Say(new Area(measures.OutsideArea))),
        ];
    }
}
