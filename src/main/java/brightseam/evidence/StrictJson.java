package brightseam.evidence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON (RFC 8259) and takes nothing that two readers could take differently: no name twice, nothing behind the
 * value, no lone surrogate, no long number, no deep nesting.
 */
final class StrictJson {

    /** Histories are nested by three for every parting of a lot. */
    private static final int DEPTH_MAX = 200;
    /** Longer than any double is written by RFC 8785. */
    private static final int NUMBER_MAX = 30;

    private final String text;
    private int at;

    private StrictJson(String text) {
        this.text = text;
    }

    /** The one value that {@code text} is. */
    static Json read(String text) throws NotJson {
        StrictJson reader = new StrictJson(text);
        Json value = reader.value(0);
        reader.blanks();
        if (reader.at < text.length()) {
            throw reader.wrong("something follows the end");
        }
        return value;
    }

    private Json value(int depth) throws NotJson {
        if (depth > DEPTH_MAX) {
            throw wrong("nested too deeply");
        }
        blanks();
        return switch (peek()) {
            case '{' -> members(depth);
            case '[' -> values(depth);
            case '"' -> new Json.Text(string());
            case 't' -> word("true", new Json.Truth(true));
            case 'f' -> word("false", new Json.Truth(false));
            case 'n' -> word("null", new Json.Nothing());
            default -> number();
        };
    }

    private Json members(int depth) throws NotJson {
        Map<String, Json> members = new LinkedHashMap<>();
        at++;
        blanks();
        if (peek() == '}') {
            at++;
            return new Json.Members(members);
        }
        do {
            blanks();
            int before = at;
            String name = string();
            blanks();
            take(':');
            if (members.put(name, value(depth + 1)) != null) {
                at = before;
                throw wrong("the name " + name + " stands twice");
            }
            blanks();
        } while (goesOn('}'));
        return new Json.Members(members);
    }

    private Json values(int depth) throws NotJson {
        List<Json> values = new ArrayList<>();
        at++;
        blanks();
        if (peek() == ']') {
            at++;
            return new Json.Values(values);
        }
        do {
            values.add(value(depth + 1));
            blanks();
        } while (goesOn(']'));
        return new Json.Values(values);
    }

    private boolean goesOn(char end) throws NotJson {
        boolean more = peek() == ',';
        if (!more && peek() != end) {
            throw wrong("a comma or " + end + " is missing");
        }
        at++;
        return more;
    }

    private String string() throws NotJson {
        take('"');
        StringBuilder read = new StringBuilder();
        while (peek() != '"') {
            char next = text.charAt(at++);
            if (next < ' ') {
                at--;
                throw wrong("a control character in a text");
            }
            read.append(next == '\\' ? escaped() : next);
        }
        at++;
        for (int i = 0; i < read.length(); i++) {
            boolean pair = Character.isHighSurrogate(read.charAt(i)) && i + 1 < read.length()
                    && Character.isLowSurrogate(read.charAt(i + 1));
            if (!pair && Character.isSurrogate(read.charAt(i))) {
                throw wrong("half a character");
            }
            i += pair ? 1 : 0;
        }
        return read.toString();
    }

    private char escaped() throws NotJson {
        char code = peek();
        at++;
        return switch (code) {
            case '"', '\\', '/' -> code;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> unicode();
            default -> throw wrong("no such escape");
        };
    }

    private char unicode() throws NotJson {
        int read = 0;
        for (int i = 0; i < 4; i++) {
            char next = peek();
            int digit = next < 128 ? Character.digit(next, 16) : -1;
            if (digit < 0) {
                throw wrong("four hexadecimal digits are wanted");
            }
            read = read * 16 + digit;
            at++;
        }
        return (char) read;
    }

    private Json number() throws NotJson {
        int from = at;
        while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0 && at - from <= NUMBER_MAX) {
            at++;
        }
        String written = text.substring(from, at);
        if (written.length() > NUMBER_MAX || !written.matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d{1,3})?")) {
            at = from;
            throw wrong("no value that is taken here");
        }
        return new Json.Number(written);
    }

    private Json word(String word, Json value) throws NotJson {
        if (!text.startsWith(word, at)) {
            throw wrong("no value that is taken here");
        }
        at += word.length();
        return value;
    }

    private void take(char wanted) throws NotJson {
        if (peek() != wanted) {
            throw wrong(wanted + " is missing");
        }
        at++;
    }

    private char peek() throws NotJson {
        if (at >= text.length()) {
            throw wrong("it ends too early");
        }
        return text.charAt(at);
    }

    private void blanks() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private NotJson wrong(String why) {
        return new NotJson(at, why);
    }
}
