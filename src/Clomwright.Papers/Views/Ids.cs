using System.Globalization;

namespace Clomwright.Papers.Views;

/// <summary>Ids of drawn things, from the author's names.</summary>
public static class Ids
{
    /// <summary><c>opening-door</c>.</summary>
    public static string Opening(string name) => "opening-" + Joined(name);

    /// <summary><c>pier-door|south-window</c>, of an address <c>pier door|south-window</c>.</summary>
    public static string Pier(string address) => Joined(address);

    /// <summary><c>header-door</c>.</summary>
    public static string Header(string opening) => "header-" + Joined(opening);

    /// <summary><c>niche-lamp</c>.</summary>
    public static string Niche(string name) => "niche-" + Joined(name);

    /// <summary><c>embed-coat-pegs#2</c>.</summary>
    public static string Embed(string address) => "embed-" + Joined(address);

    /// <summary><c>landing-pole-1</c>.</summary>
    public static string Landing(string name) => "landing-" + Joined(name);

    /// <summary><c>round-bond-beam</c>, of a body in the round.</summary>
    public static string Body(string name) => "round-" + Joined(name);

    /// <summary>The number in the name of a landing: 3 of <c>pole 3</c> and of <c>pole 3 low</c>.</summary>
    internal static string Number(string landing) => landing.Split(' ').ElementAtOrDefault(1) ?? landing;

    /// <summary><c>lift-3</c>.</summary>
    public static string Lift(int number) => string.Create(CultureInfo.InvariantCulture, $"lift-{number}");

    /// <summary><c>tee-3</c>.</summary>
    public static string Tee(int number) => string.Create(CultureInfo.InvariantCulture, $"tee-{number}");

    /// <summary>The short sign of a thing in a list: A, B, ... Z, AA and on.</summary>
    public static string Letter(int index)
    {
        var letter = ((char)('A' + index % 26)).ToString();
        return index < 26 ? letter : Letter(index / 26 - 1) + letter;
    }

    private static string Joined(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Replace(' ', '-');
    }
}
