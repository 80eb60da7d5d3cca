package counterpull.readings.people;

import counterpull.bench.person.PersonBench;
import counterpull.bench.person.PersonBench.Build;
import counterpull.bench.person.PersonBench.Visit;
import counterpull.bench.person.Size;
import counterpull.engine.body.SegmentTable;
import counterpull.engine.body.Sex;
import counterpull.readings.Subject;
import counterpull.readings.SubjectKind;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** People: who they are, and what was measured at each visit. */
public final class PeopleKind implements SubjectKind {
    @Override
    public String key() {
        return "people";
    }

    @Override
    public Shape shape() {
        return PeopleShapes.PERSON;
    }

    @Override
    public Optional<Subject> read(Fields fields) {
        String name = fields.text("name");
        Sex sex = fields.choice("sex", Words.SEX);
        double age = fields.required("age", Measures.AGE);
        double stature = fields.required("stature", Measures.STATURE);
        double mass = fields.required("mass", Measures.BODY_MASS);
        SegmentTable table = fields.choice("segment table", Words.TABLE);
        List<Visit> visits = visits(fields);
        return fields.built(() ->
                new PersonSubject(new PersonBench(name, new Build(sex, age, new Size(stature, mass), table), visits)));
    }

    private static List<Visit> visits(Fields person) {
        List<Visit> visits = new ArrayList<>();
        LocalDate before = LocalDate.MIN;
        for (Fields fields : person.groups("visits", PeopleShapes.VISIT, PeopleShapes.VISITS)) {
            LocalDate date = date(fields).orElse(LocalDate.MAX);
            if (fields.isSound() && !date.isAfter(before)) {
                fields.report(
                        Code.OUT_OF_ORDER,
                        "date",
                        "this visit is not after the one before it",
                        "Put the visits in the order of their days, one for each day");
            }
            before = date;
            visits.add(new VisitReader(fields).read(date));
        }
        return visits;
    }

    private static Optional<LocalDate> date(Fields fields) {
        String text = fields.text("date");
        if (!fields.isSound()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            fields.report(Code.WRONG_KIND, "date", "this is no date", "Write it as year-month-day, like 2026-11-25");
            return Optional.empty();
        }
    }
}
