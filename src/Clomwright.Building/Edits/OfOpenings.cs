using Clomwright.Evidence;

namespace Clomwright.Building;

public abstract partial record Edit
{
    /// <summary>Moves an opening along the wall and, if a height is given, up or down.</summary>
    /// <param name="Name">Which opening.</param>
    /// <param name="Along">Where it goes.</param>
    /// <param name="Sill">New sill height; null leaves it.</param>
    public sealed record MoveOpening(string Name, Along Along, Length? Sill = null) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) =>
            house with { Openings = Changed(house.Openings, p => p.Name, Name, p => p with { Along = Along, Sill = Sill ?? p.Sill }) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.move", Name);
    }

    /// <summary>Gives an opening another size.</summary>
    /// <param name="Name">Which opening.</param>
    /// <param name="Width">New width.</param>
    /// <param name="Height">New height.</param>
    /// <param name="Sill">Rough sill above the finished floor; null leaves it.</param>
    public sealed record ResizeOpening(string Name, Length Width, Length Height, Length? Sill = null) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) =>
            house with { Openings = Changed(house.Openings, p => p.Name, Name, p => p with { Width = Width, Height = Height, Sill = Sill ?? p.Sill }) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.resize", Name);
    }

    /// <summary>Puts another description in the place of an opening: kind, head, depth, whatever differs.</summary>
    /// <param name="Name">Which opening.</param>
    /// <param name="With">What it becomes.</param>
    public sealed record ChangeOpening(string Name, Opening With) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Openings = Changed(house.Openings, p => p.Name, Name, _ => With) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.change", Name);
    }

    /// <summary>Adds an opening at the end of the list.</summary>
    /// <param name="New">The opening.</param>
    public sealed record AddOpening(Opening New) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Openings = house.Openings.Plus(New) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.add", New.Name);
    }

    /// <summary>Takes an opening out.</summary>
    /// <param name="Name">Which opening.</param>
    public sealed record RemoveOpening(string Name) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Openings = Without(house.Openings, p => p.Name, Name) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.remove", Name);
    }

    /// <summary>Gives an opening another name.</summary>
    /// <param name="Name">Which opening.</param>
    /// <param name="NewName">Its new name.</param>
    public sealed record RenameOpening(string Name, string NewName) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Openings = Changed(house.Openings, p => p.Name, Name, p => p with { Name = NewName }) };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.rename", ("name", Name), ("new", NewName));
    }
}
