using Clomwright.Evidence;

namespace Clomwright.Analysis.Steps;

/// <summary>Customary units in SI, for equations that US standards print in them.</summary>
internal static class UsUnits
{
    public const double Foot = 0.3048;
    public const double SquareFoot = Foot * Foot;
    public const double PoundForce = 0.45359237 * 9.80665;
    public const double Psf = PoundForce / SquareFoot;
    public const double Psi = PoundForce / (0.0254 * 0.0254);
    public const double Mph = 0.44704;
    public const double Gravity = 9.80665;

    private static readonly Source Exact = Sources.Get("nist-sp-811");

    public static Symbol PsfSymbol { get; } = Worksheet.Code("psf", "psf", Psf, Dimension.AreaLoad, Exact);

    public static Symbol MphSymbol { get; } = Worksheet.Code("mph", "mph", Mph, Dimension.Speed, Exact);

    public static Symbol SquareFootSymbol { get; } = Worksheet.Code("ft2", "square-foot", SquareFoot, Dimension.Area, Exact);

    public static Symbol FootSymbol { get; } = Worksheet.Code("ft", "foot", Foot, Dimension.Length, Exact);

    public static Symbol InchSymbol { get; } = Worksheet.Code("inch", "inch", 0.0254, Dimension.Length, Exact);

    public static Symbol PoundSymbol { get; } = Worksheet.Code("lb", "pound-force", PoundForce, Dimension.Force, Exact);

    public static Symbol GravitySymbol { get; } = Worksheet.Code("g", "gravity", Gravity, Dimension.Number, Exact);
}
