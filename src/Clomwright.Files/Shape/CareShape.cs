using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How whom to call, the stove and prices stand in the file.</summary>
internal static class CareShape
{
    public static Thing<Emergency> Emergency { get; } = MakeEmergency();

    public static Thing<Stove> Stove { get; } = MakeStove();

    public static Thing<Price> Price { get; } = MakePrice();

    private static Thing<Emergency> MakeEmergency()
    {
        var number = Keys<Emergency>.MaybeThing("number", Text, e => e.Number, leavesOut: true);
        var address = Keys<Emergency>.MaybeThing("address", Text, e => e.Address, leavesOut: true);
        var way = Keys<Emergency>.MaybeThing("way", Text, e => e.Way, leavesOut: true);
        var meet = Keys<Emergency>.MaybeThing("meet", Text, e => e.Meet, leavesOut: true);
        var hospital = Keys<Emergency>.MaybeThing("hospital", Text, e => e.Hospital, leavesOut: true);
        var contacts = Keys<Emergency>.List("contacts", MakeContact(), e => e.Contacts, leavesOut: true);
        return new Thing<Emergency>("emergency", [number, address, way, meet, hospital, contacts],
            v => new Emergency { Number = v.Of(number), Address = v.Of(address), Way = v.Of(way), Meet = v.Of(meet), Hospital = v.Of(hospital), Contacts = v.Of(contacts) });
    }

    private static Thing<Contact> MakeContact()
    {
        var role = Keys<Contact>.Needed("role", Text, c => c.Role);
        var name = Keys<Contact>.Needed("name", Text, c => c.Name);
        var phone = Keys<Contact>.Needed("phone", Text, c => c.Phone);
        return new Thing<Contact>("contact", [role, name, phone], v => new Contact(v.Of(role), v.Of(name), v.Of(phone)));
    }

    private static Thing<Stove> MakeStove()
    {
        var name = Keys<Stove>.MaybeThing("name", Text, s => s.Name, leavesOut: true);
        var bearing = Keys<Stove>.Or("bearing", Angles, s => s.Bearing, default, leavesOut: true);
        var distance = Keys<Stove>.Or("distance", Lengths, s => s.Distance, default, leavesOut: true);
        var facing = Keys<Stove>.Or("facing", Angles, s => s.Facing, default, leavesOut: true);
        var width = Keys<Stove>.Needed("width", Lengths, s => s.Width);
        var depth = Keys<Stove>.Needed("depth", Lengths, s => s.Depth);
        var back = Keys<Stove>.Maybe("clearBack", Lengths, s => s.ClearBack, leavesOut: true);
        var side = Keys<Stove>.Maybe("clearSide", Lengths, s => s.ClearSide, leavesOut: true);
        var front = Keys<Stove>.Maybe("clearFront", Lengths, s => s.ClearFront, leavesOut: true);
        var above = Keys<Stove>.Maybe("clearAbove", Lengths, s => s.ClearAbove, leavesOut: true);
        var source = Keys<Stove>.MaybeThing("source", Text, s => s.Source, leavesOut: true);
        return new Thing<Stove>("stove", [name, bearing, distance, facing, width, depth, back, side, front, above, source], v => new Stove(v.Of(width), v.Of(depth))
        {
            Name = v.Of(name), Bearing = v.Of(bearing), Distance = v.Of(distance), Facing = v.Of(facing), ClearBack = v.Of(back), ClearSide = v.Of(side), ClearFront = v.Of(front),
            ClearAbove = v.Of(above), Source = v.Of(source),
        });
    }

    private static Thing<Price> MakePrice()
    {
        var of = Keys<Price>.Needed("of", Text, p => p.Of);
        var quantity = Keys<Price>.Maybe("quantity", Number, p => p.Quantity, leavesOut: true);
        var per = Keys<Price>.Needed("per", new WordForm<PriceUnit>(), p => p.Per);
        var low = Keys<Price>.Needed("low", Number, p => p.Low);
        var high = Keys<Price>.Maybe("high", Number, p => p.High, leavesOut: true);
        var from = Keys<Price>.MaybeThing("from", Text, p => p.From, leavesOut: true);
        var on = Keys<Price>.Maybe("on", Date, p => p.On, leavesOut: true);
        return new Thing<Price>("price", [of, quantity, per, low, high, from, on],
            v => new Price(v.Of(of), v.Of(per), v.Of(low)) { Quantity = v.Of(quantity), High = v.Of(high), From = v.Of(from), On = v.Of(on) });
    }
}
