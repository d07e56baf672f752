package brightseam.bath;

import java.util.function.DoubleFunction;

/** A tube as triangles: its areas by cross products, its volume by the tetrahedra that they span with the origin. */
record TubeMesh(double outside, double inside, double volume) {

    static TubeMesh of(Shape.Tube tube, int corners) {
        double outer = tube.outsideDiameterMillimetres() / 2;
        double inner = tube.insideDiameterMillimetres() / 2;
        double length = tube.lengthMillimetres();
        double outside = 0;
        double inside = 0;
        double volume = 0;
        for (int i = 0; i < corners; i++) {
            double here = 2 * Math.PI * i / corners;
            double next = 2 * Math.PI * (i + 1) / corners;
            DoubleFunction<double[][]> mantle = radius -> new double[][] {
                point(radius, here, 0), point(radius, next, 0), point(radius, next, length), point(radius, here, length)
            };
            double[][] foot = {
                point(outer, here, 0), point(inner, here, 0), point(inner, next, 0), point(outer, next, 0)
            };
            double[][] head = {
                point(outer, here, length), point(outer, next, length), point(inner, next, length),
                point(inner, here, length)
            };
            outside += area(mantle.apply(outer)) + area(foot) + area(head);
            inside += area(mantle.apply(inner));
            volume += spanned(mantle.apply(outer)) - spanned(mantle.apply(inner)) + spanned(foot) + spanned(head);
        }
        return new TubeMesh(outside, inside, volume);
    }

    private static double[] point(double radius, double angle, double height) {
        return new double[] {radius * Math.cos(angle), radius * Math.sin(angle), height};
    }

    private static double area(double[][] quad) {
        return (length(cross(minus(quad[1], quad[0]), minus(quad[2], quad[0])))
                + length(cross(minus(quad[2], quad[0]), minus(quad[3], quad[0])))) / 2;
    }

    private static double spanned(double[][] quad) {
        return (dot(quad[0], cross(quad[1], quad[2])) + dot(quad[0], cross(quad[2], quad[3]))) / 6;
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }
}
