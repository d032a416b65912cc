using Clomwright.Analysis;
using Clomwright.Evidence;
using Clomwright.Study;

namespace Clomwright.Cli;

/// <summary>Long work: says how far it is where a person reads it, and ends at once when it is stopped.</summary>
internal static class Patience
{
    /// <summary>Does work beside the terminal. Stopped, it is left where it is: it has written nothing, and ends with the program.</summary>
    /// <param name="work">The work; writes no file.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Task<T> For<T>(Func<T> work, CancellationToken stop) => Task.Run(work, stop).WaitAsync(stop);

    /// <summary>Does long work beside the terminal and says how far it is.</summary>
    /// <param name="words">Key of the line, with {percent}.</param>
    /// <param name="work">The work; writes no file.</param>
    /// <param name="terminal">Where it is said.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<T> Watching<T>(string words, Func<Watch, T> work, Terminal terminal, CancellationToken stop)
    {
        var said = -1;
        void Say(double share)
        {
            var percent = (int)(100 * Math.Clamp(share, 0, 1));
            if (Interlocked.Exchange(ref said, percent) != percent)
            {
                terminal.Watched?.Write("\r" + terminal.Words.Say(Message.Of(words, ("percent", percent)), UnitSystem.Imperial));
            }
        }

        try
        {
            Say(0);
            return await For(() => work(new Watch(Say, stop)), stop);
        }
        finally
        {
            // The line is taken away again: results stand alone.
            terminal.Watched?.Write("\r" + new string(' ', 78) + "\r");
        }
    }

    /// <summary>In a deep study, searches for the push at which the house falls and says how far it is; in another one does nothing.</summary>
    /// <param name="study">The study, which keeps what is found.</param>
    /// <param name="terminal">Where it is said.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Task Search(HouseStudy study, Terminal terminal, CancellationToken stop) =>
        study.Options.Deep ? Watching("cli.searching", study.CollapseFor, terminal, stop) : Task.CompletedTask;
}
