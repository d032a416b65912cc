using System.Runtime.Intrinsics;
using Pair = System.Runtime.Intrinsics.Vector128<double>;

namespace Clomwright.Analysis.Comfort;

/// <summary>What an hour brings to a room, held through the hour.</summary>
/// <param name="Outside">Air, C.</param>
/// <param name="Faces">What each part's outside film is up against, C: air with sun and sky, or ground.</param>
/// <param name="Sun">On each part's inside face, W/m2.</param>
/// <param name="Air">Heat given to the air, W.</param>
/// <param name="Radiant">Heat given to the surfaces, W.</param>
internal readonly record struct RoomHour(double Outside, double[] Faces, double[] Sun, double Air, double Radiant);

/// <summary>
/// The heat of a room and its shell in time: parts of slices, one air, one mean of radiation. Linear, so that heating is found in one step. In time the second-order scheme of two stages
/// of Alexander 1977 (from memory; gamma = 1 - 1/sqrt 2): stiffly stable, and what a stage lets through is what the slices keep.
/// Two rooms alike live through the same hours beside each other, one kept warm and one that nobody heats: every state is a pair of them, and an elimination waits for its last result once for both.
/// </summary>
internal sealed class RoomBalance
{
    private const double Gamma = 1 - 0.70710678118654752440;
    private const double Radiation = 5.13, LeastConvection = 0.3, SliceOfSwing = 0.25;
    private readonly Strip[] strips;
    private readonly double step, airCapacity;

    /// <summary>By whose windows stand open: nobody's, of the one kept warm, of the one that nobody heats, of both.</summary>
    private readonly Rooms[] rooms;

    /// <param name="elements">Parts.</param>
    /// <param name="edges">Edges, W/K, between both airs.</param>
    /// <param name="air">Changed air, W/K.</param>
    /// <param name="airOpen">The same with windows open, W/K.</param>
    /// <param name="airCapacity">Of air and furniture, J/K.</param>
    /// <param name="radiantShare">Share of the heating that goes to the surfaces.</param>
    /// <param name="step">s.</param>
    public RoomBalance(IReadOnlyList<RoomElement> elements, double edges, double air, double airOpen, double airCapacity, double radiantShare, double step = 3600)
    {
        (this.step, this.airCapacity, RadiantShare) = (step, airCapacity, radiantShare);
        strips = [.. elements.Select(e => new Strip(e, Gamma * step))];
        States = strips.Sum(s => s.Nodes) + 1;
        var (shut, open) = (edges + air, edges + airOpen);
        rooms = [.. new[] { Vector128.Create(shut, shut), Vector128.Create(open, shut), Vector128.Create(shut, open), Vector128.Create(open, open) }.Select(straight => new Rooms(strips, airCapacity / (Gamma * step), straight, radiantShare))];
        foreach (var pair in rooms)
        {
            pair.Learn(this);
        }
    }

    /// <summary>Share of the heating that goes to the surfaces.</summary>
    public double RadiantShare { get; }

    /// <summary>How many numbers a state has: the slices of every part in turn, the air last.</summary>
    public int States { get; }

    /// <summary>A state of one temperature.</summary>
    public Pair[] Even(double temperature) => [.. Enumerable.Repeat(Vector128.Create(temperature), States)];

    /// <summary>Heat kept in a state above 0 C, J.</summary>
    public Pair Kept(ReadOnlySpan<Pair> state)
    {
        var (sum, at) = (airCapacity * state[^1], 0);
        foreach (var strip in strips)
        {
            for (var i = 0; i < strip.Nodes; i++)
            {
                sum += strip.Area * strip.Capacity[i] * state[at++];
            }
        }

        return sum;
    }

    /// <summary>One step of both.</summary>
    /// <param name="state">Before; after.</param>
    /// <param name="hour">What comes.</param>
    /// <param name="warm">Felt temperature that the heating of the first holds at the end.</param>
    /// <param name="isOpen">Whether windows of the first stand open, and of the second.</param>
    /// <param name="lost">Takes what each part lets out of the room, mean of the step, W.</param>
    public (RoomStep Heated, RoomStep Free) Step(Pair[] state, in RoomHour hour, double warm, (bool Heated, bool Free) isOpen, Span<Pair> lost)
    {
        var room = rooms[(isOpen.Heated ? 1 : 0) + (isOpen.Free ? 2 : 0)];
        var (first, second) = (room.First, room.Second);
        room.Stage(state, hour, first);
        for (var i = 0; i < States; i++)
        {
            room.Base[i] = state[i] + (1 - Gamma) / Gamma * (first.State[i] - state[i]);
        }

        room.Stage(room.Base, hour, second);
        var felt = (second.State[^1][0] + second.Radiant[0]) / 2;
        var heat = felt < warm ? (warm - felt) / room.FeltOfWatt : 0;
        if (heat > 0)
        {
            first.Add(Vector128.Create(heat, 0), room.UnitFirst);
            second.Add(Vector128.Create(heat, 0), room.UnitSecond);
        }

        var (edgeOut, outside) = ((1 - Gamma) * first.State[^1] + Gamma * second.State[^1] - Vector128.Create(hour.Outside), Pair.Zero);
        for (var e = 0; e < strips.Length; e++)
        {
            lost[e] = strips[e].Area * ((1 - Gamma) * first.Out[e] + Gamma * second.Out[e]);
            outside += strips[e].Area * ((1 - Gamma) * strips[e].Through(first, hour.Faces[e]) + Gamma * strips[e].Through(second, hour.Faces[e]));
        }

        second.State.CopyTo(state, 0);
        RoomStep Of(int one, double heating) => new(second.State[^1][one], second.Radiant[one], heating, (room.Straight * edgeOut)[one], outside[one]);
        return (Of(0, heat), Of(1, 0));
    }

    /// <summary>One part: Thomas's elimination done once, its divisions too.</summary>
    internal sealed class Strip
    {
        public readonly double Area, Convection, Radiant, First, Last, Whole, ShareOfFirst;
        public readonly double[] Capacity;
        public readonly Pair[] Response;
        private readonly double[] down, up, inverse;

        /// <summary>How the face answers to air and radiation together: known part aside, T_s = taken (h_c T_a + h_r T_r).</summary>
        public readonly double Taken;
        public readonly int Nodes;
        public int Start, Index;

        public Strip(RoomElement element, double gammaStep)
        {
            Area = element.Area;
            var film = 1 / element.Part.Inside;
            Radiant = Math.Min(Radiation, film - LeastConvection);
            Convection = film - Radiant;
            var (between, capacities) = (new List<double>(), new List<double>());
            var before = 0.0;
            foreach (var layer in element.Part.Layers)
            {
                // A quarter of the depth in which a day's swing falls to 1/e.
                var swing = Math.Sqrt(layer.Conductivity * DailyHeat.Day / (Math.PI * layer.Density * layer.Capacity));
                var slices = Math.Max(1, (int)Math.Ceiling(layer.Depth / (SliceOfSwing * swing) - 1e-9));
                var (half, kept) = (layer.Resistance / slices / 2, layer.Depth / slices * layer.Density * layer.Capacity);
                for (var i = 0; i < slices; i++)
                {
                    between.Add(1 / (before + half));
                    capacities.Add(kept);
                    before = half;
                }
            }

            between.Add(1 / (before + (element.IsLight ? element.Light : 0) + element.Part.Outside));
            (Capacity, Nodes) = ([.. capacities], capacities.Count);
            (First, Last) = (between[0], between[^1]);
            Whole = Convection + Radiant + First;
            (ShareOfFirst, Taken) = (First / Whole, 1 / Whole);
            (Response, down, up, inverse) = (new Pair[Nodes], new double[Nodes], new double[Nodes], new double[Nodes]);
            if (Nodes == 0)
            {
                return;
            }

            // The face is taken out: its heat reaches the first slice through First (h_c + h_r)/Whole.
            var felt = First * (Convection + Radiant) / Whole;
            for (var i = 0; i < Nodes; i++)
            {
                var diagonal = Capacity[i] / gammaStep + (i == 0 ? felt : between[i]) + between[i + 1];
                down[i] = i == 0 ? 0 : between[i] * inverse[i - 1];
                inverse[i] = 1 / (i == 0 ? diagonal : diagonal - between[i] * down[i]);
                up[i] = i == Nodes - 1 ? 0 : between[i + 1] * inverse[i];
            }

            Rates = [.. Capacity.Select(c => c / gammaStep)];
            Response[0] = Vector128.Create(ShareOfFirst);
            Solve(Response);
            Taken = (1 + First * Response[0][0]) / Whole;
        }

        public double[] Rates { get; } = [];

        /// <summary>Solves in place.</summary>
        public void Solve(Span<Pair> right)
        {
            var carried = right[0];
            for (var i = 1; i < down.Length; i++)
            {
                right[i] = carried = right[i] + down[i] * carried;
            }

            right[^1] = carried *= inverse[^1];
            for (var i = inverse.Length - 2; i >= 0; i--)
            {
                right[i] = carried = right[i] * inverse[i] + up[i] * carried;
            }
        }

        /// <summary>Out of its last slice, or its face where it is light, W/m2.</summary>
        public Pair Through(StageState stage, double face) => Last * ((Nodes > 0 ? stage.State[Start + Nodes - 1] : stage.Face[Index]) - Vector128.Create(face));
    }

    /// <summary>What a stage comes to.</summary>
    internal sealed class StageState(Strip[] strips, int states)
    {
        public readonly Pair[] State = new Pair[states], Face = new Pair[strips.Length], Out = new Pair[strips.Length];
        public Pair Radiant;

        public void Add(Pair share, StageState other)
        {
            for (var i = 0; i < State.Length; i++)
            {
                State[i] += share * other.State[i];
            }

            for (var e = 0; e < Face.Length; e++)
            {
                Face[e] += share * other.Face[e];
                Out[e] += share * other.Out[e];
            }

            Radiant += share * other.Radiant;
        }
    }

    /// <summary>The two rooms, each with one change of air.</summary>
    private sealed class Rooms
    {
        private readonly Strip[] strips;
        private readonly double rate, a12, a22, radiantShare;
        private readonly Pair a11;
        private readonly double[] none;
        private readonly Pair[] known;

        public Rooms(Strip[] strips, double rate, Pair straight, double radiantShare)
        {
            (this.strips, this.rate, Straight, this.radiantShare) = (strips, rate, straight, radiantShare);
            var (states, of11) = (1, 0.0);
            foreach (var s in strips)
            {
                (s.Start, s.Index) = (states - 1, Array.IndexOf(strips, s));
                states += s.Nodes;
                var taken = s.Taken;
                of11 += s.Area * s.Convection * (1 - taken * s.Convection);
                a12 -= s.Area * s.Convection * taken * s.Radiant;
                a22 += s.Area * s.Radiant * (1 - taken * s.Radiant);
            }

            a11 = Vector128.Create(of11) + (Vector128.Create(rate) + straight);
            (First, Second, UnitFirst, UnitSecond) = (new(strips, states), new(strips, states), new(strips, states), new(strips, states));
            (Base, none, known) = (new Pair[states], new double[strips.Length], new Pair[strips.Length]);
        }

        public Pair Straight { get; }

        public Pair[] Base { get; }

        public StageState First { get; }

        public StageState Second { get; }

        public StageState UnitFirst { get; }

        public StageState UnitSecond { get; }

        /// <summary>How much warmer the first room feels at the end of a step for each watt of heating.</summary>
        public double FeltOfWatt { get; private set; }

        /// <summary>The answer to one watt of heating from nothing.</summary>
        public void Learn(RoomBalance balance)
        {
            var nothing = new Pair[balance.States];
            var watt = new RoomHour(0, none, none, 1 - radiantShare, radiantShare);
            Stage(nothing, watt, UnitFirst);
            for (var i = 0; i < nothing.Length; i++)
            {
                Base[i] = (1 - Gamma) / Gamma * UnitFirst.State[i];
            }

            Stage(Base, watt, UnitSecond);
            FeltOfWatt = (UnitSecond.State[^1][0] + UnitSecond.Radiant[0]) / 2;
        }

        /// <summary>One implicit stage from a state.</summary>
        public void Stage(Pair[] from, in RoomHour hour, StageState to)
        {
            var (air, radiant) = (rate * from[^1] + Straight * hour.Outside + Vector128.Create(hour.Air), Vector128.Create(hour.Radiant));
            for (var e = 0; e < strips.Length; e++)
            {
                var s = strips[e];
                var face = Vector128.Create(hour.Sun[e]);
                if (s.Nodes > 0)
                {
                    var right = to.State.AsSpan(s.Start, s.Nodes);
                    for (var i = 0; i < s.Nodes; i++)
                    {
                        right[i] = s.Rates[i] * from[s.Start + i];
                    }

                    right[0] += Vector128.Create(s.ShareOfFirst * hour.Sun[e]);
                    right[^1] += Vector128.Create(s.Last * hour.Faces[e]);
                    s.Solve(right);
                    face += s.First * right[0];
                }
                else
                {
                    face += Vector128.Create(s.Last * hour.Faces[e]);
                }

                known[e] = face / s.Whole;
                air += s.Area * s.Convection * known[e];
                radiant += s.Area * s.Radiant * known[e];
            }

            var determinant = a11 * a22 - Vector128.Create(a12 * a12);
            var ta = (air * a22 - a12 * radiant) / determinant;
            var tr = (a11 * radiant - a12 * air) / determinant;
            (to.State[^1], to.Radiant) = (ta, tr);
            for (var e = 0; e < strips.Length; e++)
            {
                var s = strips[e];
                var felt = s.Convection * ta + s.Radiant * tr;
                for (var i = 0; i < s.Nodes; i++)
                {
                    to.State[s.Start + i] += felt * s.Response[i];
                }

                to.Face[e] = known[e] + s.Taken * felt;
                to.Out[e] = felt - (s.Convection + s.Radiant) * to.Face[e];
            }
        }
    }
}

/// <summary>What a step came to.</summary>
/// <param name="Air">At its end, C.</param>
/// <param name="Radiant">Mean of radiation at its end, C.</param>
/// <param name="Heating">W.</param>
/// <param name="Straight">Lost by edges and changed air, mean of the step, W.</param>
/// <param name="Outside">Lost through the outside faces of all parts, mean of the step, W.</param>
internal readonly record struct RoomStep(double Air, double Radiant, double Heating, double Straight, double Outside)
{
    /// <summary>What a person feels, half air, half surfaces, C.</summary>
    public double Felt => (Air + Radiant) / 2;
}
