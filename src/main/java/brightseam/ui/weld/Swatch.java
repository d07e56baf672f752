package brightseam.ui.weld;

import brightseam.weld.WeldColour;
import java.util.Locale;

/**
 * A colour of the ladder as a small drawing of our own: its colour under a pattern in ink or in white, so that it is
 * told apart on a grey screen and by eyes that see no colours.
 */
final class Swatch {

    private static final int WIDTH = 120;
    private static final int HEIGHT = 56;
    /** Below this share of white a pattern is drawn in white, else in ink. */
    private static final double DARK_BELOW = 0.35;

    private Swatch() {}

    /** One SVG element, no scripts, no outside references, no ids. */
    static String svg(WeldColour colour) {
        String pen = isDark(colour.swatch()) ? "#ffffff" : "#1b1a17";
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\""
                .formatted(WIDTH, HEIGHT) + " preserveAspectRatio=\"xMidYMid slice\" aria-hidden=\"true\">"
                + "<rect width=\"%d\" height=\"%d\" fill=\"%s\"/>".formatted(WIDTH, HEIGHT, colour.swatch())
                + "<g stroke=\"%s\" fill=\"none\" stroke-width=\"2.5\">".formatted(pen) + pattern(colour.pattern(), pen)
                + "</g></svg>";
    }

    private static String pattern(String name, String pen) {
        return switch (name) {
            case "dots-sparse" -> dots(24, 3, pen);
            case "dots-dense" -> dots(12, 2.5, pen);
            case "lines-level" -> lines(0, 12, 1, 0);
            case "lines-upright" -> lines(12, 0, 0, 1);
            case "lines-rising" -> lines(14, 0, 1, -1);
            case "lines-falling" -> lines(14, 0, 1, 1);
            case "crosses" -> crosses();
            case "waves" -> waves();
            case "checks" -> checks(pen);
            case "flakes" -> flakes();
            default -> "";
        };
    }

    private static String dots(int apart, double radius, String pen) {
        StringBuilder all = new StringBuilder();
        for (int y = apart / 2; y < HEIGHT; y += apart) {
            for (int x = apart / 2; x < WIDTH; x += apart) {
                all.append(form("<circle cx=\"%d\" cy=\"%d\" r=\"%.1f\" stroke=\"none\" fill=\"%s\"/>", x, y, radius,
                        pen));
            }
        }
        return all.toString();
    }

    /** Lines along {@code dx}, {@code dy}, apart by the steps. */
    private static String lines(int stepX, int stepY, int dx, int dy) {
        StringBuilder all = new StringBuilder();
        for (int i = -10; i < 20; i++) {
            int x = i * stepX + (stepX == 0 ? 0 : stepX / 2);
            int y = i * stepY + (stepY == 0 ? dy < 0 ? HEIGHT : 0 : stepY / 2);
            all.append(form("<path d=\"M%d %dl%d %d\"/>", x, y, dx * WIDTH, dy * WIDTH));
        }
        return all.toString();
    }

    private static String crosses() {
        StringBuilder all = new StringBuilder();
        for (int y = 14; y < HEIGHT; y += 28) {
            for (int x = 15; x < WIDTH; x += 30) {
                all.append(form("<path d=\"M%d %dh14m-7 -7v14\"/>", x - 7, y));
            }
        }
        return all.toString();
    }

    private static String waves() {
        StringBuilder all = new StringBuilder();
        for (int y = 8; y < HEIGHT; y += 14) {
            all.append(form("<path d=\"M0 %dq10 -9 20 0t20 0t20 0t20 0t20 0t20 0\"/>", y));
        }
        return all.toString();
    }

    private static String checks(String pen) {
        StringBuilder all = new StringBuilder();
        for (int y = 0; y < HEIGHT; y += 14) {
            for (int x = y / 14 % 2 * 14; x < WIDTH; x += 28) {
                all.append(form("<rect x=\"%d\" y=\"%d\" width=\"14\" height=\"14\" stroke=\"none\" fill=\"%s\"/>", x,
                        y, pen));
            }
        }
        return all.toString();
    }

    private static String flakes() {
        StringBuilder all = new StringBuilder();
        for (int y = 12; y < HEIGHT; y += 26) {
            for (int x = y == 12 ? 14 : 30; x < WIDTH; x += 34) {
                all.append(form("<path d=\"M%d %dl10 -6l8 8l-12 7z\"/>", x - 8, y));
            }
        }
        return all.toString();
    }

    private static String form(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private static boolean isDark(String swatch) {
        int rgb = Integer.parseInt(swatch.substring(1), 16);
        double light = (0.299 * (rgb >> 16 & 0xFF) + 0.587 * (rgb >> 8 & 0xFF) + 0.114 * (rgb & 0xFF)) / 255;
        return light < DARK_BELOW;
    }
}
