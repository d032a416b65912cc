using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>Turns what the page writes of the crew into an edit, or one sentence why it cannot be.</summary>
internal static class EditOfCrew
{
    /// <summary>The edit, or null and the reason. What the description itself would call wrong is not taken.</summary>
    public static Edit? Change(Change.Enter change, House house, out Message? reason)
    {
        (var edit, reason) = CrewBlanks.Of(house).FirstOrDefault(blank => blank.Key == change.Blank) is { } blank ? blank.Written(change.Text) : (null, new Message("web.earth.gone"));
        if (edit is null)
        {
            return null;
        }

        var was = HouseDiagnostics.Of(house);
        reason = HouseDiagnostics.Of(edit.Apply(house)).Where(said => said.Severity == Severity.Error && said.Path.StartsWith("crew", StringComparison.Ordinal))
            .Select(said => said.What).FirstOrDefault(what => was.All(said => said.What != what));
        return reason is null ? edit : null;
    }
}
