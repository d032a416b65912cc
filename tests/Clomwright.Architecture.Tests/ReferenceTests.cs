using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Clomwright.Architecture.Tests;

/// <summary>Law 2: references equal the table, both ways.</summary>
public class ReferenceTests
{
    [Fact]
    public void EveryRoomIsInTheTableOrAShell() =>
        Assert.Equal(Rooms.Table.Keys.Concat(Rooms.Shells).Order(StringComparer.Ordinal), Rooms.Declared());

    [Fact]
    public void ReferencesEqualTheTable()
    {
        foreach (var (room, allowed) in Rooms.Table)
        {
            Assert.True(
                allowed.Order(StringComparer.Ordinal).SequenceEqual(Rooms.References(room).Order(StringComparer.Ordinal)),
                $"{room} references {string.Join(", ", Rooms.References(room))}; the table says {string.Join(", ", allowed)}.");
        }
    }

    [Fact]
    public void ShellsDoNotReachIntoNumerics()
    {
        foreach (var shell in Rooms.Shells)
        {
            Assert.DoesNotContain("Numerics", Rooms.References(shell));
        }
    }

    /// <summary>Rules see results, never how they were computed.</summary>
    [Fact]
    public void RulesNameOnlyResultsOfAnalysis()
    {
        using var file = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Clomwright.Rules.dll"));
        using var pe = new PEReader(file);
        var metadata = pe.GetMetadataReader();
        foreach (var handle in metadata.TypeReferences)
        {
            var type = metadata.GetTypeReference(handle);
            if (metadata.GetString(type.Namespace).StartsWith("Clomwright.Analysis", StringComparison.Ordinal))
            {
                var name = metadata.GetString(type.Name);
                Assert.True(name.EndsWith("Result", StringComparison.Ordinal), $"Rules names Analysis type {name}; only *Result types may cross.");
            }
        }
    }
}
