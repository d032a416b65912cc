using System.ComponentModel;
using System.Diagnostics;

namespace Clomwright.Web;

/// <summary>The person's own browser.</summary>
internal static class Browser
{
    /// <summary>Opens a page in it; false where there is none to open.</summary>
    public static bool TryOpen(Uri page)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                using var shown = Process.Start(new ProcessStartInfo(page.ToString()) { UseShellExecute = true });
                return true;
            }

            if (OperatingSystem.IsMacOS())
            {
                return Starts("open", page);
            }

            var screen = Environment.GetEnvironmentVariable("DISPLAY") ?? Environment.GetEnvironmentVariable("WAYLAND_DISPLAY");
            return !string.IsNullOrEmpty(screen) && Starts("xdg-open", page);
        }
        catch (Exception problem) when (problem is Win32Exception or InvalidOperationException or FileNotFoundException)
        {
            return false;
        }
    }

    private static bool Starts(string program, Uri page)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(page.ToString());
        using var started = Process.Start(start);
        return started is not null && (!started.WaitForExit(TimeSpan.FromSeconds(2)) || started.ExitCode == 0);
    }
}
