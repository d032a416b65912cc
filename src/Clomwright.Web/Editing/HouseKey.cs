using Clomwright.Files;

namespace Clomwright.Web.Editing;

/// <summary>How a house is called in addresses: its file name without the ending.</summary>
internal static class HouseKey
{
    public static string Of(string fileName) =>
        fileName.EndsWith(HouseFile.Extension, StringComparison.Ordinal) ? fileName[..^HouseFile.Extension.Length] : fileName;

    public static string FileName(string key) => key + HouseFile.Extension;
}
