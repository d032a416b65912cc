using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>Forces on the nodes that do the same work as what is spread over a body (consistent loads).</summary>
public static class Loading
{
    /// <summary>The weight of all cells under an acceleration, such as (0, 0, -9.80665); a horizontal one is the inertia of a shaking.</summary>
    public static NodalLoad Weight(SolidModel model, Vector3 acceleration) => Inertia(model, _ => acceleration);

    /// <summary>What all cells weigh under an acceleration that differs from place to place, taken at the nodes.</summary>
    public static NodalLoad Inertia(SolidModel model, Func<Vector3, Vector3> accelerationAt) => Inertia(model.Grid, Masses(model), accelerationAt);

    /// <summary>The same where the masses are known: several accelerations of one body share them.</summary>
    /// <param name="grid">The nodes.</param>
    /// <param name="masses">Of the nodes, kg; see <see cref="Masses(SolidModel)"/>.</param>
    /// <param name="accelerationAt">m/s2 at a place.</param>
    public static NodalLoad Inertia(SolidGrid grid, ReadOnlySpan<double> masses, Func<Vector3, Vector3> accelerationAt)
    {
        var forces = New(grid);
        for (var node = 0; node < masses.Length; node++)
        {
            if (masses[node] != 0)
            {
                Add(forces, node, masses[node] * accelerationAt(grid.Point(node)));
            }
        }

        return new NodalLoad(forces);
    }

    /// <summary>What of the mass of all cells each node carries, kg: the integral of its shape function over what is left of them, times their density.</summary>
    public static double[] Masses(SolidModel model) => Masses(model, new NodalShares(model.Grid));

    /// <summary>The same where what each node carries is kept.</summary>
    public static double[] Masses(SolidModel model, NodalShares shares)
    {
        var (grid, masses) = (OfOne(model, shares), new double[model.Grid.Nodes]);
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            var fill = model.Cells[cell];
            if (fill.IsSolid && model.Materials[fill.Material].Density * fill.Weight is not 0 and var density)
            {
                var volumes = shares.VolumesOf(cell, fill.Cut);
                for (var corner = 0; corner < 8; corner += 2)
                {
                    var node = grid.CornerNode(cell, corner);
                    masses[node] += density * volumes[corner];
                    masses[node + 1] += density * volumes[corner + 1];
                }
            }
        }

        return masses;
    }

    /// <summary>A pressure (force for each area, positive into the body) on one face of some cells of a wall, even over each of them, where what each node carries is kept. Empty cells take nothing.</summary>
    /// <param name="model">The model.</param>
    /// <param name="shares">What each node carries, of the same grid.</param>
    /// <param name="side"><see cref="CellSide.Inside"/> or <see cref="CellSide.Outside"/>.</param>
    /// <param name="cells">The cells.</param>
    /// <param name="pressureOf">On each of them, Pa; 0 where there is none.</param>
    public static NodalLoad Pressure(SolidModel model, NodalShares shares, CellSide side, IReadOnlyList<int> cells, Func<int, double> pressureOf) =>
        OnFaces(model, shares, side, cells, pressureOf, (pressure, share) => -pressure * share.Outward);

    /// <summary>A force for each area, everywhere the same, on one face of some cells of a wall, where what each node carries is kept. Empty cells take nothing.</summary>
    /// <param name="model">The model.</param>
    /// <param name="shares">What each node carries, of the same grid.</param>
    /// <param name="side"><see cref="CellSide.Inside"/> or <see cref="CellSide.Outside"/>.</param>
    /// <param name="cells">The cells.</param>
    /// <param name="traction">The force, Pa.</param>
    public static NodalLoad Traction(SolidModel model, NodalShares shares, CellSide side, IReadOnlyList<int> cells, Vector3 traction) =>
        OnFaces(model, shares, side, cells, _ => 1, (_, share) => share.Area * traction);

    private static NodalLoad OnFaces(SolidModel model, NodalShares shares, CellSide side, IReadOnlyList<int> cells, Func<int, double> amountOf, Func<double, FaceShare, Vector3> forceOf)
    {
        var forces = New(OfOne(model, shares));
        foreach (var cell in cells)
        {
            if (model.Cells[cell].IsSolid && amountOf(cell) is not 0 and var amount)
            {
                foreach (var share in shares.FacesOf(cell, model.Cells[cell].Cut, side))
                {
                    Add(forces, share.Node, forceOf(amount, share));
                }
            }
        }

        return new NodalLoad(forces);
    }

    private static SolidGrid OfOne(SolidModel model, NodalShares shares) =>
        ReferenceEquals(model.Grid, shares.Grid) ? shares.Grid : throw new ArgumentException("What the nodes carry is kept of another grid.");

    /// <summary>A force at a position inside a solid cell, spread over its nodes by their shape functions.</summary>
    /// <exception cref="ArgumentException">The cell there is empty.</exception>
    public static NodalLoad Point(SolidModel model, double s, double z, double t, Vector3 force)
    {
        var (cell, reference) = model.Grid.Locate(s, z, t);
        if (!model.Cells[cell].IsSolid)
        {
            throw new ArgumentException($"A force at ({s}, {z}, {t}) would act on nothing.");
        }

        var forces = New(model.Grid);
        for (var corner = 0; corner < 8; corner++)
        {
            Add(forces, model.Grid.CornerNode(cell, corner), HexahedronShape.Value(corner, reference) * force);
        }

        return new NodalLoad(forces);
    }

    /// <summary>
    /// A pressure (force for each area, positive into the body) on one side of the cells that <paramref name="pressureOf"/> gives one for; null
    /// where there is none. Empty cells take nothing.
    /// </summary>
    public static NodalLoad Pressure(SolidModel model, CellSide side, Func<int, double?> pressureOf) =>
        Traction(model, side, cell => pressureOf(cell) is { } pressure ? (_, normal) => -pressure * normal : null);

    /// <summary>
    /// A force for each area on one side of cells: <paramref name="tractionOf"/> gives for a cell a function of the place and of the unit normal
    /// out of the body, or null. Empty cells take nothing.
    /// </summary>
    public static NodalLoad Traction(SolidModel model, CellSide side, Func<int, Func<Vector3, Vector3, Vector3>?> tractionOf)
    {
        var (grid, forces) = (model.Grid, New(model.Grid));
        Span<Vector3> nodal = stackalloc Vector3[4];
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            if (model.Cells[cell].IsSolid && tractionOf(cell) is { } traction)
            {
                var face = new CellFace(grid, cell, side);
                face.NodalForces(traction, model.Cells[cell].Cut, nodal);
                for (var n = 0; n < 4; n++)
                {
                    Add(forces, face.Node(n), nodal[n]);
                }
            }
        }

        return new NodalLoad(forces);
    }

    /// <summary>
    /// A force spread evenly over the part of the top of the solid cells of level <paramref name="level"/> that lies within the box's s and t
    /// (its z is not looked at): a beam end or a pole on its plate.
    /// </summary>
    /// <exception cref="ArgumentException">There is nothing solid under the box.</exception>
    public static NodalLoad OnTop(SolidModel model, int level, GridBox box, Vector3 force)
    {
        var (grid, shares) = (model.Grid, New(model.Grid));
        Span<double> areas = stackalloc double[4];
        var total = 0.0;
        for (var i = 0; i < grid.Around; i++)
        {
            for (var j = 0; j < grid.Through; j++)
            {
                var cell = grid.Cell(i, level, j);
                var (t0, t1) = Part(grid.T[j], grid.T[j + 1], box.TFrom, box.TTo);
                if (!model.Cells[cell].IsSolid || t0 >= t1)
                {
                    continue;
                }

                foreach (var turn in grid.IsClosed ? [-1, 0, 1] : (ReadOnlySpan<int>)[0])
                {
                    var shift = turn * (grid.S[^1] - grid.S[0]);
                    var (s0, s1) = Part(grid.S[i], grid.S[i + 1], box.SFrom + shift, box.STo + shift);
                    if (s0 < s1)
                    {
                        var face = new CellFace(grid, cell, CellSide.Top);
                        face.NodalAreas(areas, t0, t1, s0, s1);
                        for (var n = 0; n < 4; n++)
                        {
                            shares[3 * face.Node(n)] += areas[n];
                            total += areas[n];
                        }
                    }
                }
            }
        }

        if (total == 0)
        {
            throw new ArgumentException($"There is nothing solid under {box} at level {level}.");
        }

        for (var node = 0; node < grid.Nodes; node++)
        {
            var share = shares[3 * node] / total;
            (shares[3 * node], shares[3 * node + 1], shares[3 * node + 2]) = (share * force.X, share * force.Y, share * force.Z);
        }

        return new NodalLoad(shares);
    }

    /// <summary>No load.</summary>
    public static NodalLoad None(SolidGrid grid) => new(New(grid));

    /// <summary>Integrals of the shape functions over what is left of a cell.</summary>
    internal static void NodalVolumes(ReadOnlySpan<double> gaussVolumes, CellCut? cut, Span<double> nodal)
    {
        nodal.Clear();
        for (var q = 0; q < 8; q++)
        {
            var volume = cut is null ? gaussVolumes[q] : cut.Weights[q] * gaussVolumes[q];
            for (var n = 0; n < 8; n++)
            {
                nodal[n] += volume * HexahedronShape.GaussValues[8 * q + n];
            }
        }
    }

    private static double[] New(SolidGrid grid) => new double[3 * grid.Nodes];

    private static void Add(double[] forces, int node, Vector3 force)
    {
        forces[3 * node] += force.X;
        forces[3 * node + 1] += force.Y;
        forces[3 * node + 2] += force.Z;
    }

    /// <summary>The part of a cell's extent within an interval, in reference coordinates.</summary>
    private static (double From, double To) Part(double cellFrom, double cellTo, double from, double to)
    {
        var middle = (cellFrom + cellTo) / 2;
        var half = (cellTo - cellFrom) / 2;
        return (Math.Max(-1, (from - middle) / half), Math.Min(1, (to - middle) / half));
    }
}
