package brightseam.rest;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.networknt.schema.Schema;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.springframework.web.bind.annotation.RequestMapping;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The description against what is mapped, and what it says of requests. */
class ApiFormTest {

    private static final JsonMapper MAPPER = new JsonMapper();
    private final ApiForm form = new ApiForm();
    private final Schema request = form.schema("ReleaseRequest");

    private List<String> faults(String json) {
        return ApiForm.faults(request, MAPPER.readTree(json));
    }

    private static String line(String more) {
        return "{\"lines\": [{\"part_number\": \"LF-101\", \"description\": \"Leg\", \"drawing_revision\": \"A\","
                + " \"procedure\": \"TUBE\"" + more + "}]}";
    }

    @Test
    void every_path_that_is_mapped_is_described_and_every_path_described_is_mapped() {
        Set<String> mapped = new TreeSet<>();
        new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("brightseam").forEach(type -> {
                    for (JavaMethod method : type.getMethods()) {
                        method.getAnnotations().stream().filter(mapping -> mapping.getRawType()
                                        .isMetaAnnotatedWith(RequestMapping.class))
                                .map(ApiFormTest::path).filter(path -> path.contains(" /api/")).forEach(mapped::add);
                    }
                });
        Set<String> described = new TreeSet<>();
        form.root().path("paths").properties().forEach(path -> path.getValue().propertyNames().forEach(method ->
                described.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey())));
        assertThat(mapped).hasSizeGreaterThan(7).isEqualTo(described);
    }

    @Test
    void every_reference_in_the_description_leads_somewhere() {
        Set<String> broken = new TreeSet<>();
        for (String ref : references(form.root(), new TreeSet<>())) {
            if (form.root().at(ref.substring(1)).isMissingNode()) {
                broken.add(ref);
            }
        }
        assertThat(broken).isEmpty();
        assertThat(references(form.root(), new TreeSet<>())).hasSizeGreaterThan(20);
    }

    @Test
    void a_release_is_taken_only_in_its_form() {
        assertThat(faults(line(", \"quantity\": 4, \"heat\": \"H-1\""))).isEmpty();
        assertThat(faults(line(", \"quantity\": 4"))).singleElement().asString().startsWith("lines.0: ")
                .contains("heat");
        assertThat(faults(line(", \"quantity\": \"4\", \"heat\": \"H-1\""))).singleElement().asString()
                .contains("lines.0.quantity").contains("integer");
        assertThat(faults(line(", \"quantity\": 4.5, \"heat\": \"H-1\""))).isNotEmpty();
        assertThat(faults(line(", \"quantity\": 1000, \"heat\": \"H-1\""))).isNotEmpty();
        assertThat(faults(line(", \"quantity\": 1, \"heat\": null"))).isNotEmpty();
        assertThat(faults(line(", \"quantity\": 1, \"heat\": \"h 1\""))).isNotEmpty();
        assertThat(faults(line(", \"quantity\": 1, \"heat\": \"H-1\", \"colour\": \"red\""))).singleElement()
                .asString().contains("colour");
        assertThat(faults("{\"lines\": []}")).isNotEmpty();
        assertThat(faults("{\"lines\": {}}")).isNotEmpty();
        assertThat(faults("{}")).isNotEmpty();
        assertThat(faults(line(", \"quantity\": 1, \"heat\": \"H-1\"").replace("Leg", "=1+1"))).isNotEmpty();
    }

    private static Set<String> references(JsonNode node, Set<String> found) {
        node.properties().forEach(property -> {
            if (property.getKey().equals("$ref") && property.getValue().isString()) {
                found.add(property.getValue().asString());
            }
            references(property.getValue(), found);
        });
        node.values().forEach(one -> references(one, found));
        return found;
    }

    private static String path(JavaAnnotation<?> mapping) {
        Object value = mapping.getProperties().get("value");
        String[] paths = value instanceof String[] said && said.length > 0 ? said
                : (String[]) mapping.getProperties().get("path");
        return mapping.getRawType().getSimpleName().replace("Mapping", "").toUpperCase(Locale.ROOT) + " "
                + String.join(",", paths);
    }
}
