using Clomwright.Evidence;

namespace Clomwright.Geometry.Solids;

/// <summary>A round timber: its axis between two ends with their radii, m.</summary>
public readonly record struct RoundTimber(SpacePoint From, SpacePoint To, double RadiusFrom, double RadiusTo);

/// <summary>Round timbers as closed bodies.</summary>
public static class RoundTimbers
{
    private const int Sides = 16;

    /// <summary>One solid of timbers that lie in one place; null where one has no length or no thickness. Each is a cone cut off at both ends, with sixteen flat sides.</summary>
    public static SolidMesh? Of(string name, SolidPart part, IReadOnlyList<RoundTimber> timbers)
    {
        ArgumentNullException.ThrowIfNull(timbers);
        var mesh = new MeshMaker();
        foreach (var timber in timbers)
        {
            if (!((timber.To - timber.From).Norm > 0) || !(timber.RadiusFrom > 0) || !(timber.RadiusTo > 0))
            {
                return null;
            }

            mesh.Round(timber.From, timber.To, timber.RadiusFrom, timber.RadiusTo, Sides);
        }

        return mesh.Done(name, part);
    }
}
