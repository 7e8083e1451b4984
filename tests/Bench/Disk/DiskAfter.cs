using System.Text;

namespace Litterfall.Tests.Bench.Disk;

/// <summary>
/// What a disk holds after some of what a program did to it. After a kill: all of it. After a power cut: of
/// each file what was on the disk at its last sync, and of what came later any sectors; of the folder what
/// was there at its last sync, and of its later changes the first few. That is what POSIX promises, and no
/// more.
/// </summary>
internal sealed class DiskAfter
{
    private const int Sector = 512;

    private readonly Dictionary<string, Content> folder = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Content> kept = new(StringComparer.Ordinal);
    private readonly List<Action<Dictionary<string, Content>>> loose = [];

    private DiskAfter(IReadOnlyDictionary<string, byte[]> there)
    {
        foreach (var (path, bytes) in there)
        {
            folder[path] = kept[path] = new([.. bytes]);
        }
    }

    /// <summary>The files after a kill.</summary>
    /// <param name="there">Files that were there before, on the disk.</param>
    /// <param name="ops">What was done until then.</param>
    public static Dictionary<string, byte[]> Kill(
        IReadOnlyDictionary<string, byte[]> there,
        IEnumerable<DiskOp> ops
    )
    {
        var disk = new DiskAfter(there).Done(ops);
        return disk.folder.ToDictionary(f => f.Key, f => f.Value.All(), StringComparer.Ordinal);
    }

    /// <summary>The files after a power cut.</summary>
    public static Dictionary<string, byte[]> Cut(
        IReadOnlyDictionary<string, byte[]> there,
        IEnumerable<DiskOp> ops,
        Random chance
    )
    {
        var disk = new DiskAfter(there).Done(ops);
        foreach (var change in disk.loose.Take(chance.Next(disk.loose.Count + 1)))
        {
            change(disk.kept);
        }

        return disk.kept.ToDictionary(f => f.Key, f => f.Value.Some(chance), StringComparer.Ordinal);
    }

    private DiskAfter Done(IEnumerable<DiskOp> ops)
    {
        foreach (var op in ops)
        {
            switch (op.Kind)
            {
                case 'C':
                    var begun = new Content([]);
                    Change(f => f[op.Name] = begun);
                    break;
                case 'U':
                    Change(f => f.Remove(op.Name));
                    break;
                case 'R':
                    var moved = folder[op.Name];
                    var to = Encoding.UTF8.GetString(op.Data);
                    Change(f =>
                    {
                        f.Remove(op.Name);
                        f[to] = moved;
                    });
                    break;
                case 'S' when folder.TryGetValue(op.Name, out var file):
                    file.Sync();
                    break;
                case 'S':
                    loose.ForEach(change => change(kept));
                    loose.Clear();
                    break;
                default:
                    folder[op.Name].Later(op);
                    break;
            }
        }

        return this;
    }

    private void Change(Action<Dictionary<string, Content>> change)
    {
        change(folder);
        loose.Add(change);
    }

    /// <summary>Bytes of a file at its last sync, and what was done to it since.</summary>
    private sealed class Content(byte[] bytes)
    {
        private readonly List<DiskOp> later = [];
        private (byte[] Bytes, int Length) synced = (bytes, bytes.Length);

        public void Later(DiskOp op) => later.Add(op);

        public void Sync()
        {
            synced = Applied(synced, later);
            later.Clear();
        }

        public byte[] All() => With(later);

        /// <summary>Of what was done since the last sync, any sectors.</summary>
        public byte[] Some(Random chance)
        {
            var some = new List<DiskOp>();
            foreach (var op in later)
            {
                var share = chance.Next(3);
                if (op.Kind == 'T' && share == 2)
                {
                    some.Add(op);
                }

                for (var at = 0; at < op.Data.Length; at += Sector)
                {
                    if (share == 2 || (share == 1 && chance.Next(2) == 0))
                    {
                        var part = op.Data[at..Math.Min(at + Sector, op.Data.Length)];
                        some.Add(op with { At = op.At + at, Data = part });
                    }
                }
            }

            return With(some);
        }

        private byte[] With(List<DiskOp> ops)
        {
            var all = Applied((synced.Bytes[..synced.Length], synced.Length), ops);
            return all.Bytes[..all.Length];
        }

        /// <summary>In place where there is room.</summary>
        private static (byte[] Bytes, int Length) Applied((byte[] Bytes, int Length) file, List<DiskOp> ops)
        {
            var (all, length) = file;
            foreach (var op in ops)
            {
                var end = (int)op.At + op.Data.Length;
                if (end > all.Length)
                {
                    Array.Resize(ref all, 2 * end);
                }

                if (op.Kind == 'T' && end < length)
                {
                    all.AsSpan(end, length - end).Clear();
                }

                op.Data.CopyTo(all, (int)op.At);
                length = op.Kind == 'T' ? end : Math.Max(length, end);
            }

            return (all, length);
        }
    }
}
