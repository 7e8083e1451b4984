using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;

namespace Litterfall.Web.Desk.Form;

/// <summary>Steps of a stepped soil: their shares always make the whole length.</summary>
public static class SoilSteps
{
    /// <summary>Path of the list.</summary>
    public const string Path = "floor.soil.zones";

    /// <summary>Least share of a step.</summary>
    public const double Least = 0.05;

    /// <summary>The last step in two of the same depth.</summary>
    /// <param name="document">The design.</param>
    public static Reading<DesignDocument> Split(DesignDocument document)
    {
        var zones = document.Design.Floor.Soil!.Zones;
        var last = zones.Count - 1;
        var whole = zones[last].Share.Si;
        var (near, far) = (Math.Round(whole / 2, 2), whole - Math.Round(whole / 2, 2));
        var depth = zones[last].Depth?.Text ?? zones[last].Back?.Text ?? "7 cm";
        var with = DesignEdits.Set(document, At(last), Percent(near));
        return with.Value is { } so && with.IsGood
            ? DesignEdits.Add(so, Path, $"{{ share: {Percent(far)}, depth: {depth} }}")
            : with;
    }

    /// <summary>Without a step: the one beside it takes its share.</summary>
    /// <param name="document">The design.</param>
    /// <param name="at">Its number.</param>
    public static Reading<DesignDocument> Without(DesignDocument document, int at)
    {
        var zones = document.Design.Floor.Soil!.Zones;
        if (zones.Count < 2)
        {
            return FormSwitch.Soil.Turn(document, FormSwitch.Soil.Ways[0]);
        }

        var beside = at > 0 ? at - 1 : 1;
        var share = zones[at].Share.Si + zones[beside].Share.Si;
        var with = DesignEdits.Set(document, At(beside), Percent(share));
        return with.Value is { } so && with.IsGood
            ? DesignEdits.Remove(so, FormattableString.Invariant($"{Path}[{at}]"))
            : with;
    }

    /// <summary>A share typed anew: the step to the right gives or takes what is missing.</summary>
    /// <param name="document">The design.</param>
    /// <param name="at">Number of the step.</param>
    /// <param name="share">Its new share.</param>
    public static Reading<DesignDocument> Shared(DesignDocument document, int at, double share)
    {
        var zones = document.Design.Floor.Soil!.Zones;
        var beside = at + 1 < zones.Count ? at + 1 : at - 1;
        if (beside < 0)
        {
            return DesignEdits.Set(document, At(at), Percent(1));
        }

        var both = zones[at].Share.Si + zones[beside].Share.Si;
        var mine = Math.Round(Math.Clamp(share, Least, Math.Max(Least, both - Least)), 3);
        var with = DesignEdits.Set(document, At(at), Percent(mine));
        return with.Value is { } so && with.IsGood
            ? DesignEdits.Set(so, At(beside), Percent(both - mine))
            : with;
    }

    /// <summary>Number of the step a path belongs to; null where it is none of its shares.</summary>
    /// <param name="path">A path of the design.</param>
    public static int? ShareAt(string path) =>
        path.StartsWith(Path + "[", StringComparison.Ordinal)
        && path.EndsWith("].share", StringComparison.Ordinal)
        && int.TryParse(
            path.AsSpan(Path.Length + 1, path.Length - Path.Length - 1 - "].share".Length),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var at
        )
            ? at
            : null;

    private static string At(int zone) => FormattableString.Invariant($"{Path}[{zone}].share");

    private static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(100 * share, 1):0.#} %");
}
