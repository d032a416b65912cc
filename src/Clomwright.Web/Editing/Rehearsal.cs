using System.Text.Json;
using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Study;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>
/// Moves an opening to and fro in a copy of the house that a page has just opened, as a hand would, so that all that answers a hand is compiled before one comes. Nothing is kept of it, and it waits whenever the house
/// itself changes: whoever works is never made to wait for a rehearsal.
/// </summary>
/// <param name="json">How answers are written to the page.</param>
internal sealed class Rehearsal(JsonSerializerOptions json)
{
    /// <summary>Moves after which little is gained by another.</summary>
    private const int Enough = 250;

    /// <summary>Pictures of the stress after which little is gained by another.</summary>
    private const int EnoughPictures = 40;

    /// <summary>Every so many moves all is found, as beside a hand.</summary>
    private const int FoundEvery = 8;

    /// <summary>Metres that one move goes, and moves until it turns.</summary>
    private const double Step = 0.06;
    private const int Turn = 12;

    /// <summary>The page comes first: it is drawn before anything is rehearsed.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(600);

    private readonly Part places = new(Enough), stress = new(EnoughPictures);

    /// <summary>Rehearses on a house that a page has opened, once for the whole program; goes on the next time where it was broken off.</summary>
    public void On(OpenHouse house) => places.On(house, Move);

    /// <summary>The same on a house whose wall has just been solved, for the sheet of stress.</summary>
    public void OnStress(OpenHouse house, StructureResult solved) => stress.On(house, (study, pictures, goesOn) => Follow(study, solved, pictures, goesOn));

    /// <summary>Moves the first opening of a house, answers each move as it would be answered, and throws the answer away.</summary>
    /// <param name="study">The house.</param>
    /// <param name="moves">How often, at most.</param>
    /// <param name="goesOn">Asked before each move.</param>
    /// <returns>How many moves were made; all of them where there is nothing to move.</returns>
    internal int Move(HouseStudy study, int moves, Func<bool> goesOn)
    {
        if (study.Geometry.Openings is not [var first, ..])
        {
            return moves;
        }

        var (whole, made, sent, edition) = (study, new SceneMemory(), new SentScenes(), (long?)null);
        for (var move = 0; move < moves; move++)
        {
            if (!goesOn())
            {
                return move;
            }

            var next = HouseStudy.Of(Moved(study.House, first, move), StudyOptions.Quick, whole);
            var scene = sent.Only(new Looked(next, [.. next.Diagnostics], made).Wall(Sight.Inside, whole.Findings)!, edition);
            edition = scene.Edition;
            JsonSerializer.SerializeToUtf8Bytes(scene, json);
            if (move % FoundEvery == FoundEvery - 1)
            {
                whole = next;
            }
        }

        return moves;
    }

    /// <summary>Takes the first opening in hand and makes pictures of the stress for nobody.</summary>
    /// <param name="study">The house.</param>
    /// <param name="solved">What its wall carries.</param>
    /// <param name="pictures">How many, at most.</param>
    /// <param name="goesOn">Asked before each.</param>
    /// <returns>How many were made; all of them where there is nothing to take in hand.</returns>
    internal static int Follow(HouseStudy study, StructureResult solved, int pictures, Func<bool> goesOn)
    {
        if (study.Geometry.Openings is not [var first, ..] || WallInHand.Take(study, solved, first.Opening.Name).Value is not { } hand)
        {
            return pictures;
        }

        using (hand)
        {
            var whole = study;
            for (var picture = 0; picture < pictures; picture++)
            {
                if (!goesOn())
                {
                    return picture;
                }

                hand.Now(HouseStudy.Of(Moved(study.House, first, picture), StudyOptions.Quick, whole), picture, Face.Inside);
            }
        }

        return pictures;
    }

    private static House Moved(House house, OpeningPlace opening, int move)
    {
        var (there, back) = (move % Turn, (Turn - move % Turn) % Turn);
        var station = opening.Station + Step * (move / Turn % 2 == 0 ? there : back);
        return EditOf.Change(new Change.Move(opening.Opening.Name, station, null), house, _ => opening.Station, out _)?.Apply(house) ?? house;
    }

    /// <summary>A part of what is rehearsed, and how much of it is left.</summary>
    private sealed class Part(int enough)
    {
        private int left = enough;
        private int running;

        public void On(OpenHouse house, Func<HouseStudy, int, Func<bool>, int> rehearse)
        {
            if (Volatile.Read(ref left) <= 0 || Interlocked.Exchange(ref running, 1) != 0)
            {
                return;
            }

            _ = Task.Run(async () =>
            {
                try
                {
                    await Task.Delay(Pause);
                    var (study, revision) = await house.After(-1, CancellationToken.None);
                    left -= rehearse(study, left, () => house.IsStill(revision) && !house.IsFollowed);
                }
                finally
                {
                    Volatile.Write(ref running, 0);
                }
            });
        }
    }
}
