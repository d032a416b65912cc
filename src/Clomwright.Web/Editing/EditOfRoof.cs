using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>Turns what the page asks of a knob into an edit of the roof, or one sentence why it cannot be.</summary>
internal static class EditOfRoof
{
    /// <summary>The edit, or null and the reason. A value that the description itself would call wrong is not taken.</summary>
    public static Edit? Change(Change.OfRoof change, House house, out Message? reason)
    {
        reason = null;
        if (RoofKnobs.Of(house).FirstOrDefault(knob => knob.Key == change.Knob) is not { } standing)
        {
            reason = new Message("web.knob.none");
            return null;
        }

        var edit = change switch
        {
            Change.Turn turn => standing.At(Held(standing, turn.At)),
            Change.Step step => standing.At(Held(standing, Stepped(standing.Now, Math.Clamp(step.Steps, -1000, 1000)))),
            Change.Set set => Written(standing, set.Text, out reason),
            _ => null,
        };
        if (edit is not null && Wrong(house, edit.Apply(house)) is { } wrong)
        {
            reason = wrong;
            return null;
        }

        return edit;
    }

    /// <summary>From between two marks the first step goes to the next mark.</summary>
    private static int Stepped(double now, int steps) => (int)(steps > 0 ? Math.Floor(now + 1e-9) : Math.Ceiling(now - 1e-9)) + steps;

    private static int Held(StandingKnob knob, int mark)
    {
        var marks = knob.Most - knob.Least + 1;
        return knob.Round ? knob.Least + ((mark - knob.Least) % marks + marks) % marks : Math.Clamp(mark, knob.Least, knob.Most);
    }

    private static Edit? Written(StandingKnob knob, string text, out Message? reason)
    {
        (var edit, reason) = knob.Written(text);
        return edit;
    }

    /// <summary>The first thing wrong with the roof after a change that was not wrong before it.</summary>
    private static Message? Wrong(House before, House after)
    {
        var was = HouseDiagnostics.Of(before);
        return HouseDiagnostics.Of(after)
            .Where(said => said.Severity == Severity.Error && said.Path.StartsWith("roof", StringComparison.Ordinal))
            .Select(said => said.What).FirstOrDefault(what => was.All(said => said.What != what));
    }
}
