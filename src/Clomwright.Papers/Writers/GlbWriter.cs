using System.Buffers;
using System.Buffers.Binary;
using System.Text;
using System.Text.Json;
using Clomwright.Evidence;
using Clomwright.Geometry.Solids;

namespace Clomwright.Papers.Writers;

/// <summary>Bodies as glTF 2.0 in one binary file (ISO/IEC 12113): metres, y up, east along x, south along z; a node for each body under the author's name.</summary>
/// <remarks>The same bodies give the same bytes.</remarks>
public static class GlbWriter
{
    private const uint Magic = 0x46546C67, Json = 0x4E4F534A, Binary = 0x004E4942;
    private const int Float = 5126, UnsignedInt = 5125, Vertices = 34962, Indices = 34963;

    /// <summary>Bytes of a file.</summary>
    /// <param name="name">Of the house.</param>
    /// <param name="solids">At least one.</param>
    public static byte[] Write(string name, IReadOnlyList<SolidMesh> solids)
    {
        ArgumentNullException.ThrowIfNull(solids);
        ArgumentOutOfRangeException.ThrowIfZero(solids.Count);
        using var data = new MemoryStream();
        var text = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(text))
        {
            Describe(json, name, solids, data);
        }

        return Joined(text.WrittenSpan, data.ToArray());
    }

    private static void Describe(Utf8JsonWriter json, string name, IReadOnlyList<SolidMesh> solids, MemoryStream data)
    {
        SolidPart[] parts = [.. solids.Select(s => s.Part).Distinct().Order()];
        List<(long From, long Length, int Target)> views = [];
        json.WriteStartObject();
        json.WriteStartObject("asset");
        json.WriteString("version", "2.0");
        json.WriteString("generator", "Clomwright");
        json.WriteEndObject();
        json.WriteNumber("scene", 0);
        Array("scenes", [name], n => { json.WriteString("name", n); Whole("nodes", Enumerable.Range(0, solids.Count)); });
        Array("nodes", Enumerable.Range(0, solids.Count), i => { json.WriteString("name", solids[i].Name); json.WriteNumber("mesh", i); });
        Array("materials", parts, p => Material(json, p));
        Array("meshes", Enumerable.Range(0, solids.Count), i =>
        {
            json.WriteString("name", solids[i].Name);
            Array("primitives", [i], _ =>
            {
                json.WriteStartObject("attributes");
                json.WriteNumber("POSITION", 3 * i);
                json.WriteNumber("NORMAL", 3 * i + 1);
                json.WriteEndObject();
                json.WriteNumber("indices", 3 * i + 2);
                json.WriteNumber("material", System.Array.IndexOf(parts, solids[i].Part));
            });
        });
        Array("accessors", solids.SelectMany(s => Enumerable.Range(0, 3).Select(kind => (Solid: s, Kind: kind))), a => Accessor(a.Solid, a.Kind));
        Array("bufferViews", views, v =>
        {
            json.WriteNumber("buffer", 0);
            json.WriteNumber("byteOffset", v.From);
            json.WriteNumber("byteLength", v.Length);
            json.WriteNumber("target", v.Target);
        });
        Array("buffers", [data.Length], length => json.WriteNumber("byteLength", length));
        json.WriteEndObject();

        void Array<T>(string key, IEnumerable<T> items, Action<T> write)
        {
            json.WriteStartArray(key);
            foreach (var item in items)
            {
                json.WriteStartObject();
                write(item);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        void Whole(string key, IEnumerable<int> numbers)
        {
            json.WriteStartArray(key);
            numbers.ToList().ForEach(json.WriteNumberValue);
            json.WriteEndArray();
        }

        void Accessor(SolidMesh solid, int kind)
        {
            var from = data.Length;
            float[] least = [], most = [];
            if (kind == 2)
            {
                Put(data, solid.Triangles);
            }
            else
            {
                (least, most) = Put(data, kind == 0 ? solid.Points : solid.Normals, unit: kind == 1);
            }

            json.WriteNumber("bufferView", views.Count);
            json.WriteNumber("componentType", kind == 2 ? UnsignedInt : Float);
            json.WriteNumber("count", kind == 2 ? solid.Triangles.Count : solid.Points.Count);
            json.WriteString("type", kind == 2 ? "SCALAR" : "VEC3");
            if (kind == 0)
            {
                Bound("min", least);
                Bound("max", most);
            }

            views.Add((from, data.Length - from, kind == 2 ? Indices : Vertices));
        }

        void Bound(string key, float[] at)
        {
            json.WriteStartArray(key);
            at.ToList().ForEach(json.WriteNumberValue);
            json.WriteEndArray();
        }
    }

    /// <summary>Named for the part, in the plain colours of the stuff.</summary>
    private static void Material(Utf8JsonWriter json, SolidPart part)
    {
        double[] colour = part switch
        {
            SolidPart.Wall => [0.62, 0.47, 0.33, 1],
            SolidPart.Stem => [0.55, 0.54, 0.52, 1],
            SolidPart.Glass => [0.65, 0.75, 0.78, 0.4],
            SolidPart.Embed => [0.35, 0.35, 0.35, 1],
            _ => [0.48, 0.36, 0.24, 1],
        };
        json.WriteString("name", part.ToString());
        json.WriteStartObject("pbrMetallicRoughness");
        json.WriteStartArray("baseColorFactor");
        colour.ToList().ForEach(json.WriteNumberValue);
        json.WriteEndArray();
        json.WriteNumber("metallicFactor", 0);
        json.WriteNumber("roughnessFactor", 1);
        json.WriteEndObject();
        if (colour[3] < 1)
        {
            json.WriteString("alphaMode", "BLEND");
        }
    }

    private static void Put(MemoryStream data, Sequence<int> triangles)
    {
        Span<byte> octets = stackalloc byte[4];
        foreach (var corner in triangles)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(octets, (uint)corner);
            data.Write(octets);
        }
    }

    /// <summary>East to x, up to y, south to z. A unit normal is made one again in the numbers of the file.</summary>
    private static (float[] Least, float[] Most) Put(MemoryStream data, Sequence<SpacePoint> points, bool unit)
    {
        float[] least = [float.MaxValue, float.MaxValue, float.MaxValue], most = [float.MinValue, float.MinValue, float.MinValue];
        Span<byte> octets = stackalloc byte[4];
        foreach (var point in points)
        {
            var at = unit ? point.Unit : point;
            float[] place = [(float)at.East, (float)at.Up, (float)-at.North];
            for (var i = 0; i < 3; i++)
            {
                (least[i], most[i]) = (Math.Min(least[i], place[i]), Math.Max(most[i], place[i]));
                BinaryPrimitives.WriteSingleLittleEndian(octets, place[i]);
                data.Write(octets);
            }
        }

        return (least, most);
    }

    /// <summary>The container: a head, the description filled up with spaces, the numbers filled up with zeros.</summary>
    private static byte[] Joined(ReadOnlySpan<byte> text, byte[] data)
    {
        var (words, numbers) = ((text.Length + 3) / 4 * 4, (data.Length + 3) / 4 * 4);
        var file = new byte[12 + 8 + words + 8 + numbers];
        var to = file.AsSpan();
        BinaryPrimitives.WriteUInt32LittleEndian(to, Magic);
        BinaryPrimitives.WriteUInt32LittleEndian(to[4..], 2);
        BinaryPrimitives.WriteUInt32LittleEndian(to[8..], (uint)file.Length);
        Chunk(to[12..], Json, words);
        to.Slice(20, words).Fill((byte)' ');
        text.CopyTo(to[20..]);
        Chunk(to[(20 + words)..], Binary, numbers);
        data.CopyTo(to[(28 + words)..]);
        return file;
    }

    private static void Chunk(Span<byte> to, uint kind, int length)
    {
        BinaryPrimitives.WriteUInt32LittleEndian(to, (uint)length);
        BinaryPrimitives.WriteUInt32LittleEndian(to[4..], kind);
    }
}
