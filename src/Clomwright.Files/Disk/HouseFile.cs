using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Typing;

namespace Clomwright.Files;

/// <summary>A house file on disk. Whatever is pulled out while it is saved, the whole old file or the whole new one is there.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Document">What was read from it or last written to it.</param>
public sealed record HouseFile(string Path, HouseDocument Document)
{
    /// <summary>How a house file's name ends.</summary>
    public const string Extension = ".house.json";

    /// <summary>Reads a house file. Never throws for what is on the disk: what is wrong is said.</summary>
    public static HouseReading Read(string path)
    {
        try
        {
            var size = new FileInfo(path).Length;
            return size > FileText.SizeMost ? HouseReading.Refused(FileText.TooLarge(size)) : HouseDocument.Read(File.ReadAllBytes(path));
        }
        catch (Exception wrong) when (IsOfDisk(wrong))
        {
            return HouseReading.Refused(DiskProblem.Reading(path, wrong));
        }
    }

    /// <summary>Writes a new house file, and never over another.</summary>
    /// <returns>The file, or what was wrong.</returns>
    public static (HouseFile? File, Diagnostic? Problem) Create(string path, House house)
    {
        var document = HouseDocument.Of(house);
        return WholeFile.Create(path, document.ToBytes()) is { } problem ? (null, problem) : (new HouseFile(path, document), null);
    }

    /// <summary>Saves a changed document over this file, unless somebody else has changed the file meanwhile.</summary>
    /// <param name="changed">A document made from <see cref="Document"/>.</param>
    /// <returns>The file as it now is, or what was wrong; then nothing was written.</returns>
    public (HouseFile? File, Diagnostic? Problem) Save(HouseDocument changed) =>
        WholeFile.Replace(Path, Document.ToBytes(), changed.ToBytes()) is { } problem ? (null, problem) : (this with { Document = changed }, null);

    internal static bool IsOfDisk(Exception wrong) =>
        wrong is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or System.Security.SecurityException;
}
