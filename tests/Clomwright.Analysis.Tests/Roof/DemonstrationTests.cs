using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>What a small ring under a deep eave does when its soil goes on. Rank property: every house here is made up.</summary>
public sealed class DemonstrationTests
{
    private static ReciprocalResult Of(double ringInches, double eaveInches) => FromGeometry.Of(Placing.Of(Houses.Round(Length.FromFeet(14)) with
    {
        Site = new Site { Loads = "asce7-16", GroundSnow = new Stress(1000), WindSpeed = new Speed(45), Exposure = "B", SeismicSds = 0.2, SoilBearing = new Stress(100_000) },
        BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(4), Length.Zero),
        Roof = new Building.Roof.Reciprocal(8, Inches(ringInches), PoleSize.Even(Length.FromInches(8)))
        {
            Eave = Inches(eaveInches), Deck = Length.FromInches(3), Eye = Eye.Glazed, Pin = new Pin(Length.FromInches(1)),
            Layers = [new Layer("soil", Length.FromInches(6), "ordinary-earth")],
        },
    })).Reciprocal.Value!;

    private static Length Inches(double inches) => new((long)(inches * Length.PerInch));

    [Fact]
    public void SmallRingAndDeepEave_OpenWhenSoilGoesOnFromOutside_StepByStep_AndNotFromTheRing()
    {
        var roof = Of(24, 36);
        var wrong = roof.FromEave.Value!;
        Assert.True(wrong.Opens);
        Assert.True(wrong.Steps[0].Forces.CrossingForce.Max() < 0);
        Assert.Equal(wrong.Steps.OrderBy(s => s.Forces.CrossingForce.Min()).Select(s => s.Band), wrong.Steps.Select(s => s.Band));
        Assert.All(roof.FromRing.Value!.Steps, step => Assert.True(step.Forces.CrossingForce.Min() > 0, $"band {step.Band}"));
        Near.Relative(wrong.Steps[^1].Forces.CrossingForce.Sum(), roof.FromRing.Value!.Steps[^1].Forces.CrossingForce.Sum(), 1e-9);
    }

    /// <summary>The pull is M_o/s: a bigger ring has a longer stub and pulls its pins less, though soil on the eave alone still lifts the ring.</summary>
    [Fact]
    public void ABiggerRing_PullsItsPinsLess()
    {
        double small = -Of(24, 36).FromEave.Value!.Least, big = -Of(36, 36).FromEave.Value!.Least;
        Assert.True(small > 0 && big < small, $"{small:F0} N, {big:F0} N");
    }

    [Fact]
    public void AShallowerEave_KeepsThemShutEitherWay() => Assert.False(Of(24, 8).FromEave.Value!.Opens);
}
