using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>What the raising sheet says to the crew. Rank property: the house is made up; the numbers are read from the paper itself.</summary>
public class RaisingTests
{
    private static Roof.Reciprocal Frame => (Roof.Reciprocal)Houses.HeronPoint.Roof!;

    private static House SixInch => Houses.HeronPoint with
    {
        Roof = Frame with { Pole = PoleSize.Even(Length.FromInches(6)) }, Site = Houses.HeronPoint.Site with { GroundSnow = new Stress(6500) },
    };

    private static string[] Words(House house) =>
        [.. Book.Site(Papers.Set(house, PaperSize.A4)).Where(s => s.Key.StartsWith("raising", StringComparison.Ordinal)).SelectMany(s => s.Texts()).Select(t => t.Words)];

    /// <summary>A frame of 6 in poles stands bare and falls short under wet soil and snow; both shares stand on the sheet, large.</summary>
    [Fact]
    public void SixInchPoles_BareWithinAndLoadedShort_BothNumbersOnTheSheet()
    {
        var shares = Words(SixInch).Where(w => w.Length > 0 && char.IsDigit(w[0]) && w.Contains('%', StringComparison.Ordinal) && w.Contains(": ", StringComparison.Ordinal)).ToArray();
        Assert.True(Share(shares[0]) < 100 && shares[0].EndsWith("within its strength", StringComparison.Ordinal), shares[0]);
        Assert.True(Share(shares[1]) > 100 && shares[1].EndsWith("FALLS SHORT", StringComparison.Ordinal), shares[1]);

        static double Share(string said) => double.Parse(said.Split('%')[0], System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>Wet layers inside the bond-beam line alone press hardest on the crossings of this frame, and stand in the table of states.</summary>
    [Fact]
    public void TheStageThatPressesCrossingsHardest_StandsInTheTable()
    {
        Assert.Contains(Words(Houses.HeronPoint), w => w.Contains("inside the bond-beam line alone", StringComparison.Ordinal));
    }

    /// <summary>What holds the frame when a pole fails is drawn and named, for every way; without one it says that nothing does.</summary>
    [Fact]
    public void IfOneFails_IsDrawnAndNamed_ForEveryWay()
    {
        IfOneFails?[] ways = [new IfOneFails.Strap(Length.FromInches(2), Length.FromInches(1)), new IfOneFails.Doubled(), new IfOneFails.Post(Length.FromInches(8), Length.FromInches(30)), null];
        string[] said = ["strap", "doubled frame", "posts", "nothing holds it"];
        Assert.All(ways.Zip(said), x =>
        {
            var words = Words(Houses.HeronPoint with { Roof = Frame with { IfOneFails = x.First } });
            Assert.Contains("If one pole fails", words);
            Assert.Contains(words, w => w.Contains(x.Second, StringComparison.Ordinal));
        });
    }
}
