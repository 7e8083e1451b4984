namespace Litterfall.Dispatch.Evidence;

/// <summary>
/// The checksum of zip files (CRC-32 of ISO 3309, reflected polynomial EDB88320), and where a single changed
/// byte lies that turned one checksum into another.
/// </summary>
internal static class Crc32
{
    private const uint Polynomial = 0xEDB88320;

    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(i => Row((uint)i))];

    /// <summary>For each upper byte the row of the table that has it: the step back.</summary>
    private static readonly byte[] ByTop = Tops();

    /// <summary>The checksum.</summary>
    public static uint From(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc = (crc >> 8) ^ Table[(byte)(crc ^ value)];
        }

        return ~crc;
    }

    /// <summary>
    /// Places at which changing one byte gives the wanted checksum, and the byte that would be there. The
    /// difference of two checksums depends on the place and on the bits that changed alone, so it is followed
    /// back from the end byte by byte.
    /// </summary>
    public static IEnumerable<(int At, byte Value)> OneByteAway(byte[] bytes, uint wanted)
    {
        var difference = From(bytes) ^ wanted;
        for (var at = bytes.Length - 1; at >= 0; at--)
        {
            var row = ByTop[difference >> 24];
            if (Table[row] == difference && row != 0)
            {
                yield return (at, (byte)(bytes[at] ^ row));
            }

            // One step back through a byte that did not change.
            difference = ((difference ^ Table[row]) << 8) | row;
        }
    }

    private static uint Row(uint value)
    {
        for (var bit = 0; bit < 8; bit++)
        {
            value = (value & 1) == 1 ? (value >> 1) ^ Polynomial : value >> 1;
        }

        return value;
    }

    private static byte[] Tops()
    {
        var tops = new byte[256];
        for (var i = 0; i < Table.Length; i++)
        {
            tops[Table[i] >> 24] = (byte)i;
        }

        return tops;
    }
}
