package brightseam.ui.parts;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.Chromium;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Route;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a scanner that types, a person who types, the camera and the type sheet do to a page. */
class ScanningIT extends TabletAtParts {

    @Test
    void a_scan_comes_in_with_enter_with_tab_and_with_nothing_behind_it() {
        show("fields");
        wedge("B-0142X", "Enter");
        scanned("WEDGE:B-0142X");
        wedge("T-1042K", "Tab");
        scanned("WEDGE:T-1042K");
        wedge("H-9T3381");
        scanned("WEDGE:H-9T3381");
        assertThat(page.locator("#scans > div")).hasCount(3);
    }

    @Test
    void separators_come_in_as_control_keys_and_as_f8() {
        show("fields");
        wedge("[)>", "Control+^");
        wedge("06", "Control+]");
        wedge("25SB-0142", "Control+]");
        wedge("Q6", "Control+^", "Control+d", "Enter");
        scanned("WEDGE:[)><RS>06<GS>25SB-0142<GS>Q6<RS><EOT>");
        wedge("]d21T77", "F8");
        wedge("Q6", "Enter");
        scanned("WEDGE:]d21T77<GS>Q6");
    }

    @Test
    void a_scan_leaves_the_field_and_the_button_that_have_the_focus_alone() {
        show("fields");
        page.locator("#plain").focus();
        wedge("B-0142X", "Enter");
        scanned("WEDGE:B-0142X");
        assertThat(page.locator("#plain")).hasValue("");
        assertThat(page.locator("#plain")).isFocused();
        page.locator(".action.main").focus();
        wedge("BIN 7 AND 8", "Enter");
        scanned("WEDGE:BIN 7 AND 8");
        assertThat(page.locator("#pressed")).hasText("");
    }

    @Test
    void a_person_types_into_a_field_as_if_nothing_listened() {
        show("fields");
        page.locator("#remark input").focus();
        page.keyboard().type("Seam 3: \"ok\" ", new Keyboard.TypeOptions().setDelay(200));
        page.keyboard().type("ab");
        page.keyboard().press("Backspace");
        page.keyboard().press("ArrowLeft");
        page.keyboard().type("ü");
        assertThat(page.locator("#remark input")).hasValue("Seam 3: \"ok\" üa");
        page.keyboard().type("x");
        page.locator("#plain").click();
        assertThat(page.locator("#remark input")).hasValue("Seam 3: \"ok\" üxa");
        page.locator(".action.main").focus();
        page.keyboard().press("Enter");
        page.keyboard().press("Space");
        assertThat(page.locator("#pressed")).hasText("pressed pressed");
        assertThat(page.locator("#scans > div")).hasCount(0);
    }

    @Test
    void pasted_text_is_a_typed_scan_only_where_no_field_has_the_focus() {
        show("fields");
        paste("B-0142X\n");
        scanned("TYPED:B-0142X");
        page.locator("#plain").focus();
        paste("left alone");
        assertThat(page.locator("#scans > div")).hasCount(1);
    }

    private void paste(String text) {
        page.evaluate("""
                text => {
                  const data = new DataTransfer();
                  data.setData('text', text);
                  document.activeElement.dispatchEvent(
                    new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
                }""", text);
    }

    @Test
    void typing_on_the_sheet_is_recorded_as_typed() {
        show("fields");
        page.getByText("Type it").click();
        Stream.of("B", "-", "7", "7").forEach(key -> page.locator(".type-keys")
                .getByText(key, new Locator.GetByTextOptions().setExact(true)).click());
        targets(".shop-sheet");
        photograph("type-sheet");
        page.getByText("Use this").click();
        scanned("TYPED:B-77");
        assertThat(page.locator("dialog")).hasCount(0);
    }

    @Test
    void a_tablet_without_camera_says_so_and_what_to_do() {
        show("fields");
        page.getByText("Camera").click();
        assertThat(page.locator(".camera-says")).containsText("Use the hand scanner, or type the label.");
        photograph("camera-none");
        page.getByText("Close").click();
        assertThat(page.locator("dialog")).hasCount(0);
    }

    @Test
    void the_camera_sends_what_is_inside_its_frame_until_something_is_read() {
        Browser withCamera = Chromium.launch(
                List.of("--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream"));
        context.close();
        context = withCamera.newContext();
        page = context.newPage();
        List<Request> frames = new ArrayList<>();
        page.route("**/scan/frame", route -> {
            frames.add(route.request());
            route.fulfill(frames.size() < 3 ? new Route.FulfillOptions().setStatus(204)
                    : new Route.FulfillOptions().setContentType("application/json")
                            .setBody("{\"text\": \"B-0142X\", \"symbology\": \"DATA_MATRIX\"}"));
        });
        show("fields");
        page.getByText("Camera").click();
        assertThat(page.locator(".camera-says")).containsText("Hold the label inside the frame");
        photograph("camera");
        scanned("CAMERA:B-0142X");
        assertThat(page.locator("dialog")).hasCount(0);
        assertThat(frames).hasSize(3).allSatisfy(frame -> {
            assertThat(frame.headers()).containsEntry("content-type", "image/jpeg").containsEntry("x-shop", "token");
            assertThat(frame.postDataBuffer().length).isBetween(500, 250_000);
            assertThat(Arrays.copyOf(frame.postDataBuffer(), 2)).isEqualTo(new byte[] {(byte) 0xff, (byte) 0xd8});
        });
        withCamera.close();
    }

    private void scanned(String expected) {
        assertThat(page.locator("#scans > div").last()).hasText(expected);
    }
}
