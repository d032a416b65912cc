using System.Globalization;

namespace Clomwright.Files.Typing;

/// <summary>One step of a path such as <c>openings[2].width</c>: a key, or a place in a list.</summary>
internal readonly record struct PathStep(string? Key, int Index)
{
    /// <summary>The steps of a path; none for the whole file.</summary>
    public static IEnumerable<PathStep> Of(string path)
    {
        foreach (var part in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var bracket = part.IndexOf('[', StringComparison.Ordinal);
            if (bracket != 0)
            {
                yield return new PathStep(bracket < 0 ? part : part[..bracket], 0);
            }

            foreach (var index in bracket < 0 ? [] : part[(bracket + 1)..].Split(['[', ']'], StringSplitOptions.RemoveEmptyEntries))
            {
                yield return new PathStep(null, int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var i) ? i : int.MaxValue);
            }
        }
    }
}
