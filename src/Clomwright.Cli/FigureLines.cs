using System.Text;
using Clomwright.Evidence;
using Clomwright.Study;

namespace Clomwright.Cli;

/// <summary>Figures for a person: one line a number, its path first.</summary>
internal static class FigureLines
{
    public static string Write(Figure figure, Phrasebook words, UnitSystem units)
    {
        var lines = new StringBuilder();
        Write(figure, "");
        return lines.ToString().TrimEnd();

        void Write(Figure node, string path)
        {
            switch (node)
            {
                case Figure.Branch branch:
                    foreach (var part in branch.Parts)
                    {
                        Write(part.Figure, path.Length == 0 ? part.Key : $"{path}.{part.Key}");
                    }

                    break;
                case Figure.Row row:
                    for (var i = 0; i < row.Items.Count; i++)
                    {
                        Write(row.Items[i], $"{path}[{i}]");
                    }

                    break;
                default:
                    lines.Append(path).Append("  ").Append(Words(node, words, units)).Append('\n');
                    break;
            }
        }
    }

    private static string Words(Figure leaf, Phrasebook words, UnitSystem units) => leaf switch
    {
        Figure.Number number => words.Say(number.Value, units),
        Figure.NotChecked missing => words.Say(Message.Of("cli.figures.not-checked", ("why", missing.Why)), units),
        Figure.Text text => text.Value,
        Figure.Flag flag => flag.Value ? "true" : "false",
        _ => "",
    };
}
