package counterpull.report.result;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.engine.profile.PressProfile;
import counterpull.letgo.Outcome;
import counterpull.letgo.Releases;
import counterpull.letgo.SledReleases;

/** What a setup does by itself when it is let go, for machines; the unit of every number is in its key. */
final class LetGoJson {
    private LetGoJson() {}

    static void write(ObjectNode node, PressProfile profile) {
        Releases releases = SledReleases.of(profile);
        outcome(node.putObject("at_bottom"), releases.atBottom(), profile);
        outcome(node.putObject("at_top"), releases.atTop(), profile);
        releases.hardest().ifPresent(outcome -> outcome(node.putObject("hardest_arrival"), outcome, profile));
        releases.pulledUp().ifPresent(outcome -> outcome(node.putObject("pulled_up"), outcome, profile));
        node.put("largest_energy_error", releases.largestError());
    }

    private static void outcome(ObjectNode node, Outcome outcome, PressProfile profile) {
        double plate = profile.plate(0) + outcome.release().place();
        node.put(
                "mark_m",
                profile.task()
                        .stance()
                        .seat()
                        .markAt(plate, profile.task().sled().rail()));
        node.put("speed_when_let_go_m_per_s", 0.0 + outcome.release().speed()); // never minus zero
        node.put("ending", outcome.ending().code());
        node.put("time_s", outcome.end().time());
        node.put("drop_m", outcome.drop());
        node.put("arrival_speed_m_per_s", outcome.arrivalSpeed());
        node.put("arrival_energy_J", outcome.end().kinetic());
        node.put("largest_speed_m_per_s", outcome.way().fastest());
        node.put("lost_to_friction_J", outcome.energy().friction());
        node.put("lost_in_rubber_J", outcome.energy().hysteresis());
    }
}
