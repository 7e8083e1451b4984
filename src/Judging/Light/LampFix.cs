using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Light;

/// <summary>All lamps brighter or dimmer, with the watts that go with it.</summary>
internal static class LampFix
{
    private const double MostLight = 4;

    /// <summary>Light is sold in about these steps, lm.</summary>
    private const double LumenStep = 100;

    /// <summary>A little more than just enough, for the lumens are rounded.</summary>
    private const double Over = 1.03;

    /// <summary>As much more light as a finding misses, up to four times.</summary>
    public static DesignFix? Brighter(Finding finding, DesignDocument document) =>
        FixEdit.Times(finding) is > 1 and <= MostLight and var more ? Lamps(document, more * Over) : null;

    /// <summary>As much less light as a finding has too much.</summary>
    public static DesignFix? Dimmer(Finding finding, DesignDocument document) =>
        FixEdit.Times(finding) is < 1 and var less ? Lamps(document, less / Over) : null;

    private static DesignFix? Lamps(DesignDocument document, double factor)
    {
        var lamps = document.Design.Lamps;
        if (lamps.Count == 0 || lamps.Any(l => l.Lumens is null))
        {
            return null;
        }

        var with = new Reading<DesignDocument>(document, []);
        var all = 0.0;
        for (var i = 0; i < lamps.Count; i++)
        {
            var was = lamps[i].Lumens!.Value.Si;
            var lumens = Math.Max(1, Math.Ceiling(was * factor / LumenStep)) * LumenStep;
            all += lumens;
            with = Set(with, i, ("lumens", lumens));
            if (lamps[i].Watts is { } watts)
            {
                with = Set(with, i, ("watts", Math.Ceiling(watts.Si * lumens / was)));
            }
        }

        return DesignFix.From(string.Create(CultureInfo.InvariantCulture, $"lamps of {all:0} lm"), with);
    }

    private static Reading<DesignDocument> Set(
        Reading<DesignDocument> with,
        int lamp,
        (string Key, double Value) to
    ) =>
        with.Value is { } so
            ? DesignEdits.Set(
                so,
                string.Create(CultureInfo.InvariantCulture, $"lamps[{lamp}].{to.Key}"),
                to.Value.ToString("0", CultureInfo.InvariantCulture)
            )
            : with;
}
