using Clomwright.Testing;

namespace Clomwright.Rules.Tests;

public class RulesDocumentTests
{
    private static readonly string File = Path.Combine(Counts.Root, "docs", "rules.md");

    [Fact]
    public void RulesDocument_IsNotStale()
    {
        var text = RulesDocument.Text();
        if (Environment.GetEnvironmentVariable("CLOM_WRITE_DOCS") == "1")
        {
            System.IO.File.WriteAllText(File, text);
        }

        Assert.True(
            System.IO.File.Exists(File) && System.IO.File.ReadAllText(File) == text,
            "docs/rules.md is not what the register says. Write it anew with: CLOM_WRITE_DOCS=1 dotnet test --project tests/Clomwright.Rules.Tests");
    }
}
