package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;
import java.util.Optional;

/** A publication that has the strength of one or more actions. No action is in two of them. */
sealed interface NormSource
        permits Askew1987,
                Hannah2002,
                Holzbaur2007,
                Ivey1985,
                JaenadaCarrilero2024,
                KoskiMcGill1994,
                Sugimoto2014,
                Tsunoda1993 {
    List<NormSource> ALL = List.of(
            new Sugimoto2014(),
            new JaenadaCarrilero2024(),
            new KoskiMcGill1994(),
            new Ivey1985(),
            new Holzbaur2007(),
            new Hannah2002(),
            new Tsunoda1993(),
            new Askew1987());

    /** The actions it is the source of. */
    List<Action> actions();

    /** What it says of one of its actions. */
    Norm norm(Action action, Sex sex);

    /** The source of an action, or empty. */
    static Optional<NormSource> of(Action action) {
        for (NormSource source : ALL) {
            if (source.actions().contains(action)) {
                return Optional.of(source);
            }
        }
        return Optional.empty();
    }
}
