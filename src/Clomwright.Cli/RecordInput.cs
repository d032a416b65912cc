using System.Security.Cryptography;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Record;
using Clomwright.Study;

namespace Clomwright.Cli;

/// <summary>Reads the site record beside a house file.</summary>
internal static class RecordInput
{
    /// <summary>The record; what is wrong with it is said, and what can be read is used.</summary>
    public static SiteRecord Read(string house, Terminal terminal)
    {
        var reading = new SqliteRecord(SqliteRecord.Beside(house)).Read();
        if (reading.Problem is { } problem)
        {
            terminal.Complain(problem);
        }

        return reading.Record;
    }

    /// <summary>An id that no other entry has.</summary>
    public static string NewId() => SiteEntry.IdOf(RandomNumberGenerator.GetBytes(SiteEntry.IdBytes));

    /// <summary>The quick study of a house with its record, on a day.</summary>
    public static HouseStudy? Study(string house, DateOnly? today, Terminal terminal, bool deep = false) =>
        HouseInput.Study(house, new StudyOptions(deep) { Record = Read(house, terminal), Today = today ?? terminal.Today }, terminal);
}
