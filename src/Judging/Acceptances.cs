using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging;

/// <summary>
/// Findings that somebody accepts with a reason: they stay listed, apart from the open ones. A stop that
/// protects an animal or a person cannot be accepted, whatever a file says.
/// </summary>
public static class Acceptances
{
    /// <summary>Where the entries stand in a design.</summary>
    public const string Key = "accepted";

    /// <summary>An acceptance of a stop that protects an animal or a person: it does not hold.</summary>
    public static readonly Rule Refused = new(
        "acceptance-refused",
        Protects.Animal,
        "a stop that protects an animal or a person is entered as accepted; it stays a stop",
        n => Entries(n).Where(e => e.Found.Any(f => !f.MayBeAccepted)).Select(Refuse)
    )
    {
        Needs = Stage.Life,
        Fix = (finding, design) => Without(finding, design.Document),
    };

    /// <summary>An acceptance of something that no rule finds.</summary>
    public static readonly Rule Unknown = new(
        "acceptance-unknown",
        Protects.Build,
        "an entry of what is accepted names no rule",
        n => Entries(n).Where(e => e.Rule is null).Select(Unheard)
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => Without(finding, design.Document),
    };

    /// <summary>An acceptance whose finding is gone: it would hide the next one of its name.</summary>
    public static readonly Rule Idle = new(
        "acceptance-idle",
        Protects.Build,
        "what was accepted is not found any more",
        n => Entries(n).Where(e => e.Rule is not null && e.Found.IsEmpty).Select(Gone)
    )
    {
        Needs = Stage.Life,
        Fix = (finding, design) => Without(finding, design.Document),
    };

    /// <summary>The findings, each with the acceptance that covers it.</summary>
    /// <param name="findings">What the rules found.</param>
    /// <param name="design">The design.</param>
    public static IEnumerable<Finding> Mark(IEnumerable<Finding> findings, Design design) =>
        design.Accepted.Count == 0
            ? findings
            : findings.Select(f => f with { Accepted = design.Accepted.FirstOrDefault(a => Covers(a, f)) });

    /// <summary>True for a finding that may be accepted, and about which a reason can be entered.</summary>
    /// <param name="finding">A finding.</param>
    public static bool MayAccept(Finding finding) => finding.MayBeAccepted && !IsOwn(finding.Slug);

    /// <summary>A design in which a finding is accepted; a fault where it cannot be.</summary>
    /// <param name="document">The design.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="reason">Why.</param>
    /// <param name="on">The day.</param>
    /// <param name="by">Who; null where no name is given.</param>
    public static Reading<DesignDocument> Accept(
        DesignDocument document,
        Finding finding,
        string reason,
        DateOnly on,
        string? by = null
    )
    {
        if (!MayAccept(finding))
        {
            return new(
                null,
                [
                    new TextFault(
                        document.File,
                        1,
                        1,
                        "a stop that protects an animal or a person cannot be accepted",
                        "a change that solves it"
                    ),
                ]
            );
        }

        var index = document.Design.Accepted.Count;
        var at = Controls.At(Key, index);
        var day = on.ToString("O", CultureInfo.InvariantCulture);
        var with = DesignEdits.Add(
            document,
            Key,
            $"{{ finding: {finding.Slug}, for: \"{finding.About}\", reason: \"-\", on: {day} }}"
        );
        with = Set(with, $"{at}.reason", OneLine(reason));
        return by is { Length: > 0 } ? Set(with, $"{at}.by", OneLine(by)) : with;
    }

    private static string OneLine(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static Reading<DesignDocument> Set(Reading<DesignDocument> with, string path, string text) =>
        with.Value is { } so ? DesignEdits.Set(so, path, text) : with;

    private static bool Covers(Acceptance entry, Finding finding) =>
        MayAccept(finding) && IsMeant(entry, finding);

    private static bool IsMeant(Acceptance entry, Finding finding) =>
        entry.Finding == finding.Slug
        && (entry.For is not { } place || IsIn(finding.About, place) || IsIn(finding.Where, place));

    /// <summary>True for the place itself and for what lies in it.</summary>
    private static bool IsIn(string path, string place) =>
        path == place
        || (path.StartsWith(place, StringComparison.Ordinal) && path[place.Length] is '.' or '[');

    private static bool IsOwn(string slug) =>
        slug == Refused.Slug || slug == Unknown.Slug || slug == Idle.Slug;

    private sealed record Entry(int Index, Acceptance Said, DesignNumbers Numbers)
    {
        public Control Place => $"{Key}[{Index}].finding";

        public Rule? Rule => IsOwn(Said.Finding) ? null : RuleBook.Find(Said.Finding);

        /// <summary>What the rule finds for the entry.</summary>
        public ImmutableArray<Finding> Found =>
            Rule is null ? [] : [.. Rule.Judge(Numbers).Select(RuleBook.Held).Where(f => IsMeant(Said, f))];
    }

    private static IEnumerable<Entry> Entries(DesignNumbers n) =>
        n.Design.Design.Accepted.Select((said, i) => new Entry(i, said, n));

    private static Finding Refuse(Entry entry)
    {
        var stop = entry.Found.First(f => !f.MayBeAccepted);
        return Refused.Found(
            Severity.Caution,
            $"\"{RuleBook.Title(stop.Slug)}\" is entered as accepted, but it protects "
                + $"{(stop.Protects == Protects.Animal ? "an animal" : "a person")}: it cannot be "
                + $"accepted, and "
                + "the stop stays.",
            (null, null),
            "Solve it, and take the acceptance out.",
            entry.Place,
            Citation.OwnDerivation
        );
    }

    private static Finding Unheard(Entry entry) =>
        Unknown.Found(
            Severity.Note,
            $"\"{RuleBook.Words(entry.Said.Finding)}\" is entered as accepted, and no finding has that name.",
            (null, null),
            "Take the acceptance out, or name the finding as the check does.",
            entry.Place
        );

    private static Finding Gone(Entry entry) =>
        Idle.Found(
            Severity.Note,
            $"\"{RuleBook.Title(entry.Said.Finding)}\" was accepted and is not found any more.",
            (null, null),
            "Take the acceptance out, so that it does not cover the next finding of that name.",
            entry.Place
        );

    private static DesignFix? Without(Finding finding, DesignDocument document) =>
        FixEdit.Index(finding) is { } i && i < document.Design.Accepted.Count
            ? DesignFix.From("take this acceptance out", DesignEdits.Remove(document, Controls.At(Key, i)))
            : null;
}
