using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Clomwright.Building;

namespace Clomwright.Files.Tests;

/// <summary>House files as different people would type them: keys in any order, spaces, tabs and line breaks anywhere, defaults spelled out.</summary>
internal static class Handwriting
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(House house, int seed)
    {
        var random = new Random(seed);
        var newline = random.Next(3) == 0 ? "\r\n" : "\n";
        var root = JsonNode.Parse(HouseWriter.Write(house))!;
        foreach (var opening in root["openings"]?.AsArray() ?? [])
        {
            if (random.Next(3) == 0)
            {
                opening!.AsObject().TryAdd("escape", false);
                opening.AsObject().TryAdd("shape", "rectangular");
            }
        }

        if (random.Next(3) == 0)
        {
            root.AsObject().TryAdd("niches", new JsonArray());
        }

        var text = new StringBuilder();
        Type(root, 0);
        return text.Append(random.Next(2) == 0 ? newline : "").ToString();

        void Type(JsonNode? node, int depth)
        {
            switch (node)
            {
                case JsonObject thing:
                    List('{', thing.OrderBy(_ => random.Next(4)).ToList(), member =>
                    {
                        text.Append(JsonSerializer.Serialize(member.Key, Options)).Append(random.Next(5) == 0 ? " :" : ":").Append(random.Next(4) == 0 ? "" : " ");
                        Type(member.Value, depth + 1);
                    }, '}', depth);
                    break;
                case JsonArray list:
                    List('[', list.ToList(), item => Type(item, depth + 1), ']', depth);
                    break;
                default:
                    text.Append(node!.ToJsonString(Options));
                    break;
            }
        }

        void List<T>(char open, List<T> items, Action<T> type, char close, int depth)
        {
            var style = depth == 0 ? 1 : random.Next(4);
            text.Append(open);
            for (var i = 0; i < items.Count; i++)
            {
                text.Append(i == 0 ? "" : ",").Append(Gap(style, depth + 1, i == 0));
                type(items[i]);
            }

            text.Append(items.Count == 0 ? "" : style == 1 ? Gap(1, depth, false) : random.Next(2) == 0 ? " " : "").Append(close);
        }

        string Gap(int style, int depth, bool first) => style switch
        {
            1 => newline + (seed % 2 == 0 ? new string('\t', depth) : new string(' ', 3 * depth)),
            2 => first ? "" : random.Next(3) == 0 ? newline + new string(' ', 4 * depth) : " ",
            3 => random.Next(4) == 0 ? "  " : " ",
            _ => "",
        };
    }
}
