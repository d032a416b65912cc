using Clomwright.Evidence;

namespace Clomwright.Building;

public abstract partial record Edit
{
    /// <summary>Moves an embed along the wall and, if a height is given, up or down.</summary>
    /// <param name="Name">Which embed.</param>
    /// <param name="Along">Where it goes.</param>
    /// <param name="Height">New height of its middle; null leaves it.</param>
    public sealed record MoveEmbed(string Name, Along Along, Length? Height = null) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) =>
            house with { Embeds = Changed(house.Embeds, p => p.Name, Name, p => p with { Along = Along, Height = Height ?? p.Height }) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.move", Name);
    }

    /// <summary>Puts another description in the place of an embed: kind, head, depth, whatever differs.</summary>
    /// <param name="Name">Which embed.</param>
    /// <param name="With">What it becomes.</param>
    public sealed record ChangeEmbed(string Name, Embed With) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Embeds = Changed(house.Embeds, p => p.Name, Name, _ => With) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.change", Name);
    }

    /// <summary>Adds an embed at the end of the list.</summary>
    /// <param name="New">The embed.</param>
    public sealed record AddEmbed(Embed New) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Embeds = house.Embeds.Plus(New) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.add", New.Name);
    }

    /// <summary>Takes an embed out.</summary>
    /// <param name="Name">Which embed.</param>
    public sealed record RemoveEmbed(string Name) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Embeds = Without(house.Embeds, p => p.Name, Name) };

        /// <inheritdoc/>
        public override Message What => Named("building.edit.remove", Name);
    }

    /// <summary>Gives an embed another name.</summary>
    /// <param name="Name">Which embed.</param>
    /// <param name="NewName">Its new name.</param>
    public sealed record RenameEmbed(string Name, string NewName) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Embeds = Changed(house.Embeds, p => p.Name, Name, p => p with { Name = NewName }) };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.rename", ("name", Name), ("new", NewName));
    }
}
