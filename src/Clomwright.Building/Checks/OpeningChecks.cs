using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Doors and windows with their frames and headers.</summary>
internal static class OpeningChecks
{
    private const double SplayMost = Math.PI / 3;

    public static void Of(House house, Checks checks)
    {
        for (var i = 0; i < house.Openings.Count; i++)
        {
            Of($"openings[{i}]", house.Openings[i], house, checks);
        }
    }

    private static void Of(string path, Opening opening, House house, Checks checks)
    {
        checks.Along(path, opening.Along);
        var sized = checks.Size($"{path}.width", opening.Width, Limits.Plan) & checks.Size($"{path}.height", opening.Height, Limits.Height);
        checks.Height($"{path}.sill", opening.Sill);
        checks.Within($"{path}.splay.inside", opening.Splay.Inside, 0, SplayMost);
        checks.Within($"{path}.splay.outside", opening.Splay.Outside, 0, SplayMost);
        if (sized)
        {
            Rise(path, opening, checks);
        }

        if (opening.Frame is { } frame)
        {
            Framed($"{path}.frame", frame, opening, sized, checks);
        }

        if (opening.Clear is { } clear)
        {
            Cleared($"{path}.clear", clear, opening, sized, checks);
        }

        if (checks.Within($"{path}.glazed", opening.Glazed, 0, 1) && opening.Glazed is { } glazed && sized && opening.Shape == OpeningShape.Rectangular && opening.FrameLight() is { } light)
        {
            Glazed($"{path}.glazed", glazed, light.Width.Metres * light.Height.Metres / (opening.Width.Metres * opening.Height.Metres), checks);
        }

        if (opening.Header is { } header)
        {
            Under($"{path}.header", header, house, checks);
        }
    }

    private static void Rise(string path, Opening opening, Checks checks)
    {
        if (opening.Shape != OpeningShape.Arched)
        {
            if (opening.Rise is not null)
            {
                checks.Error($"{path}.rise", "building.rise-without-arch");
            }
        }
        else if (opening.Rise is not { } rise)
        {
            checks.Error(path, "building.rise-missing");
        }
        else if (checks.Size($"{path}.rise", rise, Limits.Height))
        {
            if (rise > opening.Height)
            {
                checks.Error($"{path}.rise", "building.rise-over-height", ("rise", new Argument.Exact(rise)), ("height", new Argument.Exact(opening.Height)));
            }
            else if (2 * rise > opening.Width)
            {
                checks.Error($"{path}.rise", "building.rise-over-half-width", ("rise", new Argument.Exact(rise)), ("width", new Argument.Exact(opening.Width)));
            }
        }
    }

    private static void Framed(string path, Frame frame, Opening opening, bool openingSized, Checks checks)
    {
        var width = checks.Size($"{path}.width", frame.Width, Limits.Plan);
        var height = checks.Size($"{path}.height", frame.Height, Limits.Height);
        checks.Size($"{path}.depth", frame.Depth, Limits.Thick);
        checks.Size($"{path}.stock", frame.Stock, Limits.Thick);
        var gap = frame.Gap is not { } over || (checks.NotNegative($"{path}.gap", over) && checks.NotAbove($"{path}.gap", over, Limits.Thick));
        if (frame.Setback is { } setback)
        {
            _ = checks.NotBelow($"{path}.setback", setback, -Limits.Thick) && checks.NotAbove($"{path}.setback", setback, Limits.Thick);
        }

        if (openingSized && width && frame.Width > opening.Width)
        {
            checks.Error($"{path}.width", "building.frame-width", ("frame", new Argument.Exact(frame.Width)), ("opening", new Argument.Exact(opening.Width)));
        }

        if (openingSized && height && gap && frame.Height + (frame.Gap ?? Length.Zero) is var needed && needed > opening.Height)
        {
            checks.Error($"{path}.height", "building.frame-height", ("frame", new Argument.Exact(needed)), ("opening", new Argument.Exact(opening.Height)));
        }
    }

    private static void Cleared(string path, ClearOpening clear, Opening opening, bool openingSized, Checks checks)
    {
        var light = opening.FrameLight();
        if (checks.Size($"{path}.width", clear.Width, Limits.Plan) && openingSized)
        {
            Gives($"{path}.width", "width", clear.Width, opening.Width, light?.Width);
        }

        if (checks.Size($"{path}.height", clear.Height, Limits.Height) && openingSized)
        {
            Gives($"{path}.height", "height", clear.Height, opening.Height, light?.Height);
        }

        void Gives(string at, string what, Length stated, Length rough, Length? most)
        {
            if (stated > rough)
            {
                checks.Error(at, $"building.clear-{what}", ("clear", new Argument.Exact(stated)), ("opening", new Argument.Exact(rough)));
            }
            else if (most is { } between && stated > between)
            {
                checks.Error(at, $"building.clear-frame-{what}", ("clear", new Argument.Exact(stated)), ("light", new Argument.Exact(between)));
            }
        }
    }

    /// <summary>Glass stands in the light of the frame; shares are written to the whole per cent.</summary>
    private static void Glazed(string path, Share glazed, double light, Checks checks)
    {
        const double rounding = 0.01;
        if (glazed.OfOne > light + rounding)
        {
            checks.Error(path, "building.glazed-over-light", ("glazed", glazed.Amount), ("light", Amount.Fraction(light)));
        }
    }

    private static void Under(string path, Header header, House house, Checks checks)
    {
        var pieces = checks.Count($"{path}.pieces", header.Pieces, 1, 20);
        var width = checks.Size($"{path}.width", header.Width, Limits.Thick);
        checks.Size($"{path}.depth", header.Depth, Limits.Thick);
        checks.Size($"{path}.bearing", header.Bearing, Limits.Height);
        checks.Word($"{path}.material", header.Material);
        var thickest = Math.Max(WallChecks.ThicknessAtBase(house), house.Wall.ThicknessAtTop.Metres);
        if (pieces && width && (header.Pieces * header.Width).Metres > thickest && thickest > 0)
        {
            checks.Warning($"{path}.pieces", "building.header-wide", ("header", new Argument.Exact(header.Pieces * header.Width)), ("wall", Amount.Metres(thickest)));
        }
    }
}
