package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EnrolPageTest {

    private static final String FINGERPRINT = "AB:".repeat(31) + "CD";

    @Test
    void what_the_shop_calls_itself_is_text_whatever_it_is() {
        String page = EnrolPage.html("<script>alert(1)</script>\"'&", List.of("https://shop.local:8443/"), "",
                Optional.empty());
        assertThat(page).doesNotContain("<script").contains("&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;&amp;");
    }

    @Test
    void with_an_authority_of_the_shops_own_the_steps_come_with_the_fingerprint() {
        String page = EnrolPage.html("Shop", List.of("https://shop.local:8443/"), "http://10.0.0.7:8080/enrol",
                Optional.of(FINGERPRINT));
        assertThat(page.replace("<wbr>", "")).contains(FINGERPRINT, "/enrol/authority.crt", "<svg");
    }

    @Test
    void with_a_certificate_of_the_shops_own_there_is_nothing_to_load() {
        String page = EnrolPage.html("Shop", List.of("https://shop.example/"), "", Optional.empty());
        assertThat(page).doesNotContain("authority.crt").contains("href=\"https://shop.example/\"");
    }

    @Test
    void without_https_the_page_says_so() {
        assertThat(EnrolPage.html("Shop", List.of(), "", Optional.empty())).contains("does not listen on HTTPS");
    }
}
