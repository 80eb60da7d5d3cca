package counterpull.engine.crosscheck;

import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Tempo;

/**
 * Where the plate is at a time of one stroke, written apart from the engine: polynomials solved from their end conditions, or
 * a throw with two corners. Distance from the bottom, m; seconds from the start of the stroke.
 */
interface PlainStroke {
    double at(double time);

    double seconds();

    /** How far a time is from the nearest corner of the movement, s. */
    double clearance(double time);

    static PlainStroke of(Tempo tempo, Phase phase, double travel) {
        boolean lifting = phase == Phase.LIFTING;
        if (tempo instanceof Bounce bounce) {
            return new Thrown(bounce, lifting, travel);
        }
        if (tempo instanceof Flowing flowing) {
            double a = flowing.turnAcceleration(travel);
            double bottom = flowing.turn() == Flowing.Turn.TOP ? 0 : a;
            double top = flowing.turn() == Flowing.Turn.BOTTOM ? 0 : -a;
            double seconds = lifting ? flowing.lifting() : flowing.lowering();
            return new Smooth(new PlainQuintic(travel, seconds, bottom, top), lifting);
        }
        FullStop stop = (FullStop) tempo;
        double seconds = lifting ? stop.seconds().lifting() : stop.seconds().lowering();
        return new Smooth(new PlainQuintic(travel, seconds, 0, 0), lifting);
    }

    /** Read backwards in time where it lowers. */
    record Smooth(PlainQuintic upward, boolean lifting) implements PlainStroke {
        @Override
        public double at(double time) {
            return upward.derivative(0, lifting ? time : upward.seconds - time);
        }

        @Override
        public double seconds() {
            return upward.seconds;
        }

        @Override
        public double clearance(double time) {
            return Math.min(time, upward.seconds - time);
        }
    }

    /** Constant acceleration next to the bottom, constant speed beyond. */
    record Thrown(Bounce bounce, boolean lifting, double travel) implements PlainStroke {
        private double speed() {
            return lifting ? bounce.speedUp() : bounce.speedDown();
        }

        private double pull() {
            return (bounce.speedUp() + bounce.speedDown()) / bounce.turnTime();
        }

        private double corner() {
            return speed() / pull();
        }

        private double fromBottom(double time) {
            return lifting ? time : seconds() - time;
        }

        @Override
        public double at(double time) {
            double t = fromBottom(time);
            double c = corner();
            return t <= c ? pull() * t * t / 2 : pull() * c * c / 2 + speed() * (t - c);
        }

        @Override
        public double seconds() {
            return corner() + (travel - pull() * corner() * corner() / 2) / speed();
        }

        @Override
        public double clearance(double time) {
            double ends = Math.min(time, seconds() - time);
            return Math.min(ends, Math.abs(fromBottom(time) - corner()));
        }
    }
}
