package brightseam.bench;

import brightseam.scan.AimingFrame;
import brightseam.scan.FrameReading;
import brightseam.scan.Label;
import brightseam.scan.LabelKind;
import brightseam.scan.LabelSymbol;
import brightseam.scan.OwnLabel;
import brightseam.scan.ScanParser;
import brightseam.scan.ScanReading;
import brightseam.scan.shell.FrameReader;
import brightseam.scan.shell.LabelImage;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Prints how often the camera reads our own labels on generated, spoilt pictures, for both symbologies, with the time
 * per picture and the false reads. Seeded: the same pictures every time.
 */
public final class ReadRate {

    private static final float PIXELS_PER_MILLIMETRE = 10;
    private static final double SYMBOL_CENTRE_MILLIMETRES = 25;
    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);

    private static final List<Label> LABELS = List.of(
            label(LabelKind.BIN, "B-0142", "Clean bin"),
            label(LabelKind.TRAVELLER, "T-1042", "Tube, leg upper"),
            label(LabelKind.HEAT, "H-9T3381", "Ti grade 9 tube"),
            label(LabelKind.STATION, "S-ACID-1", "Acid tank"));

    private ReadRate() {}

    /** Rates of one kind of shot. */
    public record Rate(int pictures, int read, int falseReads, double medianMillis, double slowestMillis) {}

    /** The kinds of shot in the table: distance, tilt, roll, blur, smear, glare, ink, paper, noise. */
    public static List<Shot> shots() {
        return List.of(
                new Shot("good light, 40 cm", 400, 3, false, 0.7, 0, 0, 30, 220, 4),
                new Shot("arm's length, 60 cm", 600, 3, false, 0.7, 0, 0, 30, 220, 4),
                new Shot("too far, 80 cm", 800, 3, false, 0.7, 0, 0, 30, 220, 4),
                new Shot("tilted 30 degrees", 400, 30, false, 0.7, 0, 0, 30, 220, 4),
                new Shot("tilted 45 degrees", 400, 45, false, 0.7, 0, 0, 30, 220, 4),
                new Shot("turned to any angle", 400, 3, true, 0.7, 0, 0, 30, 220, 4),
                new Shot("blurred, 2 pixels", 400, 3, false, 2, 0, 0, 30, 220, 4),
                new Shot("blurred, 3 pixels", 400, 3, false, 3, 0, 0, 30, 220, 4),
                new Shot("smeared, 6 pixels", 400, 3, false, 0.7, 6, 0, 30, 220, 4),
                new Shot("lamp's glare", 400, 3, false, 0.7, 0, 160, 30, 220, 4),
                new Shot("lamp's glare, strong", 400, 3, false, 0.7, 0, 260, 30, 220, 4),
                new Shot("low contrast", 400, 3, false, 0.7, 0, 0, 105, 145, 4),
                new Shot("noise", 400, 3, false, 0.7, 0, 0, 30, 220, 20),
                new Shot("arm's length, tilted, glare, blur", 600, 25, true, 1.1, 0, 100, 60, 190, 6));
    }

    /** Takes and reads {@code pictures} of {@code shot}. */
    public static Rate measure(Shot shot, LabelSymbol symbol, int pictures, long seed) {
        Random random = new Random(seed);
        int read = 0;
        int wrong = 0;
        double[] millis = new double[pictures];
        List<Camera> cameras = LABELS.stream().map(label -> camera(label, symbol)).toList();
        for (int i = 0; i < pictures; i++) {
            byte[] jpeg = cameras.get(i % LABELS.size()).jpeg(shot, random);
            long start = System.nanoTime();
            FrameReading seen = new FrameReader().read(jpeg, AimingFrame.whole());
            millis[i] = (System.nanoTime() - start) / 1e6;
            if (seen instanceof FrameReading.Seen found) {
                ScanReading reading = ScanParser.standard().parse(found.scan(), TODAY);
                boolean right = reading.equals(LABELS.get(i % LABELS.size()).own());
                read += right ? 1 : 0;
                wrong += !right && reading instanceof OwnLabel ? 1 : 0;
            }
        }
        Arrays.sort(millis);
        return new Rate(pictures, read, wrong, millis[pictures / 2], millis[pictures - 1]);
    }

    private static Camera camera(Label label, LabelSymbol symbol) {
        BufferedImage image = new LabelImage().of(label, symbol, PIXELS_PER_MILLIMETRE);
        return new Camera(image, PIXELS_PER_MILLIMETRE, SYMBOL_CENTRE_MILLIMETRES, SYMBOL_CENTRE_MILLIMETRES);
    }

    private static Label label(LabelKind kind, String id, String title) {
        return new Label(new OwnLabel(kind, id), title, List.of("Invented for this measurement"), true);
    }

    /** Prints the table; the only argument, if any, is the number of pictures per line. */
    public static void main(String[] args) {
        int pictures = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        System.out.printf(Locale.ROOT, "%-36s %-12s %9s %11s %11s %11s%n",
                "shot (" + pictures + " pictures each)", "symbol", "read", "false", "median ms", "slowest ms");
        for (Shot shot : shots()) {
            for (LabelSymbol symbol : LabelSymbol.values()) {
                Rate rate = measure(shot, symbol, pictures, 20260115);
                System.out.printf(Locale.ROOT, "%-36s %-12s %8.0f%% %11d %11.0f %11.0f%n", shot.name(), symbol,
                        100.0 * rate.read() / rate.pictures(), rate.falseReads(), rate.medianMillis(),
                        rate.slowestMillis());
            }
        }
    }
}
