package counterpull.bench.machine;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** Fits only what is worth fitting, and turns a fit's own refusal into a remark. */
final class Asking {
    private Asking() {}

    static <T> Answer<T> answer(List<Remark> remarks, Supplier<T> fit) {
        return answer(remarks, fit, found -> List.of());
    }

    static <T> Answer<T> answer(List<Remark> remarks, Supplier<T> fit, Function<T, List<Remark>> checks) {
        List<Remark> all = new ArrayList<>(remarks);
        if (remarks.stream().anyMatch(Remark::refuses)) {
            return Answer.refused(all);
        }
        try {
            T found = fit.get();
            all.addAll(checks.apply(found));
            return all.stream().anyMatch(Remark::refuses) ? Answer.refused(all) : Answer.of(found, all);
        } catch (Refusal refusal) {
            all.add(Remark.refuses(refusal.fault().code(), refusal.getMessage()));
            return Answer.refused(all);
        }
    }
}
