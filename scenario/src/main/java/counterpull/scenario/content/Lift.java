package counterpull.scenario.content;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import java.util.Arrays;

/** Which way the coordinate that drives a movement goes while the person lifts. */
public sealed interface Lift {
    /** +1 where the driving angle rises, −1 where it falls, 0 where no angle drives. */
    int sense();

    /**
     * A joint turns in the sense of an action.
     *
     * @param action what the lift does
     */
    record Turning(Action action) implements Lift {
        /** The joint that turns. */
        public Joint joint() {
            return Arrays.stream(Joint.values())
                    .filter(joint -> joint.action() == action || joint.opposite() == action)
                    .findFirst()
                    .orElseThrow();
        }

        @Override
        public int sense() {
            return joint().action() == action ? joint().angleSenseOfAction() : -joint().angleSenseOfAction();
        }
    }

    /** A body that stands rises: knees and hips straighten. */
    record Rising() implements Lift {
        @Override
        public int sense() {
            return -1;
        }
    }

    /** Travel along a path, which has its own start and end. */
    record Travelling() implements Lift {
        @Override
        public int sense() {
            return 0;
        }
    }
}
