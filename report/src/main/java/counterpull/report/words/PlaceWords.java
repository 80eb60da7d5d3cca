package counterpull.report.words;

import counterpull.engine.choice.Breach;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.Profile;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;

/** Where in the range something is, and which limit it is about, in words. */
final class PlaceWords {
    private final UnitSet units;

    PlaceWords(UnitSet units) {
        this.units = units;
    }

    /** "knee at 83°, mark 61.5 cm". */
    String position(Profile profile, int position) {
        return "knee at " + Measure.ANGLE.words(profile.drivingAngle(position), units) + ", mark "
                + Measure.LENGTH.words(profile.mark(position), units);
    }

    /** "left knee extension, lifting, knee at 83°, mark 61.5 cm". */
    String peak(Profile profile, Verdict.Peak peak) {
        return peak.limiting().side().words() + " " + peak.limiting().action().words() + ", "
                + peak.phase().words() + ", " + position(profile, peak.position());
    }

    /** Value against limit: "effort ceiling: 86 % against 85 % (left knee extension, …)". */
    String breach(Profile profile, Breach breach) {
        Measure measure = measure(breach.kind());
        return breach.kind().words() + ": " + said(measure, breach.value()) + " against "
                + said(measure, breach.limit()) + where(profile, breach.where());
    }

    // an effort with a tenth of a percent: a ceiling just passed must not read as kept
    private String said(Measure measure, double value) {
        return measure == Measure.EFFORT ? Decimals.fixed(100 * value, 1) + "\u00A0%" : measure.words(value, units);
    }

    private String where(Profile profile, Breach.Where where) {
        StringBuilder words = new StringBuilder();
        if (!where.label().isEmpty()) {
            words.append(where.label()).append(", ");
        }
        where.side().ifPresent(side -> words.append(side.words()).append(' '));
        where.action().ifPresent(action -> words.append(action.words()).append(", "));
        if (where.position() >= 0) {
            words.append(where.phase().words()).append(", ").append(position(profile, where.position()));
        }
        return words.isEmpty() ? "" : " (" + words + ")";
    }

    static Measure measure(LimitKind kind) {
        return switch (kind) {
            case CEILING -> Measure.EFFORT;
            case JOINT_TORQUE -> Measure.TORQUE;
            case KNEECAP_STRESS -> Measure.STRESS;
            case FLOOR, TURN_FORCE, ANCHOR_LOAD -> Measure.FORCE;
        };
    }
}
