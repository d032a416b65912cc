using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Setting;

/// <summary>Sets an equation in type: fractions over a bar, powers raised, what follows a low line set low, Greek letters for their names.</summary>
internal static class Formula
{
    private const double Small = 0.72;
    private const double AxisHeight = 0.33;

    private static readonly Dictionary<string, string> Greek = new()
    {
        ["alpha"] = "α", ["beta"] = "β", ["gamma"] = "γ", ["delta"] = "δ", ["epsilon"] = "ε", ["zeta"] = "ζ", ["eta"] = "η", ["theta"] = "θ", ["kappa"] = "κ",
        ["lambda"] = "λ", ["mu"] = "μ", ["nu"] = "ν", ["xi"] = "ξ", ["pi"] = "π", ["rho"] = "ρ", ["sigma"] = "σ", ["tau"] = "τ", ["phi"] = "φ", ["chi"] = "χ",
        ["psi"] = "ψ", ["omega"] = "ω", ["Delta"] = "Δ", ["Sigma"] = "Σ", ["Omega"] = "Ω", ["Phi"] = "Φ",
    };

    /// <summary>A symbol equal to the right-hand side of its equation.</summary>
    public static Piece Equation(string symbol, Term right, Lettering lettering) =>
        Piece.Row(Symbol(symbol, lettering), Sign("=", lettering), Of(right, lettering));

    /// <summary>A symbol as its source spells it: <c>r_t</c> with the t set low.</summary>
    public static Piece Symbol(string name, Lettering lettering)
    {
        var at = name.IndexOf('_', StringComparison.Ordinal);
        if (at <= 0)
        {
            return Piece.Run(Spelt(name), lettering);
        }

        var below = string.Join(',', name[(at + 1)..].Split('_').Select(Spelt));
        return Piece.Row(Piece.Run(Spelt(name[..at]), lettering), Piece.Space(0.04 * lettering.Size), Piece.Run(below, Smaller(lettering)).Lowered(0.2 * lettering.Size));
    }

    /// <summary>A term.</summary>
    public static Piece Of(Term term, Lettering lettering) => term switch
    {
        Term.Number number => Piece.Run(number.Written, lettering),
        Term.Name name => Symbol(name.Symbol, lettering),
        Term.Sum sum => Piece.Row(Of(sum.Left, lettering), Sign(sum.Minus ? "−" : "+", lettering), sum.Minus ? Inside<Term.Sum>(sum.Right, lettering) : Of(sum.Right, lettering)),
        Term.Product product => Piece.Row(Factor(product.Left, lettering), Dot(lettering), Factor(product.Right, lettering)),
        Term.Quotient quotient => Fraction(Of(quotient.Over, lettering), Of(quotient.Under, lettering), lettering),
        Term.Negative negative => Piece.Row(Piece.Run("−", lettering), Piece.Space(0.08 * lettering.Size), Inside<Term.Sum>(negative.Inside, lettering)),
        Term.Power { Base: Term.Call { Function: "sin" or "cos" or "tan" } call } power => Called(call, lettering, power.Exponent),
        Term.Power power => Raised(power.Base is Term.Name or Term.Number ? Of(power.Base, lettering) : Bracketed(Of(power.Base, lettering), lettering), power.Exponent, lettering),
        Term.Call call => Called(call, lettering, null),
        _ => throw new ArgumentOutOfRangeException(nameof(term)),
    };

    private static string Spelt(string name) => Greek.GetValueOrDefault(name, name);

    private static Lettering Smaller(Lettering lettering) => lettering with { Size = lettering.Size * Small };

    private static Piece Sign(string sign, Lettering lettering) =>
        Piece.Row(Piece.Space(0.28 * lettering.Size), Piece.Run(sign, lettering), Piece.Space(0.28 * lettering.Size));

    private static Piece Dot(Lettering lettering) => Piece.Row(Piece.Space(0.1 * lettering.Size), Piece.Run("·", lettering), Piece.Space(0.1 * lettering.Size));

    private static Piece Factor(Term term, Lettering lettering) =>
        term is Term.Negative ? Bracketed(Of(term, lettering), lettering) : Inside<Term.Sum>(term, lettering);

    private static Piece Inside<TLoose>(Term term, Lettering lettering)
        where TLoose : Term => term is TLoose ? Bracketed(Of(term, lettering), lettering) : Of(term, lettering);

    private static Piece Raised(Piece of, Term exponent, Lettering lettering) =>
        Piece.Row(of, Piece.Space(0.06 * lettering.Size), Of(exponent, Smaller(lettering)).Lowered(-Math.Max(0.4 * lettering.Size, of.Up - 0.4 * lettering.Size)));

    private static Piece Fraction(Piece over, Piece under, Lettering lettering)
    {
        var (edge, gap) = (0.12 * lettering.Size, 0.1 * lettering.Size);
        var axis = AxisHeight * lettering.Size;
        var width = Math.Max(over.Width, under.Width) + 2 * edge;
        return new Piece(width + 2 * edge, axis + gap + over.Height, under.Height + gap - axis, (board, x, y) =>
        {
            var (left, bar) = (x + edge, y - axis);
            over.Draw(board, left + (width - over.Width) / 2, bar - gap - over.Down);
            under.Draw(board, left + (width - under.Width) / 2, bar + gap + under.Up);
            board.Line(left, bar, left + width, bar, Weight.Thin);
        });
    }

    private static Piece Bracketed(Piece inside, Lettering lettering)
    {
        var room = 0.36 * lettering.Size;
        return new Piece(inside.Width + 2 * room, inside.Up, inside.Down, (board, x, y) =>
        {
            inside.Draw(board, x + room, y);
            Bracket(board, x + 0.8 * room, y - 0.94 * inside.Up, y + 0.94 * inside.Down, -0.55 * room);
            Bracket(board, x + inside.Width + 1.2 * room, y - 0.94 * inside.Up, y + 0.94 * inside.Down, 0.55 * room);
        });
    }

    private static void Bracket(Board board, double x, double top, double bottom, double bulge)
    {
        var third = (bottom - top) / 3;
        board.Add(new Stroke(
            new Outline([new Segment(Verb.Move, new(x, top)), new Segment(Verb.Curve, new(x, bottom), new(x + 1.3 * bulge, top + third), new(x + 1.3 * bulge, bottom - third))]),
            new Pen(Weight.Thin)));
    }

    private static Piece Called(Term.Call call, Lettering lettering, Term? power)
    {
        var arguments = call.Arguments.Select(a => Of(a, lettering)).ToArray();
        if (call.Function == "sqrt")
        {
            return Root(arguments[0], lettering);
        }

        if (call.Function == "abs")
        {
            return Bars(arguments[0], lettering);
        }

        var name = Piece.Run(call.Function, lettering);
        var head = power is null ? name : Raised(name, power, lettering);
        var simple = call.Arguments is [Term.Name or Term.Number] && call.Function is not "exp";
        return simple
            ? Piece.Row(head, Piece.Space(0.18 * lettering.Size), arguments[0])
            : Piece.Row(head, Bracketed(arguments.Length == 1 ? arguments[0] : Piece.Row(arguments[0], Piece.Run(", ", lettering), arguments[1]), lettering));
    }

    private static Piece Bars(Piece inside, Lettering lettering)
    {
        var room = 0.16 * lettering.Size;
        return new Piece(inside.Width + 2 * room, inside.Up, inside.Down, (board, x, y) =>
        {
            inside.Draw(board, x + room, y);
            board.Line(x + room / 2, y - inside.Up, x + room / 2, y + inside.Down, Weight.Thin);
            board.Line(x + inside.Width + 1.5 * room, y - inside.Up, x + inside.Width + 1.5 * room, y + inside.Down, Weight.Thin);
        });
    }

    private static Piece Root(Piece inside, Lettering lettering)
    {
        var (hook, gap) = (0.55 * lettering.Size, 0.08 * lettering.Size);
        return new Piece(inside.Width + hook + 2 * gap, inside.Up + 2 * gap, inside.Down, (board, x, y) =>
        {
            inside.Draw(board, x + hook + gap, y);
            var (top, bottom) = (y - inside.Up - gap, y + 0.8 * inside.Down);
            board.Add(new Stroke(
                Outline.Through(
                    new(x + 0.1 * hook, bottom - 0.4 * (bottom - top)), new(x + 0.3 * hook, bottom - 0.45 * (bottom - top)),
                    new(x + 0.6 * hook, bottom), new(x + hook, top), new(x + hook + inside.Width + 2 * gap, top)),
                new Pen(Weight.Thin)));
        });
    }
}
