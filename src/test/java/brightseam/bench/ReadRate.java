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

    /** The kinds of shot in the table. */
    public static List<Shot> shots() {
        return List.of(
                Shot.good("good light, 40 cm"),
                Shot.good("arm's length, 60 cm").at(600),
                Shot.good("too far, 80 cm").at(800),
                Shot.good("tilted 30 degrees").tilted(30),
                Shot.good("tilted 45 degrees").tilted(45),
                Shot.good("turned to any angle").rolled(),
                Shot.good("blurred, 2 pixels").blurred(2),
                Shot.good("blurred, 3 pixels").blurred(3),
                Shot.good("smeared, 6 pixels").smeared(6),
                Shot.good("lamp's glare").glaring(160),
                Shot.good("lamp's glare, strong").glaring(260),
                Shot.good("low contrast").printed(105, 145),
                Shot.good("noise").noisy(20),
                Shot.good("arm's length, tilted, glare, blur").at(600).tilted(25).rolled().blurred(1.1).glaring(100)
                        .printed(60, 190).noisy(6));
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
