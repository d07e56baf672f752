package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.env.MockEnvironment;

class DataFolderTest {

    @TempDir
    Path temporary;

    @Test
    void is_made_where_it_is_missing_and_closed_to_other_users() throws Exception {
        Path path = temporary.resolve("shop/data");
        try (DataFolder folder = DataFolder.take(path)) {
            assertThat(folder.isInUse()).isFalse();
            assertThat(Files.getPosixFilePermissions(path)).isEqualTo(PosixFilePermissions.fromString("rwx------"));
        }
    }

    @Test
    void a_second_server_is_refused_until_the_first_has_ended() throws Exception {
        try (DataFolder first = DataFolder.take(temporary)) {
            assertThat(first.isInUse()).isFalse();
            assertThatThrownBy(() -> DataFolder.take(temporary))
                    .isInstanceOf(UnusableData.class)
                    .hasMessageContaining("Another Brightseam server is using the data folder " + temporary);
        }
        DataFolder.take(temporary).close();
    }

    @Test
    void a_lost_or_cut_off_database_is_refused() throws Exception {
        try (DataFolder folder = DataFolder.take(temporary)) {
            folder.markInUse();
        }
        assertThatThrownBy(() -> DataFolder.take(temporary))
                .isInstanceOf(UnusableData.class)
                .hasMessageContaining("missing or cut off")
                .hasMessageContaining("backup");
        Files.write(temporary.resolve("brightseam.mv.db"), new byte[100]);
        assertThatThrownBy(() -> DataFolder.take(temporary)).hasMessageContaining("missing or cut off");
        Files.write(temporary.resolve("brightseam.mv.db"), new byte[8_192]);
        DataFolder.take(temporary).close();
    }

    @Test
    void the_database_is_never_made_anew_outside_of_the_first_start() throws Exception {
        try (DataFolder folder = DataFolder.take(temporary)) {
            assertThat(folder.url()).contains(";WRITE_DELAY=0;").endsWith(";IFEXISTS=TRUE");
            assertThatThrownBy(() -> ShopDatabase.pool(folder.url()))
                    .isInstanceOf(UnusableData.class)
                    .hasMessageContaining("not found");
            ShopDatabase.pool(folder.urlOfFirstStart()).close();
            ShopDatabase.pool(folder.url()).close();
        }
    }

    @Test
    void an_empty_database_in_a_folder_that_was_in_use_is_refused() throws Exception {
        try (DataFolder folder = DataFolder.take(temporary)) {
            ShopDatabase.pool(folder.urlOfFirstStart()).close();
            folder.markInUse();
            assertThatThrownBy(() -> new ShopDatabase().dataSource(folder, new MockEnvironment()))
                    .isInstanceOf(UnusableData.class)
                    .hasMessageContaining("is empty");
        }
    }

    @Test
    void a_name_that_would_change_the_database_s_settings_is_refused() {
        assertThatThrownBy(() -> DataFolder.take(temporary.resolve("a;b"))).hasMessageContaining("semicolon");
    }
}
