namespace Clomwright.Web.Editing;

/// <summary>How a house is called in addresses: its file name without the ending.</summary>
internal static class HouseKey
{
    private const string Ending = ".house.json";

    public static string Of(string fileName) => fileName.EndsWith(Ending, StringComparison.Ordinal) ? fileName[..^Ending.Length] : fileName;
}
