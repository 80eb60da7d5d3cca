package counterpull.bench.repetitions;

import counterpull.bench.Answer;
import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Student;
import counterpull.engine.body.Side;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * So many repetitions at a setup whose profile is known.
 *
 * <p>Repetitions to failure → share c of what can be lifted once → the hardest place's effort while moving is c, with a spread of its log of
 * (in quadrature): what people differ by at that number ({@link ShareOfMaximum}); how well the reserve was called ({@link SetEnd}); 4.2 %,
 * what a largest lift moves by from day to day (Grgic 2020, median of 32 studies; looked up); 13 %, the step between a lift once and torque
 * held still (Lesnak 2020, 9.1 of 69.1 kg; computed from the abstract). The speed of the movement is in the effort already.
 *
 * <p>Which joint gave out is settled by the profile as far as the curves are sure: the one that did is measured, the others cannot have
 * been asked more than c, so they get a floor. Both sides share most of what is unknown: they differ by 8 % each (standard deviation, our
 * assumption: healthy legs differ by about a tenth).
 *
 * @param profile of the setup, with the curves as they stand, at the speed it was done
 * @param relation what kind of exercise it was
 * @param done repetitions done, 1 to 20
 * @param end how the set ended
 * @param gaveOut the side that gave out, where that was seen; empty where both may have
 */
public record RepetitionBench(Profile profile, ShareOfMaximum relation, int done, SetEnd end, Optional<Side> gaveOut) {
    /** Most repetitions that are left to call: beyond it people guess. */
    public static final int MOST_LEFT = 6;

    /** Most repetitions that say anything about strength. */
    public static final int MOST_DONE = 20;

    static final double RETEST_SD = 0.042;
    static final double HELD_STILL_SD = 0.13;
    private static final int LOUD = 12;
    private static final double UNLIKELY = 3;

    /** What the set says, or why it says nothing. */
    public Answer<RepetitionResult> answer() {
        List<Remark> remarks = new ArrayList<>(ofReadings());
        List<List<HardestPlace>> places = new Places(profile, gaveOut).pairs();
        if (places.isEmpty()) {
            remarks.add(Remark.refuses(
                    "no-effort-known",
                    "no joint of this setup has an effort that is known, so repetitions say nothing of any: the person needs a"
                            + " strength curve there, published or their own"));
        }
        if (remarks.stream().anyMatch(Remark::refuses)) {
            return Answer.refused(remarks);
        }
        RepetitionResult result = result(places);
        remarks.addAll(ofResult(result));
        return Answer.of(result, remarks);
    }

    private List<Remark> ofReadings() {
        List<Remark> remarks = new ArrayList<>();
        if (done < 1 || done > MOST_DONE) {
            remarks.add(
                    Remark.refuses("repetitions-outside", "repetitions done: ")
                            .then(done, Kind.COUNT)
                            .then(
                                    done < 1
                                            ? ", and a set has one at least"
                                            : ", more than the 20 up to which they say anything of strength: use a heavier setup"));
        }
        if (end instanceof SetEnd.Called called && (called.left() < 0 || called.left() > MOST_LEFT)) {
            remarks.add(Remark.refuses("reserve-outside", "repetitions left: ")
                    .then(called.left(), Kind.COUNT)
                    .then(
                            called.left() < 0
                                    ? ", which cannot be below none"
                                    : ", more than the 6 up to which people can tell: go on until fewer are left, or use a heavier"
                                            + " setup"));
        }
        return remarks;
    }

    private RepetitionResult result(List<List<HardestPlace>> places) {
        SetEnd.ToFailure toFailure = end.toFailure(done);
        boolean floor = onlyAtMost(toFailure);
        double logShare = Math.log(relation.share(toFailure.mean()));
        double sd = logSd(toFailure);
        Sighting seen = floor ? new Sighting.AtMost(logShare, sd) : new Sighting.Near(logShare, sd);
        double factor = Math.exp(Student.TWO_SIDED_95 * sd);
        double share = Math.exp(logShare);
        Estimate estimate = new Estimate(share, share * sd, share / factor, share * factor, Estimate.Standing.FREE);
        return new RepetitionResult(this, toFailure, estimate, new Evidence(places, seen).joints());
    }

    /** Whether the set only says what the largest effort is at most. */
    boolean onlyAtMost(SetEnd.ToFailure toFailure) {
        return end.onlyAtLeast() || toFailure.mean() > MOST_DONE;
    }

    /** Standard deviation of the log of the largest effort. */
    double logSd(SetEnd.ToFailure toFailure) {
        double people = relation.spread(toFailure.mean());
        double called = relation.fall(toFailure.mean()) * toFailure.sd();
        return Math.sqrt(people * people + called * called + RETEST_SD * RETEST_SD + HELD_STILL_SD * HELD_STILL_SD);
    }

    private List<Remark> ofResult(RepetitionResult result) {
        List<Remark> remarks = new ArrayList<>();
        double half = logSd(result.toFailure());
        if (end.onlyAtLeast()) {
            remarks.add(Remark.note(
                    "set-stopped",
                    "something else than the muscles ended the set, so it says what they can do at least and nothing of how"
                            + " much more; after pain, no further set today"));
        } else if (result.toFailure().mean() > MOST_DONE) {
            remarks.add(Remark.note("too-many-left", "failure would have come after ")
                    .then(result.toFailure().mean(), Kind.NUMBER)
                    .then(" repetitions, past the 20 up to which they say anything: they count as a floor"));
        } else if (result.toFailure().mean() > LOUD) {
            remarks.add(
                    Remark.doubts("many-repetitions", "failure would have come after ")
                            .then(result.toFailure().mean(), Kind.NUMBER)
                            .then(
                                    " repetitions: people differ widely there. A heavier setup that leaves 12 or fewer says more"));
        }
        remarks.add(Remark.note("rough", "repetitions are a rough measure: one standard deviation of what they say is ")
                .then(half, Kind.SHARE)
                .then(", of a strapped test about 8 %"));
        remarks.addAll(unlikely(result, half));
        List<String> notKnown = new Places(profile, gaveOut).notKnown();
        if (!notKnown.isEmpty()) {
            remarks.add(Remark.doubts(
                    "strength-not-known",
                    String.join(", ", notKnown)
                            + ": asked for where nobody knows what this person has, so it may have been what gave out, and the"
                            + " others are stronger than is said here"));
        }
        return remarks;
    }

    /** Whether the curves as they stood thought this set all but impossible: then something was written down wrongly. */
    private List<Remark> unlikely(RepetitionResult result, double noise) {
        List<Remark> remarks = new ArrayList<>();
        HardestPlace hardest = result.joints().stream()
                .map(JointEvidence::place)
                .max((one, other) -> Double.compare(one.effort(), other.effort()))
                .orElseThrow();
        double away = Math.log(hardest.effort() / result.share().value()) / Math.hypot(noise, hardest.logSd());
        boolean floor = result.onlyAtMost();
        boolean contradicts = floor ? away > UNLIKELY : Math.abs(away) > UNLIKELY;
        if (contradicts) {
            remarks.add(Remark.doubts("unlike-curve", done + " repetitions: the setup asks ")
                    .then(hardest.effort(), Kind.SHARE)
                    .then(" of what " + hardest.words() + " has by its curve, and so many repetitions mean about ")
                    .then(result.share().value(), Kind.SHARE)
                    .then(": check the plates (kilograms or pounds), the setup and the curve"));
        }
        return remarks;
    }
}
