using Clomwright.Geometry.Solids;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>Poles in space.</summary>
public sealed class RoofSolidsTests
{
    [Fact]
    public void Poles_OfAReciprocalRoof_LieOnTheBeamAndOnEachOther()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var frame = study.Roof.Reciprocal.Value!;
        var shape = RoofSolids.Of(study.Geometry, study.Roof);
        Assert.Equal(frame.Poles.Count, shape.Solids.Count(s => s.Part == SolidPart.Pole));
        Assert.Equal(study.Geometry.Landings.Count(l => l.Secondary), shape.Solids.Count(s => s.Part == SolidPart.Secondary));
        foreach (var (card, pole) in frame.Poles.Zip(frame.Geometry.Poles.OrderBy(p => p.Number)))
        {
            // Analytic: as many as lie side by side; a cone cut off at both ends, h pi (R^2 + R r + r^2)/3, as a prism of sixteen sides: the area of a regular polygon over that of its circle, 8 sin(pi/8)/pi.
            var (butt, tip) = (pole.Butt / 2, pole.Tip / 2);
            var solid = shape.Solids.Single(s => s.Name == $"pole {card.Number}");
            Assert.Equal(frame.Geometry.SideBySide * card.CutLength * Math.PI / 3 * (butt * butt + butt * tip + tip * tip) * 8 * Math.Sin(Math.PI / 8) / Math.PI, solid.Volume, 1e-9);
        }

        // Property: secondaries lie over the bond beam.
        var beam = study.House.Wall.Top.Metres + study.House.BondBeam!.Depth.Metres;
        Assert.All(shape.Solids.Where(s => s.Part == SolidPart.Secondary), s => Assert.InRange(s.Points.Max(p => p.Up), beam, beam + 2));
        Assert.Equal(2, shape.Deck.Count);
        Assert.All(shape.Deck, line => Assert.Equal(line[0], line[^1]));
    }
}
