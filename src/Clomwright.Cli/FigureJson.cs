using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Clomwright.Evidence;
using Clomwright.Study;

namespace Clomwright.Cli;

/// <summary>Figures as JSON: numbers are <c>{ "value", "unit", "tag", "source" }</c>, a missing one is <c>{ "value": null, "notChecked" }</c>.</summary>
internal static class FigureJson
{
    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    public static string Write(Figure figure)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Readable))
        {
            Write(json, figure);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void Write(Utf8JsonWriter json, Figure figure)
    {
        switch (figure)
        {
            case Figure.Branch branch:
                json.WriteStartObject();
                foreach (var part in branch.Parts)
                {
                    json.WritePropertyName(part.Key);
                    Write(json, part.Figure);
                }

                json.WriteEndObject();
                break;
            case Figure.Row row:
                json.WriteStartArray();
                foreach (var item in row.Items)
                {
                    Write(json, item);
                }

                json.WriteEndArray();
                break;
            case Figure.Number { Value.Si: var si } number when double.IsFinite(si):
                json.WriteStartObject();
                json.WriteNumber("value", si);
                json.WriteString("unit", Units.SiSymbol(number.Value.Dimension));
                json.WriteString("tag", TagWord(number.Tag));
                json.WriteString("source", number.Source);
                json.WriteEndObject();
                break;
            case Figure.Number:
                Missing(json, new Message("cli.figures.no-number"));
                break;
            case Figure.NotChecked missing:
                Missing(json, missing.Why);
                break;
            case Figure.Text text:
                json.WriteStringValue(text.Value);
                break;
            case Figure.Flag flag:
                json.WriteBooleanValue(flag.Value);
                break;
        }
    }

    private static void Missing(Utf8JsonWriter json, Message why)
    {
        json.WriteStartObject();
        json.WriteNull("value");
        json.WriteString("notChecked", Phrasebook.English.Say(why, UnitSystem.Metric));
        json.WriteEndObject();
    }

    private static string TagWord(Tag tag) => tag switch
    {
        Tag.Measured => "measured",
        Tag.Assumed => "assumed",
        Tag.Practice => "practice",
        Tag.Code => "code",
        Tag.Given => "given",
        _ => "computed",
    };
}
