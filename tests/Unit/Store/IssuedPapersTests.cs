using System.IO.Compression;
using System.Text;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Microsoft.Data.Sqlite;

namespace Litterfall.UnitTests.Store;

/// <summary>What was issued stays as it was: a copy in which it does not is named damaged.</summary>
public sealed class IssuedPapersTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-issued").FullName;

    private string Bench => Path.Combine(folder, "bench.db");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Invoice Bill(int number) =>
        new()
        {
            Kind = IssuedKind.Invoice,
            Number = number,
            Name = $"I-{number}",
            Order = 7,
            Day = new DateOnly(2026, 9, 1),
            Shop = new ShopTerms { Name = "Example" },
            Customer = new Customer { Key = "x", Name = "=cmd|' /C calc'!A0" },
            Lines = [new QuoteLine("tank", 1, 100)],
            Gross = 119,
        };

    private async Task<BenchStore> FilledAsync()
    {
        var store = new BenchStore(
            StoreFile.Contexts(Bench),
            new StoreMarks("1.0", "abc"),
            TimeProvider.System
        );
        await store.OpenAsync(Stop);
        for (var i = 0; i < 3; i++)
        {
            await store.WriteAsync(new ShopChange("Tobin").Issue(IssuedKind.Invoice, 7, Bill), Stop);
        }

        return store;
    }

    [Theory]
    [InlineData("UPDATE Issued SET Json = replace(Json, '119', '19') WHERE Number = 2", "invoice 2")]
    [InlineData("DELETE FROM Issued WHERE Number = 2", "invoice 3")]
    public async Task A_changed_or_missing_invoice_is_found(string sql, string named)
    {
        await FilledAsync();
        Assert.Null(StoreCheck.Trouble(Copy()));
        using (var db = new SqliteConnection($"Data Source={Bench};Pooling=False"))
        {
            db.Open();
            using var command = db.CreateCommand();
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }

        Assert.Contains(named, StoreCheck.Trouble(Copy()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_export_holds_what_was_issued()
    {
        await FilledAsync();
        var bytes = await BenchExport.WriteAsync(StoreFile.Contexts(Bench), Stop);
        using var zip = new ZipArchive(new MemoryStream(bytes));
        using var reader = new StreamReader(
            zip.GetEntry("workshop/issued/invoice-0002.json")!.Open(),
            Encoding.UTF8
        );
        Assert.Contains("\"name\":\"I-2\"", await reader.ReadToEndAsync(Stop), StringComparison.Ordinal);
        Assert.NotNull(zip.GetEntry("workshop/stock.csv"));
    }

    private string Copy()
    {
        var copy = Path.Combine(folder, $"{Guid.CreateVersion7()}.copy");
        SqliteConnection.ClearAllPools();
        StoreFile.Backup(Bench, copy);
        return copy;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, true);
    }
}
