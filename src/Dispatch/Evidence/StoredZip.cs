using System.Buffers.Binary;
using System.Text;

namespace Litterfall.Dispatch.Evidence;

/// <summary>A file in a zip.</summary>
/// <param name="Name">Its name with "/" between folders, of plain letters.</param>
/// <param name="Bytes">Its bytes.</param>
internal sealed record ZipPart(string Name, byte[] Bytes)
{
    /// <summary>Its checksum as the zip says.</summary>
    public uint Crc { get; init; }
}

/// <summary>
/// Zip files without compression, always written the same: files one after another, one date, then the list
/// (APPNOTE 6.3, stored). Any tool opens them, and each byte has one right value.
/// </summary>
internal static class StoredZip
{
    private const uint LocalSign = 0x04034B50;
    private const uint ListSign = 0x02014B50;
    private const uint EndSign = 0x06054B50;
    private const int LocalLength = 30;
    private const int ListLength = 46;
    private const int EndLength = 22;
    private const ushort Version = 20;

    /// <summary>The first of January 1980, the earliest date of a zip: evidence has its own times.</summary>
    private const ushort Date = 0x0021;

    /// <summary>Writes it.</summary>
    public static byte[] Write(IReadOnlyList<ZipPart> parts)
    {
        using var zip = new MemoryStream();
        var offsets = new List<uint>();
        foreach (var part in parts)
        {
            offsets.Add((uint)zip.Position);
            zip.Write(Local(part));
            zip.Write(part.Bytes);
        }

        var list = (uint)zip.Position;
        for (var i = 0; i < parts.Count; i++)
        {
            zip.Write(Listed(parts[i], offsets[i]));
        }

        zip.Write(End(parts.Count, (uint)zip.Position - list, list));
        return zip.ToArray();
    }

    /// <summary>
    /// Reads the files as they were written one after another; stops at the first place that is not as this
    /// program writes it.
    /// </summary>
    public static List<ZipPart> Read(byte[] zip)
    {
        var parts = new List<ZipPart>();
        var at = 0;
        while (at + LocalLength <= zip.Length && Word(zip, at) == LocalSign)
        {
            var (size, name) = (
                Word(zip, at + 22),
                BinaryPrimitives.ReadUInt16LittleEndian(zip.AsSpan(at + 26))
            );
            var start = at + LocalLength + name;
            if (start + (long)size > zip.Length)
            {
                break;
            }

            parts.Add(
                new(Encoding.ASCII.GetString(zip, at + LocalLength, name), zip[start..(start + (int)size)])
                {
                    Crc = Word(zip, at + 14),
                }
            );
            at = start + (int)size;
        }

        return parts;
    }

    /// <summary>Reads the files by the list at the end; stops where it is damaged.</summary>
    public static List<ZipPart> ReadList(byte[] zip)
    {
        var parts = new List<ZipPart>();
        var end = zip.Length - EndLength;
        if (end < 0 || Word(zip, end) != EndSign || Word(zip, end + 16) > (uint)end)
        {
            return parts;
        }

        var at = (int)Word(zip, end + 16);
        while (at + ListLength <= zip.Length && Word(zip, at) == ListSign)
        {
            var name = BinaryPrimitives.ReadUInt16LittleEndian(zip.AsSpan(at + 28));
            var (size, offset) = (Word(zip, at + 24), Word(zip, at + 42));
            var start = offset + LocalLength + (long)name;
            if (start + size > zip.Length || at + ListLength + name > zip.Length)
            {
                break;
            }

            parts.Add(
                new(
                    Encoding.ASCII.GetString(zip, at + ListLength, name),
                    zip[(int)start..(int)(start + size)]
                )
                {
                    Crc = Word(zip, at + 16),
                }
            );
            at += ListLength + name;
        }

        return parts;
    }

    private static uint Word(byte[] zip, int at) => BinaryPrimitives.ReadUInt32LittleEndian(zip.AsSpan(at));

    private static byte[] Local(ZipPart part)
    {
        var head = new Fields(LocalLength + part.Name.Length);
        head.Word(LocalSign).Half(Version).Half(0);
        Common(head, part).Half((ushort)part.Name.Length).Half(0).Text(part.Name);
        return head.Bytes;
    }

    private static byte[] Listed(ZipPart part, uint offset)
    {
        var line = new Fields(ListLength + part.Name.Length);
        line.Word(ListSign).Half(Version).Half(Version).Half(0);
        Common(line, part).Half((ushort)part.Name.Length).Half(0).Half(0).Half(0).Half(0).Word(0);
        line.Word(offset).Text(part.Name);
        return line.Bytes;
    }

    private static byte[] End(int count, uint size, uint offset)
    {
        var end = new Fields(EndLength);
        end.Word(EndSign).Half(0).Half(0).Half((ushort)count).Half((ushort)count);
        end.Word(size).Word(offset).Half(0);
        return end.Bytes;
    }

    /// <summary>Way of packing (none), time, date, checksum and sizes.</summary>
    private static Fields Common(Fields head, ZipPart part) =>
        head.Half(0)
            .Half(0)
            .Half(Date)
            .Word(Crc32.From(part.Bytes))
            .Word((uint)part.Bytes.Length)
            .Word((uint)part.Bytes.Length);

    private sealed class Fields(int length)
    {
        private int at;

        public byte[] Bytes { get; } = new byte[length];

        public Fields Half(ushort value)
        {
            BinaryPrimitives.WriteUInt16LittleEndian(Bytes.AsSpan(at), value);
            at += sizeof(ushort);
            return this;
        }

        public Fields Word(uint value)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(Bytes.AsSpan(at), value);
            at += sizeof(uint);
            return this;
        }

        public Fields Text(string text)
        {
            at += Encoding.ASCII.GetBytes(text, Bytes.AsSpan(at));
            return this;
        }
    }
}
