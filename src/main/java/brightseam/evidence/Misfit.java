package brightseam.evidence;

import brightseam.ledger.StreamName;

/** The first thing in a file that does not fit; each carries what was found. {@link MisfitWords} says it. */
public sealed interface Misfit {

    /** Something about a signed head. */
    sealed interface OfHead extends Misfit {}

    /** Something about an entry or the stream that it is in. */
    sealed interface OfEntry extends Misfit {}

    /** The file is not evidence in the one form that it has; byte numbers count from 1. */
    record Unreadable(long byteNumber, String why) implements Misfit {}

    /** The file's own text of a key is no key. */
    record KeyTextWrong(String text) implements Misfit {}

    /** A head is no signed note of a checkpoint. {@code head} says which, such as {@code the checkpoint}. */
    record HeadUnreadable(String head) implements OfHead {}

    /** A head has a signature of a key that was neither given nor is in the file. */
    record KeyUnknown(String head, String name) implements OfHead {}

    /** A signature under a head is not that of the key it names. */
    record SignatureWrong(String head, String key) implements OfHead {}

    /** None of the keys that were given signed the checkpoint. */
    record NotSignedByGiven(String signers) implements OfHead {}

    /** A head is of another ledger. */
    record OtherLedger(String head, String found, String expected) implements OfHead {}

    /** Earlier heads do not grow up to the checkpoint. */
    record HeadOutOfOrder(String head, long size) implements OfHead {}

    /** The ledger of the checkpoint is not an earlier head's with entries added at its end. */
    record HeadInconsistent(String head, long size) implements OfHead {}

    /** The traveller's own stream does not come first, or a stream stands twice or has no entry. */
    record StreamOutOfPlace(StreamName stream) implements OfEntry {}

    /** An entry's envelope has not the form of one; {@code ordinal} counts the stream's entries in the file from 1. */
    record EnvelopeWrong(StreamName stream, long ordinal) implements OfEntry {}

    /** An entry of another stream stands here. */
    record StreamWrong(Place place, StreamName among) implements OfEntry {}

    /** A stream that has to be whole lacks {@code expected}, and {@code place} stands there. */
    record EntryMissing(Place place, long expected) implements OfEntry {}

    /** An entry does not name the hash of the one before it. */
    record PreviousWrong(Place place) implements OfEntry {}

    /** An entry's position does not lie behind that of the one before it. */
    record PositionWrong(Place place, long position) implements OfEntry {}

    /** The path of an entry does not lead to the root of the head: envelope, position or path was changed. */
    record NotInHead(Place place, long position, long size) implements OfEntry {}

    /** The record does not begin as the record of this traveller. */
    record BeginningWrong(Place place) implements OfEntry {}

    /** A history inside an entry is not what the stream it was taken from says; {@code number} counts from 1. */
    record HistoryDiffers(Place place, StreamName parent, long number) implements OfEntry {}

    /** The text of a procedure has not the hash that its approval states. */
    record ProcedureTextWrong(Place place) implements OfEntry {}

    /** The procedure that the traveller was released with is not among the approvals. */
    record ProcedureNotApproved(String id, String revision) implements Misfit {}

    /** What was read off the paper is no mark of a record. */
    record MarkUnreadable(String text) implements Misfit {}

    /** Paper and file are of different things; {@code what} says in which they differ. */
    record MarkDiffers(String what, String paper, String file) implements Misfit {}

    /** The pages of a print do not show something that the entries say. */
    record PagesLack(String what) implements Misfit {}

    /** A file that was given beside the evidence is named by none of its entries. */
    record FileNotNamed(String file, String sha256) implements Misfit {}
}
