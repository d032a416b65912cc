using Clomwright.Analysis.Comfort;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests.Comfort;

/// <summary>How much of a window is glass.</summary>
public sealed class PaneTests
{
    private static readonly Glazing Double = ThermalMaterial.Glass("double")!;

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static Opening Window(OpeningKind kind, long width, long height, long stock) => new()
    {
        Name = "window", Kind = kind, Along = Along.At(Mm(1000)), Width = Mm(width), Height = Mm(height), Sill = Mm(900), Glazing = "double", Frame = new Frame(Mm(width), Mm(height), Mm(100), Mm(stock)),
    };

    private static WindowHeat Heat(Opening opening, params AssumedNumber[] assumed)
    {
        var heat = WindowHeat.Of(opening, opening.Width.Metres * opening.Height.Metres, Double, ComfortNumbers.Of(assumed.ToSequence()));
        Printed.Holds(heat.How is { } how ? [how] : []);
        return heat;
    }

    // Rank analytic: rectangles by hand. 1e-12: rounding.
    [Fact]
    public void Glass_FillsAFixedFrame_LeavesTheSashOfAnother_AndIsWhatIsWritten()
    {
        Near.Relative(0.9 * 1.1, Heat(Window(OpeningKind.Fixed, 1000, 1200, 50)).Glass, 1e-12);
        Near.Relative(0.81 * 1.01, Heat(Window(OpeningKind.Opening, 1000, 1200, 50)).Glass, 1e-12); // 45 mm of sash on each side
        Near.Relative(0.8 * 1.0, Heat(Window(OpeningKind.Opening, 1000, 1200, 50), new AssumedNumber("comfort-sash", 0.05)).Glass, 1e-12);
        Near.Relative(0.67 * 1.72, Heat(Window(OpeningKind.Door, 1000, 2000, 50)).Glass, 1e-12); // no timber underfoot; 115 mm of leaf on each side
        Near.Relative(0.75 * 1.2, Heat(Window(OpeningKind.Opening, 1000, 1200, 50) with { Frame = null }).Glass, 1e-12);
        Near.Relative(0.4 * 1.2, Heat(Window(OpeningKind.Opening, 1000, 1200, 50) with { Glazed = new Share(0.4) }).Glass, 1e-12);
        Near.Relative(1.2, Heat(Window(OpeningKind.Glass, 1000, 1200, 50) with { Frame = null }).Glass, 1e-12);
        Assert.Equal(0, Heat(Window(OpeningKind.Opening, 150, 1200, 50)).Glass); // all timber
        Assert.Equal(0, Heat(Window(OpeningKind.Door, 1000, 2000, 50) with { Glazing = null }).Glass); // boards
    }

    // Rank from memory: ISO 10077-1 tabulates windows whose frame takes 20 % and 30 % of them, and windows are tried at 1.23 m by 1.48 m; frame and sash of 45 mm each lie between.
    [Fact]
    public void AWindowOfUsualSize_IsGlassAsTheStandardTakesIt()
    {
        var window = Heat(Window(OpeningKind.Opening, 1230, 1480, 45));
        Assert.InRange(window.Glass / window.Area, 0.70, 0.80);
    }
}
