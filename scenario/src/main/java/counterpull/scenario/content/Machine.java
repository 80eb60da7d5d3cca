package counterpull.scenario.content;

import counterpull.engine.load.Carriage;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stops;
import counterpull.engine.profile.Sled;
import java.util.List;
import java.util.Optional;

/**
 * The machine of a scenario.
 *
 * @param name what the floor calls it
 * @param rail the rail
 * @param carriage carriage, counterweight, friction and rating
 * @param stack the weight stack whose line draws hip and plate together; empty where there is none
 * @param places seats, foot rows and marks
 * @param platesGoOn how plates go on
 */
public record Machine(
        String name, Rail rail, Carriage carriage, Optional<StackLine> stack, Places places, PlatesGoOn platesGoOn) {

    /**
     * What can be set on it.
     *
     * @param seats seat and back settings, at least one
     * @param rows foot rows, at least one
     * @param stops tape readings of the bottom stop, m
     * @param racking tape readings at which the carriage can be racked, m
     */
    public record Places(List<SeatSetting> seats, List<FootRow> rows, List<Double> stops, List<Double> racking) {
        public Places {
            seats = List.copyOf(seats);
            rows = List.copyOf(rows);
            stops = List.copyOf(stops);
            racking = List.copyOf(racking);
        }
    }

    /** How many equal plates go on together. */
    public enum PlatesGoOn {
        IN_PAIRS("in pairs", 2),
        ONE_AT_A_TIME("one at a time", 1);

        private final String words;
        private final int atOnce;

        PlatesGoOn(String words, int atOnce) {
            this.words = words;
            this.atOnce = atOnce;
        }

        /** How a file says it. */
        public String words() {
            return words;
        }

        /** How many together. */
        public int atOnce() {
            return atOnce;
        }
    }

    /** As the engine takes it. */
    public Sled sled() {
        Stops stops = new Stops(
                places.stops().stream().mapToDouble(Double::doubleValue).toArray());
        return new Sled(rail, carriage, stops, stack);
    }
}
