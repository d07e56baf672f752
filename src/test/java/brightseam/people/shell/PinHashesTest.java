package brightseam.people.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;

class PinHashesTest {

    private static final Pepper OTHER = new Pepper(HexFormat.of().parseHex("ab".repeat(32)));

    @TempDir
    private Path data;

    @Test
    void the_pepper_is_made_once_beside_the_database_and_read_by_this_user_alone() throws IOException {
        Path keys = data.resolve("keys");
        Pepper made = Pepper.in(keys);
        assertThat(Pepper.in(keys).with("2580")).isEqualTo(made.with("2580"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(keys))).isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(keys.resolve("pepper"))))
                .isEqualTo("rw-------");
        try (var files = Files.list(keys)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void a_pepper_that_was_cut_off_is_refused_and_not_replaced() throws IOException {
        Files.writeString(data.resolve("pepper"), "00ff");
        assertThatThrownBy(() -> Pepper.in(data)).isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("restore it");
        assertThat(data.resolve("pepper")).hasContent("00ff");
    }

    @Test
    void a_pin_is_peppered_with_hmac_sha256() {
        Pepper longKey = new Pepper(HexFormat.of().parseHex("aa".repeat(131)));
        assertThat(longKey.with("Test Using Larger Than Block-Size Key - Hash Key First"))
                .as("RFC 4231 section 4.7, test case 6")
                .isEqualTo("60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54");
    }

    @Test
    void a_hash_matches_with_its_pepper_and_with_no_other() {
        PinHashes hashes = new PinHashes(new Pepper(new byte[32]), 4);
        PinHashes others = new PinHashes(OTHER, 4);
        String hash = hashes.hash("2580");
        assertThat(hash).startsWith("{bcrypt+").doesNotContain("2580").hasSizeLessThanOrEqualTo(100);
        assertThat(hashes.matches("2580", hash)).isTrue();
        assertThat(hashes.matches("2581", hash)).isFalse();
        assertThat(others.matches("2580", hash)).isFalse();
        assertThat(others.needsAnotherPepper(hash)).isTrue();
        assertThat(hashes.needsAnotherPepper(hash)).isFalse();
    }

    @Test
    void whoever_has_the_database_alone_tries_all_pins_of_four_digits_in_vain() {
        String hash = new PinHashes(OTHER, 4).hash("0042");
        String bare = hash.substring(hash.indexOf('}') + 1);
        BCryptPasswordEncoder guessing = new BCryptPasswordEncoder(4);
        for (int pin = 0; pin < 200; pin++) {
            assertThat(guessing.matches("%04d".formatted(pin), bare)).isFalse();
        }
    }

    @Test
    void the_first_form_of_hash_still_matches_and_is_old() {
        PinHashes hashes = new PinHashes(OTHER, 4);
        String first = new BCryptPasswordEncoder(4).encode("2580");
        assertThat(hashes.matches("2580", first)).isTrue();
        assertThat(hashes.matches("2581", first)).isFalse();
        assertThat(hashes.isOld(first)).isTrue();
        assertThat(hashes.isOld("{bcrypt}" + first)).isTrue();
        assertThat(hashes.isOld(hashes.hash("2580"))).isFalse();
        assertThat(hashes.isOld(new PinHashes(OTHER, 5).hash("2580"))).isFalse();
        assertThat(new PinHashes(OTHER, 5).isOld(hashes.hash("2580"))).isTrue();
    }
}
