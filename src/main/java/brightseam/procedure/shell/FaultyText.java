package brightseam.procedure.shell;

import brightseam.procedure.shell.Fault.Place;

/** A text that cannot be read any further. */
final class FaultyText extends Exception {

    private final transient Fault fault;

    FaultyText(Place place, String found, String expected) {
        super(found);
        this.fault = new Fault(place, found, expected);
    }

    Fault fault() {
        return fault;
    }
}
