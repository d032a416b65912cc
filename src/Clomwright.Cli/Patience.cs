using Clomwright.Analysis.Collapse;
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

    /// <summary>In a deep study, searches for the push at which the house falls and says how far it is; in another one does nothing.</summary>
    /// <param name="study">The study, which keeps what is found.</param>
    /// <param name="terminal">Where it is said.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task Search(HouseStudy study, Terminal terminal, CancellationToken stop)
    {
        if (!study.Options.Deep)
        {
            return;
        }

        var said = -1;
        void Say(double share)
        {
            var percent = (int)(100 * Math.Clamp(share, 0, 1));
            if (percent != said)
            {
                said = percent;
                terminal.Watched?.Write("\r" + Phrasebook.English.Say(Message.Of("cli.searching", ("percent", percent)), study.House.Units));
            }
        }

        try
        {
            Say(0);
            await For(() => study.CollapseFor(new CollapseWatch(Say, stop)), stop);
        }
        finally
        {
            // The line is taken away again: results stand alone.
            terminal.Watched?.Write("\r" + new string(' ', 78) + "\r");
        }
    }
}
