package counterpull.engine.crosscheck;

import counterpull.engine.Refusal;
import counterpull.engine.choice.Kit;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.RubberStock;
import counterpull.engine.choice.Strategy;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.motion.Stops;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The slow way to search a kit: loops over everything, a whole profile for each, nothing laid out, nothing shared, nothing
 * pruned.
 */
final class PlainSearch {
    private final Question question;
    final List<Setup> feasible = new ArrayList<>();
    int considered;
    double bestPair = Double.POSITIVE_INFINITY;

    /** The range from the deepest stop that can be used where the person is put now. */
    private Optional<PressProfile> own = Optional.empty();

    /** One setup that keeps every limit; {@code ranked} is its shortfall with what a shallower stop leaves out in it. */
    record Setup(Strategy strategy, String name, double shortfall, double peak, double ranked) {}

    /** A set with its squared shortfalls, for pairing. */
    private record Half(double[] missed) {}

    PlainSearch(Question question) {
        this.question = question;
        for (SeatSetting seat : question.kit().places().seats()) {
            for (FootRow row : question.kit().places().rows()) {
                place(seat, row);
            }
        }
    }

    private void place(SeatSetting seat, FootRow row) {
        Stance given = question.task().stance();
        PressTask task = question.task()
                .with(Loading.plates(0))
                .with(new Stance(seat, row, given.pressurePoint(), given.hipShift()));
        PlainSled sled = new PlainSled(task);
        double[] stops = Arrays.stream(task.sled().stops().marks())
                .map(mark -> seat.plateAt(mark, task.sled().rail()))
                .filter(plate -> plate >= sled.bottom && plate < sled.top - 1e-6)
                .sorted()
                .toArray();
        own = Optional.empty();
        for (int k = 0; k < Math.min(stops.length, 1 + question.kit().places().shallowerStops()); k++) {
            tryAll(stopAt(task, stops[k]));
        }
        if (stops.length > 1) {
            pairs(task, stops);
        }
    }

    /** The same task on a sled that has only this stop. */
    private static PressTask stopAt(PressTask task, double plate) {
        double mark = task.stance().seat().markAt(plate, task.sled().rail());
        return new PressTask(
                task.person(),
                task.sled().with(new Stops(mark)),
                task.stance(),
                task.pushing(),
                task.tempo(),
                task.loading(),
                task.positions());
    }

    private void tryAll(PressTask task) {
        Optional<PressProfile> bare = range(task);
        if (bare.isEmpty()) {
            return;
        }
        own = own.isEmpty() ? bare : own;
        for (List<ElasticLine> lines : lineSets(task, bare.get())) {
            for (double plates : totals()) {
                considered++;
                PressTask loaded = task.with(new Loading(plates, lines));
                computed(loaded).ifPresent(profile -> keep(loaded, profile));
            }
        }
    }

    /** Empty where the engine refuses it; a lost contact too, which the search counts as past the floor. */
    private static Optional<PressProfile> computed(PressTask task) {
        try {
            return Optional.of(PressProfile.of(task));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    /** The range without a load: only its places are looked at. Empty where this tempo or seat has none. */
    private static Optional<PressProfile> range(PressTask task) {
        try {
            return Optional.of(PressProfile.onGround(Groundwork.of(task), Loading.plates(0)));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    private void keep(PressTask task, PressProfile profile) {
        PlainSled sled = new PlainSled(task);
        PlainVerdict verdict = new PlainVerdict(profile, sled, question.goal());
        if (verdict.kept) {
            String name = name(task.stance(), profile.plate(0), task.loading());
            feasible.add(new Setup(
                    strategy(profile, sled),
                    name,
                    verdict.shortfall(),
                    verdict.peak,
                    overOwn(profile.plate(0), verdict.shortfall())));
        }
    }

    // every position of the own range below the stop counts as if nothing were done there
    private double overOwn(double bottom, double inside) {
        double sum = 0;
        int n = own.orElseThrow().positions();
        for (int i = 0; i < n; i++) {
            boolean below = own.orElseThrow().plate(i) < bottom - 1e-9;
            double wanted = question.goal().target().at(own.orElseThrow().driving(i));
            sum += below ? wanted * wanted : inside * inside;
        }
        return Math.sqrt(sum / n);
    }

    /** What tells one setup from every other. */
    static String name(Stance stance, double bottom, Loading loading) {
        TreeSet<String> lines = new TreeSet<>();
        loading.lines().forEach(line -> lines.add(line.toString()));
        return stance.seat().name() + "|" + stance.row().name() + "|" + Math.round(bottom * 1e6) + "|"
                + Math.round(loading.plates() * 1e3) + "|" + lines;
    }

    private double[] totals() {
        TreeSet<Long> grams = new TreeSet<>(List.of(0L));
        for (PlateKind kind : question.kit().plates()) {
            TreeSet<Long> more = new TreeSet<>();
            for (long before : grams) {
                for (int count = 0;
                        count <= kind.count();
                        count += question.kit().platesAtOnce()) {
                    more.add(before + Math.round(1000 * kind.mass()) * count);
                }
            }
            grams = more;
        }
        double most = question.task().sled().carriage().mostPlates();
        return grams.stream()
                .mapToDouble(gram -> gram / 1000.0)
                .filter(total -> total <= most + 1e-6)
                .toArray();
    }

    /** Every set of useful lines, up to two, that the kit's pieces allow. */
    private List<List<ElasticLine>> lineSets(PressTask task, PressProfile bare) {
        List<ElasticLine> useful = new ArrayList<>();
        for (ElasticLine line : lines()) {
            if (effect(task, line, bare).isPresent()) {
                useful.add(line);
            }
        }
        List<List<ElasticLine>> sets = new ArrayList<>(List.of(List.of()));
        int most = question.kit().rules().mostLines();
        for (int a = 0; a < useful.size() && most >= 1; a++) {
            sets.add(List.of(useful.get(a)));
            for (int b = a + 1; b < useful.size() && most >= 2; b++) {
                List<ElasticLine> both = List.of(useful.get(a), useful.get(b));
                if (onHand(both) && !sameWay(useful.get(a), useful.get(b))) {
                    sets.add(both);
                }
            }
        }
        return sets;
    }

    private boolean onHand(List<ElasticLine> lines) {
        for (RubberStock stock : question.kit().rubber()) {
            if (PlainVerdict.used(lines, stock.rubber()) > stock.count()) {
                return false;
            }
        }
        return true;
    }

    // the same thing hung twice in the same way is one line with more pieces
    private static boolean sameWay(ElasticLine a, ElasticLine b) {
        return a.rubber().equals(b.rubber())
                && a.ends().equals(b.ends())
                && a.deadLength() == b.deadLength()
                && a.pieces().hang() == b.pieces().hang();
    }

    private List<ElasticLine> lines() {
        List<ElasticLine> lines = new ArrayList<>();
        Kit kit = question.kit();
        for (RubberStock stock : kit.rubber()) {
            for (Anchor anchor : kit.hooks().anchors()) {
                for (Attachment attachment : kit.hooks().attachments()) {
                    boolean pair = anchor.lateral() != 0 || attachment.lateral() != 0;
                    for (double dead : kit.rules().deadLengths()) {
                        for (Hang hang : kit.rules().hangs()) {
                            for (int count = pair ? 2 : 1; count <= stock.count(); count += pair ? 2 : 1) {
                                if (count * hang.strands() <= kit.rules().mostStrands()) {
                                    Placement placement = pair ? Placement.MATCHED_PAIR : Placement.CENTRED;
                                    lines.add(new ElasticLine(
                                            stock.rubber(),
                                            new ElasticLine.Pieces(count, hang, placement),
                                            dead,
                                            new ElasticLine.Ends(anchor, attachment)));
                                }
                            }
                        }
                    }
                }
            }
        }
        return lines;
    }

    /** Whether a line relieves low or adds high over a range; empty where it does neither, or is too long. */
    private static Optional<Strategy> effect(PressTask task, ElasticLine line, PressProfile range) {
        PlainSled sled = new PlainSled(task.with(new Loading(0, List.of(line))));
        PlainLine plain = sled.lines.get(0);
        int n = range.positions();
        double[] push = new double[n];
        for (int i = 0; i < n; i++) {
            double plate = range.plate(i);
            double path = sled.linePath(plain, plate);
            if (plain.overstretched(path)) {
                return Optional.empty();
            }
            push[i] = plain.tension(path) * Stencil.first(p -> sled.linePath(plain, p), plate, 1e-4);
        }
        double most = Arrays.stream(push).max().orElse(0);
        double least = Arrays.stream(push).min().orElse(0);
        if (least < -1e-9 && most <= 1e-9 && push[0] <= least + 1e-9) {
            return Optional.of(Strategy.RELIEVE_LOW);
        }
        boolean adds = most > 1e-9 && least >= -1e-9 && push[n - 1] >= most - 1e-9;
        return adds ? Optional.of(Strategy.ADD_HIGH) : Optional.empty();
    }

    private static Strategy strategy(PressProfile profile, PlainSled sled) {
        boolean low = false;
        boolean high = false;
        for (ElasticLine line : profile.loading().lines()) {
            Optional<Strategy> effect = effect(sled.task, line, profile);
            low |= effect.orElseThrow() == Strategy.RELIEVE_LOW;
            high |= effect.orElseThrow() == Strategy.ADD_HIGH;
        }
        return low && high
                ? Strategy.BOTH
                : low ? Strategy.RELIEVE_LOW : high ? Strategy.ADD_HIGH : Strategy.LOAD_ALONE;
    }

    private void pairs(PressTask task, double[] stops) {
        Optional<PressProfile> bare = range(stopAt(task, stops[0]));
        if (bare.isEmpty()) {
            return;
        }
        List<Half> whole = halves(bare.get(), stops[0]);
        for (int k = 1; k < stops.length; k++) {
            for (Half high : halves(bare.get(), stops[k])) {
                for (Half low : whole) {
                    bestPair = Math.min(bestPair, pair(low, high));
                }
            }
        }
    }

    private static double pair(Half low, Half high) {
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < low.missed.length; i++) {
            double smaller = Math.min(low.missed[i], high.missed[i]);
            sum += smaller < Double.POSITIVE_INFINITY ? smaller : 0;
            counted += smaller < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        return counted == 0 ? Double.POSITIVE_INFINITY : Math.sqrt(sum / counted);
    }

    /** Every set that keeps the limits from a stop on, at the whole range's positions. */
    private List<Half> halves(PressProfile range, double stop) {
        int n = range.positions();
        double[] plates = new double[n];
        int skipped = 0;
        for (int i = 0; i < n; i++) {
            plates[i] = range.plate(i);
            skipped += plates[i] < stop - 1e-9 ? 1 : 0;
        }
        List<Half> halves = new ArrayList<>();
        // the set starts at its stop, which may lie between two positions of the whole range
        int apart = plates[skipped] > stop + 1e-9 ? 1 : 0;
        double[] above = new double[n - skipped + apart];
        above[0] = stop;
        System.arraycopy(plates, skipped, above, apart, n - skipped);
        try {
            Groundwork ground =
                    Groundwork.of(range.task(), range.ground().motion().stroke().from(stop), above);
            halves(ground, skipped, apart, halves);
        } catch (Refusal refusal) {
            // no range there: nothing to pair
            return halves;
        }
        return halves;
    }

    private void halves(Groundwork ground, int skipped, int apart, List<Half> halves) {
        PressProfile bare = PressProfile.onGround(ground, Loading.plates(0));
        for (List<ElasticLine> lines : lineSets(ground.task(), bare)) {
            for (double plates : totals()) {
                Loading loading = new Loading(plates, lines);
                try {
                    PressProfile profile = PressProfile.of(ground, loading);
                    PlainSled sled = new PlainSled(ground.task().with(loading));
                    PlainVerdict verdict = new PlainVerdict(profile, sled, question.goal());
                    if (verdict.kept) {
                        halves.add(half(verdict, profile.positions() - apart, skipped, apart));
                    }
                } catch (Refusal refusal) {
                    // contact lost: past the floor
                    continue;
                }
            }
        }
    }

    private static Half half(PlainVerdict verdict, int positions, int skipped, int apart) {
        int n = positions + skipped;
        double[] missed = new double[2 * n];
        Arrays.fill(missed, Double.POSITIVE_INFINITY);
        for (int i = 0; i < positions; i++) {
            missed[skipped + i] = verdict.squaredMiss(Phase.LIFTING, i + apart);
            missed[n + skipped + i] = verdict.squaredMiss(Phase.LOWERING, i + apart);
        }
        return new Half(missed);
    }
}
