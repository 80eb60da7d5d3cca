package counterpull.bench.machine;

import counterpull.bench.Answer;

/** What was read at a machine, by what is known of how it works. */
public sealed interface MachineBench permits ProfileBench, StackBench, LeverBench, CamTravelBench, CamTorqueBench {
    /** What the floor calls the machine. */
    String name();

    /** What the readings say; a refusal for each that makes no sense. */
    Answer<? extends MachineFound> answer();
}
