package brightseam.ledger.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.ledger.Chain;
import brightseam.ledger.StreamName;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalJsonTest {

    /** RFC 8785 section 3.2.2: primitive data types. */
    @Test
    void writes_the_rfc_s_primitive_values() {
        String given = """
                {
                  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }
                """;
        assertThat(CanonicalJson.any(given)).isEqualTo(
                "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                        + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    /** RFC 8785 section 3.2.3: names sorted by UTF-16 code units. */
    @Test
    void sorts_the_rfc_s_names() {
        String given = """
                {
                  "\\u20ac": "Euro Sign",
                  "\\r": "Carriage Return",
                  "\\ufb33": "Hebrew Letter Dalet With Dagesh",
                  "1": "One",
                  "\\ud83d\\ude00": "Emoji: Grinning Face",
                  "\\u0080": "Control",
                  "\\u00f6": "Latin Small Letter O With Diaeresis"
                }
                """;
        assertThat(CanonicalJson.object(given)).isEqualTo(
                "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"ö\":\"Latin Small Letter O With Diaeresis\",\"€\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
    }

    /** RFC 8785 section 3.2.4: the first bytes of the UTF-8 form of the example of section 3.2.2. */
    @Test
    void is_utf_8_without_a_mark() {
        byte[] bytes = CanonicalJson.any("{\"string\":\"\\u20ac\"}").getBytes(StandardCharsets.UTF_8);
        assertThat(bytes).containsSubsequence(0xe2, 0x82, 0xac).startsWith('{', '"');
    }

    /** RFC 8785 appendix B: doubles by their bits, and how they are written. */
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "ffefffffffffffff, -1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
        "41b3de4355555556, 333333333.3333334",
        "41b3de4355555557, 333333333.33333343",
        "becbf647612f3696, -0.0000033333333333333333",
        "43143ff3c1cb0959, 1424953923781206.2",
    })
    void writes_the_rfc_s_numbers(String bits, String written) {
        double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(CanonicalJson.any("[" + number + "]")).isEqualTo("[" + written + "]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"9007199254740993", "9007199254740992", "0.1234567890123456789", "1e400", "-1e17"})
    void refuses_a_number_that_would_be_rounded_or_could_be(String number) {
        assertThatThrownBy(() -> CanonicalJson.object("{\"n\":[" + number + "]}"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("write it as a string");
    }

    @ParameterizedTest
    @ValueSource(strings = {"9007199254740991", "-9007199254740991", "0.1", "12.50", "-0", "1e3"})
    void takes_a_number_that_a_double_holds(String number) {
        assertThat(CanonicalJson.object("{\"n\":" + number + "}")).startsWith("{\"n\":");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "1", "{", "{\"a\":1", "{\"a\":1}}", "{} {}", "{\"a\":1,\"a\":1}", "{'a':1}"})
    void refuses_what_is_not_one_object(String json) {
        assertThatThrownBy(() -> CanonicalJson.object(json)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void is_its_own_canonical_form() {
        String once = CanonicalJson.object("{ \"b\" : \"\\u00e9\\t\", \"a\" : { \"d\": [1, 2.50], \"c\": null } }");
        assertThat(CanonicalJson.object(once))
                .isEqualTo(once)
                .isEqualTo("{\"a\":{\"c\":null,\"d\":[1,2.5]},\"b\":\"é\\t\"}");
    }

    @Test
    void the_chain_s_envelope_is_canonical() {
        String content = CanonicalJson.object("{\"b\":\"\\u20ac\",\"a\":2.50}");
        String envelope = Chain.envelope(
                new StreamName("bin/B-0142"), 9_007_199_254_740_991L, "bin-moved.1", content, Chain.GENESIS);
        assertThat(CanonicalJson.object(envelope)).isEqualTo(envelope);
    }
}
