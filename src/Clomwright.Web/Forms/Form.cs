namespace Clomwright.Web.Forms;

/// <summary>A part of the house as a builder's own form reads: sentences with blanks, and the parts that hang on it.</summary>
/// <param name="Path">As in diagnostics: <c>openings[2].frame</c>.</param>
/// <param name="Title">What it is called; in a list, with its name or number.</param>
/// <param name="Lines">Sentences, each of words and blanks in turn.</param>
/// <param name="Inner">What hangs on it: parts, and lists as parts whose inner parts are their items.</param>
/// <param name="Adds">What may be added here.</param>
/// <param name="CanGo">It may be taken out.</param>
/// <param name="Ordered">It is one of a list whose order means something.</param>
/// <param name="Said">What is wrong or odd about it.</param>
public sealed record FormPart(
    string Path, string Title, IReadOnlyList<IReadOnlyList<FormPiece>> Lines, IReadOnlyList<FormPart> Inner, IReadOnlyList<FormAdd> Adds, bool CanGo, bool Ordered, IReadOnlyList<string> Said);

/// <summary>Parts of an open house as a form.</summary>
/// <param name="Revision">Of which house as it was.</param>
/// <param name="Parts">In the order in which they were asked for.</param>
public sealed record FormAnswer(long Revision, IReadOnlyList<FormPart> Parts);

/// <summary>A piece of a sentence: words, or a blank.</summary>
/// <param name="Words">Null for a blank.</param>
/// <param name="Blank">Null for words.</param>
public sealed record FormPiece(string? Words, FormBlank? Blank);

/// <summary>A blank in a sentence.</summary>
/// <param name="Key">Its address: <c>house.openings[2].width</c>.</param>
/// <param name="Label">What it asks for, read aloud.</param>
/// <param name="Text">What stands in it.</param>
/// <param name="Choices">Words to choose from; empty for a blank to write in.</param>
/// <param name="Suggestions">What is known to the program; something else may be written.</param>
/// <param name="Trouble">What is wrong with what stands in it; null where nothing is.</param>
public sealed record FormBlank(string Key, string Label, string Text, IReadOnlyList<Scenes.KnobChoice> Choices, IReadOnlyList<string> Suggestions, string? Trouble);

/// <summary>Something that may be added.</summary>
/// <param name="Path">Which part or list.</param>
/// <param name="Way">The word of its kind; empty where there is one way.</param>
/// <param name="Label">In words.</param>
/// <param name="Asks">What has to be written first; empty where it is added as it is.</param>
public sealed record FormAdd(string Path, string Way, string Label, IReadOnlyList<FormBlank> Asks);
