using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How the plan stands in the file: its keys depend on <c>shape</c>.</summary>
internal static class PlanShape
{
    private static readonly PositionForm Position = new();

    public static Union<Plan> Plan { get; } = new("plan", "shape",
    [
        new Union<Plan>.CaseOf<Plan.Round>("round", Round()),
        new Union<Plan>.CaseOf<Plan.Oval>("oval", Oval()),
        new Union<Plan>.CaseOf<Plan.RoundedRectangle>("rounded-rectangle", RoundedRectangle()),
        new Union<Plan>.CaseOf<Plan.Path>("path", Path()),
    ]);

    private static Thing<Plan.Round> Round()
    {
        var diameter = Keys<Plan.Round>.Needed("insideDiameter", Lengths, p => p.InsideDiameter);
        return Turned([diameter], v => new Plan.Round(v.Of(diameter)));
    }

    private static Thing<Plan.Oval> Oval()
    {
        var length = Keys<Plan.Oval>.Needed("insideLength", Lengths, p => p.InsideLength);
        var width = Keys<Plan.Oval>.Needed("insideWidth", Lengths, p => p.InsideWidth);
        return Turned([length, width], v => new Plan.Oval(v.Of(length), v.Of(width)));
    }

    private static Thing<Plan.RoundedRectangle> RoundedRectangle()
    {
        var length = Keys<Plan.RoundedRectangle>.Needed("insideLength", Lengths, p => p.InsideLength);
        var width = Keys<Plan.RoundedRectangle>.Needed("insideWidth", Lengths, p => p.InsideWidth);
        var radius = Keys<Plan.RoundedRectangle>.Needed("cornerRadius", Lengths, p => p.CornerRadius);
        return Turned([length, width, radius], v => new Plan.RoundedRectangle(v.Of(length), v.Of(width), v.Of(radius)));
    }

    private static Thing<Plan.Path> Path()
    {
        var points = Keys<Plan.Path>.Needed("points", new ListForm<PlanPosition>(Position), p => p.Points);
        return Turned([points], v => new Plan.Path(v.Of(points)));
    }

    /// <summary>The keys that every shape has after its own.</summary>
    private static Thing<P> Turned<P>(Key<P>[] own, Func<Values, P> make) where P : Plan
    {
        var bearing = Keys<P>.Or("bearing", Angles, p => p.Bearing, default);
        var zero = Keys<P>.Or("zeroBearing", Angles, p => p.ZeroBearing, default);
        var centre = Keys<P>.Maybe("centre", Position, p => p.Centre);
        return new Thing<P>("plan", [.. own, bearing, zero, centre], v => make(v) with { Bearing = v.Of(bearing), ZeroBearing = v.Of(zero), Centre = v.Of(centre) });
    }
}
