using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>The push at which a house falls, as a finding.</summary>
public sealed class CollapseFindingTests
{
    private static Finding Of(Sequence<Finding> findings) => findings.Single(f => f.Rule.Key == "wall-collapse");

    /// <summary>A quick study says that it was not looked into; never that it is met.</summary>
    [Fact]
    public void QuickStudy_DoesNotCheckIt() =>
        Assert.Equal("study.collapse.not-deep", Assert.IsType<Verdict.NotChecked>(Of(HouseStudy.Of(Houses.HeronPoint).Findings).Verdict).Because.Key);

    /// <summary>A deep one holds the code's share of the weight (C_s = S_DS I_e/R = 0.25/1.5 under the plateau) against the least of what blocks bear, says both answers, and writes them as figures.</summary>
    [Fact]
    public void DeepStudy_HoldsTheEarthquakeAgainstTheBlocks()
    {
        var study = HouseStudy.Of(Houses.HeronPoint, new StudyOptions(Deep: true));
        var collapse = study.Collapse.Value!;
        Assert.Equal(0.25 / 1.5, collapse.Earthquake.Value!.Coefficient, 1e-12);
        Assert.Equal(collapse.Least >= collapse.Earthquake.Value.Coefficient, Of(study.AllFindings).Verdict is Verdict.Met);
        Assert.InRange(collapse.Cracked.Limit, 0.9 * collapse.Least, double.PositiveInfinity);
        Assert.True(Of(study.AllFindings).Notes.Count >= 5);
        Assert.IsType<Figure.Branch>(((Figure.Branch)FiguresOf.House(study)).Parts.Single(part => part.Key == "collapse").Figure);
    }
}
