namespace Clomwright.Web.Tests.Page;

/// <summary>A running workbench on a house that nobody changes.</summary>
internal sealed class StandingHouse : IAsyncDisposable
{
    private readonly HouseFolderCopy folder;

    private StandingHouse(HouseFolderCopy folder, RunningWorkbench workbench) => (this.folder, Workbench) = (folder, workbench);

    public RunningWorkbench Workbench { get; }

    public static async Task<StandingHouse> Open()
    {
        var folder = new HouseFolderCopy();
        return new(folder, await folder.Start());
    }

    /// <summary>A test that writes into it would make the others see another house: that is said here.</summary>
    public async ValueTask DisposeAsync()
    {
        await Workbench.DisposeAsync();
        var unchanged = (await File.ReadAllBytesAsync(folder.HouseFile)).AsSpan().SequenceEqual(Files.HouseDocument.Of(Testing.Houses.HeronPoint).ToBytes());
        folder.Dispose();
        Assert.True(unchanged, "A test that should only look has changed the standing house.");
    }
}
