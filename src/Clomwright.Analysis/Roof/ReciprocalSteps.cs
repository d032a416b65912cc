using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The calculation of a reciprocal frame as it is printed: geometry of one pole, and the forces of the pole with the largest crossing force in the heaviest state.</summary>
internal static class ReciprocalSteps
{
    public static Sequence<Calculation> Of(ReciprocalResult roof) =>
        roof.Heaviest.Forces.Value is { } forces ? [Geometry(roof), Forces(roof, forces)] : [Geometry(roof)];

    private static Calculation Geometry(ReciprocalResult roof)
    {
        var frame = roof.Geometry;
        var pole = frame.Poles[0];
        var next = frame.Next(0);
        var derived = Sources.Get("reciprocal-frame-statics");
        var sheet = new Worksheet("reciprocal-geometry");
        var rt = Worksheet.Given("r_t", "ring-radius", frame.RingRadius, Dimension.Length);
        var rw = Worksheet.Computed("R_w", "plate-radius", pole.PlateRadius, Dimension.Length);
        var lw = sheet.Step("tangent-distance", "L_w", "sqrt(R_w^2 - r_t^2)", pole.TangentDistance, Dimension.Length, derived, rw, rt);
        var before = Worksheet.Computed("omega_p", "crossing-angle-before", frame.Poles[frame.Count - 1].CrossingAngle, Dimension.Angle);
        var omega = Worksheet.Computed("omega", "crossing-angle", pole.CrossingAngle, Dimension.Angle);
        sheet.Step("near-crossing", "a", "L_w - r_t*tan(omega_p/2)", pole.Near, Dimension.Length, derived, lw, rt, before);
        var b = sheet.Step("far-crossing", "b", "L_w + r_t*tan(omega/2)", pole.Far, Dimension.Length, derived, lw, rt, omega);
        var delta = Worksheet.Computed("delta", "axis-separation", pole.Separation, Dimension.Length);
        var m = Worksheet.Computed("m", "pole-rise-over-run", pole.Slope, Dimension.Slope);
        var mn = Worksheet.Computed("m_n", "next-rise-over-run", next.Slope, Dimension.Slope);
        var e = sheet.Step(
            "crossing-rise", "e", "delta*sqrt(sin(omega)^2 + m^2 + m_n^2 - 2*m*m_n*cos(omega))/sin(omega)", pole.Rise, Dimension.Length, derived, delta, omega, m, mn);
        var an = Worksheet.Computed("a_n", "near-crossing-next", next.Near, Dimension.Length);
        sheet.Step("pole-pitch", "beta", "atan((e + m_n*a_n)/b)", pole.Pitch, Dimension.Angle, derived, e, mn, an, b);
        return sheet.Done;
    }

    private static Calculation Forces(ReciprocalResult roof, RoofForces forces)
    {
        var frame = roof.Geometry;
        var i = Enumerable.Range(0, frame.Count).MaxBy(k => forces.CrossingForce[frame.Poles[k].Number - 1]);
        var pole = frame.Poles[i];
        var at = pole.Number - 1;
        var previous = frame.Poles[(i + frame.Count - 1) % frame.Count].Number - 1;
        var derived = Sources.Get("reciprocal-frame-statics");
        var mechanics = Sources.Get("mechanics");
        var sheet = new Worksheet("reciprocal-forces");
        var w = Worksheet.Computed("W", "pole-load", forces.Load[at], Dimension.Force);
        var mo = Worksheet.Computed("M_o", "pole-load-moment", forces.LoadMoment[at], Dimension.Moment);
        var a = Worksheet.Computed("a", "near-crossing", pole.Near, Dimension.Length);
        var b = Worksheet.Computed("b", "far-crossing", pole.Far, Dimension.Length);
        var before = Worksheet.Computed("P_p", "crossing-force-before", forces.CrossingForce[previous], Dimension.Force);
        var p = sheet.Step("crossing-force", "P", "(M_o + a*P_p)/b", forces.CrossingForce[at], Dimension.Force, derived, mo, a, before, b);
        sheet.Step("plate-reaction", "A", "W + P_p - P", forces.PlateReaction[at], Dimension.Force, derived, w, before, p);
        var d = Worksheet.Computed("d", "pole-diameter", pole.DiameterAt(pole.Near), Dimension.Length);
        var near = Worksheet.Computed("M", "moment-at-near", forces.MomentAtNear[at], Dimension.Moment);
        var section = NotchedRound.Of(pole.DiameterAt(pole.Near), pole.Notch).SectionModulus;
        var s = pole.Notch > 0
            ? Worksheet.Computed("S", "net-section-modulus", section, Dimension.Volume)
            : sheet.Step("section-modulus", "S", "pi*d^3/32", section, Dimension.Volume, mechanics, d);
        sheet.Step("bending-stress", "f_b", "abs(M)/S", Math.Abs(forces.MomentAtNear[at]) / section, Dimension.Stress, mechanics, near, s);
        return sheet.Done;
    }
}
