package counterpull.readings;

import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import java.util.Optional;

/** A kind of thing that is measured, as a file of readings has it. */
public interface SubjectKind {
    /** The top-level key under which a list of them stands. */
    String key();

    /** The keys of one of them. */
    Shape shape();

    /** One of them; a problem for everything that is wrong with it. */
    Optional<? extends Subject> read(Fields fields);
}
