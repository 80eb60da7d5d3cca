package counterpull.picture;

import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;

/**
 * What every part of an exercise figure's drawing works with.
 *
 * @param figure what is drawn
 * @param work where the limb's points are
 * @param sheet what it is drawn on
 * @param wording the reader's units
 */
record Scene(ExerciseFigure figure, Limbwork work, Sheet sheet, Wording wording) {
    Svg svg() {
        return sheet.svg();
    }

    FigureWords words() {
        return sheet.words();
    }

    Vec see(Vec point) {
        return sheet.see(point);
    }

    int position() {
        return figure.position();
    }

    Phase phase() {
        return figure.phase();
    }

    double plates() {
        return figure.profile().task().plates();
    }

    ExerciseLimb limb() {
        return figure.profile().limbs().get(figure.limb());
    }
}
