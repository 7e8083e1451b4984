namespace Litterfall.Web.Sharing;

/// <summary>Seats at desks: as many as the memory of the machine holds.</summary>
public sealed class DeskRoom(int most)
{
    // Own choice, from docs/reliability.md: what the bench needs by itself, and a desk with its forecast
    // twice.
    private const long Base = 300L * 1024 * 1024;
    private const long Each = 10L * 1024 * 1024;
    private const int Least = 20;
    private const int Limit = 1000;

    private int taken;

    /// <summary>How many seats there are.</summary>
    public int Most => most;

    /// <summary>How many are taken.</summary>
    public int Taken => Volatile.Read(ref taken);

    /// <summary>The seats that half of the memory of this machine, or of its container, gives.</summary>
    public static DeskRoom OfMachine()
    {
        var memory = GC.GetGCMemoryInfo().TotalAvailableMemoryBytes;
        return new((int)Math.Clamp(((memory / 2) - Base) / Each, Least, Limit));
    }

    /// <summary>A seat until it is disposed of; null where all are taken.</summary>
    public IDisposable? Sit()
    {
        if (Interlocked.Increment(ref taken) > most)
        {
            Interlocked.Decrement(ref taken);
            return null;
        }

        return new Seat(this);
    }

    private sealed class Seat(DeskRoom room) : IDisposable
    {
        private int left;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref left, 1) == 0)
            {
                Interlocked.Decrement(ref room.taken);
            }
        }
    }
}
