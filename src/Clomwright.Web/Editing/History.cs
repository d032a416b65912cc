using Clomwright.Building;

namespace Clomwright.Web.Editing;

/// <summary>A house with what it was before and what was taken back. Changes of one gesture are one step.</summary>
public sealed record History
{
    /// <summary>Steps that can be taken back.</summary>
    public const int StepsMax = 500;

    private History(House now, Stack past, Stack future, string? gesture) => (Now, Past, Future, Gesture) = (now, past, future, gesture);

    /// <summary>The house as it is now.</summary>
    public House Now { get; }

    /// <summary>Something can be taken back.</summary>
    public bool CanUndo => !Past.IsEmpty;

    /// <summary>Something taken back can be put again.</summary>
    public bool CanRedo => !Future.IsEmpty;

    private Stack Past { get; }

    private Stack Future { get; }

    private string? Gesture { get; }

    /// <summary>A house without a past.</summary>
    public static History From(House house) => new(house, Stack.Empty, Stack.Empty, null);

    /// <summary>The house changed. A change of the same gesture as the one before takes its place; a change that changes nothing is no step.</summary>
    public History With(House house, string gesture)
    {
        if (house == Now)
        {
            return this;
        }

        var past = gesture == Gesture && !Past.IsEmpty ? Past : Past.Push(Now);
        return new History(house, past, Stack.Empty, gesture);
    }

    /// <summary>One step back; the same where there is none.</summary>
    public History Undo() => Past.IsEmpty ? this : new History(Past.Top, Past.Popped, Future.Push(Now), null);

    /// <summary>One step forward again; the same where there is none.</summary>
    public History Redo() => Future.IsEmpty ? this : new History(Future.Top, Past.Push(Now), Future.Popped, null);

    /// <summary>An immutable stack that forgets its oldest beyond <see cref="StepsMax"/>.</summary>
    private sealed record Stack(System.Collections.Immutable.ImmutableList<House> Houses)
    {
        public static Stack Empty { get; } = new(System.Collections.Immutable.ImmutableList<House>.Empty);

        public bool IsEmpty => Houses.IsEmpty;

        public House Top => Houses[^1];

        public Stack Popped => new(Houses.RemoveAt(Houses.Count - 1));

        public Stack Push(House house)
        {
            var pushed = Houses.Add(house);
            return new(pushed.Count > StepsMax ? pushed.RemoveAt(0) : pushed);
        }
    }
}
