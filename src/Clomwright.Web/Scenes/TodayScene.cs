namespace Clomwright.Web.Scenes;

/// <summary>A day on site as the page shows it: text, nothing left to compute; <c>client/src/today/scene.ts</c> is its mirror.</summary>
/// <param name="Name">Of the house.</param>
/// <param name="Today">As 2027-06-08.</param>
/// <param name="Date">The day in words.</param>
/// <param name="Made">When this was worked out, in words.</param>
/// <param name="Standing">How far the ring is, by the record; empty where nothing is written.</param>
/// <param name="Plan">What the day is for.</param>
/// <param name="At">Place in <paramref name="Lifts"/> of the one that cob goes on next; null where none does or nobody can tell.</param>
/// <param name="HeightToday">How high a lift of today may be.</param>
/// <param name="Top">When cob may go on the top that is there now.</param>
/// <param name="Lifts">From the bottom.</param>
/// <param name="Ready">What is tried before the next lift.</param>
/// <param name="Crew">Who does what; null where that is not known.</param>
/// <param name="CrewNote">How it was planned, or why there is no plan.</param>
/// <param name="Weather">What is foretold, or that nobody wrote it.</param>
/// <param name="WeatherDo">What to do by it.</param>
/// <param name="Calls">Who to call.</param>
/// <param name="CallNotes">Where the site is and how it is found, for whoever calls; that nobody wrote the number.</param>
/// <param name="Cautions">Read first.</param>
/// <param name="Written">What is written of the day; null for nothing.</param>
public sealed record TodayScene(
    string Name, string Today, string Date, string Made, string Standing, string Plan, int? At, string HeightToday, IReadOnlyList<string> Top, IReadOnlyList<TodayLift> Lifts, IReadOnlyList<string> Ready, TodayCrew? Crew,
    string CrewNote, string Weather, IReadOnlyList<string> WeatherDo, IReadOnlyList<TodayCall> Calls, IReadOnlyList<string> CallNotes, IReadOnlyList<string> Cautions, TodayWritten? Written);

/// <summary>A lift.</summary>
/// <param name="Name">Lift 3 of 8.</param>
/// <param name="To">Its top from the finished floor, in the first units.</param>
/// <param name="ToOther">In the others.</param>
/// <param name="From">Its bottom, and how much it is.</param>
/// <param name="Batches">How many batches; why not where they are not known.</param>
/// <param name="Each">How much the ring rises for one; empty where that is not known.</param>
/// <param name="Below">When it may go on the lift below it, by the forecast.</param>
/// <param name="SetIn">What is set in.</param>
public sealed record TodayLift(string Name, string To, string ToOther, string From, string Batches, string Each, string Below, IReadOnlyList<TodaySetIn> SetIn);

/// <summary>Something to set in.</summary>
/// <param name="Key">By which its tick is kept.</param>
/// <param name="What">In words.</param>
/// <param name="Height">Above the finished floor.</param>
/// <param name="Station">From the zero mark.</param>
public sealed record TodaySetIn(string Key, string What, string Height, string Station);

/// <summary>Who does what.</summary>
/// <param name="People">A line for each.</param>
/// <param name="Posts">A line for each kind of work, where nobody is named.</param>
public sealed record TodayCrew(IReadOnlyList<TodayPerson> People, IReadOnlyList<string> Posts);

/// <summary>One of the crew and the two halves of their day; the same twice where they are alike.</summary>
public sealed record TodayPerson(string Name, string Before, string After);

/// <summary>Who to call.</summary>
/// <param name="Who">Whom.</param>
/// <param name="Number">As it is written.</param>
/// <param name="Dial">As a phone dials it.</param>
/// <param name="For">When.</param>
public sealed record TodayCall(string Who, string Number, string Dial, string For);

/// <summary>The entry of the day.</summary>
/// <param name="Id">By which it is corrected.</param>
/// <param name="Line">What it says.</param>
/// <param name="Raised">What its blanks begin with.</param>
/// <param name="People">What its blanks begin with.</param>
/// <param name="Batches">What its blanks begin with.</param>
/// <param name="Notes">What its blanks begin with.</param>
public sealed record TodayWritten(string Id, string Line, string Raised, string People, string Batches, string Notes);
