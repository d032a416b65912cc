using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>What a rule method says of one thing. It names no clause: the register stamps it into a finding.</summary>
/// <param name="Subject">The address of the thing, from the author's names.</param>
/// <param name="Verdict">What the rule says of it.</param>
internal sealed record Ruling(string Subject, Verdict Verdict)
{
    /// <summary>Where to point on the unrolled wall.</summary>
    public Sequence<Place> Places { get; init; }

    /// <summary>Remarks.</summary>
    public Sequence<Message> Notes { get; init; }

    public static Ruling NotApplicable(string subject, string because) => new(subject, new Verdict.NotApplicable(new Message($"rules.because.{because}")));

    public static Ruling NotChecked(string subject, string because) => new(subject, new Verdict.NotChecked(new Message($"rules.because.{because}")));

    public Ruling At(Span span, double fromHeight, double toHeight) => this with { Places = [new Place(span.From, span.To, fromHeight, toHeight)] };

    public Ruling Noting(Message note) => this with { Notes = Notes.Plus(note) };
}

/// <summary>A rule: one house and the number asked; out come rulings on everything that the rule is about, or one that says why it is about nothing here.</summary>
internal delegate Sequence<Ruling> RuleMethod(HouseGeometry house, Amount limit);

/// <summary>Computed values as they are compared, so that what is drawn exactly at a limit is not lost to the last bit of a sine.</summary>
internal static class Exactly
{
    private const double Farthest = 1e9;

    private const double Close = 1e-12;

    /// <summary>A length in whole nanometres.</summary>
    public static Amount Metres(double metres) => Math.Abs(metres) < Farthest ? Evidence.Length.Nearest(metres) : Amount.Metres(double.NaN);

    /// <summary>A value that is within a part in 10^12 of a limit stands at it.</summary>
    public static Amount Near(Amount value, Amount limit) => Math.Abs(value.Si - limit.Si) <= Close * Math.Abs(limit.Si) ? limit : value;
}
