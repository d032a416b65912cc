using Clomwright.Benchmarks;
using Clomwright.Benchmarks.Drying;
using Clomwright.Benchmarks.Solid;

return args switch
{
    ["solid", .. var sizes] => SolidComparison.Run(sizes),
    ["montecarlo", .. var rest] => MonteCarlo.Run(rest),
    ["drying"] => DryingComparison.Run(),
    ["days"] => SeasonsOfDays.Run(),
    ["comfort"] => YearOfComfort.Run(),
    ["bay"] => BayComparison.Run(),
    ["solid-child", var size, var matrix] => SolidChild.Serve(SolidSize.Of(size), matrix),
    ["blocks", .. var sizes] => BlockComparison.Run(sizes),
    ["roof"] => RoofKnob.Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("""
        dotnet run -c Release --project benchmarks/Clomwright.Benchmarks -- solid [20k] [60k] [200k] [--rounds N] [--scipy]

        dotnet run -c Release --project benchmarks/Clomwright.Benchmarks -- roof

        roof    The full roof recomputed while a knob is turned, beside a fixed piece of arithmetic in the same run.
        solid   Renewal while an opening moves and factorisation from nothing, beside CHOLMOD (and SciPy) on the same matrices, in separate
                processes that take turns. Needs cc, libsuitesparse-dev and libopenblas0 (Debian), and python3-scipy for --scipy.
        montecarlo  [20k] [--rounds N]: houses with a stiffness of their own in every cell, and one house under many loads, beside CHOLMOD.
        drying  A wall of 7 lifts and 24 bays through 120 days of hourly weather, beside SciPy's stiff integrators on the same equations. Needs python3-scipy.
        blocks  [24x6] [48x12]: the limit load of a ring of rigid blocks with openings, beside GLOP on the same problem, taking turns.
        days    A thousand seasons of a whole job, beside sorting ten million numbers in the same run.
        comfort A year of a full house, hour by hour, beside sorting a million numbers in the same run.
        bay     120 days of one bay by the small model that seasons use, beside the full one.
        """);
    return 2;
}
