package counterpull.readings;

/**
 * One thing or person that was measured: its readings as they were taken, SI. The bench's answer is computed from it, and what was
 * found is written for a scenario.
 */
public interface Subject {
    /** What it is called ("rubber T1", "harbour sled"). */
    String name();

    /** What was found, as lines for a scenario file; empty where the readings give no answer. Comments say where each goes. */
    String forScenario();
}
