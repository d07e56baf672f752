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

    private static List<Path> files(String folder, String ending) throws IOException {
        try (Stream<Path> walk = Files.walk(Path.of(folder))) {
            return walk.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(ending))
                    .filter(file -> !file.toString().contains("target/") && !file.toString().contains(".git/"))
                    .sorted().toList();
        }
    }
}
