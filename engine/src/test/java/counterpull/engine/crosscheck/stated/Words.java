package counterpull.engine.crosscheck.stated;

import counterpull.engine.planar.Vec;

/** A line of words and numbers parted by blanks, read from left to right. */
final class Words {
    private final String[] words;
    private int next;

    Words(String line) {
        words = line.trim().split(" +");
    }

    String word() {
        return words[next++];
    }

    double number() {
        return Double.parseDouble(word());
    }

    int whole() {
        return Integer.parseInt(word());
    }

    Vec place() {
        double x = number();
        return new Vec(x, number());
    }
}
