using System.Collections.Immutable;
using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Trees;
using Litterfall.Running.Diagnosis.Trials;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.App.Tanks;

/// <summary>Reads a case of <c>diagnose</c>.</summary>
/// <param name="path">The case file; other files are seen from its folder.</param>
/// <param name="workshop">Folder of the workshop, given on the command line; null for that of the
/// design.</param>
internal sealed class DiagnoseForm(string path, string? workshop)
{
    private const int MostSymptoms = 60;

    /// <summary>Faults of files that the case names.</summary>
    public ImmutableArray<TextFault> Faults { get; private set; } = [];

    /// <summary>The case, or null and faults on the form or here.</summary>
    public FaultCase? Read(TreeForm form)
    {
        var name = form.Text("design");
        var sentences = form.OptionalTexts("symptoms", MostSymptoms);
        var readings = ReadingsForm.Read(form, ReadingBounds.Any, isNeeded: false);
        var logger = form.OptionalText("logger");
        var (facts, unknown) = Facts(form.ObjectOrNull("facts", "the facts"));
        form.Close();
        if (!form.IsGood || name is null || Design(name) is not { } design)
        {
            return null;
        }

        var told = sentences.Select(s => (Sentence: s, Read: SymptomWords.Read(s))).ToArray();
        var seen = told.SelectMany(t => t.Read.Seen).Distinct().ToImmutableArray();
        return new FaultCase
        {
            Design = design,
            Seen = seen,
            Denied = [.. told.SelectMany(t => t.Read.Denied).Distinct().Except(seen)],
            Facts = facts,
            Readings = readings,
            Series = logger is null ? [] : LoggerFiles.Series(Beside(logger)),
            Unknown =
            [
                .. told.Where(t => t.Read.Seen.IsEmpty && t.Read.Denied.IsEmpty).Select(t => t.Sentence),
                .. unknown,
            ],
        };
    }

    private string Beside(string file) =>
        Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".", file);

    private CheckedDesign? Design(string name)
    {
        var reading = Shop.Design(Beside(name), workshop);
        Faults = reading.IsGood ? [] : [.. reading.Faults];
        return reading.Value;
    }

    private static (ImmutableArray<ToldFact> Facts, ImmutableArray<string> Unknown) Facts(TreeForm? form)
    {
        var facts = ImmutableArray.CreateBuilder<ToldFact>();
        var unknown = ImmutableArray.CreateBuilder<string>();
        if (form is null)
        {
            return ([], []);
        }

        foreach (var key in form.Keys.Select(k => k.Text).ToArray())
        {
            if (FactWords.Find(key) is not { } fact)
            {
                form.Ignore(key);
                unknown.Add(key);
            }
            else if (Told(form, key, fact) is { } told)
            {
                facts.Add(told);
            }
        }

        form.Close();
        return (facts.ToImmutable(), unknown.ToImmutable());
    }

    private static ToldFact? Told(TreeForm form, string key, TankFact fact)
    {
        var value = form.Scalar(key);
        if (value is { Form: ScalarForm.Null })
        {
            return null;
        }

        if (value is { Form: ScalarForm.Flag })
        {
            return new ToldFact(fact, value.Text == "true", null, null);
        }

        if (value is { Form: ScalarForm.Number } && FactWords.Form(fact) == FactForm.Number)
        {
            return new ToldFact(fact, true, value.Number, null);
        }

        if (value is { Form: ScalarForm.Quoted } && FactReader.Read(fact, value.Text) is { } told)
        {
            return told;
        }

        form.Refuse(
            key,
            FactWords.Form(fact) == FactForm.Number
                ? $"{TreeNode.Shown(key)} is no number"
                : $"{TreeNode.Shown(key)} is neither yes nor no nor a day",
            FactWords.Form(fact) == FactForm.Number
                ? FactWords.Title(fact)
                : $"{FactWords.Title(fact)}: true, false, or a day such as 2026-03-01"
        );
        return null;
    }
}
