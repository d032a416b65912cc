using Clomwright.Cli;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, key) =>
{
    key.Cancel = true;
    stop.Cancel();
};
return await CommandLine.Run(args, Terminal.Standard(), stop.Token);
