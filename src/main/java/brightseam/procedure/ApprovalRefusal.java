package brightseam.procedure;

import brightseam.kernel.Refusal;

/** Why a procedure is not approved. */
public sealed interface ApprovalRefusal extends Refusal {

    /** No file of the folder holds procedure {@code id}. */
    record ProcedureUnknown(String id) implements ApprovalRefusal {
        @Override
        public String code() {
            return "procedure-unknown";
        }
    }

    /** The file has problems, {@code problems} of them; the first is {@code first}. */
    record ProcedureUnsound(String id, String file, int problems, String first) implements ApprovalRefusal {
        @Override
        public String code() {
            return "procedure-unsound";
        }
    }

    /** The file is not the one that the person was shown. */
    record ProcedureChangedSinceShown(String id, String shownSha256, String foundSha256) implements ApprovalRefusal {
        @Override
        public String code() {
            return "procedure-changed-since-shown";
        }
    }

    /** This very file is approved already. */
    record ProcedureAlreadyApproved(String id, String revision) implements ApprovalRefusal {
        @Override
        public String code() {
            return "procedure-already-approved";
        }
    }

    /** The file changed, its revision letter did not. */
    record RevisionUnchanged(String id, String revision, String approvedSha256, String foundSha256)
            implements ApprovalRefusal {
        @Override
        public String code() {
            return "procedure-revision-unchanged";
        }
    }

    /** The file's revision letter lies below the approved one. */
    record RevisionTooLow(String id, String revision, String approvedRevision) implements ApprovalRefusal {
        @Override
        public String code() {
            return "procedure-revision-too-low";
        }
    }

    /** Nobody is named as the approver. */
    record ApproverNotNamed(String id) implements ApprovalRefusal {
        @Override
        public String code() {
            return "procedure-approver-not-named";
        }
    }
}
