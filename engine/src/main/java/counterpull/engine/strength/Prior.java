package counterpull.engine.strength;

import counterpull.engine.body.Action;
import java.util.Optional;

/**
 * A curve that a publication gives people like this person: what is believed before any test, and how far one person may lie
 * from it. Angles rad, torques N·m, as {@link StrengthCurve}.
 *
 * <p>An action of the leg in the sagittal plane has {@link PublishedCurve}, every other one a {@link NormCurve}; one that no
 * publication covers has none, and then its strength is not known. Sources: with each; docs/sources.md lists them.
 */
public sealed interface Prior extends StrengthCurve permits PublishedCurve, NormCurve {
    /**
     * Least standard deviation over mean that is believed of people of one sex: that of knee extension per body mass at 80° in
     * 35 men (2.74 ± 0.58 N·m/kg, 2023, doi 10.1016/j.asmr.2023.100861; looked up). Some samples are a few people.
     */
    double LEAST_SPREAD = 0.21;

    /** How one person may differ from this curve: what their own tests are weighed against. */
    BendAssumptions assumptions();

    /** The published curve of an action for a person, or empty where none is at hand. */
    static Optional<Prior> of(Action action, Physique person) {
        if (Anderson2007.covers(action)) {
            return Optional.of(PublishedCurve.of(action, person));
        }
        return NormSource.of(action).map(source -> new NormCurve(source.norm(action, person.sex()), person));
    }
}
