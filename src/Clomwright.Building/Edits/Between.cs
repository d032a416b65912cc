using Clomwright.Evidence;

namespace Clomwright.Building;

public abstract partial record Edit
{
    /// <summary>The edits that make one description of a house into another: what a form wrote, as changes that can be named, taken back and sent on.</summary>
    /// <remarks>Parts with names are followed by their place in the list. Where a name stands twice the edit finds the first of them, as every edit does.</remarks>
    /// <param name="before">The house.</param>
    /// <param name="after">The same house as it shall be; its <see cref="House.Id"/> stays.</param>
    public static Edit Between(House before, House after)
    {
        var edits = new List<Edit>();
        void Where<T>(Func<House, T> part, Func<T, Edit> edit)
        {
            if (!EqualityComparer<T>.Default.Equals(part(before), part(after)))
            {
                edits.Add(edit(part(after)));
            }
        }

        Where(h => (h.Name, h.Notes, h.Units), t => new ChangeTitle(t.Name, t.Notes, t.Units));
        Where(h => h.Site, site => new ChangeSite(site));
        Where(h => h.Plan, plan => new ChangePlan(plan));
        Where(h => h.Floor, floor => new ChangeFloor(floor));
        Where(h => h.Trench, trench => new ChangeTrench(trench));
        Where(h => h.Stem, stem => new ChangeStem(stem));
        Where(h => h.Wall, wall => new ChangeWall(wall));
        Where(h => h.Lifts, lifts => new ChangeLifts(lifts));
        edits.AddRange(Named(before.Openings, after.Openings, p => p.Name, p => new AddOpening(p), n => new RemoveOpening(n), (n, to) => new RenameOpening(n, to), (n, p) => new ChangeOpening(n, p)));
        edits.AddRange(Named(before.Niches, after.Niches, p => p.Name, p => new AddNiche(p), n => new RemoveNiche(n), (n, to) => new RenameNiche(n, to), (n, p) => new ChangeNiche(n, p)));
        edits.AddRange(Named(before.Embeds, after.Embeds, p => p.Name, p => new AddEmbed(p), n => new RemoveEmbed(n), (n, to) => new RenameEmbed(n, to), (n, p) => new ChangeEmbed(n, p)));
        Where(h => h.BondBeam, beam => new ChangeBondBeam(beam));
        Where(h => h.Tees, tees => new ChangeTees(tees));
        Where(h => h.Roof, roof => new ChangeRoof(roof));
        Where(h => h.Finishes, finishes => new ChangeFinishes(finishes));
        Where(h => h.TestPanels, panels => new ChangeTestPanels(panels));
        Where(h => h.Comfort, comfort => new ChangeComfort(comfort));
        Where(h => h.Stove, stove => new ChangeStove(stove));
        Where(h => (h.Currency, h.Prices), said => new ChangePrices(said.Currency, said.Prices));
        Where(h => h.Mix, mix => new ChangeMix(mix));
        Where(h => h.Assumed, assumed => new ChangeAssumed(assumed));
        Where(h => h.Crew, crew => new ChangeCrew(crew));
        Where(h => h.Rules.Adopted, adopted => new AdoptRules(adopted));
        edits.AddRange(after.Rules.Entered.Except(before.Rules.Entered).Select(limit => new EnterLimit(limit)));
        edits.AddRange(before.Rules.Entered.Where(was => after.Rules.Entered.All(l => l.Body != was.Body || l.Rule != was.Rule)).Select(was => new WithdrawLimit(was.Body, was.Rule)));
        edits.AddRange(after.Rules.Answers.Except(before.Rules.Answers).Select(answer => new AnswerQuestion(answer)));
        edits.AddRange(before.Rules.Answers.Where(was => after.Rules.Answers.All(a => a.Question != was.Question)).Select(was => new WithdrawAnswer(was.Question)));
        return edits.Count == 1 ? edits[0] : new Several(edits.ToSequence());
    }

    private static IEnumerable<Edit> Named<T>(Sequence<T> before, Sequence<T> after, Func<T, string> name, Func<T, Edit> add, Func<string, Edit> remove, Func<string, string, Edit> rename, Func<string, T, Edit> change)
    {
        // One taken out of the middle: the rest moves up.
        var gone = Enumerable.Range(0, before.Count).FirstOrDefault(i => after.Count == before.Count - 1 && before.Without(i) == after, -1);
        if (gone >= 0)
        {
            yield return remove(name(before[gone]));
            yield break;
        }

        for (var i = 0; i < Math.Min(before.Count, after.Count); i++)
        {
            if (EqualityComparer<T>.Default.Equals(before[i], after[i]))
            {
                continue;
            }

            if (name(before[i]) != name(after[i]))
            {
                yield return rename(name(before[i]), name(after[i]));
            }

            yield return change(name(after[i]), after[i]);
        }

        foreach (var left in before.Skip(after.Count))
        {
            yield return remove(name(left));
        }

        foreach (var fresh in after.Skip(before.Count))
        {
            yield return add(fresh);
        }
    }
}
