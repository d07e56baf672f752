package brightseam.report;

import brightseam.traveller.Contact;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that touched a joint, or measured there.
 *
 * @param contact as the record has it
 * @param lastDay the last day of its calibration, or on which it may be used, as registered now; empty where there is
 *     none
 */
public record Gear(Contact contact, Optional<LocalDate> lastDay) {}
