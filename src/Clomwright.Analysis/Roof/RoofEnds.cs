using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>How far the deck of rafters side by side reaches past the outermost of them. Each is reckoned with half the spacing on either side: what lies further out is carried by nothing that is described.</summary>
internal static class RoofEnds
{
    private const int Samples = 720;

    /// <param name="geometry">The placed house.</param>
    /// <param name="poles">Where the rafters lie.</param>
    /// <param name="fall">Bearing along them, radians.</param>
    /// <param name="spacing">Between them, m.</param>
    /// <param name="eave">The roof's edge, m outward from the inside curve.</param>
    public static CheckedMember Of(HouseGeometry geometry, Sequence<PoleGeometry> poles, double fall, double spacing, double eave)
    {
        var (curve, along) = (geometry.Curve, new PlanPoint(Math.Sin(fall), Math.Cos(fall)));
        double Sideways(PlanPoint at) => -along.Cross(at - curve.Centre);
        var edge = Enumerable.Range(0, Samples).Select(k => Sideways(curve.At(k * curve.Length / Samples, eave))).ToArray();
        var lines = poles.Select(p => Sideways(p.Foot)).ToArray();
        var (left, right) = (lines.Min() - edge.Min(), edge.Max() - lines.Max());
        var (reach, half) = (Math.Max(left, right), spacing / 2);
        if (reach > half + 1e-6)
        {
            return new("roof-ends", "roof", Message.Of("analysis.roof-ends.beyond", ("reach", Amount.Metres(reach)), ("half", Amount.Metres(half))));
        }

        var sheet = new Worksheet("roof-ends");
        var a = Worksheet.Computed("a", "roof-end-left", Math.Max(0, left), Dimension.Length);
        var b = Worksheet.Computed("b", "roof-end-right", Math.Max(0, right), Dimension.Length);
        var far = sheet.Step("roof-end-reach", "r", "max(a, b)", Math.Max(0, reach), Dimension.Length, Sources.Get("mechanics"), a, b);
        return new("roof-ends", "roof", new MemberCheck("", "place", far.Value, Amount.Metres(half), sheet.Done));
    }
}
