using Microsoft.Playwright;

namespace Clomwright.Web.Tests.Page;

/// <summary>One Chromium for the page tests of a collection. Where there is none they are skipped and say so.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private readonly Lazy<Task<StandingHouse>> standing = new(StandingHouse.Open);
    private IPlaywright? playwright;

    /// <summary>The browser; null where there is none.</summary>
    public IBrowser? Browser { get; private set; }

    /// <summary>A workbench for pages that only look: what takes long is worked out once for all of them.</summary>
    internal Task<StandingHouse> Standing => standing.Value;

    public static string Path => Environment.GetEnvironmentVariable("CLOM_CHROMIUM") ?? "/usr/bin/chromium";

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Path))
        {
            return;
        }

        // A busy machine is slow, not broken.
        Assertions.SetDefaultExpectTimeout(30_000);
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Path,
            Args = ["--no-sandbox", "--disable-gpu", "--enable-unsafe-swiftshader", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (Browser is not null)
        {
            await Browser.CloseAsync();
        }

        playwright?.Dispose();
        if (standing.IsValueCreated)
        {
            await (await standing.Value).DisposeAsync();
        }
    }
}

[CollectionDefinition(nameof(Chromium))]
public sealed class ChromiumTests : ICollectionFixture<Chromium>;

/// <summary>A second browser beside the first: page tests wait more than they work.</summary>
[CollectionDefinition(nameof(SecondChromiumTests))]
public sealed class SecondChromiumTests : ICollectionFixture<Chromium>;

/// <summary>A browser of its own for the long session, which rests most of its time beside the other two.</summary>
[CollectionDefinition(nameof(ThirdChromiumTests))]
public sealed class ThirdChromiumTests : ICollectionFixture<Chromium>;
