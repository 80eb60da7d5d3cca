package counterpull.readings.people;

import counterpull.bench.person.PersonBench;
import counterpull.bench.person.PersonFindings;
import counterpull.readings.Subject;

/**
 * A person who was measured.
 *
 * @param bench the readings
 * @param findings what they say
 */
public record PersonSubject(PersonBench bench, PersonFindings findings) implements Subject {
    /** With what the readings say. */
    PersonSubject(PersonBench bench) {
        this(bench, bench.findings());
    }

    @Override
    public String name() {
        return bench.name();
    }

    @Override
    public String forScenario() {
        return new PersonText(findings).text();
    }
}
