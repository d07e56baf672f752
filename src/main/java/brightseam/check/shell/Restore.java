package brightseam.check.shell;

import brightseam.check.HeadCheck;
import brightseam.check.shell.BackupManifest.PackedFile;
import brightseam.seal.Checkpoint;
import brightseam.seal.NoteVerifier;
import brightseam.seal.SignedNote;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Unpacks a backup. Believes nothing in it but what its list and the list's hashes agree on. */
public final class Restore {

    private static final int MANIFEST_BYTES_MAX = 10_000_000;
    private static final int FILES_MAX = 100_000;

    private Restore() {}

    /** What was unpacked. */
    public record Unpacked(long entries, boolean withKeys, String madeAt, boolean hasSecretKey) {}

    /**
     * What the backup lacks.
     *
     * @param last the newest head that was signed after it
     * @param entries how many entries it covers that the backup does not have
     */
    public record Gap(Checkpoint last, long entries) {}

    /** Whether {@code folder} may be restored to: it is not there, or empty. */
    public static boolean isFree(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return true;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return Files.isDirectory(folder) && files.findAny().isEmpty();
        }
    }

    /**
     * Unpacks {@code file} into {@code folder}, which is made.
     *
     * @throws IOException where something in the file is not what its list says, or the list not what a backup has
     */
    public static Unpacked unpack(Path file, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (ZipFile zip = new ZipFile(file.toFile())) {
            BackupManifest manifest = manifest(zip);
            Set<String> listed = new HashSet<>(Set.of(BackupManifest.NAME));
            for (PackedFile packed : manifest.files()) {
                ZipEntry entry = zip.getEntry(packed.name());
                if (entry == null || !listed.add(packed.name())) {
                    throw new IOException(packed.name() + " is in its list and not in it once");
                }
                try (InputStream in = zip.getInputStream(entry)) {
                    RestoredFile.write(in, packed, RestoredFile.target(folder, packed.name()));
                }
            }
            if (zip.size() != listed.size()) {
                throw new IOException("it holds files that are not in its list");
            }
            Files.write(folder.resolve("in-use"), new byte[0], StandardOpenOption.CREATE);
            return new Unpacked(manifest.entries(), manifest.withKeys(), manifest.madeAt(), hasSecret(folder));
        }
    }

    /**
     * What heads that lie elsewhere say of entries that came after the backup; they count where one of {@code keys}
     * signed them. Keeps the newest in the restored {@code heads.txt}, so that the server's first start asks for the
     * loss to be noted by name.
     */
    public static Optional<Gap> gap(Path folder, List<Path> elsewhere, List<NoteVerifier> keys, long entries)
            throws IOException {
        Heads.Found newest = null;
        Checkpoint last = null;
        for (Path place : elsewhere) {
            for (Heads.Found found : Heads.inWitness(place)) {
                Optional<Checkpoint> head = HeadCheck.read(found.note()).filter(one -> signed(found.note(), keys));
                if (head.isPresent() && head.get().size() > (last == null ? entries : last.size())) {
                    last = head.get();
                    newest = found;
                }
            }
        }
        if (last == null) {
            return Optional.empty();
        }
        Files.writeString(folder.resolve(Backup.HEADS), newest.note() + ".\n", StandardCharsets.UTF_8,
                StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        return Optional.of(new Gap(last, last.size() - entries));
    }

    private static boolean signed(String note, List<NoteVerifier> keys) {
        return SignedNote.parse(note).filter(signed -> keys.stream().anyMatch(signed::isSignedBy)).isPresent();
    }

    private static BackupManifest manifest(ZipFile zip) throws IOException {
        ZipEntry entry = zip.getEntry(BackupManifest.NAME);
        if (entry == null || zip.size() > FILES_MAX) {
            throw new IOException("it is no backup: it has no " + BackupManifest.NAME);
        }
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] json = in.readNBytes(MANIFEST_BYTES_MAX + 1);
            if (json.length > MANIFEST_BYTES_MAX) {
                throw new IOException("its " + BackupManifest.NAME + " is too long");
            }
            return BackupManifest.read(json);
        }
    }

    private static boolean hasSecret(Path folder) throws IOException {
        Path keys = folder.resolve("keys");
        if (!Files.isDirectory(keys)) {
            return false;
        }
        try (Stream<Path> files = Files.list(keys)) {
            return files.anyMatch(file -> file.toString().endsWith(".key"));
        }
    }
}
