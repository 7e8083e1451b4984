using System.Globalization;

namespace Litterfall.Judging.Light;

/// <summary>How much more light in words that always ask for more.</summary>
public static class MoreLight
{
    private const double Times = 1.5;
    private const double StepPercent = 5.0;

    /// <summary>"about 15 % more light"; from half as much again on "2.3 times the light".</summary>
    /// <param name="factor">Wanted over what it gets, above 1.</param>
    public static string Words(double factor) =>
        factor < Times
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"about {Math.Ceiling((factor - 1.0) * 100.0 / StepPercent) * StepPercent:0} % more light"
            )
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{Math.Ceiling(factor * 10.0) / 10.0:0.0} times the light"
            );
}
