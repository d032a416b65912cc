using Clomwright.Building;
using Clomwright.Files;
using Clomwright.Testing;

namespace Clomwright.Web.Tests;

/// <summary>A folder of its own with the bath house in it, or that house changed, gone when disposed.</summary>
public sealed class HouseFolderCopy : IDisposable
{
    public const string Key = "heron-point";

    public HouseFolderCopy(House? house = null)
    {
        Path = Directory.CreateTempSubdirectory("clomwright-web-").FullName;
        HouseFile = System.IO.Path.Combine(Path, $"{Key}.house.json");
        File.WriteAllBytes(HouseFile, HouseDocument.Of(house ?? Houses.HeronPoint).ToBytes());
    }

    public string Path { get; }

    public string HouseFile { get; }

    /// <summary>A workbench on this folder, on any free port.</summary>
    public Task<RunningWorkbench> Start() => Workbench.Start(HouseFolder.Open(Path).Folder!);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
