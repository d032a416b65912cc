namespace Clomwright.Analysis.Foundation;

/// <summary>Pressure under a strip and what the ground bears. SI.</summary>
public static class Bearing
{
    /// <summary>Pressure under a strip of width B with a line load N at eccentricity e: N/B (1 +- 6e/B) inside the middle third, beyond it a triangle on what is left in contact.</summary>
    /// <param name="load">N for each metre, N/m.</param>
    /// <param name="width">B, m.</param>
    /// <param name="eccentricity">e = M/N, m, without sign.</param>
    /// <returns>Greatest and least pressure, Pa, and the width in contact, m; nothing in contact at B/2 and beyond.</returns>
    public static (double Most, double Least, double Contact) Pressure(double load, double width, double eccentricity)
    {
        var e = Math.Abs(eccentricity);
        if (e <= width / 6)
        {
            return (load / width * (1 + 6 * e / width), load / width * (1 - 6 * e / width), width);
        }

        var contact = 3 * (width / 2 - e);
        return contact > 0 ? (2 * load / contact, 0, contact) : (double.PositiveInfinity, 0, 0);
    }

    /// <summary>Even pressure on the width that is centred under the load: N/(B - 2e) (Meyerhof), Pa.</summary>
    public static double EvenPressure(double load, double width, double eccentricity) => load / (width - 2 * Math.Abs(eccentricity));

    /// <summary>N_q = e^(pi tan phi) tan^2(45 + phi/2).</summary>
    public static double Nq(double phi) => Math.Exp(Math.PI * Math.Tan(phi)) * Math.Pow(Math.Tan(Math.PI / 4 + phi / 2), 2);

    /// <summary>N_c = (N_q - 1) cot phi; 2 + pi without friction.</summary>
    public static double Nc(double phi) => phi == 0 ? 2 + Math.PI : (Nq(phi) - 1) / Math.Tan(phi);

    /// <summary>N_gamma of Meyerhof: (N_q - 1) tan(1.4 phi).</summary>
    public static double NgMeyerhof(double phi) => (Nq(phi) - 1) * Math.Tan(1.4 * phi);

    /// <summary>N_gamma of Hansen: 1.5 (N_q - 1) tan phi.</summary>
    public static double NgHansen(double phi) => 1.5 * (Nq(phi) - 1) * Math.Tan(phi);

    /// <summary>N_gamma of Vesic: 2 (N_q + 1) tan phi.</summary>
    public static double NgVesic(double phi) => 2 * (Nq(phi) + 1) * Math.Tan(phi);

    /// <summary>N_q of Terzaghi: a^2/(2 cos^2(45 + phi/2)), a = e^((3 pi/4 - phi/2) tan phi).</summary>
    public static double NqTerzaghi(double phi)
    {
        var a = Math.Exp((0.75 * Math.PI - phi / 2) * Math.Tan(phi));
        return a * a / (2 * Math.Pow(Math.Cos(Math.PI / 4 + phi / 2), 2));
    }

    /// <summary>N_c of Terzaghi: (N_q - 1) cot phi; 1.5 pi + 1 without friction.</summary>
    public static double NcTerzaghi(double phi) => phi == 0 ? 1.5 * Math.PI + 1 : (NqTerzaghi(phi) - 1) / Math.Tan(phi);

    /// <summary>q_u of a strip: c N_c + gamma D N_q + gamma B N_gamma/2, Pa.</summary>
    public static double Strip(double cohesion, double unitWeight, double depth, double width, double nc, double nq, double ng) =>
        cohesion * nc + unitWeight * depth * nq + 0.5 * unitWeight * width * ng;

    /// <summary>q_u of a square: 1.3 c N_c + gamma D N_q + 0.4 gamma B N_gamma, Pa.</summary>
    public static double Square(double cohesion, double unitWeight, double depth, double width, double nc, double nq, double ng) =>
        1.3 * cohesion * nc + unitWeight * depth * nq + 0.4 * unitWeight * width * ng;
}
