using System.Buffers.Binary;

namespace Layshaft.Site.Photos;

/// <summary>Finds the properties of the primary item in the metadata box (ISO/IEC 14496-12, 8.11; ISO/IEC 23008-12, 9.3).</summary>
internal static class HeifProperties
{
    /// <summary>Reads them. Throws an out-of-range exception when a count or an index does not fit.</summary>
    public static HeifHeader OfPrimary(byte[] meta)
    {
        var boxes = HeifBox.Within(meta, 12, meta.Length).ToList(); // Behind size, type, version and flags
        var pitm = boxes.Find(b => b.Type == "pitm");
        var iprp = boxes.Find(b => b.Type == "iprp");
        if (pitm.Type is null || iprp.Type is null)
        {
            return new(HeaderOutcome.Damaged);
        }

        var primary = ItemId(pitm.Content(meta)[4..], wide: meta[pitm.Start] > 0);
        var inside = HeifBox.Within(meta, iprp.Start, iprp.End).ToList();
        var ipco = inside.Find(b => b.Type == "ipco");
        var properties = ipco.Type is null ? [] : HeifBox.Within(meta, ipco.Start, ipco.End).ToList();
        var header = new HeifHeader(HeaderOutcome.Damaged);
        foreach (var ipma in inside.Where(b => b.Type == "ipma"))
        {
            foreach (var index in Associated(ipma.Content(meta), primary))
            {
                if (index >= 1 && index <= properties.Count)
                {
                    header = With(header, properties[index - 1], meta);
                }
            }
        }

        return header;
    }

    private static uint ItemId(ReadOnlySpan<byte> at, bool wide) =>
        wide ? BinaryPrimitives.ReadUInt32BigEndian(at) : BinaryPrimitives.ReadUInt16BigEndian(at);

    private static List<int> Associated(ReadOnlySpan<byte> ipma, uint item)
    {
        var wideIds = ipma[0] > 0;
        var wideIndices = (ipma[3] & 1) == 1;
        var entries = BinaryPrimitives.ReadUInt32BigEndian(ipma[4..]);
        var found = new List<int>();
        var at = 8;
        for (uint entry = 0; entry < entries; entry++)
        {
            var id = ItemId(ipma[at..], wideIds);
            at += wideIds ? 4 : 2;
            int count = ipma[at++];
            for (; count > 0; count--)
            {
                var index = wideIndices ? BinaryPrimitives.ReadUInt16BigEndian(ipma[at..]) & 0x7FFF : ipma[at] & 0x7F;
                at += wideIndices ? 2 : 1;
                if (id == item)
                {
                    found.Add(index);
                }
            }
        }

        return found;
    }

    private static HeifHeader With(HeifHeader header, HeifBox property, byte[] meta)
    {
        var data = property.Content(meta);
        switch (property.Type)
        {
            case "ispe":
                var width = BinaryPrimitives.ReadUInt32BigEndian(data[4..]);
                var height = BinaryPrimitives.ReadUInt32BigEndian(data[8..]);
                var sound = width is > 0 and <= int.MaxValue && height is > 0 and <= int.MaxValue;
                return sound ? header with { Outcome = HeaderOutcome.Read, Width = (int)width, Height = (int)height } : header;
            case "irot":
                return header with { Orientation = HeifTurn.Then(header.Orientation, quarterTurnsLeft: data[0] & 3) };
            case "imir":
                return header with { Orientation = HeifTurn.ThenMirror(header.Orientation, leftAndRight: (data[0] & 1) == 1) };
            case "colr" when data[..4].SequenceEqual("prof"u8) || data[..4].SequenceEqual("rICC"u8):
                return header with { Icc = data[4..].ToArray() };
            case "colr" when data[..4].SequenceEqual("nclx"u8):
                return header with
                {
                    Primaries = BinaryPrimitives.ReadUInt16BigEndian(data[4..]),
                    Transfer = BinaryPrimitives.ReadUInt16BigEndian(data[6..]),
                };
            default:
                return header;
        }
    }
}
