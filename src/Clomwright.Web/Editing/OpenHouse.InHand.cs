using System.Diagnostics;
using Clomwright.Study;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <content>
/// While something of the wall is in hand an answer waits for nothing but where everything stands. What takes longer is worked out beside it, for the newest house there is,
/// and stands in the answers after that.
/// </content>
internal sealed partial class OpenHouse
{
    /// <summary>Between two times that all is worked out while something is in hand: the rest of the time belongs to the hand.</summary>
    private static readonly TimeSpan Breath = TimeSpan.FromMilliseconds(150);

    /// <summary>The same while the stress is followed, which asks for all that two processors have.</summary>
    private static readonly TimeSpan LongBreath = TimeSpan.FromMilliseconds(900);

    /// <summary>A hand that has not moved for so long rests on the sheet of stress: all cases are begun before its page asks for them.</summary>
    private static readonly TimeSpan Still = TimeSpan.FromMilliseconds(60);

    private static readonly TimeSpan Tick = TimeSpan.FromMilliseconds(1);

    /// <summary>The study that was last worked out whole; null before that. Houses in hand take over from it: those between have worked out nothing but where everything stands.</summary>
    private HouseStudy? whole;
    private bool following, awaiting;
    private long moved;

    /// <summary>What the last answer in hand showed: the house, whose findings, from where, and under which number. A move within a step of the builder's grid leaves the house as it is: the page that has this has nothing to draw.</summary>
    private (long Revision, HouseStudy Whole, Sight Sight, long Edition)? shown;

    /// <summary>A hand moves, within a step or beyond it.</summary>
    private void Moves()
    {
        moved = Stopwatch.GetTimestamp();
        if (!awaiting && IsFollowed)
        {
            awaiting = true;
            _ = Task.Run(AwaitStill);
        }
    }

    /// <summary>Whether an opening is in hand on the sheet of stress.</summary>
    public bool IsFollowed => Hand.CurrentCount == 0;

    private async Task AwaitStill()
    {
        for (var wait = Still; wait > TimeSpan.Zero;)
        {
            // No timer is finer than this.
            await Task.Delay(wait < Tick ? Tick : wait);
            lock (gate)
            {
                wait = Still - Stopwatch.GetElapsedTime(moved);
                if (wait <= TimeSpan.Zero)
                {
                    awaiting = false;
                    if (IsFollowed)
                    {
                        // Whoever looks at the stress is told by the same run.
                        _ = Stress;
                    }
                }
            }
        }
    }

    private HouseAnswer InHand(Scene scene, HouseStudy before, Sight sight, long? since)
    {
        if (!following && scene.InHand)
        {
            following = true;
            _ = Task.Run(Follow);
        }

        var answer = Answer(sight, scene, null, false, since);
        shown = scene.InHand && answer.State?.Scene is { } sent ? (revision, before, sight, sent.Edition) : null;
        return answer;
    }

    private async Task Follow()
    {
        while (true)
        {
            await Task.Delay(IsFollowed ? LongBreath : Breath);
            var now = Now.Study;
            _ = now.Findings;
            lock (gate)
            {
                whole = now;
                if (ReferenceEquals(now, study))
                {
                    following = false;
                    return;
                }
            }
        }
    }
}
