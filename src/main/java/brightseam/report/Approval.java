package brightseam.report;

import brightseam.kernel.Moment;

/** Who approved the procedure's revision for use, and when. */
public record Approval(Who by, Moment at) {}
