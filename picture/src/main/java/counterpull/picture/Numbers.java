package counterpull.picture;

/** Numbers as text, without a locale: a point, a true minus sign, no grouping. */
final class Numbers {
    private static final int[] POWER = {1, 10, 100, 1000, 10000};

    private Numbers() {}

    /** With this many decimals, 0 to 4, halves away from zero; "not known" for what is no number. */
    static String fixed(double value, int decimals) {
        if (Double.isNaN(value)) {
            return "not known";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "no limit" : "−no limit";
        }
        String digits = plain(Math.abs(value), decimals);
        return value < 0 && !isZero(digits) ? "−" + digits : digits;
    }

    /** A coordinate: at most two decimals, a plain hyphen, no trailing zeros. */
    static String coordinate(double value) {
        String digits = plain(Math.abs(value), 2);
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') {
            end--;
        }
        if (digits.charAt(end - 1) == '.') {
            end--;
        }
        String shortest = digits.substring(0, end);
        return value < 0 && !shortest.equals("0") ? "-" + shortest : shortest;
    }

    /** At most two decimals, no trailing zeros, a true minus sign. */
    static String trimmed(double value) {
        String digits = coordinate(value);
        return digits.charAt(0) == '-' ? "−" + digits.substring(1) : digits;
    }

    private static boolean isZero(String digits) {
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) > '0') {
                return false;
            }
        }
        return true;
    }

    private static String plain(double magnitude, int decimals) {
        double scaled = Math.floor(magnitude * POWER[decimals] + 0.5);
        double whole = Math.floor(scaled / POWER[decimals]);
        int rest = (int) (scaled - whole * POWER[decimals]);
        String left = whole < 1e9 ? Integer.toString((int) whole) : Double.toString(whole);
        if (decimals == 0) {
            return left;
        }
        String right = Integer.toString(rest);
        StringBuilder all = new StringBuilder(left).append('.');
        for (int i = right.length(); i < decimals; i++) {
            all.append('0');
        }
        return all.append(right).toString();
    }
}
