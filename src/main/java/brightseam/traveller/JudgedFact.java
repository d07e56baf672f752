package brightseam.traveller;

import brightseam.kernel.JointId;
import brightseam.kernel.SessionId;
import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import java.util.List;

/**
 * What an inspector saw at a joint.
 *
 * @param joint which joint
 * @param session the session that welded the run
 * @param run which run of the joint, from 1
 * @param parts every traveller whose pieces are welded there
 * @param colour the name of the colour, such as {@code light straw}
 * @param accepted whether the inspector accepts it
 * @param findings what else was seen, in words; empty where nothing was
 * @param acceptance what it was judged by, with its revision
 * @param light the lighting as measured, such as {@code 1100 lx at the joint}
 * @param next what the rule says next; empty where it says nothing
 * @param photographs in the order in which they were taken
 */
public record JudgedFact(JointId joint, SessionId session, int run, List<Joined> parts, String colour,
        boolean accepted, List<String> findings, String acceptance, String light, String next,
        List<Photograph> photographs) {

    private static final int COLOUR_LENGTH_MAX = 40;
    private static final int TEXT_LENGTH_MAX = 200;

    /** Refuses a run below 1, a joint of nothing, and missing words. */
    public JudgedFact {
        colour = Syntax.text("colour", colour, COLOUR_LENGTH_MAX);
        acceptance = Syntax.text("acceptance", acceptance, TEXT_LENGTH_MAX);
        light = Syntax.text("light", light, TEXT_LENGTH_MAX);
        parts = List.copyOf(parts);
        findings = List.copyOf(findings);
        photographs = List.copyOf(photographs);
        if (run < 1 || parts.isEmpty()) {
            throw new IllegalArgumentException("a joint has a run from 1 and at least one part");
        }
    }

    /** The travellers whose pieces are welded there, sorted. */
    public List<TravellerId> travellers() {
        return parts.stream().map(Joined::traveller).distinct().sorted().toList();
    }
}
