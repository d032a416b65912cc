using Clomwright.Record;
using Clomwright.Record.Logging;

// Logs day after day and says each one aloud once the store has acknowledged it, until somebody kills it.
IRecordStore store = args[0] == "file" ? new SqliteRecord(args[1]) : new PostgresRecord(args[1], args[2]);
var say = Console.OpenStandardOutput();
for (var n = store.Read().Record.Entries.Count; ; n++)
{
    if (store.Append(LoggedDays.Day(n)).Problem is { } problem)
    {
        Console.Error.WriteLine(problem.Key);
        return 1;
    }

    say.Write(System.Text.Encoding.ASCII.GetBytes($"{n}\n"));
    say.Flush();
}
