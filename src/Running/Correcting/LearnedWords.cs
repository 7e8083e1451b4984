using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Running.Correcting;

/// <summary>What a correction taught, in plain words.</summary>
internal static class LearnedWords
{
    // Own choice: a band narrowed by less than this, and a middle moved by less, is nothing learned.
    private const double LeastNarrowed = 0.15;
    private const double LeastMoved = 0.25;
    private const int Most = 4;

    /// <summary>Sentences, what was learned most first.</summary>
    public static ImmutableArray<string> From(CorrectedSide before, CorrectedSide after)
    {
        var told = before
            .Parameters.Zip(after.Parameters, (was, now) => (Was: was, Now: now))
            .Select(p =>
            {
                var wide = p.Was.High - p.Was.Low;
                var narrowed = wide > 0 ? 1 - ((p.Now.High - p.Now.Low) / wide) : 0;
                var moved = wide > 0 ? Math.Abs(p.Now.Mean - p.Was.Mean) / (0.5 * wide) : 0;
                return (p.Was, p.Now, Narrowed: narrowed, Moved: moved);
            })
            .Where(p => p.Narrowed >= LeastNarrowed || p.Moved >= LeastMoved)
            .OrderByDescending(p => Math.Max(p.Narrowed, p.Moved))
            .Take(Most)
            .Select(p => Sentence(p.Was, p.Now))
            .ToImmutableArray();
        return told.IsEmpty ? ["The readings fit what was assumed; nothing had to be corrected."] : told;
    }

    /// <summary>A reading that does not fit.</summary>
    public static string Far(ReadingSight sight) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"The {Noun(sight.Kind)} of {sight.At:MMM d} ({Shown(sight.Value)} {Unit(sight.Kind)}) is far "
                + $"from anything expected, so it counts less. Read it once more."
        );

    private static string Sentence(ParameterBand was, ParameterBand now) =>
        was.Key switch
        {
            "vents" => $"The vents exchange about {Shown(now.Mean)} times the air we assumed ({Band(now)}).",
            "heldAir" => $"The air changes about {Shown(now.Mean)} times an hour, not {Shown(was.Mean)} "
                + $"({Band(now)}).",
            "nozzle" when now.Unit == "mL/min" =>
                $"Each nozzle gives about {Whole(now.Mean)} mL/min; we assumed {Whole(was.Mean)} "
                    + $"({Band(now, "0")}).",
            "room" => $"The room is about {Signed(now.Mean)} K from what was typed ({Band(now, "0.0")}).",
            "squeeze" => $"The fresh mix held {Signed(100 * now.Mean)} points of water over the usual "
                + $"({Signed(100 * now.Low)} to {Signed(100 * now.High)} in 9 of 10 cases).",
            _ => $"{Capital(was.Name)}: about {Shown(now.Mean)} {now.Unit}; we assumed {Shown(was.Mean)} "
                + $"({Band(now)}).",
        };

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    private static string Band(ParameterBand band, string form = "0.00") =>
        $"{band.Low.ToString(form, Invariant)} to {band.High.ToString(form, Invariant)} in 9 of 10 cases";

    private static string Shown(double value) =>
        value.ToString(Math.Abs(value) >= 10 ? "0" : "0.##", Invariant);

    private static string Whole(double value) => value.ToString("0", Invariant);

    private static string Signed(double value) => value.ToString("+0.0;-0.0;0.0", Invariant);

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Noun(SightKind kind) =>
        kind switch
        {
            SightKind.Level => "level",
            SightKind.Drained => "amount drained",
            SightKind.Mist => "nozzle output",
            SightKind.Weight => "weight",
            SightKind.Celsius => "air temperature",
            SightKind.Humidity => "humidity",
            _ => "squeeze test",
        };

    private static string Unit(SightKind kind) =>
        kind switch
        {
            SightKind.Level => "mm",
            SightKind.Drained => "mL",
            SightKind.Mist => "mL/min",
            SightKind.Weight => "kg",
            SightKind.Celsius => "°C",
            SightKind.Humidity => "%",
            _ => "m3/m3",
        };
}
