using Clomwright.Analysis.Drying;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>A weighed block gives back the earth it was made of.</summary>
public sealed class BlockTests
{
    private static readonly Earth Usual = WallRun.EarthOf(DryingNumbers.Of([])) with { DryDensity = 1500 };

    private static TestBlock Block(double diffusivity, double convection, Func<int, double> error)
    {
        var bare = new TestBlock(.1, .04, 6, 20, .55, Enumerable.Range(0, 13).Select(i => (2.0 * i, 6 * 1.24)).ToSequence(), .005);
        var masses = BlockCalibration.Masses(bare, Usual with { DiffusivityFull = diffusivity }, .24, convection);
        return bare with { Weighings = bare.Weighings.Select((w, i) => (w.Day, i == 0 ? w.Mass : masses[i - 1] + error(i))).ToSequence() };
    }

    // Rank property: exact weighings give both numbers back. 2 %: differences of a step-controlled run.
    [Theory]
    [InlineData(4e-8, 5)]
    [InlineData(2e-7, 9)]
    public void ExactWeighings_GiveTheEarthBack(double diffusivity, double convection)
    {
        var fit = BlockCalibration.Of(Block(diffusivity, convection, _ => 0), Usual).Value!;
        Near.Relative(diffusivity, fit.Diffusivity, .02);
        Near.Relative(convection, fit.Convection, .02);
    }

    // Rank property: with errors of 5 g either way the truth lies within three standard errors, and the error told is neither nothing nor everything.
    [Fact]
    public void WeighingsWithErrors_TellHowSureTheyAre()
    {
        var fit = BlockCalibration.Of(Block(6e-8, 6, i => i % 3 == 0 ? .005 : i % 3 == 1 ? -.005 : .002), Usual).Value!;
        Assert.InRange(fit.DiffusivityError, 1e-4, 1);
        Assert.InRange(Math.Abs(Math.Log(fit.Diffusivity / 6e-8)), 0, 3 * fit.DiffusivityError);
        Assert.InRange(Math.Abs(Math.Log(fit.Convection / 6)), 0, 3 * fit.ConvectionError);
        Assert.InRange(fit.Residual, .001, .01);
    }

    // Rank property: too few weighings, or a block that cannot be, say so.
    [Fact]
    public void WhatCannotBe_IsRefused()
    {
        var block = Block(6e-8, 6, _ => 0);
        Assert.Equal("analysis.drying.block-few", BlockCalibration.Of(block with { Weighings = block.Weighings.Take(3).ToSequence() }, Usual).NotChecked!.Key);
        Assert.Equal("analysis.drying.block-odd", BlockCalibration.Of(block with { DryMass = 60 }, Usual).NotChecked!.Key);
    }
}
