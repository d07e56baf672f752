package brightseam.kit;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads rows of cells as RFC 4180 writes them: cells parted by one character, quoted where they hold it, a quote or a
 * line end, quotes doubled inside quotes. Line ends may be CR LF, LF or CR. Reads any text to its end, whatever it
 * holds, and notes what breaks the rules.
 */
public final class CsvReader {

    /** One row: the line of the file that it begins on, from 1, and its cells without white space around them. */
    public record Row(int line, List<String> cells) {
        private boolean isBlank() {
            return cells.size() == 1 && cells.getFirst().isEmpty();
        }
    }

    private final String text;
    private final char separator;
    private final List<Row> rows = new ArrayList<>();
    private final List<ListProblem> problems = new ArrayList<>();
    private int at;
    private int line = 1;

    /** Reads all of {@code text}, cells parted by {@code separator}. */
    public CsvReader(String text, char separator) {
        this.text = text;
        this.separator = separator;
        while (at < text.length()) {
            rows.add(row());
        }
    }

    /** The rows that hold something. */
    public List<Row> rows() {
        return rows.stream().filter(row -> !row.isBlank()).toList();
    }

    /** What breaks the rules, in order. */
    public List<ListProblem> problems() {
        return List.copyOf(problems);
    }

    /** The separator of {@code text}: semicolon where its first line has more of them than commas, quotes aside. */
    public static char separator(String text) {
        int balance = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length() && (quoted || !isLineEnd(text.charAt(i))); i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            balance += quoted ? 0 : c == ';' ? 1 : c == ',' ? -1 : 0;
        }
        return balance > 0 ? ';' : ',';
    }

    private Row row() {
        int first = line;
        List<String> cells = new ArrayList<>();
        cells.add(cell(first, 1));
        while (at < text.length() && text.charAt(at) == separator) {
            at++;
            cells.add(cell(first, cells.size() + 1));
        }
        if (at < text.length()) {
            passLineEnd();
        }
        return new Row(first, List.copyOf(cells));
    }

    private String cell(int first, int column) {
        if (at == text.length() || text.charAt(at) != '"') {
            String bare = bare();
            if (bare.indexOf('"') >= 0) {
                String expected = "a quote only around a whole cell, or doubled in one";
                problems.add(ListProblem.of(first, column, bare, expected));
            }
            return bare.strip();
        }
        String quoted = quoted(first, column);
        String rest = bare();
        if (!rest.isBlank()) {
            problems.add(ListProblem.of(first, column, rest, "nothing between a closing quote and the next cell"));
        }
        return quoted.strip();
    }

    private String bare() {
        int from = at;
        while (at < text.length() && text.charAt(at) != separator && !isLineEnd(text.charAt(at))) {
            at++;
        }
        return text.substring(from, at);
    }

    private String quoted(int first, int column) {
        StringBuilder cell = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '"' && !(at + 1 < text.length() && text.charAt(at + 1) == '"')) {
                at++;
                return cell.toString();
            }
            if (isLineEnd(c)) {
                passLineEnd();
                cell.append('\n');
            } else {
                at += c == '"' ? 2 : 1;
                cell.append(c);
            }
        }
        problems.add(ListProblem.of(first, column, cell.toString(), "a closing quote before the end of the list"));
        return cell.toString();
    }

    private void passLineEnd() {
        boolean two = text.startsWith("\r\n", at);
        at += two ? 2 : 1;
        line++;
    }

    private static boolean isLineEnd(char c) {
        return c == '\r' || c == '\n';
    }
}
