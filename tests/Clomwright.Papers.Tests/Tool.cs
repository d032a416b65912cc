using System.Diagnostics;

namespace Clomwright.Papers.Tests;

/// <summary>Programs of the machine that read what we write; a test that needs one that is missing is skipped and says which.</summary>
internal static class Tool
{
    /// <summary>What it prints; skips the test where it is not there or does not start.</summary>
    public static string Run(string name, params string[] arguments)
    {
        var (code, output) = Try(name, arguments);
        Assert.SkipWhen(code == Missing, $"{name} is not on this machine");
        Assert.True(code == 0, $"{name} answered {code}: {output}");
        return output;
    }

    /// <summary>Code and output; <see cref="Missing"/> where it cannot be started.</summary>
    public static (int Code, string Output) Try(string name, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(name, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var complaints = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, output + complaints.Result);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return (Missing, "");
        }
    }

    public const int Missing = -1000;

    /// <summary>A path of a file of this test's own.</summary>
    public static string Own(DirectoryInfo folder, string name, byte[] bytes)
    {
        var path = Path.Combine(folder.FullName, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
