namespace Clomwright.Evidence.Tests;

public class SettledTests
{
    private static readonly Source Practice = new("common-practice", "Common practice, no source", Surety.Practice);

    [Fact]
    public void Given_LeavesNoAssumption()
    {
        var settled = Settle.Or((Length?)Length.FromInches(10), Length.FromInches(12), "lift-height", new Message("m"), Practice);
        Assert.Equal(new Settled<Length>(Length.FromInches(10), null), settled);
        Assert.Equal(Tag.Given, settled.Tag);
        Assert.Empty(settled.Assumptions);
    }

    [Fact]
    public void Missing_LeavesTheAssumptionWithTheValueUsed()
    {
        var settled = Settle.Or((Length?)null, Length.FromInches(12), "lift-height", new Message("m"), Practice);
        Assert.Equal(Length.FromInches(12), settled.Value);
        Assert.Equal(Tag.Assumed, settled.Tag);
        Assert.Equal([new Assumption("lift-height", new Message("m"), Length.FromInches(12), Practice)], settled.Assumptions);

        Assert.Equal(0.25, Settle.Or(null, Amount.Number(0.25), "sds", new Message("m"), Practice).Value);
        Assert.Equal("B", Settle.Or(null, "B", "exposure", new Message("m"), Practice).Value);
        Assert.Equal(new Argument.Text("B"), Settle.Or(null, "B", "exposure", new Message("m"), Practice).Assumptions[0].Value);
    }
}
