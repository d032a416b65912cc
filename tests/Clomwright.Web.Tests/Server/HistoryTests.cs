using Clomwright.Building;
using Clomwright.Testing;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Tests.Server;

/// <summary>Taking back and putting again. Rank: property and by hand.</summary>
public sealed class HistoryTests
{
    private static House Named(string name) => Houses.HeronPoint with { Name = name };

    [Fact]
    public void ChangesOfOneGesture_TakenBack_GoTogether()
    {
        var history = History.From(Named("start")).With(Named("a"), "drag-1").With(Named("b"), "drag-1").With(Named("c"), "drag-2");

        Assert.Equal("b", history.Undo().Now.Name);
        Assert.Equal("start", history.Undo().Undo().Now.Name);
        Assert.False(history.Undo().Undo().CanUndo);
    }

    [Fact]
    public void SameGestureAfterUndo_IsAStepOfItsOwn()
    {
        var history = History.From(Named("start")).With(Named("a"), "drag-1").Undo().With(Named("b"), "drag-1");

        Assert.True(history.CanUndo);
        Assert.False(history.CanRedo);
        Assert.Equal("start", history.Undo().Now.Name);
    }

    [Fact]
    public void ChangeThatChangesNothing_IsNoStep() => Assert.False(History.From(Named("start")).With(Named("start"), "write").CanUndo);

    [Fact]
    public void AnySteps_TakenBackAndPutAgain_EndWhereTheyWere() =>
        Gen.Int[0, 5].Array[0, 30].ForAll(
            steps =>
            {
                var history = History.From(Named("start"));
                for (var i = 0; i < steps.Length; i++)
                {
                    history = history.With(Named($"{i}"), $"gesture-{steps[i]}");
                }

                var back = history;
                while (back.CanUndo)
                {
                    back = back.Undo();
                }

                Assert.Equal("start", back.Now.Name);
                while (back.CanRedo)
                {
                    back = back.Redo();
                }

                Assert.Equal(history.Now.Name, back.Now.Name);
            },
            iter: Counts.Of(200, 10_000));

    [Fact]
    public void MoreStepsThanAreKept_ForgetTheOldest()
    {
        var history = History.From(Named("start"));
        for (var i = 0; i < History.StepsMax + 10; i++)
        {
            history = history.With(Named($"{i}"), $"{i}");
        }

        var count = 0;
        for (; history.CanUndo; history = history.Undo())
        {
            count++;
        }

        Assert.Equal(History.StepsMax, count);
        Assert.Equal("9", history.Now.Name);
    }
}
