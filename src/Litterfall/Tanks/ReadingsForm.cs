using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trees;

namespace Litterfall.App.Tanks;

/// <summary>What a reading of one design can be.</summary>
/// <param name="Planted">Midnight at which the design's calendar starts; nothing was read before.</param>
/// <param name="RimMillimeters">Height of the inside over the base, mm.</param>
public sealed record ReadingBounds(DateTime Planted, double RimMillimeters)
{
    /// <summary>Longest time after planting, days: about three years of a tank's life.</summary>
    public const int MostDays = 1100;

    /// <summary>No design yet: whatever any box can show.</summary>
    public static readonly ReadingBounds Any = new(new DateTime(1900, 1, 1), 3000);
}

/// <summary>Reads the readings of a tank.</summary>
public static class ReadingsForm
{
    private const int MostReadings = 20_000;
    private const string MomentText = "a day and time such as 2026-03-01T09:00";
    private static readonly string[] Moments =
    [
        "yyyy-MM-dd'T'HH:mm",
        "yyyy-MM-dd'T'HH:mm:ss",
        "yyyy-MM-dd HH:mm",
        "yyyy-MM-dd",
    ];

    private static readonly (string Word, ReadingKind Kind, string Amount, double Most)[] Kinds =
    [
        ("level", ReadingKind.Level, "mm", 3000),
        ("drained", ReadingKind.Drained, "ml", 200_000),
        ("mist", ReadingKind.Mist, "mlPerMinute", 5_000),
        ("weight", ReadingKind.Weight, "kg", 2_000),
        ("air", ReadingKind.Air, "c", 60),
        ("squeeze", ReadingKind.Squeeze, "drops", 500),
    ];

    /// <summary>The readings in the order of their time; what does not fit is a fault on the form.</summary>
    /// <param name="form">The object that holds <c>readings</c>.</param>
    /// <param name="bounds">What fits the design.</param>
    /// <param name="isNeeded">True where the file must have some.</param>
    public static ImmutableArray<TankReading> Read(TreeForm form, ReadingBounds bounds, bool isNeeded = true)
    {
        var forms = isNeeded
            ? form.Objects("readings", "a reading", MostReadings)
            : form.OptionalObjects("readings", "a reading", MostReadings);
        return [.. forms.Select(f => One(f, bounds)).OfType<TankReading>().OrderBy(r => r.At)];
    }

    private static TankReading? One(TreeForm form, ReadingBounds bounds)
    {
        var at = Moment(form, bounds);
        var word = form.Choice("kind", [.. Kinds.Select(k => k.Word)]);
        if (word is null)
        {
            form.Ignore([.. Kinds.Select(k => k.Amount), "humidityPercent"]);
            form.Close();
            return null;
        }

        var kind = Array.Find(Kinds, k => k.Word == word);
        var reading =
            kind.Kind == ReadingKind.Air
                ? Air(form)
                : new Amounts(form.Number(kind.Amount, Range(kind)), null);
        form.Close($"a reading of kind {word}");
        if (reading is not { } read || at is not { } when)
        {
            return null;
        }

        if (kind.Kind == ReadingKind.Level && read.Amount > bounds.RimMillimeters)
        {
            form.Refuse(
                kind.Amount,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{read.Amount:0.#} mm of water stands over the rim of the box"
                ),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a level over the base from 0 to {bounds.RimMillimeters:0} mm"
                )
            );
            return null;
        }

        return new TankReading
        {
            At = when,
            Kind = kind.Kind,
            Amount = read.Amount,
            HumidityPercent = read.Humidity,
        };
    }

    private readonly record struct Amounts(double? Amount, double? Humidity);

    private static NumberRange Range((string Word, ReadingKind Kind, string Amount, double Most) kind) =>
        kind.Kind is ReadingKind.Weight or ReadingKind.Mist
            ? NumberRange.Positive(kind.Most)
            : NumberRange.UpTo(kind.Most);

    private static Amounts? Air(TreeForm form)
    {
        var celsius = form.OptionalNumber("c", new NumberRange(-30, 60));
        var humidity = form.OptionalNumber("humidityPercent", NumberRange.UpTo(100));
        if (celsius is null && humidity is null && form.IsGood)
        {
            form.Refuse("a reading of the air has no number", "c, humidityPercent or both");
            return null;
        }

        return new(celsius, humidity);
    }

    private static DateTime? Moment(TreeForm form, ReadingBounds bounds)
    {
        if (form.Text("at") is not { } text)
        {
            return null;
        }

        if (
            !DateTime.TryParseExact(
                text,
                Moments,
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var at
            ) || at.Year is < 1900 or > 2200
        )
        {
            form.Refuse("at", $"{TreeNode.Shown(text)} is no day and time", MomentText);
            return null;
        }

        if (at < bounds.Planted)
        {
            form.Refuse(
                "at",
                $"{TreeNode.Shown(text)} is before the tank was planted",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a time from {bounds.Planted:yyyy-MM-dd} on, when it was planted"
                )
            );
            return null;
        }

        if (bounds != ReadingBounds.Any && at > bounds.Planted.AddDays(ReadingBounds.MostDays))
        {
            form.Refuse(
                "at",
                $"{TreeNode.Shown(text)} is too long after planting",
                FormattableString.Invariant($"a time within {ReadingBounds.MostDays} days of planting")
            );
            return null;
        }

        return at;
    }
}
