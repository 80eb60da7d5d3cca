package counterpull.bench.person;

import counterpull.engine.body.Action;
import counterpull.engine.body.Anthropometry;

/** How the limb's own weight is taken out of a test. */
public sealed interface LimbWeight permits LimbWeight.FromTable, LimbWeight.Resting, LimbWeight.Borne {
    /**
     * Torque to add to force × distance, N·m, in the sense of the action: above 0 where the muscle held the limb up as well, below 0
     * where the limb's weight pressed into the scale too.
     *
     * @param action what was tested
     * @param body the person's side: lengths, mass, table of segments
     * @param pad where the scale was
     */
    double torque(Action action, Anthropometry body, Pad pad);

    /** One standard deviation of that torque, N·m. */
    double sd(Action action, Anthropometry body, Pad pad);

    /**
     * From the table of segments.
     *
     * @param attitude how the limb lay
     */
    record FromTable(Attitude attitude) implements LimbWeight {
        /**
         * Standard uncertainty of a segment's weight × distance: the tables give a thigh 10.0 % and 14.2 % of body mass, so ±20 % is
         * usual (Dempster by Winter, de Leva 1996; looked up); as a rectangular distribution that is 20 %/√3.
         */
        private static final double MASS_SD = 0.20 / Math.sqrt(3);

        /** Standard uncertainty of an attitude judged by eye, rad: 5°; our assumption. */
        private static final double EYE_SD = Math.toRadians(5);

        @Override
        public double torque(Action action, Anthropometry body, Pad pad) {
            return at(attitude.direction(), action, body);
        }

        private double at(double direction, Action action, Anthropometry body) {
            Attitude there = new Attitude(direction, attitude.beyond());
            return new DistalLimb(body, JointOf.joint(action)).weight(action, there);
        }

        @Override
        public double sd(Action action, Anthropometry body, Pad pad) {
            double middle = attitude.direction();
            double turned = (at(middle + EYE_SD, action, body) - at(middle - EYE_SD, action, body)) / 2;
            return Math.hypot(MASS_SD * at(middle, action, body), turned);
        }
    }

    /**
     * From a reading with the limb relaxed and everything else as in the test.
     *
     * @param force N; above 0 where the relaxed limb presses into the scale as the effort does, below 0 where the scale had to be
     *     turned round to hold the limb up
     */
    record Resting(double force) implements LimbWeight {
        /** Standard uncertainty of such a reading over the reading: nobody is quite relaxed; our assumption. */
        private static final double RELAXED_SD = 0.10;

        @Override
        public double torque(Action action, Anthropometry body, Pad pad) {
            return -force * pad.arm();
        }

        @Override
        public double sd(Action action, Anthropometry body, Pad pad) {
            return RELAXED_SD * Math.abs(torque(action, body, pad));
        }
    }

    /**
     * Nothing to take out: the limb moves level as when lying on the side, something else holds it up, or the instrument has taken its
     * weight out already.
     */
    record Borne() implements LimbWeight {
        @Override
        public double torque(Action action, Anthropometry body, Pad pad) {
            return 0;
        }

        @Override
        public double sd(Action action, Anthropometry body, Pad pad) {
            return 0;
        }
    }
}
