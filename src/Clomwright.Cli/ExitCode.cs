namespace Clomwright.Cli;

/// <summary>What <c>clom</c> answers to the shell that called it.</summary>
internal static class ExitCode
{
    /// <summary>Every applicable adopted rule is met, or the job is done.</summary>
    public const int Met = 0;

    /// <summary>At least one rule falls short.</summary>
    public const int Short = 1;

    /// <summary>The input is wrong; nothing was written.</summary>
    public const int WrongInput = 2;

    /// <summary>None falls short, but something is not checked or needs judgement.</summary>
    public const int NotChecked = 3;
}
