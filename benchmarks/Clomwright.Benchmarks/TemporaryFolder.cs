namespace Clomwright.Benchmarks;

/// <summary>A folder that goes with its work.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("clomwright-benchmark").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
