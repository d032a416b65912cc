namespace Clomwright.Web.Scenes;

/// <summary>Scenes that pages already have, so that only what is otherwise is sent.</summary>
internal sealed class SentScenes
{
    private const int Kept = 6;

    private readonly Queue<(long Edition, Scene Whole)> sent = new();
    private long editions;

    /// <summary>Forgets what was sent.</summary>
    public void Forget() => sent.Clear();

    /// <summary>The scene without what the one that was sent under a number had already; all of it where that is not remembered.</summary>
    /// <param name="scene">The whole scene.</param>
    /// <param name="since">The number of the scene that the page has; null where it has none.</param>
    public Scene Only(Scene scene, long? since)
    {
        var before = sent.LastOrDefault(s => s.Edition == since).Whole;
        if (sent.LastOrDefault(s => ReferenceEquals(s.Whole, scene)) is not { Whole: not null } edition)
        {
            edition = (++editions, scene);
            sent.Enqueue(edition);
        }

        while (sent.Count > Kept)
        {
            sent.Dequeue();
        }

        return before is null ? scene with { Edition = edition.Edition } : After(before, scene) with { Edition = edition.Edition, Since = since };
    }

    private static Scene After(Scene before, Scene scene)
    {
        var places = new Dictionary<FindingLine, int>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < before.Findings.Count; i++)
        {
            places[before.Findings[i]] = i;
        }

        var fresh = new List<FindingLine>();
        var order = new int[scene.Findings.Count];
        for (var i = 0; i < order.Length; i++)
        {
            if (!places.TryGetValue(scene.Findings[i], out order[i]))
            {
                fresh.Add(scene.Findings[i]);
                order[i] = -fresh.Count;
            }
        }

        return scene with { Findings = fresh, Order = order, Before = before, View = scene.View with { Before = before.View }, Plan = scene.Plan with { Before = before.Plan } };
    }
}
