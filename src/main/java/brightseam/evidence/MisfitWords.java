package brightseam.evidence;

/** Says in words what does not fit. */
public final class MisfitWords {

    private MisfitWords() {}

    /** One or two sentences. */
    public static String of(Misfit misfit) {
        return switch (misfit) {
            case Misfit.OfHead head -> head(head);
            case Misfit.OfEntry entry -> entry(entry);
            case Misfit.Unreadable wrong -> "The file is not evidence in its one written form. At byte "
                    + wrong.byteNumber() + ": " + wrong.why() + ".";
            case Misfit.KeyTextWrong wrong -> "A key that the file states is no key: its short id does not fit its"
                    + " bytes (" + wrong.text() + ").";
            case Misfit.ProcedureNotApproved wrong -> "The procedure of the record, " + wrong.id() + " revision "
                    + wrong.revision() + ", is not among the approvals in the file.";
            case Misfit.PagesLack wrong -> "The pages are not those of this file: they do not show " + wrong.what()
                    + ".";
            case Misfit.FileNotNamed wrong -> "No entry names " + wrong.file() + ", whose SHA-256 is " + wrong.sha256()
                    + ".";
            case Misfit.MarkUnreadable wrong -> "This is no mark of a record: " + wrong.text();
            case Misfit.MarkDiffers wrong -> "Paper and file do not belong together. On paper " + wrong.what() + " is "
                    + wrong.paper() + ", in the file " + wrong.file() + ".";
        };
    }

    private static String head(Misfit.OfHead misfit) {
        return switch (misfit) {
            case Misfit.HeadUnreadable wrong -> "No signed head can be read from " + wrong.head() + ".";
            case Misfit.KeyUnknown wrong -> "Under " + wrong.head() + " stands a signature of a key that was not given"
                    + " and is not in the file: " + wrong.name() + ".";
            case Misfit.SignatureWrong wrong -> "The signature under " + wrong.head() + " is not that of the key "
                    + wrong.key() + ": head or signature was changed.";
            case Misfit.NotSignedByGiven wrong -> "No key that was given and bears the name of the"
                    + " ledger signed this. It is signed by " + wrong.signers() + ".";
            case Misfit.OtherLedger wrong -> "The " + wrong.head() + " is of another ledger: " + wrong.found()
                    + ", not " + wrong.expected() + ".";
            case Misfit.HeadOutOfOrder wrong -> "The " + wrong.head() + ", of " + wrong.size()
                    + " entries, does not lie between the one before it and the checkpoint.";
            case Misfit.HeadInconsistent wrong -> "The ledger of the checkpoint did not grow from the " + wrong.head()
                    + ", of " + wrong.size() + " entries: head or path was changed, or it is of another ledger.";
        };
    }

    private static String entry(Misfit.OfEntry misfit) {
        return switch (misfit) {
            case Misfit.StreamOutOfPlace wrong -> wrong.stream() + " stands in the wrong place of the file, or there is"
                    + " no entry of it.";
            case Misfit.EnvelopeWrong wrong -> "What stands as number " + wrong.ordinal() + " among the entries of "
                    + name(wrong.stream()) + " has not the form of an entry.";
            case Misfit.StreamWrong wrong -> place(wrong.place()) + " stands among the entries of "
                    + name(wrong.among()) + ".";
            case Misfit.EntryMissing wrong -> "Entry " + wrong.expected() + " of " + name(wrong.place().stream())
                    + " is missing: " + place(wrong.place()) + " stands in its place.";
            case Misfit.PreviousWrong wrong -> place(wrong.place()) + " does not follow from the entry before it: the"
                    + " hash that it names is another.";
            case Misfit.PositionWrong wrong -> place(wrong.place()) + " has position " + wrong.position()
                    + " in the ledger, which does not lie behind that of the entry before it.";
            case Misfit.NotInHead wrong -> place(wrong.place()) + " is not at position " + wrong.position()
                    + " of the signed ledger of " + wrong.size() + " entries: the entry, its position or its path was"
                    + " changed after sealing.";
            case Misfit.BeginningWrong wrong -> "The record does not begin as the record of this traveller, but with "
                    + place(wrong.place()) + ".";
            case Misfit.HistoryDiffers wrong -> place(wrong.place()) + " tells a history of " + name(wrong.parent())
                    + " that its own entries do not tell, at entry " + wrong.number() + ".";
            case Misfit.ProcedureTextWrong wrong -> place(wrong.place())
                    + " holds a text that has not the SHA-256 beside it.";
        };
    }

    private static String place(Place place) {
        return "Entry " + place.version() + " of " + name(place.stream())
                + place.type().map(type -> " (" + type.replaceFirst("\\.\\d+$", "")
                        + place.step().map(step -> ", step " + step).orElse("") + ")").orElse("");
    }

    /** A traveller by its label, anything else with its family. */
    static String name(brightseam.ledger.StreamName stream) {
        return stream.family().equals("traveller")
                ? stream.identity() : stream.family().replace('-', ' ') + " " + stream.identity();
    }
}
