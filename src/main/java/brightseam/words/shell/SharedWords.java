package brightseam.words.shell;

import brightseam.words.Explanation;
import brightseam.words.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The words of {@code shared/refusals.yaml}. */
@Configuration
public class SharedWords {

    /** The wording, with times in the machine's zone. */
    @Bean
    public static Wording wording() {
        try (InputStream table = SharedWords.class.getResourceAsStream("/shared/refusals.yaml")) {
            Map<String, Map<String, String>> rows = new Yaml(new SafeConstructor(new LoaderOptions())).load(table);
            Map<String, Explanation> templates = new LinkedHashMap<>();
            rows.forEach((code, row) -> templates.put(code,
                    new Explanation(row.get("word"), row.get("reason"), row.get("way_out"))));
            return new Wording(templates, ZoneId.systemDefault());
        } catch (IOException unreadable) {
            throw new UncheckedIOException("shared/refusals.yaml", unreadable);
        }
    }
}
