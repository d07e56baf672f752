package brightseam.evidence;

import brightseam.seal.NoteVerifier;
import brightseam.seal.SignedNote;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Public keys: those that were given from outside, which count, and those that the file states, which only show whether
 * it fits together.
 */
record Keys(List<NoteVerifier> given, List<NoteVerifier> stated) {

    /** The keys in {@code texts}; a misfit for the first that is none. */
    static Checked<Keys> of(List<NoteVerifier> given, List<String> texts) {
        List<NoteVerifier> stated = new ArrayList<>();
        for (String text : texts) {
            Optional<NoteVerifier> key = NoteVerifier.parse(text).filter(read -> read.text().equals(text));
            if (key.isEmpty()) {
                return new Checked.Wrong<>(new Misfit.KeyTextWrong(text));
            }
            stated.add(key.get());
        }
        return new Checked.Right<>(new Keys(List.copyOf(given), List.copyOf(stated)));
    }

    /** Who signed {@code note}; every one of its lines has to be a signature of a key that is known here. */
    Checked<Set<NoteVerifier>> signers(String head, SignedNote note) {
        byte[] message = note.text().getBytes(StandardCharsets.UTF_8);
        Set<NoteVerifier> signers = new LinkedHashSet<>();
        for (SignedNote.Line line : note.lines()) {
            Optional<NoteVerifier> key = known(line);
            if (key.isEmpty()) {
                return new Checked.Wrong<>(new Misfit.KeyUnknown(head, line.name()));
            }
            if (!key.get().verify(message, line.signature())) {
                return new Checked.Wrong<>(new Misfit.SignatureWrong(head, key.get().text()));
            }
            signers.add(key.get());
        }
        return new Checked.Right<>(signers);
    }

    /** Whether one of {@code signers} was given; where no key was given, any of them. */
    boolean count(Set<NoteVerifier> signers) {
        return given.isEmpty() ? !signers.isEmpty() : signers.stream().anyMatch(given::contains);
    }

    private Optional<NoteVerifier> known(SignedNote.Line line) {
        String id = HexFormat.of().formatHex(line.id());
        return Stream.concat(given.stream(), stated.stream())
                .filter(key -> key.name().equals(line.name()) && key.idHex().equals(id)).findFirst();
    }
}
