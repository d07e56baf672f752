package brightseam.device;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * A series as few bytes, without loss: what comes out is what went in, bit for bit.
 *
 * <p>A body of unsigned numbers of 7 bits a byte, lowest first, the eighth bit set where more follow; signed ones are
 * folded to 2n or -2n-1. It holds the count; the time of the first reading, its distance to the second, then how each
 * distance differs from the one before; then the form of the values and the values; then the flags as runs. Values that
 * are decimals of at most nine places are whole multiples of the finest place, each as its difference from the one
 * before; any others are the bits of each double, combined by exclusive or with those before it. The first byte says
 * whether the body follows as it is or deflated (RFC 1951), whichever is shorter.
 */
public final class SeriesBlock {

    private static final int PLAIN = 0;
    private static final int DEFLATED = 1;
    private static final int BITS = 10;
    private static final int PLACES_MAX = 9;
    private static final double WHOLE_MAX = 1L << 53;
    private static final double[] TENS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

    private SeriesBlock() {}

    /** {@code series} as bytes. */
    public static byte[] pack(Series series) {
        Packed body = new Packed();
        body.unsigned(series.size());
        times(series, body);
        int places = places(series);
        body.unsigned(places < 0 ? BITS : places);
        if (places < 0) {
            bits(series, body);
        } else {
            decimals(series, TENS[places], body);
        }
        flags(series, body);
        return shorter(body.toByteArray());
    }

    /**
     * The series in {@code bytes}.
     *
     * @throws IllegalArgumentException where they are not what {@link #pack} made
     */
    public static Series unpack(byte[] bytes) {
        try {
            Unpacked body = new Unpacked(bytes[0] == DEFLATED ? inflated(bytes) : bytes, bytes[0] == DEFLATED ? 0 : 1);
            int size = Math.toIntExact(body.unsigned());
            long[] millis = times(body, new long[size]);
            int form = Math.toIntExact(body.unsigned());
            double[] values = form == BITS ? bits(body, new double[size])
                    : decimals(body, TENS[form], new double[size]);
            return Series.owning(millis, values, flags(body, new byte[size]));
        } catch (DataFormatException | IndexOutOfBoundsException | ArithmeticException broken) {
            throw new IllegalArgumentException("not a block of readings", broken);
        }
    }

    private static void times(Series series, Packed body) {
        long before = 0;
        long distance = 0;
        for (int i = 0; i < series.size(); i++) {
            long next = series.millis(i) - before;
            body.signed(next - distance);
            distance = i == 0 ? 0 : next;
            before = series.millis(i);
        }
    }

    private static long[] times(Unpacked body, long[] millis) {
        long before = 0;
        long distance = 0;
        for (int i = 0; i < millis.length; i++) {
            long next = body.signed() + distance;
            before += next;
            millis[i] = before;
            distance = i == 0 ? 0 : next;
        }
        return millis;
    }

    /** With how many decimal places every value comes back as the same double; -1 where there is no such number. */
    private static int places(Series series) {
        int places = 0;
        for (int i = 0; i < series.size(); i++) {
            while (!comesBack(series.value(i), TENS[places])) {
                if (++places > PLACES_MAX) {
                    return -1;
                }
            }
        }
        return isEveryBack(series, TENS[places]) ? places : -1;
    }

    private static boolean isEveryBack(Series series, double tens) {
        for (int i = 0; i < series.size(); i++) {
            if (!comesBack(series.value(i), tens)) {
                return false;
            }
        }
        return true;
    }

    /** A whole number below 2^53 over a power of ten is the double nearest to that decimal: the one that was parsed. */
    private static boolean comesBack(double value, double tens) {
        double whole = Math.rint(value * tens);
        return Math.abs(whole) < WHOLE_MAX
                && Double.doubleToRawLongBits(((long) whole) / tens) == Double.doubleToRawLongBits(value);
    }

    private static void decimals(Series series, double tens, Packed body) {
        long before = 0;
        for (int i = 0; i < series.size(); i++) {
            long whole = (long) Math.rint(series.value(i) * tens);
            body.signed(whole - before);
            before = whole;
        }
    }

    private static double[] decimals(Unpacked body, double tens, double[] values) {
        long whole = 0;
        for (int i = 0; i < values.length; i++) {
            whole += body.signed();
            values[i] = whole / tens;
        }
        return values;
    }

    private static void bits(Series series, Packed body) {
        long before = 0;
        for (int i = 0; i < series.size(); i++) {
            long bits = Double.doubleToRawLongBits(series.value(i));
            body.unsigned(Long.reverse(bits ^ before));
            before = bits;
        }
    }

    private static double[] bits(Unpacked body, double[] values) {
        long bits = 0;
        for (int i = 0; i < values.length; i++) {
            bits ^= Long.reverse(body.unsigned());
            values[i] = Double.longBitsToDouble(bits);
        }
        return values;
    }

    private static void flags(Series series, Packed body) {
        int i = 0;
        while (i < series.size()) {
            int start = i;
            int flags = series.flags(start);
            while (i < series.size() && series.flags(i) == flags) {
                i++;
            }
            body.unsigned(i - start);
            body.unsigned(flags);
        }
    }

    private static byte[] flags(Unpacked body, byte[] flags) {
        int i = 0;
        while (i < flags.length) {
            int end = i + Math.toIntExact(body.unsigned());
            byte run = (byte) body.unsigned();
            while (i < end) {
                flags[i++] = run;
            }
        }
        return flags;
    }

    private static byte[] shorter(byte[] body) {
        Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
        try {
            deflater.setInput(body);
            deflater.finish();
            byte[] out = new byte[body.length + 1];
            int length = deflater.deflate(out, 1, body.length);
            boolean fits = deflater.finished();
            out[0] = fits ? (byte) DEFLATED : PLAIN;
            if (!fits) {
                System.arraycopy(body, 0, out, 1, body.length);
            }
            return Arrays.copyOf(out, fits ? length + 1 : out.length);
        } finally {
            deflater.end();
        }
    }

    private static byte[] inflated(byte[] bytes) throws DataFormatException {
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(bytes, 1, bytes.length - 1);
            ByteArrayOutputStream body = new ByteArrayOutputStream(bytes.length * 4);
            byte[] part = new byte[8192];
            while (!inflater.finished()) {
                int length = inflater.inflate(part);
                if (length == 0) {
                    throw new DataFormatException("ends too early");
                }
                body.write(part, 0, length);
            }
            return body.toByteArray();
        } finally {
            inflater.end();
        }
    }

    /** Numbers going into bytes. */
    private static final class Packed extends ByteArrayOutputStream {
        void unsigned(long value) {
            long rest = value;
            while ((rest & ~0x7FL) != 0) {
                write((int) (rest & 0x7F | 0x80));
                rest >>>= 7;
            }
            write((int) rest);
        }

        void signed(long value) {
            unsigned(value << 1 ^ value >> 63);
        }
    }

    /** Numbers coming out of bytes. */
    private static final class Unpacked {
        private final byte[] bytes;
        private int at;

        Unpacked(byte[] bytes, int start) {
            this.bytes = bytes;
            this.at = start;
        }

        long unsigned() {
            long value = 0;
            int shift = 0;
            byte next;
            do {
                next = bytes[at++];
                value |= (next & 0x7FL) << shift;
                shift += 7;
            } while (next < 0);
            return value;
        }

        long signed() {
            long folded = unsigned();
            return folded >>> 1 ^ -(folded & 1);
        }
    }
}
