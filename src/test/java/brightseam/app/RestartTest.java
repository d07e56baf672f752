package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.Moment;
import brightseam.kernel.shell.DemoClock;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceTransactionManagerAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcClientAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcTemplateAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Import;

/** The wiring of data folder, database, ledger and clock, started twice on one folder. */
class RestartTest {

    private static final StreamName STREAM = StreamName.of("traveller", "T-1");

    @TempDir
    Path folder;

    @Test
    void a_second_start_keeps_ledger_and_time() {
        Moment before;
        List<Entry> stored;
        try (ConfigurableApplicationContext shop = start("demo")) {
            shop.getBean(DemoClock.class).skip(Duration.ofHours(3));
            before = shop.getBean(ShopClock.class).now();
            stored = store(shop, before.elapsedMillis() + 90_000);
        }
        try (ConfigurableApplicationContext shop = start("demo")) {
            assertThat(shop.getBean(Ledger.class).read(STREAM)).isEqualTo(stored);
            Moment after = shop.getBean(ShopClock.class).now();
            assertThat(after.elapsedMillis() - before.elapsedMillis()).isBetween(90_000L, 150_000L);
            assertThat(after.wall()).isAfter(before.wall());
        }
    }

    @Test
    void a_shop_of_one_s_own_has_no_demo_clock() {
        try (ConfigurableApplicationContext shop = start("empty")) {
            assertThat(shop.getBeanProvider(DemoClock.class).getIfAvailable()).isNull();
            assertThat(shop.getBean(ShopClock.class).isDemo()).isFalse();
        }
    }

    @Test
    void a_second_server_on_the_folder_and_a_lost_database_are_refused() throws Exception {
        try (ConfigurableApplicationContext shop = start("empty")) {
            store(shop, 1);
            assertThatThrownBy(() -> start("empty")).hasRootCauseInstanceOf(UnusableData.class);
        }
        Files.delete(folder.resolve("brightseam.mv.db"));
        assertThatThrownBy(() -> start("empty"))
                .hasRootCauseInstanceOf(UnusableData.class)
                .rootCause().hasMessageContaining("Restore it from a backup");
        assertThat(folder.resolve("brightseam.mv.db")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "demo, empty, invented records of the demo shop",
        "empty, demo, records of a shop of your own"})
    void records_of_one_kind_of_shop_are_not_opened_as_the_other(String first, String second, String words) {
        try (ConfigurableApplicationContext shop = start(first)) {
            store(shop, "{\"origin\":{\"demo\":" + first.equals("demo") + "}}");
        }
        assertThatThrownBy(() -> start(second)).hasRootCauseInstanceOf(UnusableData.class)
                .rootCause().hasMessageContaining(words).hasMessageContaining("--brightseam.data=");
        start(first).close();
    }

    @Test
    void a_word_that_looks_like_demo_opens_nothing() {
        for (String shop : List.of("Demo", "demo ")) {
            assertThatThrownBy(() -> start(shop)).as(shop)
                    .rootCause().hasMessageContaining("Write demo in small letters");
        }
        assertThat(folder).isEmptyDirectory();
    }

    private static List<Entry> store(ConfigurableApplicationContext shop, long elapsedMillis) {
        return store(shop, "{\"at\":{\"elapsed_millis\":" + elapsedMillis + "}}");
    }

    private static List<Entry> store(ConfigurableApplicationContext shop, String json) {
        NewEvent event = new NewEvent("cut.1", json);
        Appended stored = shop.getBean(Ledger.class).append(List.of(new Append(STREAM, 0, List.of(event))));
        return ((Appended.Stored) stored).entries();
    }

    private ConfigurableApplicationContext start(String shop) {
        return new SpringApplicationBuilder(Spine.class)
                .web(WebApplicationType.NONE)
                .run("--brightseam.data=" + folder, "--brightseam.shop=" + shop);
    }

    /** No configuration by annotation, so that nobody else's scan finds it. */
    @Import({ShopDatabase.class, ClockSetup.class})
    @ComponentScan("brightseam.ledger.shell")
    @ImportAutoConfiguration({
        FlywayAutoConfiguration.class,
        JdbcTemplateAutoConfiguration.class,
        JdbcClientAutoConfiguration.class,
        DataSourceTransactionManagerAutoConfiguration.class
    })
    static class Spine {}
}
