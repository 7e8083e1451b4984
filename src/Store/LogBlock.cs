using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text;
using Litterfall.Domain.Tanks;

namespace Litterfall.Store;

/// <summary>
/// Readings packed into bytes: times as runs of equal steps, values as whole numbers of a decimal place where
/// that gives each of them back exactly, else as they are; marks as runs; a checksum over all.
/// </summary>
internal static class LogBlock
{
    /// <summary>Readings of a full block.</summary>
    public const int Full = 4096;

    private const byte Version = 1;
    private const byte Exact = 255;
    private const int MostPlaces = 6;
    private const int SumLength = sizeof(ulong);

    // Fowler, Noll and Vo, variant 1a of 64 bits.
    private const ulong SumStart = 14695981039346656037UL;
    private const ulong SumFactor = 1099511628211UL;
    private static readonly double[] Tens = [1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6];

    /// <summary>Packs some readings of a series.</summary>
    /// <param name="series">The series.</param>
    /// <param name="from">First reading.</param>
    /// <param name="count">How many.</param>
    public static byte[] Pack(LogSeries series, int from, int count)
    {
        var bytes = new ByteWriter(count * 3);
        bytes.Put(Version);
        bytes.Number((ulong)count);
        var unit = Encoding.UTF8.GetBytes(series.Unit);
        bytes.Number((ulong)unit.Length);
        bytes.Put(unit);
        Times(bytes, series.Ticks.AsSpan(from, count));
        Values(bytes, series.Values.AsSpan(from, count));
        Marks(bytes, series.Marks.AsSpan(from, count));
        var packed = bytes.ToArray(SumLength);
        BinaryPrimitives.WriteUInt64LittleEndian(
            packed.AsSpan(^SumLength..),
            Sum(packed.AsSpan(..^SumLength))
        );
        return packed;
    }

    /// <summary>Adds the readings of a block to what was read before.</summary>
    /// <returns>Unit of the values.</returns>
    /// <exception cref="InvalidDataException">The block is damaged.</exception>
    public static string Unpack(byte[] packed, Unpacked into)
    {
        if (
            packed.Length < SumLength + 2
            || packed[0] != Version
            || BinaryPrimitives.ReadUInt64LittleEndian(packed.AsSpan(^SumLength..))
                != Sum(packed.AsSpan(..^SumLength))
        )
        {
            throw new InvalidDataException("A damaged block of readings in the file of the bench.");
        }

        var bytes = new ByteReader(packed, 1);
        var count = (int)bytes.Number();
        var unit = Encoding.UTF8.GetString(bytes.Take((int)bytes.Number()));
        Times(ref bytes, count, into.Ticks);
        Values(ref bytes, count, into.Values);
        Marks(ref bytes, count, into.Marks);
        return unit;
    }

    private static ulong Sum(ReadOnlySpan<byte> bytes)
    {
        var sum = SumStart;
        foreach (var b in bytes)
        {
            sum = (sum ^ b) * SumFactor;
        }

        return sum;
    }

    private static void Times(ByteWriter bytes, ReadOnlySpan<long> ticks)
    {
        bytes.Signed(ticks[0]);
        for (var i = 1; i < ticks.Length;)
        {
            var step = ticks[i] - ticks[i - 1];
            var run = 1;
            while (i + run < ticks.Length && ticks[i + run] - ticks[i + run - 1] == step)
            {
                run++;
            }

            bytes.Signed(step);
            bytes.Number((ulong)run);
            i += run;
        }
    }

    private static void Times(ref ByteReader bytes, int count, List<long> ticks)
    {
        var at = bytes.Signed();
        ticks.Add(at);
        for (var i = 1; i < count;)
        {
            var step = bytes.Signed();
            for (var run = (int)bytes.Number(); run > 0; run--)
            {
                ticks.Add(at += step);
                i++;
            }
        }
    }

    private static void Values(ByteWriter bytes, ReadOnlySpan<double> values)
    {
        var places = Places(values);
        bytes.Put(places);
        var last = 0L;
        foreach (var value in values)
        {
            if (places == Exact)
            {
                bytes.Bits(value);
                continue;
            }

            var whole = (long)Math.Round(value * Tens[places]);
            bytes.Signed(whole - last);
            last = whole;
        }
    }

    /// <summary>Fewest decimal places that give every value back bit by bit.</summary>
    private static byte Places(ReadOnlySpan<double> values)
    {
        byte places = 0;
        foreach (var value in values)
        {
            while (places <= MostPlaces && !IsWhole(value, places))
            {
                places++;
            }

            if (places > MostPlaces)
            {
                return Exact;
            }
        }

        // A place that suited an early value must suit all.
        foreach (var value in values)
        {
            if (!IsWhole(value, places))
            {
                return Exact;
            }
        }

        return places;
    }

    private static bool IsWhole(double value, int places)
    {
        var scaled = Math.Round(value * Tens[places]);
        return Math.Abs(scaled) < 1e15
            && BitConverter.DoubleToInt64Bits((long)scaled / Tens[places])
                == BitConverter.DoubleToInt64Bits(value);
    }

    private static void Values(ref ByteReader bytes, int count, List<double> values)
    {
        var places = bytes.Byte();
        var last = 0L;
        for (var i = 0; i < count; i++)
        {
            if (places == Exact)
            {
                values.Add(bytes.Bits());
                continue;
            }

            last += bytes.Signed();
            values.Add(last / Tens[places]);
        }
    }

    private static void Marks(ByteWriter bytes, ReadOnlySpan<LogMarks> marks)
    {
        for (var i = 0; i < marks.Length;)
        {
            var run = 1;
            while (i + run < marks.Length && marks[i + run] == marks[i])
            {
                run++;
            }

            bytes.Put((byte)marks[i]);
            bytes.Number((ulong)run);
            i += run;
        }
    }

    private static void Marks(ref ByteReader bytes, int count, List<LogMarks> marks)
    {
        for (var i = 0; i < count;)
        {
            var mark = (LogMarks)bytes.Byte();
            for (var run = (int)bytes.Number(); run > 0; run--)
            {
                marks.Add(mark);
                i++;
            }
        }
    }

    /// <summary>Readings of several blocks, one after the other.</summary>
    internal sealed class Unpacked
    {
        public List<long> Ticks { get; } = [];

        public List<double> Values { get; } = [];

        public List<LogMarks> Marks { get; } = [];

        public LogSeries Series(string place, LogQuantity quantity, string unit) =>
            new(place, quantity, unit)
            {
                Ticks = [.. Ticks],
                Values = [.. Values],
                Marks = [.. Marks],
            };
    }

    /// <summary>Bytes as they are written.</summary>
    private sealed class ByteWriter(int size)
    {
        private byte[] bytes = new byte[Math.Max(size, 64)];
        private int length;

        public void Put(byte value)
        {
            if (length == bytes.Length)
            {
                Array.Resize(ref bytes, length * 2);
            }

            bytes[length++] = value;
        }

        public void Put(ReadOnlySpan<byte> values)
        {
            foreach (var value in values)
            {
                Put(value);
            }
        }

        public void Number(ulong value)
        {
            while (value >= 0x80)
            {
                Put((byte)(value | 0x80));
                value >>= 7;
            }

            Put((byte)value);
        }

        public void Signed(long value) => Number((ulong)(value << 1) ^ (ulong)(value >> 63));

        public void Bits(double value)
        {
            Span<byte> eight = stackalloc byte[sizeof(double)];
            BinaryPrimitives.WriteDoubleLittleEndian(eight, value);
            Put(eight);
        }

        public byte[] ToArray(int room)
        {
            var all = new byte[length + room];
            bytes.AsSpan(0, length).CopyTo(all);
            return all;
        }
    }

    /// <summary>Bytes as they are read.</summary>
    private ref struct ByteReader(byte[] bytes, int at)
    {
        private readonly byte[] all = bytes;
        private int next = at;

        public byte Byte() => all[next++];

        public ReadOnlySpan<byte> Take(int count)
        {
            next += count;
            return all.AsSpan(next - count, count);
        }

        public ulong Number()
        {
            var value = 0UL;
            for (var shift = 0; ; shift += 7)
            {
                var b = all[next++];
                value |= (ulong)(b & 0x7F) << shift;
                if (b < 0x80)
                {
                    return value;
                }
            }
        }

        public long Signed()
        {
            var value = Number();
            return (long)(value >> 1) ^ -(long)(value & 1);
        }

        public double Bits() => BinaryPrimitives.ReadDoubleLittleEndian(Take(sizeof(double)));
    }
}
