package counterpull.engine.choice;

import counterpull.engine.Require;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.SeatSetting;
import java.util.List;

/**
 * What is on hand to build a setup from.
 *
 * @param plates plates by mass
 * @param platesAtOnce how many equal plates go on together: 2 where the machine takes pairs, 1 on a middle horn
 * @param rubber pieces of rubber
 * @param hooks holes and hooks that rubber can go to
 * @param rules how rubber may be hung
 * @param places seats, foot rows and stops to try
 */
public record Kit(
        List<PlateKind> plates,
        int platesAtOnce,
        List<RubberStock> rubber,
        Hooks hooks,
        LineRules rules,
        Places places) {
    public Kit {
        plates = List.copyOf(plates);
        rubber = List.copyOf(rubber);
        Require.within(platesAtOnce, new Require.Limits(1, 2), "plates that go on together", "");
    }

    /**
     * Where lines can be hung.
     *
     * @param anchors on the end that does not ride
     * @param attachments on the end that rides
     */
    public record Hooks(List<Anchor> anchors, List<Attachment> attachments) {
        public Hooks {
            anchors = List.copyOf(anchors);
            attachments = List.copyOf(attachments);
        }
    }

    /**
     * Where the person can be put.
     *
     * @param seats seat and back settings
     * @param rows foot rows
     * @param shallowerStops how many further stops beyond the person's own may be tried, 0 or more
     */
    public record Places(List<SeatSetting> seats, List<FootRow> rows, int shallowerStops) {
        public Places {
            seats = List.copyOf(seats);
            rows = List.copyOf(rows);
            Require.positive(seats.size(), "seat settings to try", "");
            Require.positive(rows.size(), "foot rows to try", "");
            Require.within(shallowerStops, new Require.Limits(0, 50), "further stops to try", "");
        }
    }
}
