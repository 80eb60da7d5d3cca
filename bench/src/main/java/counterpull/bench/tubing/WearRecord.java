package counterpull.bench.tubing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * The life of one piece.
 *
 * @param tag number written on it
 * @param tests its bench tests, oldest first
 * @param cycles stretches since the last of them
 * @param damage what was seen on it: nicks, cracks, a sticky spot; empty where nothing was
 */
public record WearRecord(String tag, List<WearTest> tests, int cycles, List<String> damage) {
    public WearRecord {
        tests = tests.stream().sorted(Comparator.comparing(WearTest::on)).toList();
        damage = List.copyOf(damage);
    }

    /** How it stands on a day. */
    public Wear on(LocalDate day, WearLimits limits) {
        return Wear.of(this, day, limits);
    }
}
