using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Closed forms against hand-worked cases and against the general solver, which knows nothing of circles.</summary>
public sealed class UniformReciprocalTests
{
    private static double Radians(double degrees) => degrees * Math.PI / 180;

    // Rank analytic: closed form evaluated by hand (least distance of two skew lines). Printed to the digits shown.
    [Theory]
    [InlineData(12, 0.15, 20, 0.82181, 0.16030, 1e-5)]
    [InlineData(8, 0.20, 25, 0.5799, 0.22403, 1e-4)]
    [InlineData(16, 0.125, 18, 1.0187, 0.13168, 1e-4)]
    [InlineData(5, 0.10, 30, 0.1464, 0.12285, 1e-4)]
    [InlineData(24, 0.15, 15, 2.2024, 0.15538, 1e-4)]
    public void RingRadius_ForChosenPitch_IsAsWorkedByHand(int count, double separation, double degrees, double ring, double rise, double digit)
    {
        Near.Printed(ring, UniformReciprocal.RingRadius(count, separation, Radians(degrees))!.Value, digit);
        Near.Printed(rise, UniformReciprocal.Rise(count, separation, Radians(degrees)), 1e-5);
    }

    // Rank analytic: the rule of thumb tan(beta) = delta/s understates the pitch, 18.808 for 20 degrees.
    [Fact]
    public void SmallSlopeForm_At20Degrees_UnderstatesPitch()
    {
        var ring = UniformReciprocal.RingRadius(12, 0.15, Radians(20))!.Value;
        Near.Printed(18.808, Math.Atan(0.15 / UniformReciprocal.Side(12, ring)) * 180 / Math.PI, 1e-3);
    }

    // Rank property: pitch and ring are each other's inverse. 1e-9: the sine loses digits near upright.
    [Fact]
    public void Pitch_OfTheRingForAPitch_ComesBack() => Gen.Select(Gen.Int[3, 40], Gen.Double[0.05, 0.4], Gen.Double[1, 80]).ForAll((n, delta, degrees) =>
        Near.Relative(Radians(degrees), UniformReciprocal.Pitch(n, UniformReciprocal.RingRadius(n, delta, Radians(degrees))!.Value, delta)!.Value, 1e-9));

    // Rank independent: the general linear system with skew contact, solved by iteration, against the closed form.
    [Fact]
    public void GeneralHeights_OfEqualPolesOnACircle_GiveTheClosedForm() => Gen.Select(Gen.Int[3, 40], Gen.Double[0.05, 0.3], Gen.Double[4, 45], Gen.Bool).ForAll((n, delta, degrees, clockwise) =>
    {
        var ring = UniformReciprocal.RingRadius(n, delta, Radians(degrees))!.Value;
        var plate = 3 * ring / Math.Cos(Math.PI / n);
        var plan = ReciprocalPlan.Uniform(n, plate, plate + 0.6, ring, delta, 0, clockwise ? Turn.Clockwise : Turn.Anticlockwise);
        var frame = Assert.IsType<ReciprocalShape.Frame>(ReciprocalFrame.Of(plan)).Geometry;
        foreach (var pole in frame.Poles)
        {
            Near.Relative(Radians(degrees), pole.Pitch, 1e-9);
            Near.Relative(UniformReciprocal.Rise(n, delta, Radians(degrees)), pole.Rise, 1e-9);
            Near.Relative(UniformReciprocal.Side(n, ring), pole.Stub, 1e-9);
        }
    });

    // Rank analytic: the whole geometry of twelve 0.20 m poles notched 40 mm, worked by hand to five digits.
    [Fact]
    public void Geometry_OfTwelveNotchedPoles_IsAsWorkedByHand()
    {
        var frame = WorkedFrame.Geometry;
        var pole = frame.Poles[0];
        Near.Printed(0.72711, frame.RingRadius, 1e-5);
        Near.Printed(0.38966, pole.Stub, 1e-5);
        Near.Printed(0.75276, UniformReciprocal.CornerRadius(12, frame.RingRadius), 1e-5);
        Near.Printed(2.91055, pole.TangentDistance, 1e-5);
        Near.Printed(2.71572, pole.Near, 1e-5);
        Near.Printed(3.10538, pole.Far, 1e-5);
        Near.Printed(0.87452, pole.Ratio, 1e-5);
        Near.Printed(0.12661, pole.Rise, 1e-5);
        Near.Printed(0.88239, pole.HeightAt(pole.Near), 1e-5);
        Near.Printed(1.00900, pole.HeightAt(pole.Far), 1e-5);
        Near.Printed(3.26519, pole.LengthToFar, 1e-5);
        Near.Printed(3.52581, pole.TangentDistance + pole.EaveReach, 1e-5);
        Near.Printed(0.19991, pole.EaveDrop, 1e-5);
        Near.Printed(3.91211, pole.Length, 1e-5);
        Near.Printed(1.55291, (frame.Poles[1].Foot - pole.Foot).Norm, 1e-5);
        Near.Printed(22.59, frame.MeanRadialPitch * 180 / Math.PI, 1e-2);
    }
}
