namespace Clomwright.Analysis.Structure;

/// <summary>The hardest of every case, stack by stack, with the case that it comes from.</summary>
internal sealed class Envelope
{
    private readonly WallSheet sheet;

    public Envelope(WallSheet sheet)
    {
        this.sheet = sheet;
        (Compression, Tension, Upright) = (new double[sheet.Count], new double[sheet.Count], new double[sheet.Count]);
        (CompressionCase, TensionCase, UprightCase) = (new int[sheet.Count], new int[sheet.Count], new int[sheet.Count]);
        (TensionOutside, UprightOutside) = (new bool[sheet.Count], new bool[sheet.Count]);
        TensionAngle = new double[sheet.Count];
        Array.Fill(Upright, double.NegativeInfinity);
        Array.Fill(Compression, double.NegativeInfinity);
        Array.Fill(Tension, double.NegativeInfinity);
    }

    /// <summary>Most principal compression of either face, Pa, positive.</summary>
    public double[] Compression { get; }

    /// <summary>Most principal tension of either face, Pa.</summary>
    public double[] Tension { get; }

    /// <summary>Angle of that tension from the level along the wall, radians.</summary>
    public double[] TensionAngle { get; }

    /// <summary>Whether it is on the outside face.</summary>
    public bool[] TensionOutside { get; }

    /// <summary>Most upright compression of either face, Pa, positive.</summary>
    public double[] Upright { get; }

    /// <summary>Whether it is on the outside face.</summary>
    public bool[] UprightOutside { get; }

    public int[] CompressionCase { get; }

    public int[] TensionCase { get; }

    public int[] UprightCase { get; }

    /// <summary>Takes one case in.</summary>
    /// <param name="number">Of the case.</param>
    /// <param name="field">Its means, six numbers a stack.</param>
    public void Take(int number, double[] field)
    {
        for (var stack = 0; stack < sheet.Count; stack++)
        {
            if (sheet.Share[stack] <= 0)
            {
                continue;
            }

            for (var face = 0; face < 2; face++)
            {
                var at = WallSheet.Parts * stack + 3 * face;
                Take(number, stack, face == 1, field[at], field[at + 1], field[at + 2]);
            }
        }
    }

    /// <summary>Takes in what later cases made of the same sheet.</summary>
    public void Take(Envelope later)
    {
        for (var stack = 0; stack < sheet.Count; stack++)
        {
            if (later.Compression[stack] > Compression[stack])
            {
                (Compression[stack], CompressionCase[stack]) = (later.Compression[stack], later.CompressionCase[stack]);
            }

            if (later.Tension[stack] > Tension[stack])
            {
                (Tension[stack], TensionCase[stack], TensionOutside[stack], TensionAngle[stack]) =
                    (later.Tension[stack], later.TensionCase[stack], later.TensionOutside[stack], later.TensionAngle[stack]);
            }

            if (later.Upright[stack] > Upright[stack])
            {
                (Upright[stack], UprightCase[stack], UprightOutside[stack]) = (later.Upright[stack], later.UprightCase[stack], later.UprightOutside[stack]);
            }
        }
    }

    private void Take(int number, int stack, bool outside, double s, double z, double shear)
    {
        var (middle, half) = ((s + z) / 2, (s - z) / 2);
        var radius = Math.Sqrt(half * half + shear * shear);
        if (radius - middle > Compression[stack])
        {
            (Compression[stack], CompressionCase[stack]) = (radius - middle, number);
        }

        if (middle + radius > Tension[stack])
        {
            (Tension[stack], TensionCase[stack], TensionOutside[stack]) = (middle + radius, number, outside);
            TensionAngle[stack] = Math.Atan2(shear, half) / 2;
        }

        if (-z > Upright[stack])
        {
            (Upright[stack], UprightCase[stack], UprightOutside[stack]) = (-z, number, outside);
        }
    }
}
