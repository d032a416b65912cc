namespace Clomwright.Testing;

/// <summary>How often random tests run: reduced counts in <c>./test</c>, the stated counts in <c>./test --long</c>.</summary>
public static class Counts
{
    /// <summary>Whether the long counts were asked for.</summary>
    public static bool Long { get; } = Environment.GetEnvironmentVariable("CLOM_TEST_LONG") == "1";

    /// <summary>The seed that <c>./test</c> prints; random tests of our own start from it.</summary>
    public static uint Seed { get; } = uint.TryParse(Environment.GetEnvironmentVariable("CLOM_TEST_SEED"), out var seed) ? seed : 20270601;

    /// <summary>One of two counts.</summary>
    public static int Of(int reduced, int stated) => Long ? stated : reduced;

    /// <summary>The root of the checkout, found from the test's own folder.</summary>
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    private static string FindRoot(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "global.json")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"No global.json above {from}.");
    }
}
