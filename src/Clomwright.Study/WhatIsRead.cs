using Clomwright.Building;

namespace Clomwright.Study;

/// <summary>A house without what a pass never looks at: where that is equal, an earlier answer of the pass holds.</summary>
internal static class WhatIsRead
{
    /// <summary>The house without what drying never looks at; the roof comes with what it does.</summary>
    public static House ByDrying(House house) => ByGeometry(house) with
    {
        Site = Lasting(house.Site), Crew = Unnamed(house.Crew), Assumed = house.Assumed, Mix = house.Mix, Niches = [], Embeds = [], Tees = null, Floor = new(),
    };

    /// <summary>The house without what its comfort never looks at.</summary>
    public static House ByComfort(House house) => house with { Id = "-", Name = "-", Notes = null, Units = default, Rules = new(), TestPanels = [], Crew = null, Niches = [], Tees = null };

    /// <summary>The house without what the trials of the wall never look at.</summary>
    public static House ByTrials(House house) => ByStructure(house) with { Crew = Unnamed(house.Crew), Lifts = house.Lifts };

    /// <summary>The house without what the model of the wall never looks at; the roof comes with what it does.</summary>
    public static House ByStructure(House house) => ByGeometry(house) with
    {
        Site = Lasting(house.Site), Finishes = house.Finishes, Mix = house.Mix, Assumed = house.Assumed, Lifts = new(), Trench = null, Floor = new(),
    };

    /// <summary>The house without what the foundation never looks at; the roof comes with what it does.</summary>
    public static House ByFoundation(House house) => ByGeometry(house) with
    {
        Site = Lasting(house.Site), Finishes = house.Finishes, Niches = [], Embeds = [], Lifts = new(), Tees = null, Floor = new(),
    };

    /// <summary>The house without what the roof never looks at: what stands in the wall and under it.</summary>
    public static House ByRoof(House house) => ByGeometry(house) with
    {
        Site = Lasting(house.Site), Openings = [], Niches = [], Embeds = [], Lifts = new(), Tees = null, Trench = null, Floor = new(),
    };

    /// <summary>The house without what geometry never looks at.</summary>
    public static House ByGeometry(House house) =>
        house with { Id = "-", Name = "-", Notes = null, Units = default, Site = new(), Mix = new(), Crew = null, Rules = new(), Finishes = [], TestPanels = [], Assumed = [], Comfort = new() };

    /// <summary>The site without the weather of the coming days.</summary>
    private static Site Lasting(Site site) => site.Forecast.Count == 0 ? site : site with { Forecast = [] };

    /// <summary>The crew without its names: only who does what reads them.</summary>
    private static Crew? Unnamed(Crew? crew) => crew is { Members.Count: > 0 } ? crew with { Members = [] } : crew;
}
