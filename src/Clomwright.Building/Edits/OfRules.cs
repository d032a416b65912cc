using Clomwright.Evidence;

namespace Clomwright.Building;

public abstract partial record Edit
{
    /// <summary>Adopts other bodies of rules.</summary>
    /// <param name="Adopted">Each as <c>common-practice</c> or <c>irc-cob@2021</c>.</param>
    public sealed record AdoptRules(Sequence<string> Adopted) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with { Rules = house.Rules with { Adopted = Adopted } };

        /// <inheritdoc/>
        public override Message What => new("building.edit.adopt");
    }

    /// <summary>Types in a limit from an adopted code, in place of one typed in before for the same rule.</summary>
    public sealed record EnterLimit(EnteredLimit Limit) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with
        {
            Rules = house.Rules with { Entered = Put(house.Rules.Entered, Limit, l => l.Body == Limit.Body && l.Rule == Limit.Rule) },
        };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.enter", ("rule", Limit.Rule), ("limit", Limit.Limit));
    }

    /// <summary>Takes a limit back that was typed in: the rule has its own again, or none.</summary>
    /// <param name="Body">Body and edition.</param>
    /// <param name="Rule">Our rule key.</param>
    public sealed record WithdrawLimit(string Body, string Rule) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with
        {
            Rules = house.Rules with { Entered = house.Rules.Entered.Where(l => l.Body != Body || l.Rule != Rule).ToSequence() },
        };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.withdraw-limit", ("rule", Rule));
    }

    /// <summary>Answers a question of judgement, in place of an earlier answer to it.</summary>
    public sealed record AnswerQuestion(Answer Answer) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with
        {
            Rules = house.Rules with { Answers = Put(house.Rules.Answers, Answer, a => a.Question == Answer.Question) },
        };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.answer", ("question", Answer.Question));
    }

    /// <summary>Takes an answer back: the question is open again.</summary>
    /// <param name="Question">Our rule key.</param>
    public sealed record WithdrawAnswer(string Question) : Edit
    {
        /// <inheritdoc/>
        public override House Apply(House house) => house with
        {
            Rules = house.Rules with { Answers = house.Rules.Answers.Where(a => a.Question != Question).ToSequence() },
        };

        /// <inheritdoc/>
        public override Message What => Message.Of("building.edit.withdraw", ("question", Question));
    }

    private static Sequence<T> Put<T>(Sequence<T> list, T item, Predicate<T> replaces)
    {
        for (var i = 0; i < list.Count; i++)
        {
            if (replaces(list[i]))
            {
                return list.With(i, item);
            }
        }

        return list.Plus(item);
    }
}
