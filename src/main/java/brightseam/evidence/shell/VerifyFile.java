package brightseam.evidence.shell;

import brightseam.evidence.EvidenceForm;
import brightseam.evidence.EvidenceVerifier;
import brightseam.evidence.Misfit;
import brightseam.evidence.PageCheck;
import brightseam.evidence.Verdict;
import brightseam.evidence.VerdictWords;
import brightseam.ledger.Chain;
import brightseam.seal.NoteVerifier;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The command that checks a file of evidence: no server, no database, no network. */
public final class VerifyFile {

    /** The word that asks for this command as the program's first argument. */
    public static final String COMMAND = "verify";

    private static final int PROVEN = 0;
    private static final int DOES_NOT_FIT = 1;
    private static final int NOT_ASKED_RIGHT = 2;
    private static final int NOBODY_VOUCHES = 3;

    private static final String USAGE = "usage: " + COMMAND + " FILE [--key TEXT|FILE]... [--mark TEXT]"
            + " [--with FILE]... [--zone ZONE]\n"
            + "  FILE    a record with evidence (PDF), or the evidence alone (JSON)\n"
            + "  --key   the shop's public key, got from the shop itself: its text, or a file with one in each line\n"
            + "  --mark  what a scanner reads off the Data Matrix of the paper\n"
            + "  --with  a photograph or another file that the record names by its SHA-256\n"
            + "  --zone  show times of this zone, such as Europe/Oslo; else that of the paper, or UTC\n"
            + "ends with 0: proven by a key that was given; 1: does not fit; 2: not asked right;\n"
            + "          3: fits together, but no key was given, so that nobody vouches for it";
    private static final long FILE_MAX = 256L << 20;
    private static final int KEY_FILE_MAX = 1 << 16;

    private VerifyFile() {}

    /** The question was not put right. */
    private static final class NotAskedRight extends Exception {
        private static final long serialVersionUID = 1L;

        NotAskedRight(String why) {
            super(why);
        }
    }

    private record Question(Path file, List<NoteVerifier> keys, Optional<String> mark, List<Path> with,
            Optional<ZoneId> zone) {}

    /** Checks the file that {@code arguments} name and tells people on {@code out}; answers the exit status. */
    public static int run(List<String> arguments, PrintStream out) {
        try {
            return verify(question(arguments), out);
        } catch (NotAskedRight wrong) {
            out.println(wrong.getMessage());
            out.println(USAGE);
            return NOT_ASKED_RIGHT;
        }
    }

    private static Question question(List<String> arguments) throws NotAskedRight {
        List<Path> files = new ArrayList<>();
        List<NoteVerifier> keys = new ArrayList<>();
        Optional<String> mark = Optional.empty();
        List<Path> with = new ArrayList<>();
        Optional<ZoneId> zone = Optional.empty();
        for (int i = 0; i < arguments.size(); i++) {
            String word = arguments.get(i);
            if (!word.startsWith("--")) {
                files.add(Path.of(word));
                continue;
            }
            i++;
            if (i == arguments.size()) {
                throw new NotAskedRight(word + " is followed by nothing");
            }
            String value = arguments.get(i);
            switch (word) {
                case "--key" -> keys.addAll(keys(value));
                case "--mark" -> mark = Optional.of(value.strip());
                case "--with" -> with.add(Path.of(value));
                case "--zone" -> zone = Optional.of(zone(value));
                default -> throw new NotAskedRight("no such option: " + word);
            }
        }
        if (files.size() != 1) {
            throw new NotAskedRight("name one file, not " + files.size());
        }
        return new Question(files.getFirst(), keys, mark, with, zone);
    }

    private static ZoneId zone(String name) throws NotAskedRight {
        try {
            return ZoneId.of(name);
        } catch (DateTimeException noZone) {
            throw new NotAskedRight("no such zone: " + name);
        }
    }

    private static List<NoteVerifier> keys(String value) throws NotAskedRight {
        Optional<NoteVerifier> written = NoteVerifier.parse(value);
        if (written.isPresent()) {
            return List.of(written.get());
        }
        List<NoteVerifier> keys = new ArrayList<>();
        String text = new String(read(Path.of(value), KEY_FILE_MAX, "no public key, and no file of keys either"),
                StandardCharsets.UTF_8);
        for (String line : text.lines().map(String::strip)
                .filter(one -> !one.isEmpty() && !one.startsWith("#")).toList()) {
            keys.add(NoteVerifier.parse(line).orElseThrow(() ->
                    new NotAskedRight(value + " holds a line that is no public key")));
        }
        if (keys.isEmpty()) {
            throw new NotAskedRight(value + " holds no public key");
        }
        return keys;
    }

    private static int verify(Question asked, PrintStream out) throws NotAskedRight {
        byte[] bytes = read(asked.file(), FILE_MAX, "no such file");
        Optional<String> pages = Optional.empty();
        byte[] evidence = bytes;
        Verdict verdict;
        try {
            if (isPdf(bytes)) {
                PdfAttachment.Opened opened = PdfAttachment.open(bytes);
                pages = Optional.of(opened.pages());
                evidence = opened.evidence();
            }
            verdict = new EvidenceVerifier(asked.keys(), asked.mark()).verify(evidence);
        } catch (IOException damaged) {
            verdict = new Verdict.Broken(new Misfit.Unreadable(1, damaged.getMessage()));
        }
        Optional<String> text = pages;
        verdict = alsoPages(verdict, text);
        verdict = alsoFiles(verdict, asked.with(), evidence);
        ZoneId zone = asked.zone().or(() -> text.flatMap(PageCheck::zone)).orElse(ZoneOffset.UTC);
        VerdictWords.of(verdict, zone).forEach(out::println);
        return status(verdict);
    }

    private static Verdict alsoPages(Verdict verdict, Optional<String> pages) {
        return verdict instanceof Verdict.Fits fits && pages.isPresent()
                ? PageCheck.missing(fits.proof(), pages.get()).<Verdict>map(Verdict.Broken::new).orElse(verdict)
                : verdict;
    }

    /** The entries name files by 64 hexadecimal digits, which no text of people can hold by chance. */
    private static Verdict alsoFiles(Verdict verdict, List<Path> files, byte[] evidence) throws NotAskedRight {
        for (Path file : files) {
            String hash = Chain.sha256(read(file, FILE_MAX, "no such file"));
            if (verdict instanceof Verdict.Fits
                    && !new String(evidence, StandardCharsets.UTF_8).contains("\\\"sha256\\\":\\\"" + hash + "\\\"")) {
                return new Verdict.Broken(new Misfit.FileNotNamed(file.getFileName().toString(), hash));
            }
        }
        return verdict;
    }

    private static int status(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Broken broken -> DOES_NOT_FIT;
            case Verdict.Fits fits -> fits.proof().isVouchedFor() ? PROVEN : NOBODY_VOUCHES;
        };
    }

    private static boolean isPdf(byte[] bytes) {
        return new String(bytes, 0, Math.min(bytes.length, 5), StandardCharsets.ISO_8859_1).equals("%PDF-");
    }

    private static byte[] read(Path file, long longest, String otherwise) throws NotAskedRight {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes((int) longest + 1);
            if (bytes.length > longest) {
                throw new NotAskedRight(file + ": longer than " + (longest >> 10) + " KiB");
            }
            return bytes;
        } catch (IOException unreadable) {
            throw new NotAskedRight(file + ": " + otherwise);
        }
    }
}
