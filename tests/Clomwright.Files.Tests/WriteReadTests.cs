using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

public class WriteReadTests
{
    [Fact]
    public void A_house_written_and_read_is_equal() =>
        Gen.OneOf(Houses.Plausible, Houses.LongestNames).ForAll(house =>
        {
            var (document, read, diagnostics) = HouseDocument.Read(HouseWriter.Write(house));
            Assert.Empty(diagnostics.Select(Sentence.Of));
            Assert.Equal(house, read);
            Assert.Equal(house, document!.House);
        }, iter: Counts.Of(500, 10_000));

    [Fact]
    public void Heron_Point_written_and_read_is_equal() => Assert.Equal(Houses.HeronPoint, HouseDocument.Read(HouseWriter.Write(Houses.HeronPoint)).House);

    [Fact]
    public void Lines_are_no_longer_than_a_page_is_wide() =>
        Houses.Plausible.ForAll(house => Assert.All(HouseWriter.Write(house with { Notes = null }).Split('\n'), line => Assert.InRange(line.Length, 0, 145)), iter: Counts.Of(100, 1_000));

    [Fact]
    public void A_byte_order_mark_is_kept()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. System.Text.Encoding.UTF8.GetBytes(HouseWriter.Write(Houses.HeronPoint))];
        Assert.Equal(bytes, HouseDocument.Read(bytes).Document!.ToBytes());
    }
}
