package counterpull.engine.choice;

import counterpull.engine.Refusal;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;

/** Where a kit lets the person be put: seat × foot row × stop. What cannot be reached is written down as rejected. */
final class Places {
    private Places() {}

    static List<Candidate.Place> all(Question question, Rejections rejections) {
        List<Candidate.Place> places = new ArrayList<>();
        for (SeatSetting seat : question.kit().places().seats()) {
            for (FootRow row : question.kit().places().rows()) {
                Stance given = question.task().stance();
                Stance stance = new Stance(seat, row, given.pressurePoint(), given.hipShift());
                at(question, stance, places, rejections);
            }
        }
        return places;
    }

    static String words(Stance stance) {
        return "seat " + stance.seat().name() + " with foot row " + stance.row().name();
    }

    private static void at(Question question, Stance stance, List<Candidate.Place> places, Rejections rejections) {
        PressTask task = question.task().with(Loading.plates(0)).with(stance);
        try {
            RailStroke own = task.stroke();
            from(question, task, own, places, rejections);
            double[] further = shallower(task, own);
            for (int k = 0; k < Math.min(further.length, question.kit().places().shallowerStops()); k++) {
                from(question, task, own.from(further[k]), places, rejections);
            }
        } catch (Refusal refusal) {
            rejections.refused(words(stance), refusal);
        }
    }

    // a range that is refused at its bottom may be right from the next stop, so each is tried by itself
    private static void from(
            Question question, PressTask task, RailStroke stroke, List<Candidate.Place> places, Rejections rejections) {
        try {
            Groundwork ground = equalSteps(task, stroke);
            LeftOut leftOut = leftOut(places, ground, question.goal().target());
            places.add(new Candidate.Place(task.stance(), stroke, ground, leftOut));
        } catch (Refusal refusal) {
            boolean own = stroke.equals(task.stroke());
            rejections.refused(words(task.stance()) + (own ? "" : " and a shallower stop"), refusal);
        }
    }

    // places come deepest first, so the first in the same stance is the person's own range
    private static LeftOut leftOut(List<Candidate.Place> before, Groundwork ground, EffortTarget target) {
        for (Candidate.Place place : before) {
            if (place.stance().equals(ground.task().stance())) {
                return LeftOut.of(
                        place.ground().motion(), ground.motion().stroke().bottom(), target);
            }
        }
        return LeftOut.NOTHING;
    }

    /** Stops beyond the range's own bottom, nearest first, as hip-to-plate distances, m. */
    static double[] shallower(PressTask task, RailStroke stroke) {
        double[] found = task.sled()
                .stops()
                .shallowerThan(
                        stroke.bottom() + 1e-6,
                        task.stance().seat(),
                        task.sled().rail());
        int count = 0;
        while (count < found.length && found[count] < stroke.top() - 1e-6) {
            count++;
        }
        return java.util.Arrays.copyOf(found, count);
    }

    private static Groundwork equalSteps(PressTask task, RailStroke stroke) {
        double[] plate = stroke.equalAngles(task.legs().get(stroke.reference()), task.positions());
        return Groundwork.of(task, stroke, plate);
    }
}
