package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.ShopClock;
import brightseam.people.Recognition;
import brightseam.people.shell.FirstRun;
import brightseam.people.shell.People;
import brightseam.people.shell.SignIn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

/** Whatever is told on the console at its most talkative holds no secret; and neither does the ledger. */
@ExtendWith(OutputCaptureExtension.class)
class SecretsInLogsTest {

    private static final BadgeId ADA = new BadgeId("P-0001");
    private static final String PIN = "71930264";
    private static final String NEXT_PIN = "50827193";
    private static final String WRONG_PIN = "39016275";

    @Test
    void pins_tokens_and_keys_are_never_printed(CapturedOutput printed) throws IOException {
        List<String> secrets = new ArrayList<>(List.of(PIN, NEXT_PIN, WRONG_PIN));
        try (ShopServer shop = ShopServer.empty("--logging.level.brightseam=trace", "--brightseam.https-port=0")) {
            shop.bean(FirstRun.class).open("here", shop.bean(FirstRun.class).code(), ADA, "Ada Moreau", PIN);
            Origin ada = new Origin(shop.bean(ShopClock.class).now(), ADA, "TAB-TEST", false);
            shop.bean(People.class).setPin(ada, ADA, NEXT_PIN);
            MockHttpServletResponse answer = new MockHttpServletResponse();
            SignIn signIn = shop.bean(SignIn.class);
            assertThat(signIn.signIn(ADA, WRONG_PIN, new MockHttpServletRequest(), answer))
                    .isInstanceOf(Recognition.NotRecognised.class);
            shop.bean(org.springframework.jdbc.core.simple.JdbcClient.class)
                    .sql("update person_pin set failures = 0, next_try_millis = 0").update();
            assertThat(signIn.signIn(ADA, NEXT_PIN, new MockHttpServletRequest(), answer))
                    .isInstanceOf(Recognition.Recognised.class);
            secrets.add(answer.getCookie("brightseam-tablet").getValue());
            secrets.addAll(secretLines(shop.folder()));
            shop.restart();
        }
        assertThat(secrets).hasSizeGreaterThan(6);
        assertThat(printed.getAll()).as("something was printed").contains("HttpsSetup");
        assertThat(secrets).allSatisfy(secret -> assertThat(printed.getAll()).doesNotContain(secret));
    }

    /** Every longer line of the files that are closed to others: keys and pepper, as text and as hexadecimal digits. */
    private static List<String> secretLines(Path folder) throws IOException {
        List<String> lines = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(SecretsInLogsTest::isSecret).toList()) {
                byte[] bytes = Files.readAllBytes(file);
                lines.add(java.util.HexFormat.of().formatHex(bytes));
                lines.add(java.util.Base64.getEncoder().encodeToString(bytes));
                new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).lines()
                        .filter(line -> line.length() >= 16 && !line.startsWith("-----")).forEach(lines::add);
            }
        }
        return lines;
    }

    private static boolean isSecret(Path file) {
        String name = file.getFileName().toString();
        return Files.isRegularFile(file) && (name.endsWith(".key") || name.contains("pepper"));
    }
}
