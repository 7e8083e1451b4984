using System.Globalization;
using Litterfall.Domain;

namespace Litterfall.Running.Diagnosis.Finding;

/// <summary>Settings of the misting timer in words.</summary>
internal static class MistWords
{
    /// <summary>A nozzle needs some seconds to spray evenly.</summary>
    private const double ShortestSeconds = 8;

    /// <summary>
    /// The timer for a share of the present mist, in whole seconds and equal mistings; null without misting,
    /// or
    /// where nothing needs to change.
    /// </summary>
    /// <param name="misting">As it is set.</param>
    /// <param name="share">Share of its water that is wanted, 0 to 1.</param>
    public static (string Text, double Factor)? Less(Misting? misting, double share)
    {
        if (misting is not { Times.Count: > 0 } || share > 0.97)
        {
            return null;
        }

        var seconds = misting.Times.Sum(t => t.For.Si);
        var wanted = share * seconds;
        var times = Math.Clamp((int)(wanted / ShortestSeconds), 1, misting.Times.Count);
        var each = Math.Max(2.0, Math.Round(wanted / times));
        var flow = misting.Nozzles * misting.Each.Si * 1e6;
        var text = string.Create(
            CultureInfo.InvariantCulture,
            $"Mist {times} × {each:0} s a day ({times * each * flow:0} mL) instead of {seconds:0} s "
                + $"({seconds * flow:0} mL)"
        );
        return (text, times * each / seconds);
    }
}
