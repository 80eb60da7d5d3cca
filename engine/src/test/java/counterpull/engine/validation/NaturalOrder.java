package counterpull.engine.validation;

import java.math.BigInteger;
import java.util.Comparator;

/** Orders text so that runs of digits compare as numbers: 15° before 105°. */
enum NaturalOrder implements Comparator<String> {
    INSTANCE;

    private static final String BETWEEN_RUNS = "(?<=[0-9])(?=[^0-9])|(?<=[^0-9])(?=[0-9])";

    @Override
    public int compare(String first, String second) {
        String[] a = first.split(BETWEEN_RUNS);
        String[] b = second.split(BETWEEN_RUNS);
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            int order = compareRun(a[i], b[i]);
            if (order != 0) {
                return order;
            }
        }
        return a.length != b.length ? Integer.compare(a.length, b.length) : first.compareTo(second);
    }

    private static int compareRun(String a, String b) {
        return isNumber(a) && isNumber(b) ? new BigInteger(a).compareTo(new BigInteger(b)) : a.compareTo(b);
    }

    private static boolean isNumber(String run) {
        return !run.isEmpty() && run.charAt(0) >= '0' && run.charAt(0) <= '9';
    }
}
