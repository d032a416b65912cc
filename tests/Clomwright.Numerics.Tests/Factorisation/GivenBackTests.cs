using Clomwright.Numerics.Factorisation;

namespace Clomwright.Numerics.Tests.Factorisation;

/// <summary>What a factor took outside the collected heap. Alone in its process while it counts.</summary>
[Collection(nameof(Alone))]
public sealed class GivenBackTests
{
    // Rank: property. Through changes, another way to cut the sheet and answers for one load and for eight, from threads that come and go.
    [Fact]
    public async Task A_factor_and_its_answers_give_back_all_they_took()
    {
        var before = NativeStore.Shared.Lent;
        for (var round = 0; round < 20; round++)
        {
            await Task.Run(() => Work(round), TestContext.Current.CancellationToken);
        }

        // Less, where a finalizer gave back what an earlier test forgot.
        Assert.InRange(NativeStore.Shared.Lent, 0, before);
    }

    private static void Work(int seed)
    {
        var shape = new SheetShape(24, 6, true);
        var sheet = new RandomSheet(shape, 4, seed, 0.2);
        using var factor = new SheetFactor(sheet, SheetDissection.Even(shape));
        using var one = new SheetResponse(factor);
        using var eight = new SheetResponse(factor, SheetResponse.MostLanes);
        var load = sheet.RandomVector();
        one.Solve(load);
        eight.Solve(Enumerable.Range(0, 8 * load.Length).Select(i => load[i / 8]).ToArray());
        factor.Dissect(factor.Dissection.FocusedOn(shape, 3, 6, 2));
        one.Solve(load);
        eight.Solve(Enumerable.Range(0, 8 * load.Length).Select(i => load[i / 8]).ToArray());
        Assert.InRange(NativeStore.Shared.Lent, factor.Bytes + one.Bytes + eight.Bytes, long.MaxValue);
    }
}

/// <summary>Tests that count what the whole process holds: they run when all others have run.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
