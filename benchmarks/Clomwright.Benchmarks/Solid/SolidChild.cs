using System.Globalization;
using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Solid;

namespace Clomwright.Benchmarks.Solid;

/// <summary>Our side, in a process of its own: writes the matrix for the peers, then answers "drag", "full", "stream" and "check".</summary>
internal sealed class SolidChild : IDisposable
{
    private const int Margin = 5;
    private const int Travel = 2;

    private readonly RingHouse house;
    private readonly string matrix;
    private readonly ElasticBody body;
    private readonly int threads;
    private int step;

    private SolidChild(SolidSize size, string matrix)
    {
        (house, this.matrix) = (new RingHouse(size), matrix);
        threads = int.Parse(Environment.GetEnvironmentVariable("CLOM_THREADS") ?? "2", CultureInfo.InvariantCulture);
        var model = house.At(RingHouse.Start);
        body = new ElasticBody(model, threads);
        var (from, to) = house.Reach(Travel * house.Cell);
        body.FocusOn(from, to, Margin);
        if (!File.Exists(matrix))
        {
            SparseMatrix.Write(matrix, model, RingHouse.LoadOn(model));
        }
    }

    public static int Serve(SolidSize size, string matrix)
    {
        using var child = new SolidChild(size, matrix);
        while (Console.ReadLine() is { } line)
        {
            var numbers = line.Split(' ') switch
            {
                ["drag"] => child.Drag(),
                ["full"] => child.Full(),
                ["stream"] => child.Stream(),
                ["check", var solution] => child.Check(solution),
                _ => [],
            };
            Console.WriteLine(string.Join(' ', numbers.Select(n => n.ToString("R", CultureInfo.InvariantCulture))));
        }

        return 0;
    }

    public void Dispose() => body.Dispose();

    /// <summary>Moves the window by one cell, to and fro. Renewal, displacements of the whole ring and surface stresses; model and load apart.</summary>
    private double[] Drag()
    {
        var place = step++ % (4 * Travel);
        place = place < 2 * Travel ? place - Travel : 3 * Travel - place;
        SolidModel model = null!;
        NodalLoad load = null!;
        var prepare = Measure.Of(() =>
        {
            model = house.At(RingHouse.Start + place * house.Cell);
            load = RingHouse.LoadOn(model);
        });
        SolidAnswer answer = null!;
        var (become, solve, stress) = (Measure.Of(() => body.Become(model)), Measure.Of(() => answer = body.Solve(load)), default(Measure));
        stress = Measure.Of(() => body.SurfaceStress(answer));
        return
        [
            become.Wall + solve.Wall + stress.Wall, become.Processor + solve.Processor + stress.Processor, become.Wall, solve.Wall, stress.Wall, prepare.Wall,
            body.LastWork.Fronts, body.LastWork.Operations,
        ];
    }

    /// <summary>A factor and one answer from nothing but the cells' matrices.</summary>
    private double[] Full()
    {
        var model = house.At(RingHouse.Start);
        var stiffness = new SolidStiffness(model, withModes: true, threads);
        var load = RingHouse.LoadOn(model).Forces.ToArray();
        SheetFactor factor = null!;
        SheetResponse response = null!;
        var all = Measure.Of(() =>
        {
            factor = new SheetFactor(stiffness, SheetDissection.Even(stiffness.Shape), threads);
            response = new SheetResponse(factor);
            response.Solve(load);
        });
        double[] numbers = [all.Wall, all.Processor, factor.Entries, body.Bytes, Measure.PeakMemory(), body.ActiveDofs, factor.LastWork.Operations];
        response.Dispose();
        factor.Dispose();
        return numbers;
    }

    /// <summary>Time to read as many bytes as the factor has, both threads.</summary>
    private unsafe double[] Stream()
    {
        var count = body.FactorEntries;
        var buffer = new double[count];
        Array.Fill(buffer, 1);
        var best = double.MaxValue;
        for (var i = 0; i < 5; i++)
        {
            var sums = new double[threads];
            best = Math.Min(best, Measure.Of(() => Parallel.For(0, threads, part =>
            {
                var slice = buffer.AsSpan((int)(count * part / threads), (int)(count / threads));
                var vectors = System.Runtime.InteropServices.MemoryMarshal.Cast<double, System.Numerics.Vector<double>>(slice);
                var (a, b, c, d) = (System.Numerics.Vector<double>.Zero, System.Numerics.Vector<double>.Zero, System.Numerics.Vector<double>.Zero, System.Numerics.Vector<double>.Zero);
                for (var v = 0; v + 3 < vectors.Length; v += 4)
                {
                    a += vectors[v];
                    b += vectors[v + 1];
                    c += vectors[v + 2];
                    d += vectors[v + 3];
                }

                sums[part] = System.Numerics.Vector.Sum(a + b + c + d);
            })).Wall);
        }

        return [best];
    }

    /// <summary>The largest difference from a peer's solution, over the largest displacement.</summary>
    private double[] Check(string solution)
    {
        var model = house.At(RingHouse.Start);
        using var fresh = new ElasticBody(model, threads);
        var u = fresh.Solve(RingHouse.LoadOn(model)).Displacement.Values.ToArray();
        var number = SparseMatrix.Numbered(model);
        using var reader = new BinaryReader(File.OpenRead(solution));
        var (worst, largest) = (0.0, 0.0);
        for (var dof = 0; dof < number.Length; dof++)
        {
            if (number[dof] >= 0)
            {
                worst = Math.Max(worst, Math.Abs(reader.ReadDouble() - u[dof]));
                largest = Math.Max(largest, Math.Abs(u[dof]));
            }
        }

        return [worst / largest];
    }
}
