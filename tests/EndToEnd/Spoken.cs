using System.Text;

namespace Litterfall.Tests.EndToEnd;

/// <summary>
/// What a command says on the console while it runs within the process of the tests. Commands run side by
/// side, so what is said goes to the one from whose flow it comes.
/// </summary>
internal sealed class Spoken : IDisposable
{
    private static readonly AsyncLocal<Spoken?> Current = new();
    private readonly StringWriter output = new();
    private readonly StringWriter error = new();

    static Spoken()
    {
        Console.SetOut(new Routed(Console.Out, spoken => spoken.output));
        Console.SetError(new Routed(Console.Error, spoken => spoken.error));
        Environment.CurrentDirectory = Cli.Root;
    }

    public string Out => output.ToString();

    public string Error => error.ToString();

    public static Spoken Begin()
    {
        var spoken = new Spoken();
        Current.Value = spoken;
        return spoken;
    }

    public void Dispose() => Current.Value = null;

    private sealed class Routed(TextWriter otherwise, Func<Spoken, TextWriter> writer) : TextWriter
    {
        public override Encoding Encoding => otherwise.Encoding;

        private TextWriter To => Current.Value is { } spoken ? writer(spoken) : otherwise;

        public override void Write(char value) => To.Write(value);

        public override void Write(string? value) => To.Write(value);

        public override void Write(char[] buffer, int index, int count) => To.Write(buffer, index, count);

        public override void Flush() => To.Flush();
    }
}
