using Clomwright.Numerics.Factorisation;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Factorisation;

public sealed class SheetFactorTests
{
    /// <summary>Relative to the largest answer. Condition numbers here stay below about 1e4, so 1e-10 leaves rounding a factor of a hundred.</summary>
    private const double Tolerance = 1e-10;

    private static readonly Gen<(SheetShape Shape, int Places, int Seed)> Sheets =
        from closed in Gen.Bool
        from around in Gen.Int[3, 14]
        from up in Gen.Int[2, 7]
        from places in Gen.Int[1, 5]
        from seed in Gen.Int[0, int.MaxValue - 1]
        select (new SheetShape(around, up, closed), places, seed);

    // Rank: independent (elimination in the full matrix).
    [Fact]
    public void The_factor_solves_any_sheet_as_the_full_matrix_does() =>
        Sheets.ForAll(
            c =>
            {
                var sheet = new RandomSheet(c.Shape, c.Places, c.Seed, 0.2);
                using var factor = new SheetFactor(sheet, SheetDissection.Even(c.Shape), 1 + c.Seed % 2);
                using var response = new SheetResponse(factor);
                var load = sheet.RandomVector();
                AssertClose(sheet.SolveInFull(load), response.Solve(load).ToArray());
            },
            iter: Counts.Of(100, 2000));

    // Rank: independent (elimination in the full matrix).
    [Fact]
    public void Eight_lanes_give_eight_answers() =>
        Sheets.ForAll(
            c =>
            {
                var sheet = new RandomSheet(c.Shape, c.Places, c.Seed, 0.2);
                using var factor = new SheetFactor(sheet, SheetDissection.Even(c.Shape));
                using var response = new SheetResponse(factor, SheetResponse.MostLanes);
                var loads = Enumerable.Range(0, 8).Select(_ => sheet.RandomVector()).ToArray();
                var together = new double[8 * loads[0].Length];
                for (var i = 0; i < together.Length; i++)
                {
                    together[i] = loads[i % 8][i / 8];
                }

                var answers = response.Solve(together).ToArray();
                foreach (var lane in new[] { 0, 3, 7 })
                {
                    AssertClose(sheet.SolveInFull(loads[lane]), [.. answers.Where((_, i) => i % 8 == lane)]);
                }
            },
            iter: Counts.Of(30, 500));

    // Rank: property. Asked in some columns only, the answer there is that of the whole to the last bit, and the next whole one has missed nothing.
    [Fact]
    public void What_is_asked_of_some_columns_is_what_the_whole_answer_has_there() =>
        Sheets.ForAll(
            c =>
            {
                var sheet = new RandomSheet(c.Shape, c.Places, c.Seed, 0.2);
                using var factor = new SheetFactor(sheet, SheetDissection.Even(c.Shape), 1 + c.Seed % 2);
                using var response = new SheetResponse(factor);
                using var other = new SheetResponse(factor);
                var random = new Random(c.Seed);
                foreach (var load in new[] { sheet.RandomVector(), sheet.RandomVector() })
                {
                    var whole = other.Solve(load).ToArray();
                    int[] asked = [random.Next(c.Shape.Columns), random.Next(c.Shape.Columns)];
                    var some = response.Solve(load, asked).ToArray();
                    foreach (var column in asked)
                    {
                        Assert.Equal(whole.AsSpan(column * c.Places, c.Places), some.AsSpan(column * c.Places, c.Places));
                    }

                    Assert.Equal(whole, response.Solve(load).ToArray());
                }
            },
            iter: Counts.Of(50, 1000));

    // Rank: property. Changes of patches, places and focus in any order leave exactly what a fresh factor has.
    [Fact]
    public void A_changed_factor_equals_a_fresh_one_to_the_last_bit() =>
        Sheets.ForAll(
            c =>
            {
                var sheet = new RandomSheet(c.Shape, c.Places, c.Seed, 0.2);
                using var factor = new SheetFactor(sheet, SheetDissection.Even(c.Shape));
                using var response = new SheetResponse(factor);
                var random = new Random(c.Seed);
                for (var step = 0; step < 6; step++)
                {
                    var (patches, columns) = sheet.ChangeAround(random.Next(c.Shape.Patches));
                    factor.Change(patches, columns);
                    if (random.Next(3) == 0)
                    {
                        var from = random.Next(c.Shape.Around);
                        factor.Dissect(factor.Dissection.FocusedOn(c.Shape, from, Math.Min(from + 1, c.Shape.Around - 1), random.Next(3)));
                    }

                    var load = sheet.RandomVector();
                    var answer = response.Solve(load).ToArray();
                    using var fresh = new SheetFactor(sheet, factor.Dissection, 1);
                    using var freshResponse = new SheetResponse(fresh);
                    Assert.Equal(freshResponse.Solve(load).ToArray(), answer);
                }

                var last = sheet.RandomVector();
                AssertClose(sheet.SolveInFull(last), response.Solve(last).ToArray());
            },
            iter: Counts.Of(50, 1000));

    // Rank: property.
    [Fact]
    public void A_change_renews_only_the_way_to_the_root()
    {
        var shape = new SheetShape(64, 9, true);
        var sheet = new RandomSheet(shape, 3, 1, 0);
        using var factor = new SheetFactor(sheet, SheetDissection.Even(shape));
        var all = factor.LastWork;
        factor.Change([shape.Patch(3, 4)], []);
        Assert.InRange(factor.LastWork.Fronts, 1, all.Fronts / 8);
        Assert.InRange(factor.LastWork.Operations, 1, all.Operations / 4);
        factor.Change([], []);
        Assert.Equal(0, factor.LastWork.Fronts);
    }

    // Rank: property.
    [Fact]
    public void Refocusing_keeps_the_sectors_that_stay()
    {
        var shape = new SheetShape(64, 8, true);
        var sheet = new RandomSheet(shape, 3, 1, 0);
        using var factor = new SheetFactor(sheet, SheetDissection.Even(shape));
        var all = factor.LastWork;
        factor.Dissect(factor.Dissection with { Focus = 3 });
        Assert.Equal(factor.Dissection.Cuts.Count - 1, factor.LastWork.Fronts);
        Assert.True(factor.LastWork.Fronts < all.Fronts / 4);
    }

    [Fact]
    public void A_sheet_that_nothing_holds_is_found_out()
    {
        var shape = new SheetShape(6, 3, false);
        var sheet = new FloatingSheet(shape);
        using var factor = new SheetFactor(sheet, SheetDissection.Even(shape));
        Assert.NotNull(factor.LooseColumn);
        using var response = new SheetResponse(factor);
        Assert.Throws<InvalidOperationException>(() => response.Solve(new double[shape.Columns]).Length);
    }

    [Theory]
    [InlineData(40, 5, 8, 12)]
    [InlineData(40, 5, -2, 3)]
    [InlineData(40, 5, 36, 43)]
    [InlineData(40, 3, 0, 37)]
    public void The_focus_contains_what_it_is_asked_to(int around, int margin, int from, int to)
    {
        var shape = new SheetShape(around, 6, true);
        var dissection = SheetDissection.Even(shape).FocusedOn(shape, from, to, margin);
        dissection.Validate(shape);
        var (first, last) = dissection.Interior(shape, dissection.Focus);
        Assert.Contains(new[] { -around, 0, around }, turn => from + turn >= first && to + turn <= last);
        Assert.Equal(dissection.Cuts, dissection.FocusedOn(shape, from, to, margin).Cuts);
    }

    [Fact]
    public void Cuts_that_do_not_fit_are_refused()
    {
        var shape = new SheetShape(10, 4, true);
        Assert.Throws<ArgumentException>(() => new SheetDissection([3], 0).Validate(shape));
        Assert.Throws<ArgumentException>(() => new SheetDissection([3, 3], 0).Validate(shape));
        Assert.Throws<ArgumentException>(() => new SheetDissection([3, 10], 0).Validate(shape));
        Assert.ThrowsAny<ArgumentException>(() => new SheetDissection([3, 7], 2).Validate(shape));
    }

    private static void AssertClose(double[] expected, double[] actual)
    {
        var scale = expected.Max(Math.Abs);
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++)
        {
            Assert.True(Math.Abs(expected[i] - actual[i]) <= Tolerance * scale, $"{i}: {expected[i]} {actual[i]}");
        }
    }

    /// <summary>Springs between neighbours and none to the ground.</summary>
    private sealed class FloatingSheet(SheetShape shape) : ISheetMatrix
    {
        public SheetShape Shape => shape;

        public int DofsPerColumn => 1;

        public double LargestDiagonal => 1;

        public ReadOnlySpan<short> Active(int column) => [0];

        public bool IsEmpty(int patch) => false;

        public ReadOnlySpan<double> Diagonal(int column) => [];

        public void AddPatch(int patch, in PatchTarget target)
        {
            for (var a = 0; a < 4; a++)
            {
                target.Add(a, [0], a, [0], [1], 1);
                target.Add(a, [0], (a + 1) % 4, [0], [-0.5], 1);
            }
        }
    }
}
