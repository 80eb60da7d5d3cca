package counterpull.report.words;

import counterpull.engine.choice.Breach;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Measure;
import counterpull.report.table.Scale;
import counterpull.report.table.UnitSet;

/** Where in the range something is, and which limit it is about, in words. */
final class PlaceWords {
    private static final int MOST_MORE = 3;
    private final UnitSet units;

    PlaceWords(UnitSet units) {
        this.units = units;
    }

    /** "knee at 83°, mark 61.5 cm". */
    String position(PressProfile profile, int position) {
        return "knee at " + Measure.ANGLE.words(profile.driving(position), units) + ", mark "
                + Measure.LENGTH.words(profile.mark(position), units);
    }

    /** "left knee extension, lifting, knee at 83°, mark 61.5 cm". */
    String peak(PressProfile profile, Verdict.Peak peak) {
        return peak.limiting().side().words() + " " + peak.limiting().action().words() + ", "
                + peak.phase().words() + ", " + position(profile, peak.position());
    }

    /** "the effort ceiling: 84 % where 85 % is allowed (left knee extension, …)". */
    String breach(PressProfile profile, Breach breach) {
        return "the " + breach.kind().words() + ": " + against(breach) + where(profile, breach.where());
    }

    /** "goes past the effort ceiling: 86 % where 85 % is allowed (…)"; a floor is fallen below. */
    String passes(PressProfile profile, Breach breach) {
        return verb(breach.kind()) + " " + breach(profile, breach);
    }

    /** What a setup does to a limit that it does not keep. */
    static String verb(LimitKind kind) {
        return kind == LimitKind.FLOOR ? "falls below" : "goes past";
    }

    /** The same of several setups. */
    static String verbOfMany(LimitKind kind) {
        return kind == LimitKind.FLOOR ? "fall below" : "go past";
    }

    /** With as many digits as it takes to tell the two apart; an exact touch stays alike. */
    private String against(Breach breach) {
        Scale usual = measure(breach.kind()).in(units);
        if (breach.kind() == LimitKind.CEILING) {
            usual = new Scale(usual.unit(), usual.perSi(), 1);
        }
        Scale scale = usual;
        while (scale.fixed(breach.value()).equals(scale.fixed(breach.limit()))
                && scale.decimals() < usual.decimals() + MOST_MORE) {
            scale = new Scale(usual.unit(), usual.perSi(), scale.decimals() + 1);
        }
        if (scale.fixed(breach.value()).equals(scale.fixed(breach.limit()))) {
            scale = usual;
        }
        String allowed = scale.words(breach.limit());
        return scale.words(breach.value()) + " where "
                + (breach.kind() == LimitKind.FLOOR ? "at least " + allowed + " is wanted" : allowed + " is allowed");
    }

    private String where(PressProfile profile, Breach.Where where) {
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
