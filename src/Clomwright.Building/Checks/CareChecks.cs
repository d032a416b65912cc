using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Whom to call, the stove, and prices.</summary>
internal static class CareChecks
{
    /// <summary>No price of a small house is a thousand million of anything.</summary>
    private const double PriceMost = 1e9;

    public static void Of(House house, Checks checks)
    {
        if (house.Site.Emergency is { } emergency)
        {
            Of(emergency, checks);
        }

        if (house.Stove is { } stove)
        {
            Of(stove, checks);
        }

        checks.Word("currency", house.Currency, 8);
        checks.Count("prices", house.Prices.Count, 0, Limits.Items);
        for (var i = 0; i < house.Prices.Count; i++)
        {
            Of($"prices[{i}]", house.Prices[i], checks);
        }
    }

    private static void Of(Emergency emergency, Checks checks)
    {
        const string path = "site.emergency";
        Dialled($"{path}.number", emergency.Number, checks);
        checks.Word($"{path}.address", emergency.Address, Checks.NoteLengthMax);
        checks.Word($"{path}.way", emergency.Way, Checks.NoteLengthMax);
        checks.Word($"{path}.meet", emergency.Meet, Checks.NoteLengthMax);
        checks.Word($"{path}.hospital", emergency.Hospital, Checks.NoteLengthMax);
        checks.Count($"{path}.contacts", emergency.Contacts.Count, 0, 12);
        for (var i = 0; i < emergency.Contacts.Count; i++)
        {
            var contact = emergency.Contacts[i];
            checks.Word($"{path}.contacts[{i}].role", contact.Role);
            checks.Word($"{path}.contacts[{i}].name", contact.Name);
            Dialled($"{path}.contacts[{i}].phone", contact.Phone, checks);
        }
    }

    /// <summary>What stands on the sheet beside a telephone can be dialled.</summary>
    private static void Dialled(string path, string? number, Checks checks)
    {
        if (checks.Word(path, number) && number is not null && !number.Any(char.IsAsciiDigit))
        {
            checks.Error(path, "building.phone-digits", ("text", OneLine.Of(number)));
        }
    }

    private static void Of(Stove stove, Checks checks)
    {
        checks.Word("stove.name", stove.Name);
        checks.Size("stove.width", stove.Width, Limits.Thick);
        checks.Size("stove.depth", stove.Depth, Limits.Thick);
        checks.Bearing("stove.bearing", stove.Bearing);
        checks.Bearing("stove.facing", stove.Facing);
        _ = checks.NotNegative("stove.distance", stove.Distance) && checks.NotAbove("stove.distance", stove.Distance, Limits.Plan);
        foreach (var (key, clear) in ((string, Length?)[])[("clearBack", stove.ClearBack), ("clearSide", stove.ClearSide), ("clearFront", stove.ClearFront), ("clearAbove", stove.ClearAbove)])
        {
            if (clear is { } given)
            {
                _ = checks.NotNegative($"stove.{key}", given) && checks.NotAbove($"stove.{key}", given, Limits.Height);
            }
        }

        checks.Word("stove.source", stove.Source, Checks.NoteLengthMax);
    }

    private static void Of(string path, Price price, Checks checks)
    {
        checks.Word($"{path}.of", price.Of);
        var low = checks.Within($"{path}.low", Amount.Number(price.Low), 0, PriceMost);
        if (price.High is { } high && checks.Within($"{path}.high", Amount.Number(high), 0, PriceMost) && low && high < price.Low)
        {
            checks.Error($"{path}.high", "building.price-high", ("low", Amount.Number(price.Low)), ("high", Amount.Number(high)));
        }

        if (price.Quantity is { } quantity)
        {
            checks.Within($"{path}.quantity", Amount.Number(quantity), 0, PriceMost);
        }

        checks.Word($"{path}.from", price.From);
    }
}
