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
                try {
                    at(question, seat, row, places);
                } catch (Refusal refusal) {
                    rejections.refused("seat " + seat.name() + " with foot row " + row.name(), refusal);
                }
            }
        }
        return places;
    }

    private static void at(Question question, SeatSetting seat, FootRow row, List<Candidate.Place> places) {
        Stance given = question.task().stance();
        Stance stance = new Stance(seat, row, given.pressurePoint(), given.hipShift());
        PressTask task = question.task().with(Loading.plates(0)).with(stance);
        RailStroke first = task.stroke();
        places.add(new Candidate.Place(stance, first, equalSteps(task, first)));
        double[] stops = shallower(task, first);
        for (int k = 0; k < Math.min(stops.length, question.kit().places().shallowerStops()); k++) {
            if (stops[k] < first.top() - 1e-6) {
                RailStroke shorter = first.from(stops[k]);
                places.add(new Candidate.Place(stance, shorter, equalSteps(task, shorter)));
            }
        }
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
