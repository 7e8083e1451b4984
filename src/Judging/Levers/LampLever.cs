using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Units;

namespace Litterfall.Judging.Levers;

/// <summary>All lamps off earlier, in quarters of an hour; plants want six hours at least.</summary>
internal sealed class LampLever : Lever
{
    private const double LeastHours = 6;

    /// <inheritdoc/>
    public override string Name => "lamp hours";

    /// <inheritdoc/>
    public override string ValueName => "lamp hours a day";

    /// <inheritdoc/>
    public override Unit Unit => Unit.Hour;

    /// <inheritdoc/>
    public override (double Least, double Most) Ends => (0.5, 1);

    /// <inheritdoc/>
    public override double? Value(Design design) =>
        design.Lamps.Count > 0 && design.Lamps.All(l => l.On is not null && l.Off is not null)
            ? Unit.Hour.ToSiValue(design.Lamps.Max(Hours))
            : null;

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> Turn(Design design, double factor)
    {
        for (var i = 0; i < design.Lamps.Count; i++)
        {
            var lamp = design.Lamps[i];
            var hours = Math.Min(Hours(lamp), Math.Max(LeastHours, Math.Round(Hours(lamp) * factor * 4) / 4));
            yield return (
                FormattableString.Invariant($"lamps[{i}].off"),
                lamp.On!.Value.Add(TimeSpan.FromHours(hours)).ToString("HH:mm", CultureInfo.InvariantCulture)
            );
        }
    }

    private static double Hours(Lamp lamp) =>
        (lamp.Off!.Value - lamp.On!.Value).TotalHours is > 0 and var h ? h : 24;
}
