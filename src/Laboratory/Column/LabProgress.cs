using System.Collections;
using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>
/// Says on a terminal how far a run is, once it takes longer than a moment; one line that goes away.
/// </summary>
public sealed class LabProgress : IDisposable
{
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(2);
    private readonly Timer? timer;
    private double hour;
    private double hours;
    private bool shown;

    public LabProgress()
    {
        if (!Console.IsErrorRedirected)
        {
            timer = new Timer(_ => Show(), null, Moment, TimeSpan.FromSeconds(0.5));
        }
    }

    /// <summary>The spans themselves; each one that is taken up is noted.</summary>
    public IReadOnlyList<ForcingSpan> Follow(ImmutableArray<ForcingSpan> spans)
    {
        hours = spans[^1].UntilSeconds / LabUnits.SecondsPerHour;
        return new Followed(this, spans);
    }

    /// <summary>A run of so many hours begins.</summary>
    public void Begin(double allHours) => Volatile.Write(ref hours, allHours);

    /// <summary>An hour is past.</summary>
    public void Past(double done) => Volatile.Write(ref hour, done);

    public void Dispose()
    {
        if (timer is null)
        {
            return;
        }

        using var ended = new ManualResetEvent(false);
        if (timer.Dispose(ended))
        {
            ended.WaitOne();
        }

        if (shown)
        {
            Console.Error.Write("\r" + new string(' ', 60) + "\r");
            shown = false;
        }
    }

    private void Show()
    {
        shown = true;
        Console.Error.Write(
            string.Create(
                CultureInfo.InvariantCulture,
                $"\rcomputing, past hour {Volatile.Read(ref hour):0.##} of {Volatile.Read(ref hours):0.##}"
            )
        );
    }

    private sealed class Followed(LabProgress owner, ImmutableArray<ForcingSpan> spans)
        : IReadOnlyList<ForcingSpan>
    {
        public int Count => spans.Length;

        public ForcingSpan this[int index] => spans[index];

        public IEnumerator<ForcingSpan> GetEnumerator()
        {
            double from = 0.0;
            foreach (var span in spans)
            {
                Volatile.Write(ref owner.hour, from);
                yield return span;
                from = span.UntilSeconds / LabUnits.SecondsPerHour;
            }
        }

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
