using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>What can be looked at of one house as it is: each scene is made when somebody first looks, and kept as long as the house stays.</summary>
/// <param name="study">The study.</param>
/// <param name="said">What is wrong or odd in the file and in the description, with paths as in the file.</param>
/// <param name="made">Parts of the wall's scene as they were made last.</param>
internal sealed class Looked(HouseStudy study, IReadOnlyList<Diagnostic> said, SceneMemory made)
{
    private Scene? inside;
    private Scene? outside;

    /// <summary>What is wrong or odd in the file and in the description.</summary>
    public IReadOnlyList<Diagnostic> Said => said;

    /// <summary>The wall, from the side that is looked at; null when something without a wall is.</summary>
    /// <param name="sight">What is looked at.</param>
    /// <param name="before">While something is in hand, what was found before of all that takes longer; such a scene is not kept, and not made where the whole one is there. Null finds everything.</param>
    public Scene? Wall(Sight sight, Sequence<Finding>? before = null) => sight switch
    {
        Sight.Inside or Sight.Days => inside ?? (before is null ? inside = Seen(Face.Inside) : Seen(Face.Inside, before)),
        Sight.Outside => outside ?? (before is null ? outside = Seen(Face.Outside) : Seen(Face.Outside, before)),
        _ => null,
    };

    private Scene Seen(Face face, Sequence<Finding>? before = null) => Scenes.FromStudy.Scene(study, face, Words.Book, said, made, before);

    /// <summary>The roof.</summary>
    public RoofScene Roof => field ??= RoofSceneOf.Scene(study, Words.Book, said);

    /// <summary>The earth.</summary>
    public EarthScene Earth => field ??= EarthSceneOf.Scene(study, Words.Book, said);

    /// <summary>Who works.</summary>
    public DaysScene Days => field ??= DaysSceneOf.Scene(study, Words.Book);

    /// <summary>Warmth, damp and sun.</summary>
    public ComfortScene Comfort => field ??= ComfortSceneOf.Scene(study, Words.Book);

    /// <summary>The plan and what lies under the wall.</summary>
    public GroundScene Ground => field ??= GroundSceneOf.Scene(study, Words.Book);
}
