using System.Text.Json.Serialization.Metadata;

namespace Clomwright.Web.Scenes;

/// <summary>Part of a scene that goes to a page which has an earlier one.</summary>
internal interface IAfterAnother
{
    /// <summary>The same part as the page has it; null where it has none.</summary>
    object? Before { get; }
}

/// <summary>How such parts are written: a property that is the very one the page has is left out, and in a list of as many as before every one that stood there is null.</summary>
internal static class WithoutWhatIsThere
{
    /// <summary>Changes how a type is written, where it is such a part.</summary>
    public static void Modify(JsonTypeInfo type)
    {
        if (!typeof(IAfterAnother).IsAssignableFrom(type.Type))
        {
            return;
        }

        foreach (var property in type.Properties)
        {
            if (property.PropertyType.IsValueType || property.Get is not { } get)
            {
                continue;
            }

            property.ShouldSerialize = (of, _) => ((IAfterAnother)of).Before is not { } before || !ReferenceEquals(get(before), get(of));
            if (property.PropertyType is { IsGenericType: true } list && list.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) && !list.GenericTypeArguments[0].IsValueType)
            {
                var others = typeof(Others<>).MakeGenericType(list.GenericTypeArguments[0]);
                var of = others.GetMethod(nameof(Others<object>.Of))!.CreateDelegate<Func<object?, object?, object?>>();
                property.Get = part => ((IAfterAnother)part).Before is { } before ? of(get(part), get(before)) : get(part);
            }
        }
    }

    private static class Others<T>
        where T : class
    {
        /// <summary>A list with null for every one that stood in its place before; the list itself where there were not as many.</summary>
        public static object? Of(object? now, object? then) =>
            now is IReadOnlyList<T> list && then is IReadOnlyList<T> before && list.Count == before.Count ? list.Select((one, i) => ReferenceEquals(one, before[i]) ? null : one).ToArray() : now;
    }
}
