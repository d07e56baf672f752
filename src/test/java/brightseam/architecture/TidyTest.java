package brightseam.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TidyTest {

    private static final int LINES_MAX = 300;
    private static final int LINE_LENGTH_MAX = 120;
    private static final int METHOD_LINES_MAX = 40;
    /** A method's or constructor's first line: a name and an opening bracket, at the indentation of a member. */
    private static final Pattern METHOD = Pattern.compile(
            "( {4}| {8})(?! |(?:return|new|throw|else|yield|if|for|while|switch|try|case|do|catch|record)\\b)"
                    + "(?:[\\w@<>\\[\\], ?.]+ )?\\w+\\([^=;]*");
    private static final Pattern BANNED_NAME = Pattern.compile(".*(Manager|Helper|Util|Utils|Impl)\\.java");
    private static final Pattern UNFINISHED = Pattern.compile("\\b(TO" + "DO|FIX" + "ME)\\b");
    private static final Pattern LINK = Pattern.compile("]\\((?!https?:|#)([^)#]+)(#[^)]*)?\\)");

    @Test
    void java_files_are_short_and_none_is_named_for_nothing() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : files("src", ".java")) {
            long lines = Files.readAllLines(file).size();
            boolean sealedFamily = Files.readString(file).contains("sealed interface");
            if (lines > LINES_MAX && !sealedFamily) {
                wrong.add(file + " has " + lines + " lines");
            }
            if (BANNED_NAME.matcher(file.getFileName().toString()).matches()) {
                wrong.add(file + " has a name that says nothing");
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void methods_are_short() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : files("src", ".java")) {
            List<String> lines = Files.readAllLines(file);
            for (int i = 0; i < lines.size(); i++) {
                Matcher method = METHOD.matcher(lines.get(i));
                int length = method.matches() ? length(lines, i, method.group(1)) : 0;
                if (length > METHOD_LINES_MAX) {
                    wrong.add(file + ":" + (i + 1) + " is a method of " + length + " lines");
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void every_package_opens_with_its_invariant() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : files("src/main/java", ".java")) {
            Path about = file.resolveSibling("package-info.java");
            if (!Files.exists(about)
                    || !Files.readString(about).matches("(?s)/\\*\\*\\s+(\\* )?Invariant: .*")) {
                wrong.add(about.toString());
            }
        }
        assertThat(wrong.stream().distinct()).isEmpty();
    }

    @Test
    void lines_fit_and_nothing_is_left_unfinished() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : Stream.concat(files("src", ".java").stream(), files("frontend", "").stream()).toList()) {
            List<String> lines = Files.readAllLines(file);
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).length() > LINE_LENGTH_MAX) {
                    wrong.add(file + ":" + (i + 1) + " is " + lines.get(i).length() + " characters long");
                }
                if (UNFINISHED.matcher(lines.get(i)).find()) {
                    wrong.add(file + ":" + (i + 1) + " is unfinished");
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void links_in_the_documents_lead_somewhere() throws IOException {
        List<String> dead = new ArrayList<>();
        for (Path file : files(".", ".md")) {
            Matcher link = LINK.matcher(Files.readString(file));
            while (link.find()) {
                Path target = (file.getParent() == null ? Path.of("") : file.getParent()).resolve(link.group(1));
                if (!Files.exists(target)) {
                    dead.add(file + " links to " + link.group(1));
                }
            }
        }
        assertThat(dead).isEmpty();
    }

    @Test
    void every_public_type_carries_a_docstring() throws IOException {
        List<String> bare = new ArrayList<>();
        for (Path file : files("src/main/java", ".java")) {
            String text = Files.readString(file);
            if (text.contains("\npublic ") && !text.contains("\n */\n") && !text.contains("*/\n")) {
                bare.add(file.toString());
            }
        }
        assertThat(bare).isEmpty();
    }

    /** The lines from {@code first} to the brace that closes what opens there; 0 where no body opens. */
    private static int length(List<String> lines, int first, String indentation) {
        int open = first;
        while (open < lines.size() && !lines.get(open).matches(".*[{;}]")) {
            open++;
        }
        if (open == lines.size() || !lines.get(open).endsWith("{") || lines.get(open).endsWith("-> {")) {
            return 0;
        }
        int end = lines.subList(open, lines.size()).indexOf(indentation + "}");
        return end < 0 ? 0 : open + end - first + 1;
    }

    private static List<Path> files(String folder, String ending) throws IOException {
        try (Stream<Path> walk = Files.walk(Path.of(folder))) {
            return walk.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(ending))
                    .filter(file -> !file.toString().contains("target/") && !file.toString().contains(".git/"))
                    .sorted().toList();
        }
    }
}
