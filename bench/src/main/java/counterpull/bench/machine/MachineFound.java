package counterpull.bench.machine;

/** What came of a machine's bench. */
public sealed interface MachineFound permits ProfileFound, StackFound, LeverFound, CamFound {}
