namespace Clomwright.Files.Tests;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("clomwright-").FullName;

    public string this[string name] => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
