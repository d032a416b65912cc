using Clomwright.Testing;
namespace Clomwright.Evidence.Tests;

public class SequenceTests
{
    private sealed record Bag(string Name, Sequence<int> Items);

    [Fact]
    public void Equality_IsItemByItem()
    {
        Assert.Equal<Sequence<int>>([1, 2, 3], Enumerable.Range(1, 3).ToSequence());
        Assert.NotEqual<Sequence<int>>([1, 2, 3], [1, 2]);
        Assert.NotEqual<Sequence<int>>([1, 2], [2, 1]);
        Assert.Equal(new Bag("a", [1, 2]), new Bag("a", [1, 2]));
        Assert.NotEqual(new Bag("a", [1, 2]), new Bag("a", [1, 3]));
        Assert.Equal(new Bag("a", [1, 2]).GetHashCode(), new Bag("a", [1, 2]).GetHashCode());
    }

    [Fact]
    public void Default_IsEmpty()
    {
        Sequence<int> none = default;
        Assert.Equal([], none);
        Assert.Empty(none);
        Assert.Equal<Sequence<int>>([1], none.Plus(1));
    }

    [Fact]
    public void Changing_LeavesTheOldOneAlone()
    {
        Sequence<int> old = [1, 2, 3];
        Assert.Equal<Sequence<int>>([1, 9, 3], old.With(1, 9));
        Assert.Equal<Sequence<int>>([1, 3], old.Without(1));
        Assert.Equal<Sequence<int>>([1, 2, 3, 4], old.Plus(4));
        Assert.Equal<Sequence<int>>([1, 2, 3], old);
    }

    [Fact]
    public void EqualSequencesHashAlikeAndBehaveAsLists()
    {
        Gen.Int[0, 3].Array[0, 6].Select(Gen.Int[0, 3].Array[0, 6]).ForAll((a, b) =>
        {
            var (x, y) = (a.ToSequence(), b.ToSequence());
            return (x == y) == a.SequenceEqual(b) && (x != y || x.GetHashCode() == y.GetHashCode()) && x.SequenceEqual(a);
        });
    }
}
