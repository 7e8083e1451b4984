using System.Buffers.Binary;
using System.Text;

namespace Litterfall.Tests.Bench.Disk;

/// <summary>
/// One thing done to a file: W bytes at a place, T a new length, S on the disk, C begun, U gone, R renamed.
/// </summary>
/// <param name="Kind">What was done.</param>
/// <param name="Name">The file.</param>
/// <param name="At">Place of the bytes, or the new length.</param>
/// <param name="Data">The bytes, or the new name.</param>
/// <param name="End">Length of the log after this.</param>
public sealed record DiskOp(char Kind, string Name, long At, byte[] Data, long End)
{
    private const int Head = 21;

    /// <summary>All of a log; what its last moment did not finish is left out.</summary>
    public static IReadOnlyList<DiskOp> Read(string path)
    {
        ReadOnlySpan<byte> all = File.ReadAllBytes(path);
        var ops = new List<DiskOp>();
        for (var at = 0; at + Head <= all.Length;)
        {
            var letters = BinaryPrimitives.ReadInt32LittleEndian(all[(at + 1)..]);
            var place = BinaryPrimitives.ReadInt64LittleEndian(all[(at + 5)..]);
            var size = (int)BinaryPrimitives.ReadInt64LittleEndian(all[(at + 13)..]);
            var end = at + Head + letters + size;
            if (end > all.Length)
            {
                break;
            }

            var name = Encoding.UTF8.GetString(all.Slice(at + Head, letters));
            ops.Add(new((char)all[at], name, place, all.Slice(at + Head + letters, size).ToArray(), end));
            at = end;
        }

        return ops;
    }
}
