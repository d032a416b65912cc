using System.Diagnostics;
using System.Globalization;

namespace Clomwright.Benchmarks.Solid;

/// <summary>CHOLMOD in a process of its own.</summary>
internal static class CholmodPeer
{
    /// <summary>The orderings that are tried.</summary>
    public static readonly string[] Orders = ["amd", "metis", "nesdis"];

    /// <summary>Compiles it into a folder and answers its path; null, with a word on the console, where it cannot be.</summary>
    public static string? Compile(string folder)
    {
        var (source, program) = (Path.Combine(AppContext.BaseDirectory, "Peers", "cholmod_peer.c"), Path.Combine(folder, "cholmod_peer"));
        using var compiler = Process.Start("cc", ["-O2", "-I/usr/include/suitesparse", source, "-lcholmod", "-o", program]);
        compiler.WaitForExit();
        if (compiler.ExitCode == 0)
        {
            return program;
        }

        Console.Error.WriteLine("The CHOLMOD peer did not compile: it needs cc and libsuitesparse-dev.");
        return null;
    }

    /// <summary>Starts it on a matrix.</summary>
    public static Peer Start(string program, string matrix, string solution, int threads) => new(
        program, [matrix, solution], ("OMP_NUM_THREADS", threads.ToString(CultureInfo.InvariantCulture)), ("OMP_WAIT_POLICY", "passive"));
}
