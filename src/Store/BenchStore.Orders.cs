using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>Whom a design is for and how far it is.</summary>
/// <param name="Status">One word; empty where nobody said.</param>
/// <param name="Customer">Who it is for; empty where nobody said.</param>
/// <param name="Due">Day it is due; null for none.</param>
public sealed record DesignOrder(string Status, string Customer, DateOnly? Due)
{
    /// <summary>Longest name of a customer, characters.</summary>
    public const int LongestCustomer = 200;

    /// <summary>Nothing said.</summary>
    public static readonly DesignOrder None = new("", "", null);
}

/// <summary>The list of designs and what the shop notes beside each.</summary>
public sealed partial class BenchStore
{
    /// <summary>Designs, the last changed first.</summary>
    /// <param name="isArchived">True for those of the archive alone; false for the others.</param>
    /// <param name="cancel">Cancels the reading.</param>
    public async Task<IReadOnlyList<ListedDesign>> DesignsAsync(
        bool isArchived,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db
            .Designs.AsNoTracking()
            .Where(d => d.IsAway == isArchived)
            .OrderByDescending(d => d.ChangedTicks)
            .GroupJoin(
                db.Orders,
                d => d.Id,
                o => o.DesignId,
                (d, orders) => new { Design = d, Orders = orders }
            )
            .SelectMany(one => one.Orders.DefaultIfEmpty(), (one, order) => new { one.Design, Order = order })
            .ToListAsync(cancel);
        return
        [
            .. rows.Select(r => new ListedDesign(
                r.Design.Id,
                r.Design.Name,
                r.Design.Head,
                At(r.Design.ChangedTicks),
                r.Design.Verdict
            )
            {
                Order = Of(r.Order),
            }),
        ];
    }

    /// <summary>Designs that are not in the archive, the last changed first.</summary>
    public Task<IReadOnlyList<ListedDesign>> DesignsAsync(CancellationToken cancel = default) =>
        DesignsAsync(false, cancel);

    /// <summary>How many designs the archive holds.</summary>
    public async Task<int> ArchivedAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return await db.Designs.CountAsync(d => d.IsAway, cancel);
    }

    /// <summary>Puts a design into the archive, or takes it out; its versions stay.</summary>
    public async Task ArchiveAsync(Guid id, bool isArchived, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await db
            .Designs.Where(d => d.Id == id)
            .ExecuteUpdateAsync(s => s.SetProperty(d => d.IsAway, isArchived), cancel);
        Tell(id, 0);
    }

    /// <summary>Notes whom a design is for and how far it is.</summary>
    /// <param name="id">The design.</param>
    /// <param name="order">What is noted, all of it.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    public async Task NoteOrderAsync(Guid id, DesignOrder order, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        if (await db.Orders.FindAsync([id], cancel) is { } row)
        {
            (row.Status, row.Customer, row.DueDay) = (order.Status, order.Customer, order.Due?.DayNumber);
        }
        else
        {
            db.Orders.Add(
                new OrderRow
                {
                    DesignId = id,
                    Status = order.Status,
                    Customer = order.Customer,
                    DueDay = order.Due?.DayNumber,
                }
            );
        }

        await db.SaveChangesAsync(cancel);
        Tell(id, 0);
    }

    /// <summary>Texts of some versions, by number.</summary>
    public async Task<IReadOnlyDictionary<int, string>> TextsAsync(
        Guid id,
        IReadOnlyCollection<int> versions,
        CancellationToken cancel = default
    )
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return await db
            .Versions.AsNoTracking()
            .Where(v => v.DesignId == id && versions.Contains(v.Number))
            .ToDictionaryAsync(v => v.Number, v => v.Text, cancel);
    }

    private static DesignOrder Of(OrderRow? row) =>
        row is null
            ? DesignOrder.None
            : new(row.Status, row.Customer, row.DueDay is { } day ? DateOnly.FromDayNumber(day) : null);
}
