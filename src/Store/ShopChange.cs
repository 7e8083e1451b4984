using Litterfall.Domain.Stock;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;

namespace Litterfall.Store;

/// <summary>A record with its version.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Version">Its version; the next change is made on it.</param>
/// <param name="Value">What it says.</param>
/// <param name="When">When it was written, UTC.</param>
/// <param name="Who">Who wrote it.</param>
/// <param name="Note">What was changed.</param>
public sealed record Kept<T>(string Key, int Version, T Value, DateTime When, string Who, string Note);

/// <summary>What of a change could not be taken; nothing of it was written.</summary>
public sealed class ShopRefusedException(string message) : Exception(message);

/// <summary>
/// Everything that one step of work changes: records, lots, lines of stock and of logs, papers with
/// running numbers. It
/// is written whole or not at all.
/// </summary>
/// <param name="who">Who does it.</param>
public sealed class ShopChange(string who)
{
    internal string Who { get; } = who;

    internal List<RecordPart> Records { get; } = [];

    internal List<Lot> Lots { get; } = [];

    internal List<(Movement Line, bool MayGoBelow)> Lines { get; } = [];

    internal List<PaperPart> Papers { get; } = [];

    internal List<CareEntry> Care { get; } = [];

    /// <summary>A record as it is from now on.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="basis">Version it was changed from; 0 for a new one.</param>
    /// <param name="value">What it says.</param>
    /// <param name="note">What was changed.</param>
    public ShopChange Keep<T>(string key, int basis, T value, string note)
    {
        Records.Add(new(TradeJson.KindOf<T>(), key, basis, _ => TradeJson.Write(value), note));
        return this;
    }

    /// <summary>Takes a record back; its past stays.</summary>
    public ShopChange TakeBack<T>(string key, int basis, string note)
    {
        Records.Add(new(TradeJson.KindOf<T>(), key, basis, _ => "", note));
        return this;
    }

    /// <summary>A new record under the next running number of its kind.</summary>
    /// <param name="make">Makes it from its number.</param>
    /// <param name="note">What was changed.</param>
    public ShopChange KeepNumbered<T>(Func<int, T> make, string note)
    {
        Records.Add(new(TradeJson.KindOf<T>(), null, 0, n => TradeJson.Write(make(n)), note));
        return this;
    }

    /// <summary>A new lot; the line that brings it in is added besides.</summary>
    public ShopChange Add(Lot lot)
    {
        Lots.Add(lot);
        return this;
    }

    /// <summary>A line of stock.</summary>
    /// <param name="line">The line.</param>
    /// <param name="mayGoBelow">True where somebody said that the book is wrong and takes it so.</param>
    public ShopChange Add(Movement line, bool mayGoBelow = false)
    {
        Lines.Add((line, mayGoBelow));
        return this;
    }

    /// <summary>A line of a tank's log; one whose key is there already is left out.</summary>
    public ShopChange Add(CareEntry line)
    {
        Care.Add(line);
        return this;
    }

    /// <summary>A quote under the next running number.</summary>
    public ShopChange Issue(int order, Func<int, Quote> make)
    {
        Papers.Add(new(IssuedKind.Quote, order, n => TradeJson.Write(make(n))));
        return this;
    }

    /// <summary>An invoice, credit or delivery note under the next running number of its kind.</summary>
    public ShopChange Issue(IssuedKind kind, int order, Func<int, Invoice> make)
    {
        Papers.Add(new(kind, order, n => TradeJson.Write(make(n))));
        return this;
    }

    internal sealed record RecordPart(
        string Kind,
        string? Key,
        int Basis,
        Func<int, string> Json,
        string Note
    );

    internal sealed record PaperPart(IssuedKind Kind, int Order, Func<int, string> Json);
}

/// <summary>What a change was written as.</summary>
/// <param name="Records">Running numbers given to new records, in order.</param>
/// <param name="Papers">Running numbers given to papers, in order.</param>
public sealed record ShopWritten(IReadOnlyList<int> Records, IReadOnlyList<int> Papers);
