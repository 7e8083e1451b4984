using Litterfall.Domain;
using Litterfall.Domain.Units;

namespace Litterfall.Judging.Levers;

/// <summary>Every misting of the day, longer or shorter, in whole seconds.</summary>
internal sealed class MistLever : Lever
{
    private const double LongestSeconds = 600;

    /// <inheritdoc/>
    public override string Name => "misting";

    /// <inheritdoc/>
    public override string ValueName => "misting a day";

    /// <inheritdoc/>
    public override Unit Unit => Unit.Second;

    /// <inheritdoc/>
    public override (double Least, double Most) Ends => (0.1, 6);

    /// <inheritdoc/>
    public override double? Value(Design design) =>
        design.Misting is { Times.Count: > 0 } misting ? misting.Times.Sum(t => t.For.Si) : null;

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> Turn(Design design, double factor) =>
        design.Misting!.Times.Select(
            (time, i) =>
                (
                    FormattableString.Invariant($"misting.times[{i}].for"),
                    Text(Math.Clamp(Math.Round(time.For.Si * factor), 1, LongestSeconds), "s")
                )
        );
}
