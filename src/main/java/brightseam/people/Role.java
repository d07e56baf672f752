package brightseam.people;

/** What a person may do in the shop. One person may hold several. */
public enum Role {
    /** Does and signs the steps. */
    FABRICATOR,
    /** Releases travellers, watches the board, dispositions rework. */
    LEAD,
    /** Stamps inspection points, dispositions nonconformances. */
    INSPECTOR,
    /** Keeps people, bins, stations and labels. */
    ADMINISTRATOR,
    /** Takes samples, enters analyses, makes baths up. */
    PROCESS_CONTROL
}
