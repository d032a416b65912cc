using System.Net;

namespace Clomwright.Web;

/// <summary>How the workbench is started.</summary>
public sealed record WorkbenchOptions
{
    /// <summary>The one folder whose houses can be opened; nothing outside it is read or written.</summary>
    public required string Folder { get; init; }

    /// <summary>The house file to open at once, inside <see cref="Folder"/>; null shows the houses of the folder.</summary>
    public string? File { get; init; }

    /// <summary>The local port; 0 takes any free one.</summary>
    public int Port { get; init; }

    /// <summary>Whether to open the page in the person's browser.</summary>
    public bool OpenBrowser { get; init; } = true;

    /// <summary>Whether phones on the local network can be let in, one by one; without it nothing but this machine reaches the workbench.</summary>
    public bool Share { get; init; }

    /// <summary>The language of its pages and of the papers printed there: one of <see cref="Evidence.Phrasebook.Languages"/>; null takes the one that this user chose last on the first page, else English.</summary>
    public string? Language { get; init; }

    /// <summary>Whether it greets somebody who sees it for the first time: it opens on a house, and says what can be done there.</summary>
    public bool Greet { get; init; }

    /// <summary>Options for a house file, or for a folder of them.</summary>
    public static WorkbenchOptions For(string fileOrFolder) =>
        System.IO.File.Exists(fileOrFolder)
            ? new WorkbenchOptions { Folder = Path.GetDirectoryName(Path.GetFullPath(fileOrFolder))!, File = Path.GetFileName(fileOrFolder) }
            : new WorkbenchOptions { Folder = Path.GetFullPath(fileOrFolder) };
}

/// <summary>How phones are let in.</summary>
/// <param name="Addresses">Addresses of this machine that are listened on for them.</param>
/// <param name="ListFile">Where it is kept which phones were let in; null keeps it only as long as the program runs.</param>
public sealed record WorkbenchShare(IReadOnlyList<IPAddress> Addresses, string? ListFile)
{
    /// <summary>The time, by which codes expire.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
