namespace Clomwright.Evidence;

/// <summary>One of the small quantities: a value that is also an <see cref="Evidence.Amount"/>.</summary>
public interface IQuantity
{
    /// <summary>The value in SI with its dimension.</summary>
    Amount Amount { get; }
}
