package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * crosscheck: every exercise of the library against a sum done by hand. Weight times distance at the hardest place, the limb's own weight
 * added, as said in exercise-bands.csv; the band around it is what such a sum leaves out (starting and stopping, friction, the exact
 * place): common practice, no source.
 */
class ExerciseBandsTest {
    private static final Path BANDS = Path.of("src", "test", "resources", "exercise-bands.csv");

    /**
     * What was worked out by hand.
     *
     * @param joint the joint looked at
     * @param action what it has to do at its hardest
     * @param least N·m
     * @param most N·m
     */
    record Band(String exercise, String joint, String action, double least, double most) {
        static Band of(String line) {
            String[] cells = line.split(";");
            return new Band(cells[0], cells[1], cells[2], Double.parseDouble(cells[3]), Double.parseDouble(cells[4]));
        }

        @Override
        public String toString() {
            return exercise;
        }
    }

    static List<Band> bands() throws IOException {
        try (Stream<String> lines = Files.lines(BANDS)) {
            return lines.skip(1).map(Band::of).toList();
        }
    }

    @Test
    void everyExerciseHasItsSum() throws IOException {
        assertThat(bands()).extracting(Band::exercise).containsExactlyInAnyOrderElementsOf(LibraryExercises.names());
        assertThat(bands()).hasSizeGreaterThan(30).allSatisfy(band -> {
            // a band wider than from 1 to 2 would let a lost factor of two pass
            assertThat(band.most() / band.least()).isBetween(1.0, 2.0);
        });
    }

    @ParameterizedTest
    @MethodSource("bands")
    void theLargestTorqueIsWhatTheSumSays(Band band) {
        Profile profile = LibraryExercises.profile(LibraryExercises.scenario(band.exercise()));
        for (LimbProfile limb : profile.limbs()) {
            Joint joint = limb.joints().stream()
                    .filter(one -> one.words().equals(band.joint()))
                    .findFirst()
                    .orElseThrow();
            Largest largest = new Largest(limb, joint, profile.positions());
            assertThat(largest.torque).isBetween(band.least(), band.most());
            assertThat(limb.asked(joint, largest.phase, largest.position).words())
                    .isEqualTo(band.action());
        }
    }

    /** The hardest place of each is within what the demonstration person has, and hard enough to train: 20 to 95 % of it. */
    @ParameterizedTest
    @MethodSource("bands")
    void asksForSomethingThatThePersonCanDo(Band band) {
        Profile profile = LibraryExercises.profile(LibraryExercises.scenario(band.exercise()));
        double hardest = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                for (LimbProfile limb : profile.limbs()) {
                    finite(limb, phase, i);
                }
                hardest = Math.max(hardest, limiting(profile, phase, i));
            }
        }
        assertThat(hardest).isBetween(0.2, 0.95);
    }

    private static void finite(LimbProfile limb, Phase phase, int position) {
        for (Joint joint : limb.joints()) {
            assertThat(limb.torque(joint, phase, position)).isFinite();
            assertThat(limb.angle(joint, position)).isFinite();
            double effort = limb.effort(joint, phase, position);
            assertThat(Double.isNaN(effort) || effort >= 0).isTrue();
        }
    }

    /** Effort of the joint that limits; where no effort is known there is none to name. */
    private static double limiting(Profile profile, Phase phase, int position) {
        boolean known =
                profile.joints().stream().anyMatch(joint -> !Double.isNaN(profile.effort(joint, phase, position)));
        var limiting = profile.limiting(profile.joints(), phase, position);
        assertThat(limiting.isPresent()).isEqualTo(known);
        return limiting.map(found -> found.effort()).orElse(0.0);
    }

    /** Where a joint's torque is largest, whichever way it acts. */
    private static final class Largest {
        private double torque = -1;
        private Phase phase = Phase.HELD;
        private int position;

        Largest(LimbProfile limb, Joint joint, int positions) {
            for (Phase one : Phase.values()) {
                for (int i = 0; i < positions; i++) {
                    take(Math.abs(limb.torque(joint, one, i)), one, i);
                }
            }
        }

        private void take(double size, Phase at, int i) {
            if (size > torque) {
                torque = size;
                phase = at;
                position = i;
            }
        }
    }
}
