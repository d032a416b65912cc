using System.Reflection;
using System.Runtime.CompilerServices;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Architecture.Tests;

/// <summary>Laws 1 and 3: pure rooms are held by the compiler's banned list, and nothing public in them changes.</summary>
public class PurityTests
{
    /// <summary>How many public types of pure rooms are marked [Mutable]. Raising it is a decision: say why in the attribute.</summary>
    private const int MutableTypes = 8;

    [Fact]
    public void PureRoomsTurnTheBannedListOn()
    {
        foreach (var room in Rooms.Table.Keys)
        {
            var pure = Rooms.Project(room).Descendants("IsPure").Any(e => e.Value == "true");
            Assert.Equal(Rooms.Pure.Contains(room), pure);
        }
    }

    [Theory]
    [InlineData("T:System.IO.File;")]
    [InlineData("P:System.DateTime.Now;")]
    [InlineData("T:System.Random;")]
    [InlineData("T:System.Console;")]
    [InlineData("N:System.Net;")]
    public void TheBannedListNames(string symbol) =>
        Assert.Contains(File.ReadAllLines(Path.Combine(Counts.Root, "BannedSymbols.Pure.txt")), line => line.StartsWith(symbol, StringComparison.Ordinal));

    [Fact]
    public void NothingPublicIsMutableUnlessMarked()
    {
        var unmarked = PublicTypes().Where(type => Changing(type).Any() && !Marked(type))
            .Select(type => $"{type.FullName}: {string.Join(", ", Changing(type).Select(f => f.Name))}");
        Assert.Empty(unmarked);
    }

    [Fact]
    public void TheNumberOfMutableTypesIsKnown() =>
        Assert.Equal(MutableTypes, PublicTypes().Count(type => Marked(type)));

    /// <summary>By name, since Numerics stands on nothing and has a marker of its own.</summary>
    private static bool Marked(Type type) => type.GetCustomAttributes(false).Any(attribute => attribute.GetType().Name == nameof(MutableAttribute));

    private static IEnumerable<Type> PublicTypes() =>
        Rooms.Pure.SelectMany(room => Assembly.Load($"Clomwright.{room}").GetExportedTypes()).Where(type => !type.IsEnum && !type.IsInterface);

    private static IEnumerable<FieldInfo> Changing(Type type) =>
        type.GetFields(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Where(field => !field.IsInitOnly && !field.IsLiteral && !field.IsDefined(typeof(CompilerGeneratedAttribute), false)
                || field.IsDefined(typeof(CompilerGeneratedAttribute), false) && HasSetter(type, field));

    /// <summary>The backing field of a property that can be set after construction.</summary>
    private static bool HasSetter(Type type, FieldInfo field)
    {
        var name = field.Name.StartsWith('<') ? field.Name[1..field.Name.IndexOf('>', StringComparison.Ordinal)] : field.Name;
        var setter = type.GetProperty(name, BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)?.SetMethod;
        return setter is not null && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) && !setter.IsPrivate;
    }
}
