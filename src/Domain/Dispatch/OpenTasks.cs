namespace Litterfall.Domain.Dispatch;

/// <summary>
/// Holds that the workshop ends itself, whatever the day: papers to look at, a carrier to ask. A day that
/// only they hold is the next one that works, as soon as they are done.
/// </summary>
public static class OpenTasks
{
    /// <summary>Papers are not ticked off.</summary>
    public const string Papers = "papers-missing";

    /// <summary>Nobody asked the carrier.</summary>
    public const string Unasked = "carrier-not-asked";

    /// <summary>The carrier's rules were never read.</summary>
    public const string Unread = "carrier-rules-unread";

    /// <summary>The carrier's rules were read too long ago.</summary>
    public const string Old = "carrier-rules-old";

    /// <summary>True for such a hold.</summary>
    /// <param name="reason">A reason.</param>
    public static bool Is(ShipReason reason) => reason.Slug is Papers or Unasked or Unread or Old;

    /// <summary>True where nothing else holds a day.</summary>
    /// <param name="day">The day.</param>
    public static bool Only(DayVerdict day) =>
        day.Verdict == ShipVerdict.Hold && day.Reasons.All(r => r.Verdict < ShipVerdict.Hold || Is(r));

    /// <summary>
    /// What has to be done first: "once its papers are ticked off"; empty where nothing has.
    /// </summary>
    /// <param name="day">A day.</param>
    public static string Once(DayVerdict day)
    {
        var words = day.Reasons.Where(Is).Select(Words).Distinct().ToList();
        return words.Count == 0 ? "" : $"once {string.Join(" and ", words)}";
    }

    private static string Words(ShipReason reason) =>
        reason.Slug switch
        {
            Papers => "its papers are ticked off",
            Unasked => "the carrier has said that it takes them",
            _ => "the carrier's rules are read again",
        };
}
