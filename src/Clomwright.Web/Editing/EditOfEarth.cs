using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>Turns what the page writes of jar, recipe, bars and prisms into an edit of the mix, or one sentence why it cannot be.</summary>
internal static class EditOfEarth
{
    /// <summary>The edit, or null and the reason. What the description itself would call wrong is not taken.</summary>
    public static Edit? Change(Change.OfBlank change, House house, out Message? reason)
    {
        var blanks = new EarthBlanks(house);
        (var edit, reason) = change switch
        {
            Change.Enter enter => blanks.All.FirstOrDefault(blank => blank.Key == enter.Blank) is { } blank ? blank.Written(enter.Text) : (null, new Message("web.earth.gone")),
            Change.AddTest add => blanks.Add(add.Test, add.Texts),
            Change.RemoveTest remove => blanks.Without(remove.Test, remove.Index) is { } without ? (without, null) : (null, new Message("web.earth.gone")),
            _ => throw new ArgumentOutOfRangeException(nameof(change)),
        };
        if (edit is not null && Wrong(house, edit.Apply(house)) is { } wrong)
        {
            reason = wrong;
            return null;
        }

        return edit;
    }

    /// <summary>The first thing wrong with the mix after a change that was not wrong before it.</summary>
    private static Message? Wrong(House before, House after)
    {
        var was = HouseDiagnostics.Of(before);
        return HouseDiagnostics.Of(after)
            .Where(said => said.Severity == Severity.Error && said.Path.StartsWith("mix", StringComparison.Ordinal))
            .Select(said => said.What).FirstOrDefault(what => was.All(said => said.What != what));
    }
}
