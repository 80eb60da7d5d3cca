package counterpull.bench.repetitions;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Student;
import counterpull.engine.body.Sex;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * People drawn from the published curves' spread, each with a relation of repetitions to share of their own and a reserve that they call
 * with the published error; the load is the one with which they do so many with so many left. The 95 % interval of the strength of the joint
 * that limited must hold the truth in 93 to 97 % of 2,000 people. Seeds fixed beforehand.
 */
class RepetitionCoverageTest {
    private static final boolean LONG = Boolean.getBoolean("long");
    private static final int PEOPLE = LONG ? 2000 : 300;
    /** 300 people: four standard deviations (1.26 %) of a right method instead of the 2 % of 2,000. */
    private static final double LOW = LONG ? 0.93 : 0.90;

    private static final double HIGH = LONG ? 0.97 : 0.995;

    private static final PressProfile PRESS =
            PressProfile.of(Trials.task(LimbStrength.published(new Physique(Sex.FEMALE, 40, 64, 1.70))));

    @ParameterizedTest
    @CsvSource({"UPPER_BODY, 5, 1, 21", "ONE_JOINT, 9, 2, 25", "LEG_PRESS, 10, 4, 29"})
    void theLimitingJointsIntervalHoldsTheTruthShort(ShareOfMaximum relation, int done, int left, long seed) {
        theLimitingJointsIntervalHoldsTheTruth(relation, done, left, seed);
    }

    @ParameterizedTest
    @EnabledIfSystemProperty(named = "long", matches = "true")
    @CsvSource({
        "UPPER_BODY, 9, 2, 22",
        "UPPER_BODY, 10, 4, 23",
        "ONE_JOINT, 5, 1, 24",
        "ONE_JOINT, 10, 4, 26",
        "LEG_PRESS, 5, 1, 27",
        "LEG_PRESS, 9, 2, 28"
    })
    void theLimitingJointsIntervalHoldsTheTruth(ShareOfMaximum relation, int done, int left, long seed) {
        Simulation simulation = new Simulation(relation, done, left, seed);
        double share = simulation.coverage(1);
        assertThat(share)
                .as("likeliest: %s, %d done, %d left", relation, done, left)
                .isBetween(LOW, HIGH);
        assertThat(simulation.truly)
                .as("truly: %s, %d done, %d left", relation, done, left)
                .isBetween(LOW, HIGH);
    }

    /** The control: with the spread between people left out, far fewer intervals hold the truth. */
    @Test
    void anIntervalWithoutTheSpreadBetweenPeopleIsFound() {
        assertThat(new Simulation(ShareOfMaximum.LEG_PRESS, 9, 2, 30).coverage(0.3))
                .isLessThan(LOW);
    }

    private static final class Simulation {
        private final RepetitionBench bench;
        private final ShareOfMaximum relation;
        private final int done;
        private final SetEnd.Called end;
        private final Random random;
        private final List<List<HardestPlace>> places = new Places(PRESS, Optional.empty()).pairs();
        private final List<Pair> pairs = places.stream().map(Evidence::pair).toList();
        private double truly;

        Simulation(ShareOfMaximum relation, int done, int left, long seed) {
            this.relation = relation;
            this.done = done;
            end = new SetEnd.Called(left);
            random = new Random(seed);
            bench = new RepetitionBench(PRESS, relation, done, end, Optional.empty());
        }

        double coverage(double believedShareOfSpread) {
            int held = 0;
            int heldOfTrue = 0;
            for (int trial = 0; trial < PEOPLE; trial++) {
                double[][] scale = person();
                double most = Double.NEGATIVE_INFINITY;
                int limiting = 0;
                int side = 0;
                for (int g = 0; g < scale.length; g++) {
                    for (int i = 0; i < scale[g].length; i++) {
                        double effort = pairs.get(g).sides().get(i).logEffort() - scale[g][i];
                        if (effort > most) {
                            most = effort;
                            limiting = g;
                            side = i;
                        }
                    }
                }
                double load = Math.exp(asked() - most);
                List<JointEvidence> found = evidence(load, believedShareOfSpread);
                held += holds(found.get(0), scale) ? 1 : 0;
                HardestPlace place = places.get(limiting).get(side);
                JointEvidence true1 = found.stream()
                        .filter(each -> each.place().action() == place.action()
                                && each.place().limb() == place.limb())
                        .findFirst()
                        .orElseThrow();
                heldOfTrue += holds(true1, scale) ? 1 : 0;
            }
            truly = heldOfTrue / (double) PEOPLE;
            return held / (double) PEOPLE;
        }

        private double[][] person() {
            double[][] scale = new double[pairs.size()][];
            for (int g = 0; g < scale.length; g++) {
                Pair pair = pairs.get(g);
                double shared = pair.sharedSd() * random.nextGaussian();
                scale[g] = new double[pair.sides().size()];
                for (int i = 0; i < scale[g].length; i++) {
                    scale[g][i] = shared + pair.sides().get(i).ownSd() * random.nextGaussian();
                }
            }
            return scale;
        }

        /** Log share that this person's set really asks. */
        private double asked() {
            double reserve;
            do {
                // called up to 3: bias 0.2, error 1; 4 or 5: 0.5 and 1.5; longer sets more of both
                int more = Math.max(0, done + end.left() - 12);
                double bias = (end.left() <= 3 ? 0.2 : 0.5) + 0.3 * more;
                double sd = (end.left() <= 3 ? 1.0 : 1.5) * (more > 0 ? 1.5 : 1);
                reserve = end.left() + bias + sd * random.nextGaussian();
            } while (reserve < 0);
            double number = Math.min(ShareOfMaximum.MOST, done + reserve);
            double spread = Math.sqrt(Math.pow(relation.spread(number), 2) + 0.042 * 0.042 + 0.13 * 0.13);
            return Math.log(relation.share(number)) + spread * random.nextGaussian();
        }

        private List<JointEvidence> evidence(double load, double believed) {
            List<List<HardestPlace>> loaded = new ArrayList<>();
            for (List<HardestPlace> sides : places) {
                loaded.add(sides.stream().map(place -> scaled(place, load)).toList());
            }
            SetEnd.ToFailure toFailure = end.toFailure(done);
            Sighting seen =
                    new Sighting.Near(Math.log(relation.share(toFailure.mean())), believed * bench.logSd(toFailure));
            return new Evidence(loaded, seen).joints();
        }

        private static HardestPlace scaled(HardestPlace place, double load) {
            return new HardestPlace(place.limb(), place.action(), place.at(), place.effort() * load, place.curve());
        }

        private boolean holds(JointEvidence found, double[][] scale) {
            for (int g = 0; g < scale.length; g++) {
                for (int i = 0; i < scale[g].length; i++) {
                    HardestPlace place = places.get(g).get(i);
                    if (place.action() == found.place().action()
                            && place.limb() == found.place().limb()) {
                        return Math.abs(scale[g][i] - found.shift()) <= Student.TWO_SIDED_95 * found.sd();
                    }
                }
            }
            throw new IllegalStateException("a joint that nobody drew");
        }
    }
}
