package counterpull.picture;

/** Small turns of phrase. */
final class Words {
    private Words() {}

    /** With a capital first letter (of the basic alphabet: titles start with our own words). */
    static String sentence(String words) {
        char first = words.charAt(0);
        return first >= 'a' && first <= 'z' ? (char) (first - 'a' + 'A') + words.substring(1) : words;
    }
}
