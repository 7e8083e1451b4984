using Litterfall.Domain.Tanks;

namespace Litterfall.Workshop.Demo;

/// <summary>Permits, one of which soon ends, and contracts of visits.</summary>
/// <param name="book">Where they go.</param>
/// <param name="today">Day the demo is filled.</param>
internal sealed class DemoVisits(DemoBook book, DateOnly today)
{
    private const int Museum = 203;

    /// <summary>Writes them.</summary>
    public void Write()
    {
        book.NewPermits.Add(
            new()
            {
                Key = "selling",
                Kind = PermitKind.Selling,
                Number = "S-4471",
                Issuer = "local authority",
                Issued = today.AddDays(-337),
                Expires = today.AddDays(28),
                Note = "inspection before it is renewed",
            }
        );
        book.NewPermits.Add(
            new()
            {
                Key = "origin-leucomelas",
                Kind = PermitKind.Origin,
                Number = "N-2025-118",
                Issuer = "breeder's proof, notified",
                Species = ["dendrobates-leucomelas"],
                Issued = new DateOnly(2025, 11, 20),
            }
        );
        book.NewContracts.Add(Visits(1, "quernmoor", "LD-203", Begin(), 6, 1));
        book.NewContracts.Add(Visits(2, "marl-street", "LD-200", today.AddDays(3), 4, 2));
    }

    /// <summary>Six weeks after the day that is promised to the museum.</summary>
    private DateOnly Begin() => (book.Orders.First(o => o.Number == Museum).Promised ?? today).AddDays(42);

    private static VisitContract Visits(
        int number,
        string customer,
        string tank,
        DateOnly start,
        int weeks,
        int route
    ) =>
        new()
        {
            Number = number,
            Customer = customer,
            Order = 0,
            Tanks = [tank],
            EveryWeeks = weeks,
            Price = 85,
            Start = start,
            Included = ["level, glass, trimming", "leaf litter and crew when they are due"],
            Route = route,
            Notes = "Ask at the desk; water from the tap in the cleaner's room is not used.",
        };
}
