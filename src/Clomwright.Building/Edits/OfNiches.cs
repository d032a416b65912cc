using Clomwright.Evidence;

namespace Clomwright.Building;

public abstract partial record Edit
{
    /// <summary>Moves a niche along the wall and, if a height is given, up or down.</summary>
    /// <param name="Name">Which niche.</param>
    /// <param name="Along">Where it goes.</param>
    /// <param name="Sill">New sill height; null leaves it.</param>
    public sealed record MoveNiche(string Name, Along Along, Length? Sill = null) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) =>
            house with { Niches = Changed(house.Niches, p => p.Name, Name, p => p with { Along = Along, Sill = Sill ?? p.Sill }) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.move", Name);
    }

    /// <summary>Gives a niche another size.</summary>
    /// <param name="Name">Which niche.</param>
    /// <param name="Width">New width.</param>
    /// <param name="Height">New height.</param>
    /// <param name="Depth">Into the wall; null leaves it.</param>
    public sealed record ResizeNiche(string Name, Length Width, Length Height, Length? Depth = null) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) =>
            house with { Niches = Changed(house.Niches, p => p.Name, Name, p => p with { Width = Width, Height = Height, Depth = Depth ?? p.Depth }) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.resize", Name);
    }

    /// <summary>Puts another description in the place of a niche: kind, head, depth, whatever differs.</summary>
    /// <param name="Name">Which niche.</param>
    /// <param name="With">What it becomes.</param>
    public sealed record ChangeNiche(string Name, Niche With) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Niches = Changed(house.Niches, p => p.Name, Name, _ => With) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.change", Name);
    }

    /// <summary>Adds a niche at the end of the list.</summary>
    /// <param name="New">The niche.</param>
    public sealed record AddNiche(Niche New) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Niches = house.Niches.Plus(New) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.add", New.Name);
    }

    /// <summary>Takes a niche out.</summary>
    /// <param name="Name">Which niche.</param>
    public sealed record RemoveNiche(string Name) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Niches = Without(house.Niches, p => p.Name, Name) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.remove", Name);
    }

    /// <summary>Gives a niche another name.</summary>
    /// <param name="Name">Which niche.</param>
    /// <param name="NewName">Its new name.</param>
    public sealed record RenameNiche(string Name, string NewName) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Niches = Changed(house.Niches, p => p.Name, Name, p => p with { Name = NewName }) };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.rename", ("name", Name), ("new", NewName));
    }
}
