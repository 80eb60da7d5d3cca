package counterpull.report.table;

import java.util.ArrayList;
import java.util.List;

/**
 * A column of words.
 *
 * @param head what it is
 * @param words one for each row; empty where there is nothing to say
 */
public record WordColumn(Head head, List<String> words) implements Column {
    public WordColumn {
        words = List.copyOf(words);
    }

    @Override
    public int rows() {
        return words.size();
    }

    @Override
    public String unit(UnitSet units) {
        return "";
    }

    @Override
    public String shown(int row, UnitSet units) {
        return words.get(row).isEmpty() ? "–" : words.get(row);
    }

    @Override
    public String exact(int row, UnitSet units) {
        return words.get(row);
    }

    @Override
    public boolean numeric() {
        return false;
    }

    @Override
    public boolean allZero() {
        return false;
    }

    @Override
    public Column only(int[] rows) {
        List<String> chosen = new ArrayList<>();
        for (int row : rows) {
            chosen.add(words.get(row));
        }
        return new WordColumn(head, chosen);
    }
}
