using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>The tables of the bench.</summary>
public sealed class BenchContext(DbContextOptions<BenchContext> options) : DbContext(options)
{
    /// <summary>Designs.</summary>
    public DbSet<DesignRow> Designs => Set<DesignRow>();

    /// <summary>Their versions, only ever added to.</summary>
    public DbSet<VersionRow> Versions => Set<VersionRow>();

    /// <summary>The workshop's own library, only ever added to.</summary>
    public DbSet<EntryRow> Entries => Set<EntryRow>();

    /// <summary>Files that designs name, only ever added to.</summary>
    public DbSet<FileRow> Files => Set<FileRow>();

    /// <summary>Choices of the user.</summary>
    public DbSet<ChoiceRow> Choices => Set<ChoiceRow>();

    /// <summary>Whom designs are for and how far they are.</summary>
    public DbSet<OrderRow> Orders => Set<OrderRow>();

    /// <summary>Devices that may come in.</summary>
    public DbSet<DeviceRow> Devices => Set<DeviceRow>();

    /// <summary>Records of the workshop, only ever added to.</summary>
    public DbSet<RecordRow> Records => Set<RecordRow>();

    /// <summary>Lots, only ever added to.</summary>
    public DbSet<LotRow> Lots => Set<LotRow>();

    /// <summary>The book of stock, only ever added to.</summary>
    public DbSet<MovementRow> Movements => Set<MovementRow>();

    /// <summary>Quotes, invoices and delivery notes, only ever added to.</summary>
    public DbSet<IssuedRow> Issued => Set<IssuedRow>();

    /// <summary>Logs of the tanks, only ever added to.</summary>
    public DbSet<CareRow> Care => Set<CareRow>();

    /// <summary>Logger files as they were taken in.</summary>
    public DbSet<LogFileRow> LogFiles => Set<LogFileRow>();

    /// <summary>Readings of loggers, packed.</summary>
    public DbSet<LogBlockRow> LogBlocks => Set<LogBlockRow>();

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<DesignRow>(row =>
        {
            row.HasKey(d => d.Id);
            row.Property(d => d.Name).HasMaxLength(200);
            row.Property(d => d.Stamp).IsConcurrencyToken();
            row.HasIndex(d => d.ChangedTicks);
        });
        modelBuilder.Entity<VersionRow>(row =>
        {
            row.HasKey(v => new { v.DesignId, v.Number });
            row.HasOne<DesignRow>()
                .WithMany()
                .HasForeignKey(v => v.DesignId)
                .OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<EntryRow>(row =>
        {
            row.HasKey(e => e.Id);
            row.HasIndex(e => e.Key);
        });
        modelBuilder.Entity<FileRow>(row =>
        {
            row.HasKey(f => f.Id);
            row.Property(f => f.Name).HasMaxLength(200);
            row.HasIndex(f => f.Name);
        });
        modelBuilder.Entity<ChoiceRow>().HasKey(c => c.Key);
        modelBuilder.Entity<OrderRow>(row =>
        {
            row.HasKey(o => o.DesignId);
            row.Property(o => o.Status).HasMaxLength(40);
            row.Property(o => o.Customer).HasMaxLength(200);
            row.HasOne<DesignRow>()
                .WithOne()
                .HasForeignKey<OrderRow>(o => o.DesignId)
                .OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<DeviceRow>(row =>
        {
            row.HasKey(d => d.Id);
            row.Property(d => d.Id).HasMaxLength(32);
            row.Property(d => d.Name).HasMaxLength(100);
        });
        Shop(modelBuilder);
        Running(modelBuilder);
    }

    private static void Running(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<CareRow>(row =>
        {
            row.HasKey(c => c.Id);
            row.Property(c => c.Key).HasMaxLength(80);
            row.Property(c => c.Tank).HasMaxLength(60);
            row.Property(c => c.Kind).HasMaxLength(40);
            row.HasIndex(c => c.Key).IsUnique();
            row.HasIndex(c => new { c.Tank, c.AtTicks });
        });
        modelBuilder.Entity<LogFileRow>(row =>
        {
            row.HasKey(f => f.Id);
            row.Property(f => f.Name).HasMaxLength(260);
            row.HasIndex(f => f.Hash);
        });
        modelBuilder.Entity<LogBlockRow>(row =>
        {
            row.HasKey(b => b.Id);
            row.Property(b => b.Place).HasMaxLength(60);
            row.Property(b => b.Quantity).HasMaxLength(40);
            row.HasIndex(b => new
            {
                b.Place,
                b.Quantity,
                b.FromTicks,
            });
        });
    }

    private static void Shop(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<RecordRow>(row =>
        {
            row.HasKey(r => r.Id);
            row.Property(r => r.Kind).HasMaxLength(40);
            row.Property(r => r.Key).HasMaxLength(200);
            row.HasIndex(r => new
            {
                r.Kind,
                r.Key,
                r.Version,
            })
                .IsUnique();
        });
        modelBuilder.Entity<LotRow>(row =>
        {
            row.HasKey(l => l.Id);
            row.Property(l => l.Id).HasMaxLength(60);
            row.HasIndex(l => l.Good);
        });
        modelBuilder.Entity<MovementRow>(row =>
        {
            row.HasKey(m => m.Id);
            row.HasIndex(m => m.Lot);
            row.HasIndex(m => m.Into);
            row.HasOne<LotRow>().WithMany().HasForeignKey(m => m.Lot).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<IssuedRow>(row =>
        {
            row.HasKey(i => new { i.Kind, i.Number });
            row.HasIndex(i => i.OrderNumber);
        });
    }
}
