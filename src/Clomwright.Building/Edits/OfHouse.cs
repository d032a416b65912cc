using Clomwright.Evidence;

namespace Clomwright.Building;

public abstract partial record Edit
{
    /// <summary>Gives the house another name, remark or units to be printed first.</summary>
    /// <param name="Name">The name that papers print.</param>
    /// <param name="Notes">Remarks, or null.</param>
    /// <param name="Units">Which units come first.</param>
    public sealed record ChangeTitle(string Name, string? Notes, UnitSystem Units) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Name = Name, Notes = Notes, Units = Units };

        /// <inheritdoc/>
        public override Message What => new("building.edit.title");
    }

    /// <summary>Another place or other loads.</summary>
    public sealed record ChangeSite(Site Site) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Site = Site };

        /// <inheritdoc/>
        public override Message What => new("building.edit.site");
    }

    /// <summary>Another plan.</summary>
    public sealed record ChangePlan(Plan Plan) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Plan = Plan };

        /// <inheritdoc/>
        public override Message What => new("building.edit.plan");
    }

    /// <summary>Other people, air, warmth and linings.</summary>
    public sealed record ChangeComfort(Comfort Comfort) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Comfort = Comfort };

        /// <inheritdoc/>
        public override Message What => new("building.edit.comfort");
    }

    /// <summary>Another floor.</summary>
    public sealed record ChangeFloor(Floor Floor) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Floor = Floor };

        /// <inheritdoc/>
        public override Message What => new("building.edit.floor");
    }

    /// <summary>Another trench, or none.</summary>
    public sealed record ChangeTrench(Trench? Trench) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Trench = Trench };

        /// <inheritdoc/>
        public override Message What => new("building.edit.trench");
    }

    /// <summary>Another stem wall.</summary>
    public sealed record ChangeStem(Stem Stem) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Stem = Stem };

        /// <inheritdoc/>
        public override Message What => new("building.edit.stem");
    }

    /// <summary>Another height, thickness or taper of the cob.</summary>
    public sealed record ChangeWall(Wall Wall) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Wall = Wall };

        /// <inheritdoc/>
        public override Message What => new("building.edit.wall");
    }

    /// <summary>Other lifts.</summary>
    public sealed record ChangeLifts(LiftPlan Lifts) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Lifts = Lifts };

        /// <inheritdoc/>
        public override Message What => new("building.edit.lifts");
    }

    /// <summary>Another bond beam, or none.</summary>
    public sealed record ChangeBondBeam(BondBeam? BondBeam) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { BondBeam = BondBeam };

        /// <inheritdoc/>
        public override Message What => new("building.edit.bond-beam");
    }

    /// <summary>Other tees, or none.</summary>
    public sealed record ChangeTees(Tees? Tees) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Tees = Tees };

        /// <inheritdoc/>
        public override Message What => new("building.edit.tees");
    }

    /// <summary>Another roof, or none.</summary>
    public sealed record ChangeRoof(Roof? Roof) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Roof = Roof };

        /// <inheritdoc/>
        public override Message What => new("building.edit.roof");
    }

    /// <summary>Turns the ring of rafters, landings and all, clockwise seen from above. A house without a roof stays as it is.</summary>
    /// <param name="By">How far.</param>
    public sealed record TurnRoof(Angle By) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house.Roof is not { } roof ? house : house with
        {
            Roof = roof with { FirstBearing = Turned(roof.FirstBearing), Landings = roof.Landings.Select(Turned).ToSequence() },
        };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.turn-roof", ("by", By));

        private Angle Turned(Angle bearing)
        {
            var turned = (bearing.Degrees + By.Degrees) % 360;
            return new Angle(turned < 0 ? turned + 360 : turned);
        }
    }

    /// <summary>Other plasters and washes.</summary>
    public sealed record ChangeFinishes(Sequence<Finish> Finishes) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Finishes = Finishes };

        /// <inheritdoc/>
        public override Message What => new("building.edit.finishes");
    }

    /// <summary>Other patches of plaster tried.</summary>
    public sealed record ChangeTestPanels(Sequence<TestPanel> TestPanels) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { TestPanels = TestPanels };

        /// <inheritdoc/>
        public override Message What => new("building.edit.test-panels");
    }

    /// <summary>Other numbers in place of the program's assumptions.</summary>
    public sealed record ChangeAssumed(Sequence<AssumedNumber> Assumed) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Assumed = Assumed };

        /// <inheritdoc/>
        public override Message What => new("building.edit.assumed");
    }

    /// <summary>Other soil tests, recipe, batch or strength tests.</summary>
    public sealed record ChangeMix(Mix Mix) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Mix = Mix };

        /// <inheritdoc/>
        public override Message What => new("building.edit.mix");
    }

    /// <summary>Another stove, or none.</summary>
    public sealed record ChangeStove(Stove? Stove) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Stove = Stove };

        /// <inheritdoc/>
        public override Message What => new("building.edit.stove");
    }

    /// <summary>Other prices, and what they are in.</summary>
    /// <param name="Currency">As printed behind them, or null.</param>
    /// <param name="Prices">All of them.</param>
    public sealed record ChangePrices(string? Currency, Sequence<Price> Prices) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Currency = Currency, Prices = Prices };

        /// <inheritdoc/>
        public override Message What => new("building.edit.prices");
    }

    /// <summary>Another crew, or none.</summary>
    public sealed record ChangeCrew(Crew? Crew) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Crew = Crew };

        /// <inheritdoc/>
        public override Message What => new("building.edit.crew");
    }
}
