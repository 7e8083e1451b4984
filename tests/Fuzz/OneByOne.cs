using Xunit.Sdk;
using Xunit.v3;

// The clock of the processor is that of the whole program: what is timed must run alone.
[assembly: Parallelization(Mode = ParallelMode.None)]
