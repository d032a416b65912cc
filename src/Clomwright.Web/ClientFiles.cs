using System.Collections.Frozen;
using System.Reflection;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web;

/// <summary>The built page, kept inside this assembly.</summary>
internal static class ClientFiles
{
    private const string Prefix = "app/";

    private static readonly FrozenDictionary<string, string> Types = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
    {
        [".html"] = "text/html; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".svg"] = "image/svg+xml",
        [".woff2"] = "font/woff2",
        [".md"] = "text/plain; charset=utf-8",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, byte[]> Files = Embedded();

    /// <summary>Serves the files under <c>/app</c> and the page itself at every place that the page knows.</summary>
    public static void MapClient(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/app/{**path}", (string path, HttpContext context) => File(path, context));
        foreach (var place in new[] { "/", "/ground/{house}", "/earth/{house}", "/wall/{house}", "/roof/{house}", "/days/{house}", "/comfort/{house}", "/papers/{house}", "/record/{house}", "/round/{house}", "/phones/{house}", "/arrived/{house}", "/sheet/{house}", "/print/{house}" })
        {
            routes.MapGet(place, (HttpContext context) => File("index.html", context));
        }
    }

    /// <summary>A built file.</summary>
    /// <param name="path">Below <c>app/</c>.</param>
    public static byte[] Bytes(string path) => Files[path];

    private static IResult File(string path, HttpContext context)
    {
        if (!Files.TryGetValue(path, out var bytes))
        {
            return Results.NotFound();
        }

        // Built files carry a digest of their content in their names; the page itself does not.
        context.Response.Headers.CacheControl = path.StartsWith("assets/", StringComparison.Ordinal) ? "public, max-age=31536000, immutable" : "no-cache";
        return Results.Bytes(bytes, Types.GetValueOrDefault(Path.GetExtension(path), "application/octet-stream"));
    }

    private static FrozenDictionary<string, byte[]> Embedded()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
            .ToFrozenDictionary(name => name[Prefix.Length..], name => Bytes(assembly, name), StringComparer.Ordinal);
    }

    private static byte[] Bytes(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
