using System.Text.Json;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Clomwright.Web.Tests.Page;

/// <summary>axe-core's rules on a page, run in the page itself: the package's own way opens a second page for every answer, which takes seconds.</summary>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    /// <summary>What it finds wrong, one line each; incomplete ones are left to people.</summary>
    public static async Task<IReadOnlyList<string>> Violations(IPage page)
    {
        await page.EvaluateAsync(Script);
        var found = await page.EvaluateAsync<JsonElement>("async () => (await axe.run(document, { resultTypes: ['violations'] })).violations.map(v => `${v.id}: ${v.help}: ${v.nodes[0].html}`)");
        return [.. found.EnumerateArray().Select(v => v.GetString()!)];
    }
}
