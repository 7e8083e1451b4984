using Litterfall.Domain.Photometry;
using Xunit;

namespace Litterfall.UnitTests.Domain.Photometry;

public sealed class SpectrumTableTests
{
    [Theory]
    [InlineData("nm,value\n400,1\n550.5,2\n700,3\n")]
    [InlineData("# a meter\nWavelength;Power\n400;1,0\n550,5;2\n700;3\n")]
    [InlineData("400\t1\n550.5\t2\n700\t3")]
    [InlineData("400 1\r\n550,5 2\r\n700 3\r\n")]
    public void Tables_of_meters_are_read(string text)
    {
        var table = SpectrumTable.Read("s.csv", text).Value!;
        Assert.Equal([400.0, 550.5, 700.0], table.Nanometers);
        Assert.Equal([1.0, 2.0, 3.0], table.Values);
    }

    [Theory]
    [InlineData("", 1, "does not cover visible light")]
    [InlineData("500,1\n700,1\n", 1, "does not cover visible light")]
    [InlineData("400,1\n400,2\n700,1\n", 2, "do not rise")]
    [InlineData("400,1\n700,-1\n", 2, "cannot belong to a spectrum")]
    [InlineData("400,1\n700\n", 2, "not a row of a spectrum")]
    [InlineData("400,1\n500,1e308\n700,1\n", 2, "cannot belong to a spectrum")]
    [InlineData("400,5e-324\n700,5e-324\n", 1, "does not cover visible light")]
    [InlineData("400,1\n500,NaN\n700,1\n", 2, "not a row of a spectrum")]
    [InlineData("400,0\n700,0\n", 1, "does not cover visible light")]
    public void Wrong_tables_get_one_sentence(string text, int line, string message)
    {
        var fault = Assert.Single(SpectrumTable.Read("s.csv", text).Faults);
        Assert.Equal(line, fault.Line);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }
}
