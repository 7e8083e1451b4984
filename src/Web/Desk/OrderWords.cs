using System.Collections.Immutable;
using Litterfall.Store;

namespace Litterfall.Web.Desk;

/// <summary>How far a design is, and when it is due, in words.</summary>
public static class OrderWords
{
    /// <summary>From the first idea to the customer; own choice of words.</summary>
    public static readonly ImmutableArray<string> Statuses =
    [
        "Idea",
        "Quoted",
        "Ordered",
        "Building",
        Delivered,
    ];

    private const string Delivered = "Delivered";
    private const int Soon = 7;

    /// <summary>"due in 3 days", "5 days overdue", "due 4 March 2027"; null without a day.</summary>
    /// <param name="order">What is noted.</param>
    /// <param name="today">Today.</param>
    public static string? Due(DesignOrder order, DateOnly today)
    {
        if (order.Due is not { } due)
        {
            return null;
        }

        var days = due.DayNumber - today.DayNumber;
        return order.Status == Delivered || days > Soon
            ? FormattableString.Invariant($"due {due:d MMM yyyy}")
            : days switch
            {
                0 => "due today",
                1 => "due tomorrow",
                -1 => "1 day overdue",
                > 1 => FormattableString.Invariant($"due in {days} days"),
                _ => FormattableString.Invariant($"{-days} days overdue"),
            };
    }

    /// <summary>True where the day has passed and it is not delivered.</summary>
    /// <param name="order">What is noted.</param>
    /// <param name="today">Today.</param>
    public static bool IsLate(DesignOrder order, DateOnly today) =>
        order.Due is { } due && due < today && order.Status != Delivered;
}
