package brightseam.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class EvidenceSchemaTest {

    private static boolean fits(String file) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("shared/schemas/evidence.schema.json")))
                .validate(file, InputFormat.JSON).isEmpty();
    }

    @Test
    void what_is_written_is_what_the_schema_says() throws IOException {
        String file = new String(EvidenceForm.write(SampleLedger.small().evidence()), StandardCharsets.UTF_8);
        assertThat(fits(file)).isTrue();
        assertThat(fits(file.replace("\"version\":1}", "\"version\":2}"))).isFalse();
        assertThat(fits(file.replaceFirst("\\{", "{\"aside\":1,"))).isFalse();
        assertThat(fits(file.replaceFirst("\"position\":\\d+", "\"position\":\"3\""))).isFalse();
    }
}
