package brightseam.browser;

import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * The pictures of the tour in the README. They go to {@code target/screenshots/tour-*.png}; with
 * {@code -Dtour=docs/tour} they replace those that the README shows.
 */
final class Tour {

    private Tour() {}

    /** A tablet lying across. */
    static void across(ShopTablet tablet, String name) {
        take(tablet.page(), name, 1280, 800);
    }

    /** A desk's page on a screen lying across. */
    static void across(Page page, String name) {
        take(page, name, 1280, 800);
    }

    /** A tablet standing upright. */
    static void upright(ShopTablet tablet, String name) {
        take(tablet.page(), name, 800, 1280);
        tablet.page().setViewportSize(1280, 800);
    }

    /** A printed page. */
    static void print(BufferedImage page, String name) throws IOException {
        ImageIO.write(page, "png", file(name).toFile());
    }

    private static void take(Page page, String name, int width, int height) {
        page.setViewportSize(width, height);
        page.screenshot(new Page.ScreenshotOptions().setPath(file(name)));
    }

    private static Path file(String name) {
        Path file = Optional.ofNullable(System.getProperty("tour")).map(folder -> Path.of(folder, name + ".png"))
                .orElseGet(() -> Path.of("target/screenshots", "tour-" + name + ".png"));
        try {
            Files.createDirectories(file.getParent());
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
        return file;
    }
}
