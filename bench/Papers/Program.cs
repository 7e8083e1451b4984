using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Running;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.Quantities.Sizing;

BenchmarkRunner.Run<Litterfall.Bench.Papers.AllPapers>(args: args);

namespace Litterfall.Bench.Papers
{
    /// <summary>All papers of one sample in one warm process, beside the check they rest on.</summary>
    [MemoryDiagnoser]
    [InProcess]
    [WarmupCount(15)]
    [IterationCount(10)]
    public class AllPapers
    {
        private DesignResult result = null!;

        /// <summary>Sample.</summary>
        [Params("ld-201-flat", "ld-203-museum-foyer", "ld-204-shop-kits")]
        public string Sample { get; set; } = "";

        /// <summary>Reads the sample.</summary>
        [GlobalSetup]
        public void Read()
        {
            var root = AppContext.BaseDirectory;
            while (!Directory.Exists(Path.Combine(root, "samples")))
            {
                root = Path.GetDirectoryName(root)!;
            }

            result = DesignRun.Execute(
                Shop.Design(Path.Combine(root, "samples", $"{Sample}.viv.yaml"), null).Value!
            );
        }

        /// <summary>The numbers and findings alone.</summary>
        [Benchmark(Baseline = true)]
        public int Check() => DesignRun.Execute(result.Numbers.Design).Findings.Length;

        /// <summary>Every paper and file.</summary>
        [Benchmark]
        public long Papers() =>
            PaperList
                .Write(
                    new PaperJob(
                        result,
                        new PaperWish(PaperSize.A4, null, "bench", false),
                        SettingsCard.Of(result.Numbers)
                    )
                )
                .Sum(p => (long)p.Bytes.Length);
    }
}
